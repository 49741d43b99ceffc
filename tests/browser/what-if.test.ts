import { describe, expect, it } from 'vitest';
import '../../components/study/qw-further.ts';
import '../../components/study/qw-study.ts';
import '../../components/study/tried/qw-what-if.ts';
import { type WhatIfView, withChange } from '../../components/study/tried/what-if-view.ts';
import type { Change } from '../../src/harmony/model.ts';
import type { Ink } from '../../src/sheet/model.ts';
import { anchorView, candidateView, needsABridge, study } from '../support/hand-made.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const navy = needsABridge.anchor.inks[0]!;
const kraft = { ...navy, id: 'A', trade: 'kraft', hex: '#c8a878' };
const view: WhatIfView = {
  from: needsABridge,
  names: { anchor: 'Regatta bunting', candidate: 'Quayside ledger' },
  plains: [{ id: 'k', name: 'kraft cardstock', ink: kraft, neutral: true }],
  changes: [],
  clauses: [],
  steps: 0,
};
const inkOf = (l: number, c: number, h: number): Ink => ({ ...navy, oklch: [l, c, h] });

interface Supposed {
  readonly changes: readonly Change[];
  readonly settled: boolean;
}

async function knobs(way: string): Promise<{ element: HTMLElement; inside: HTMLElement; told: Supposed[] }> {
  const element = await standAlone('qw-what-if', { view, inkOf });
  const told = heard<Supposed>(element, 'qw-suppose');
  const inside = within(element, 'qw-what-if-knobs');
  within<HTMLInputElement>(inside, 'qw-choice', `input[value="${way}"]`).click();
  await drawn(element);
  return { element, inside, told };
}

async function pick(inside: HTMLElement, value: string): Promise<void> {
  for (const group of inside.shadowRoot!.querySelectorAll('qw-pick-ink')) {
    const input = group.shadowRoot!.querySelector<HTMLInputElement>(`input[value="${value}"]`);
    if (!input) continue;
    input.click();
    await drawn(inside);
    return;
  }
  throw new Error(`Nothing to pick is called ${value}`);
}

describe('what if', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds, in %s', async (look) => {
    const some = {
      changes: [{ kind: 'strip', ink: kraft } as const],
      clauses: ['a strip of kraft'],
      steps: 1,
    };
    await standAlone('qw-what-if', { view: { ...view, ...some }, inkOf }, look);
    expect(await axeTroubles()).toEqual([]);
  });

  it('covers an ink with a plain', async () => {
    const { inside, told } = await knobs('cover');
    await pick(inside, 'c');
    await pick(inside, 'plain k');
    expect(told).toEqual([
      { changes: [{ kind: 'cover', of: 'candidate', ink: 'c', with: kraft }], settled: true },
    ]);
  });

  it('cuts an ink down while the line is dragged, and settles when it is let go', async () => {
    const { inside, told } = await knobs('trim');
    await pick(inside, 'c');
    const line = within<HTMLInputElement>(inside, 'qw-range', 'input');
    for (const [value, kind] of [
      ['3', 'input'],
      ['1', 'input'],
      ['1', 'change'],
    ] as const) {
      line.value = value;
      line.dispatchEvent(new Event(kind));
    }
    expect(told.map(({ settled }) => settled)).toEqual([false, false, true]);
    expect(told.at(-1)!.changes).toEqual([{ kind: 'trim', of: 'candidate', ink: 'c', toShare: 0.01 }]);
  });

  it('recolours an ink of either paper, base or not, along lightness, chroma and hue', async () => {
    const { inside, told } = await knobs('recolour');
    await pick(inside, 'A');
    const hue = inside.shadowRoot!.querySelectorAll('qw-range')[2]!;
    const line = hue.shadowRoot!.querySelector('input')!;
    line.value = '200';
    line.dispatchEvent(new Event('change'));
    const [change] = told.at(-1)!.changes;
    expect(change).toMatchObject({ kind: 'recolour', of: 'anchor', ink: 'A' });
    expect(change?.kind === 'recolour' && change.to.oklch).toEqual([0.933, 0.037, 200]);
  });

  it('lays on a plain and puts a strip between', async () => {
    const laid = await knobs('add');
    await pick(laid.inside, 'k');
    expect(laid.told).toEqual([
      { changes: [{ kind: 'add', of: 'candidate', ink: kraft, share: 0.05 }], settled: true },
    ]);
    const strip = await knobs('strip');
    await pick(strip.inside, 'k');
    expect(strip.told).toEqual([{ changes: [{ kind: 'strip', ink: kraft }], settled: true }]);
  });

  it('leaves one change out, steps back, and leaves all as it is', async () => {
    const changes: Change[] = [
      { kind: 'trim', of: 'candidate', ink: 'c' },
      { kind: 'strip', ink: kraft },
    ];
    const clauses = ['raspberry (c) is cut away', 'a strip of kraft lies between them'];
    const element = await standAlone('qw-what-if', {
      view: { ...view, changes, clauses, steps: 2 },
      inkOf,
    });
    const told = heard<Supposed>(element, 'qw-suppose');
    within(element, 'li button').click();
    expect(told).toEqual([{ changes: [changes[1]], settled: true }]);
    for (const [name, place] of [
      ['qw-step-back', 1],
      ['qw-leave-it', 2],
    ] as const) {
      const asked = heard(element, name);
      within(element, `.ways button:nth-child(${place})`).click();
      expect(asked).toHaveLength(1);
    }
  });

  it('replaces a change while the same line is dragged, and adds another for another ink', () => {
    const first: Change = { kind: 'trim', of: 'candidate', ink: 'c', toShare: 0.03 };
    const second: Change = { ...first, toShare: 0.01 };
    const other: Change = { ...first, ink: 'b' };
    expect(withChange([first], second)).toEqual([second]);
    expect(withChange([first], other)).toEqual([first, other]);
    expect(withChange([first], { ...second, of: 'anchor' })).toHaveLength(2);
  });
});

describe('a study of which something is tried', () => {
  it('stays as it is, shows what is tried below the remedies, and draws its charts of that', async () => {
    const asIf = { anchor: anchorView, candidates: [{ ...candidateView, name: 'Quay ledger, cut' }] };
    const pair = { leaf: study, anchor: anchorView, candidates: [candidateView], margin: [], asIf };
    const element = await standAlone('qw-study', pair);
    expect(element.shadowRoot!.querySelector('qw-remedies ~ slot[name=tried]')).not.toBeNull();
    expect(within(element, 'qw-verdict', 'h3').textContent).toBe('Needs a bridge.');
    const named = (shows: string) =>
      within<HTMLElement & { candidates: { name: string }[] }>(element, `[shows=${shows}]`).candidates[0]
        ?.name;
    expect([named('papers'), named('charts')]).toEqual(['Quay ledger', 'Quay ledger, cut']);
  });
});

describe('ways to look further', () => {
  it('are named with what each is for, and have nothing that axe finds', async () => {
    const ways = [{ way: 'what-if', label: 'What if?', about: 'cover, cut, recolour' }];
    const element = await standAlone('qw-further', { ways, open: ['what-if'] });
    const asked = heard(element, 'qw-look-further');
    within(element, 'button').click();
    expect(asked).toEqual([{ way: 'what-if' }]);
    expect(await axeTroubles()).toEqual([]);
  });
});
