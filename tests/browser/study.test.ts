import { beforeEach, describe, expect, it } from 'vitest';
import '../../components/study/qw-study.ts';
import type { CandidateView } from '../../components/study/study-view.ts';
import { anchorView, candidateView, needsABridge, study } from '../support/hand-made.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const pair = { leaf: study, anchor: anchorView, candidates: [candidateView], margin: ['leaf 3', 'saved'] };

describe('a study', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds, in %s', async (look) => {
    await standAlone('qw-study', pair, look);
    expect(await axeTroubles()).toEqual([]);
  });

  it('has nothing that axe finds while it has no paper yet, and says what to do', async () => {
    const element = await standAlone('qw-study', { leaf: { ...study, anchor: null, candidates: [] } });
    expect(await axeTroubles()).toEqual([]);
    expect(within(element, '.invitation').textContent).toMatch(/drop its picture on the page/);
  });

  it('draws anew when a property changes', async () => {
    const element = await standAlone<HTMLElement & { candidates: readonly CandidateView[] }>(
      'qw-study',
      pair,
    );
    expect(within(element, 'qw-verdict', 'h3').textContent).toBe('Needs a bridge.');
    const holds = { ...needsABridge, verdict: 'holds-together' } as const;
    element.candidates = [{ ...candidateView, comparison: holds }];
    await drawn(element);
    expect(within(element, 'qw-verdict', 'h3').textContent).toBe('Holds together.');
  });

  it('lights up everywhere the inks of a reason that is stepped to', async () => {
    const element = await standAlone('qw-study', pair);
    within(element, 'qw-reasons', '.dot').focus();
    await drawn(element);
    for (const chart of ['qw-wheel', 'qw-strip']) {
      expect(within<HTMLElement & { lit: string[] }>(element, '[shows=charts]', chart).lit).toEqual([
        'C',
        'c',
      ]);
    }
    expect(within<HTMLElement & { lit: string[] }>(element, 'qw-mats', '.candidate').lit).toEqual(['C', 'c']);
  });

  it('marks the reasons that speak of an ink that is pointed at in a chart', async () => {
    const element = await standAlone('qw-study', pair);
    const wheel = within(element, '[shows=charts]', 'qw-wheel');
    wheel.dispatchEvent(
      new CustomEvent('qw-point', { detail: { inks: ['D'] }, bubbles: true, composed: true }),
    );
    await drawn(element);
    const lit = [...(within(element, 'qw-reasons').shadowRoot?.querySelectorAll('li.lit') ?? [])];
    expect(lit.map((reason) => reason.querySelector('p')?.textContent)).toEqual([
      expect.stringContaining('aqua repeats'),
    ]);
  });

  it('keeps the inks of a reason lit until the same is pressed again', async () => {
    const element = await standAlone('qw-study', pair);
    const dot = within<HTMLButtonElement>(element, 'qw-reasons', '.dot');
    dot.click();
    await drawn(element);
    expect(dot.getAttribute('aria-pressed')).toBe('true');
    const points = heard<{ inks: string[] }>(element, 'qw-point');
    within(element, 'qw-reasons', 'ol').dispatchEvent(new PointerEvent('pointerleave'));
    expect(points.at(-1)?.inks).toEqual(['C', 'c']);
  });

  it('hides verdict, reasons, remedies and charts until the reader has said hers', async () => {
    const element = await standAlone<HTMLElement & { candidates: readonly CandidateView[] }>('qw-study', {
      ...pair,
      leaf: { ...study, asksFirst: true },
    });
    expect(await axeTroubles()).toEqual([]);
    const root = element.shadowRoot!;
    for (const hidden of ['qw-verdict', 'qw-deciding', 'qw-reasons', 'qw-remedies', '[shows=charts]'])
      expect(root.querySelector(hidden)).toBeNull();
    expect(within(element, 'qw-mats').shadowRoot!.querySelector('qw-wheel')).toBeNull();
    expect(within(element, 'qw-candidates', '.thumb').ariaLabel).toContain('you say first');
    expect(within(element, 'qw-candidates').shadowRoot!.querySelector('svg')).toBeNull();
    expect(root.textContent).not.toContain('bridge');
    const board = within<HTMLButtonElement>(element, 'qw-study-tools', 'button');
    expect(board.disabled).toBe(true);
    expect(within(element, 'qw-study-tools', '#why-not').textContent).toBe('after you answer');

    const said = heard<{ opinion: object; index: number }>(element, 'qw-say');
    within(element, 'qw-opinion', '.answers button:nth-child(3)').click();
    expect(said).toEqual([{ opinion: { verdict: 'pulls-apart' }, index: 0 }]);

    element.candidates = [{ ...candidateView, opinion: { verdict: 'pulls-apart', likes: null } }];
    await drawn(element);
    expect(within(element, 'qw-verdict', 'h3').textContent).toBe('Needs a bridge.');
    expect(within(element, 'qw-opinion', '.found').textContent).toMatch(
      /You say it pulls apart; the reading says it needs a bridge/,
    );
  });

  it('tells which distance, wheel and surround are asked for', async () => {
    const element = await standAlone('qw-study', pair);
    const asked = ['qw-set-distance', 'qw-set-wheel', 'qw-set-surround'].map((name) =>
      heard<{ value: string }>(element, name),
    );
    const choices = within(element, 'qw-study-tools').shadowRoot!.querySelectorAll('qw-choice');
    for (const [place, radio] of [
      [0, 0],
      [1, 1],
      [2, 2],
    ] as const) {
      choices[place]!.shadowRoot!.querySelectorAll('input')[radio]!.click();
    }
    expect(asked.map(([first]) => first?.value)).toEqual(['touching', 'painter', 'dark']);
  });

  it('asks for a board, for another paper, and to turn a sheet over', async () => {
    const element = await standAlone('qw-study', pair);
    const [board, paper, turn] = ['qw-make-board', 'qw-choose-paper', 'qw-turn-over'].map((name) =>
      heard(element, name),
    );
    within(element, 'qw-study-tools', 'button').click();
    within(element, 'qw-candidates', '.more').click();
    within(element, 'qw-mats', '.candidate', '.deeds .turn').click();
    expect([board?.length, paper, turn]).toEqual([
      1,
      [{ as: 'candidate' }],
      [{ as: 'candidate', index: 0, side: 'B' }],
    ]);
  });
});

