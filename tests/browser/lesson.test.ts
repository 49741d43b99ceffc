import { describe, expect, it } from 'vitest';
import type { ExerciseView } from '../../components/lesson/exercise-view.ts';
import '../../components/lesson/qw-differences.ts';
import '../../components/notebook/qw-exercise-leaf.ts';
import { newLeaf } from '../../components/shell/open/leaf-kinds.ts';
import type { Held } from '../../src/drawer/model.ts';
import { emptyNotebook, emptyStudy } from '../../src/notebook/empty.ts';
import type { ExerciseLeaf } from '../../src/notebook/model.ts';
import { questions } from '../../src/notebook/words/exercise.ts';
import { anchorView, candidateView, needsABridge } from '../support/hand-made.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const leaf: ExerciseLeaf = {
  id: 'x',
  kind: 'exercise',
  title: 'Find the near miss',
  text: '',
  studyId: 's',
  answered: null,
  ask: 'near miss',
};
const view: ExerciseView = {
  leaf,
  ask: 'near miss',
  asks: 'Which two?',
  questions: [
    { ask: 'near miss', title: 'Find the near miss' },
    { ask: 'verdict', title: 'Do they belong together?' },
  ],
  pairs: [{ key: 'p', name: 'Regatta bunting and Quayside ledger', on: true }],
  anchor: anchorView,
  candidate: candidateView,
  comparison: needsABridge,
  answered: null,
  pointed: null,
  marked: null,
};
const links = needsABridge.links.filter(({ kind }) => kind === 'near miss');
const marked = { right: true, says: 'That is it.', links };

describe('an exercise', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds before and after, in %s', async (look) => {
    await standAlone('qw-exercise-leaf', { leaf, view }, look);
    expect(await axeTroubles()).toEqual([]);
    await standAlone('qw-exercise-leaf', { leaf, view: { ...view, pointed: ['C', 'c'], marked } }, look);
    expect(await axeTroubles()).toEqual([]);
  });

  it('keeps the answer back until she has pointed at one ink of each paper', async () => {
    const element = await standAlone('qw-exercise-leaf', { leaf, view });
    expect(element.shadowRoot!.querySelector('qw-wheel, .links')).toBeNull();
    const told = heard<{ inks: string[] }>(element, 'qw-point-at-inks');
    const these = within<HTMLButtonElement>(element, '.slip.main');
    expect(these.disabled).toBe(true);
    const [anchor, candidate] = element.shadowRoot!.querySelectorAll('qw-pick-ink');
    anchor!.shadowRoot!.querySelector<HTMLInputElement>('input[value="C"]')!.click();
    candidate!.shadowRoot!.querySelector<HTMLInputElement>('input[value="c"]')!.click();
    await drawn(element);
    these.click();
    expect(told).toEqual([{ inks: ['C', 'c'] }]);
  });

  it('picks the ink that a paper is pressed on', async () => {
    const element = await standAlone('qw-exercise-leaf', { leaf, view });
    const paper = within(element, '.anchor qw-paper');
    paper.dispatchEvent(
      new CustomEvent('qw-point', { detail: { inks: ['C'] }, bubbles: true, composed: true }),
    );
    paper.click();
    await drawn(element);
    expect(within<HTMLElement & { value: string }>(element, 'qw-pick-ink').value).toBe('C');
  });

  it('says what was right with the engine’s numbers, and can be tried again', async () => {
    const element = await standAlone('qw-exercise-leaf', {
      leaf,
      view: { ...view, pointed: ['C', 'c'], marked },
    });
    expect(within(element, '.links').textContent).toMatch(/near miss.*17\.9/);
    const told = heard(element, 'qw-point-at-inks');
    within(element, '[aria-label="The reading’s answer"] button').click();
    expect(told).toEqual([{ inks: null }]);
  });

  it('asks for a verdict where that is the question', async () => {
    const element = await standAlone('qw-exercise-leaf', { leaf, view: { ...view, ask: 'verdict' } });
    const told = heard(element, 'qw-answer');
    within(element, '.answers button:nth-child(2)').click();
    expect(told).toEqual([{ verdict: 'needs-a-bridge' }]);
  });

  it('says of which pair it asks, under the question while it is not answered', async () => {
    const element = await standAlone('qw-exercise-leaf', { leaf, view });
    const asked = heard(element, 'qw-set-pair');
    const pair = within<HTMLSelectElement>(element, '.head .pair select');
    expect(pair.selectedOptions[0]!.textContent).toBe('Regatta bunting and Quayside ledger');
    pair.dispatchEvent(new Event('change'));
    expect(asked).toEqual([{ key: 'p' }]);
    expect(element.shadowRoot!.querySelectorAll('.pair')).toHaveLength(1);
  });

  it('says so where its study has no pair any more', async () => {
    const element = await standAlone('qw-exercise-leaf', { leaf, view: null });
    expect(within(element, '.asks').textContent).toContain('no pair any more');
    expect(await axeTroubles()).toEqual([]);
  });
});