describe('the verdict of a study', () => {
  it('stands below the papers, and tells in full what turned it; the reasons do not tell that again', async () => {
    const element = await standAlone('qw-study', pair);
    const verdict = within(element, 'qw-verdict');
    expect(element.shadowRoot!.querySelectorAll('qw-verdict')).toHaveLength(1);
    expect(verdict.getBoundingClientRect().top).toBeGreaterThan(
      within(element, 'qw-mats').getBoundingClientRect().bottom - 1,
    );
    expect(within(element, 'qw-verdict', 'h3').textContent).toBe('Needs a bridge.');
    const first = needsABridge.reasons[needsABridge.decision.turnedBy[0] ?? 0]!;
    expect(within(element, 'qw-verdict', '.verdict').textContent).toContain(first.says.slice(0, 5));
    const told = [...within(element, 'qw-reasons').shadowRoot!.querySelectorAll('li p')];
    expect(told.filter(({ textContent }) => textContent?.startsWith(first.says.slice(0, 12)))).toEqual([]);
    expect(within(element, 'qw-verdict', '.margin b').textContent).toContain(first.figure.slice(0, 2));
  });

  it('is followed by the two colours that decide, each beside its paper', async () => {
    const element = await standAlone('qw-study', pair);
    const swatches = within(element, 'qw-deciding').shadowRoot!.querySelectorAll('.swatch b');
    expect([...swatches].map(({ textContent }) => textContent)).toEqual(['C', 'c']);
    const [left, right] = [...swatches].map((swatch) => swatch.parentElement!.getBoundingClientRect());
    expect(right!.left).toBeCloseTo(left!.right, 0);
  });

  it('says in what opens that it is a close call', async () => {
    const close = {
      ...needsABridge,
      decision: { ...needsABridge.decision, arguable: 'One could say more.' },
    };
    const element = await standAlone('qw-study', {
      ...pair,
      candidates: [{ ...candidateView, comparison: close }],
    });
    expect(within(element, 'qw-verdict', 'summary').textContent).toContain('close call');
    expect(within(element, 'qw-verdict', 'details').textContent).toContain('One could say more.');
  });
});