describe('a new exercise', () => {
  const paper = (id: string): Held => ({ kind: 'plain', id });
  const study = (id: string, candidates: readonly string[]) => ({
    ...emptyStudy(id, id),
    anchor: paper('anchor'),
    candidates: candidates.map(paper),
  });
  const notebook = {
    ...emptyNotebook('n'),
    leaves: [study('first', ['a', 'b']), study('second', ['c']), study('third', ['a', 'd'])],
  };
  const plain = { ...needsABridge, findings: [] };
  const having =
    (ids: readonly string[]) =>
    (_: Held, { id }: Held) =>
      ids.includes(id) ? needsABridge : plain;

  it.each([
    ['the pair that is shown', ['a', 'b', 'c', 'd'], 'third', 'a', 'near miss'],
    ['another pair of its study', ['b', 'c', 'd'], 'third', 'd', 'near miss'],
    ['a pair of another study', ['c'], 'second', 'c', 'near miss'],
    ['the verdict where no pair has a near miss', [], 'third', 'a', 'verdict'],
  ] as const)('asks of %s', (_, have, studyId, candidate, ask) => {
    const made = newLeaf('exercise', 'x', { notebook, openId: 'third', compare: having(have) });
    expect(made).toMatchObject({ studyId, candidate: paper(candidate), ask });
    expect(made!.title).toBe(questions[ask].title);
  });
});

describe('the page of differences', () => {
  const one = {
    studyId: 's',
    pair: 'Regatta bunting and Quayside ledger',
    hers: 'holds-together',
    likes: true,
    comparison: needsABridge,
    reason: needsABridge.reasons[0],
  };

  it.each(['light', 'dark'] as const)('has nothing that axe finds, in %s', async (look) => {
    await standAlone('qw-differences', { said: 3, agreed: 2, differ: [one], patterns: ['A habit.'] }, look);
    expect(await axeTroubles()).toEqual([]);
  });

  it('sets her verdict beside the reading’s, with the reason and its source', async () => {
    const element = await standAlone('qw-differences', { said: 3, agreed: 2, differ: [one], patterns: [] });
    expect(within(element, '.two').textContent).toMatch(
      /you: holds together, and you like it.*the reading: needs a bridge/s,
    );
    expect(within(element, 'ol .margin').textContent).toContain('by hand');
    expect(within<HTMLAnchorElement>(element, 'h3 a').getAttribute('href')).toBe('#s');
  });

  it.each([
    [1, 1, 'one pair, and agree with the reading.'],
    [1, 0, 'one pair; the reading says otherwise.'],
    [3, 3, '3 pairs, and agree with the reading each time.'],
    [3, 0, '3 pairs; the reading says otherwise each time.'],
    [3, 1, '3 pairs; of one of them you and the reading say the same.'],
    [5, 3, '5 pairs; of 3 of them you and the reading say the same.'],
  ])('counts %i said and %i agreed in words that agree', async (said, agreed, words) => {
    const element = await standAlone('qw-differences', { said, agreed });
    expect(within(element, '.lede').textContent).toBe(`You have said your verdict of ${words}`);
  });

  it('tells a newcomer what it is for', async () => {
    const element = await standAlone('qw-differences', {});
    expect(within(element, '.lede').textContent).toContain('Say your own verdict');
  });
});