describe('what could mend a pair', () => {
  it('is three ways at first, and the others once they are asked for', async () => {
    const [one] = needsABridge.remedies;
    const remedies = Array.from({ length: 5 }, (_, n) => ({ ...one!, title: `Way ${n}` }));
    const element = await standAlone('qw-study', { ...pair, candidates: [{ ...candidateView, remedies }] });
    const cards = () => within(element, 'qw-remedies').shadowRoot!.querySelectorAll('li').length;
    expect(cards()).toBe(3);
    const more = within(element, 'qw-remedies', 'ol + button');
    expect(more.textContent?.trim()).toBe('2 more ways');
    more.click();
    await drawn(element);
    expect(cards()).toBe(5);
  });
});

describe('papers on the mat', () => {
  it.each([1200, 360])('lie edge to edge where they are judged as touching, in %i px', async (width) => {
    const element = await standAlone('qw-mats', { ...pair, shows: 'papers', shown: 0, distance: 'touching' });
    element.style.width = `${width}px`;
    await drawn(element);
    const [left, right] = ['.anchor', '.candidate'].map((place) =>
      within(element, place, 'qw-paper').getBoundingClientRect(),
    );
    expect(right!.left).toBeCloseTo(left!.right, 0);
    expect(right!.top).toBeCloseTo(left!.top, 0);
  });

  it('lie apart where they are judged so', async () => {
    const element = await standAlone('qw-mats', { ...pair, shows: 'papers', shown: 0, distance: 'apart' });
    const [left, right] = ['.anchor', '.candidate'].map((place) =>
      within(element, place, 'qw-paper').getBoundingClientRect(),
    );
    expect(right!.left - left!.right).toBeGreaterThan(7);
  });

  it('are renamed where they lie; a name that is emptied comes back', async () => {
    const element = await standAlone('qw-mats', { ...pair, shown: 0 });
    const names = heard(element, 'qw-rename-paper');
    const titles = heard(element, 'qw-retitle');
    const words = within(element, '.candidate', 'qw-title', 'span');
    for (const name of ['Gingham', '']) {
      words.textContent = name;
      words.dispatchEvent(new FocusEvent('blur'));
    }
    await drawn(element);
    expect(names).toEqual([{ held: candidateView.held, name: 'Gingham' }]);
    expect(titles).toEqual([]);
    expect(words.textContent).toBe('Quay ledger');
  });

  it('say in the empty place which picture is being read', async () => {
    const element = await standAlone('qw-mats', { ...pair, candidates: [], reading: ['gingham.png'] });
    expect(within(element, '.candidate', '.place').textContent).toContain('Reading gingham.png …');
  });
});

describe('a long list of reasons', () => {
  const [first] = needsABridge.reasons;
  const light = [0.15, 0.1, -0.05].map((weighs, i) => ({
    ...first!,
    weighs,
    says: `Lighter ${i}.`,
    inks: i === 2 ? ['A'] : ['B', 'b'],
  }));
  const comparison = { ...needsABridge, reasons: [...needsABridge.reasons, ...light] };

  it('folds the lighter ones behind one line, which opens', async () => {
    const element = await standAlone('qw-reasons', { comparison });
    const [fold] = [...element.shadowRoot!.querySelectorAll<HTMLButtonElement>('.fold button')];
    expect(fold?.textContent).toBe('3 smaller reasons');
    const lighter = within(element, '#lighter');
    expect(lighter.getBoundingClientRect().height).toBe(0);
    fold!.click();
    await drawn(element);
    expect(fold!.getAttribute('aria-expanded')).toBe('true');
    expect(lighter.getBoundingClientRect().height).toBeGreaterThan(0);
    expect(await axeTroubles()).toEqual([]);
  });

  it('counts those that speak of an ink that is pointed at while they are folded', async () => {
    const element = await standAlone('qw-reasons', { comparison, lit: ['b'] });
    expect(within(element, '.fold small').textContent).toBe('2 of them speak of this ink');
  });
});

describe('an opinion', () => {
  beforeEach(async () => {
    await import('../../components/study/qw-opinion.ts');
  });

  it('is taken back by pressing it again, and liking is kept apart from it', async () => {
    const element = await standAlone('qw-opinion', {
      opinion: { verdict: 'pulls-apart', likes: true },
      reading: 'pulls-apart',
    });
    const said = heard<{ opinion: object }>(element, 'qw-say');
    const [verdict, liking] = element.shadowRoot!.querySelectorAll('.answers');
    verdict!.querySelectorAll('button')[2]!.click();
    liking!.querySelectorAll('button')[1]!.click();
    expect(said).toEqual([{ opinion: { verdict: null } }, { opinion: { likes: false } }]);
    expect(within(element, '.found').textContent).toMatch(/agree/);
  });
});
