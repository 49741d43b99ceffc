import { describe, expect, it } from 'vitest';
import { advise } from '../../../src/harmony/advise.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { findBridge } from '../../../src/harmony/further/find-that-answers.ts';
import { judgeParts } from '../../../src/harmony/further/judge-parts.ts';
import type { CompareOptions, MendOptions, Owned } from '../../../src/harmony/model.ts';
import { whatIf } from '../../../src/harmony/remedies/what-if.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';
import { bladeCaution } from '../../../src/harmony/words/remedy-sentences.ts';
import type { Places, Side } from '../../../src/sheet/model.ts';
import { plainOf, sideOfPlain } from '../../../src/sheet/plain.ts';
import { handMade, looks } from '../../support/judging/families.ts';
import { handInk } from '../../support/sides.ts';

/** Two loose, many-coloured prints that quarrel, a calm one that goes with both, and what a drawer holds. All ours. */
const hearts = handMade(
  [
    ['#f3e8ce', 0.6],
    ['#db5a62', 0.2],
    ['#6c9a4f', 0.2],
  ],
  looks.loose,
);
const lanterns = handMade(
  [
    ['#f1f5fa', 0.6],
    ['#6f45b5', 0.2],
    ['#b4dc3a', 0.2],
  ],
  looks.loose,
);
const calm = handMade([['#c19a6c', 1]], looks.still);
const owned: Owned = {
  plains: [
    plainOf({ name: 'grey cardstock', kind: 'cardstock', hex: '#9a9a98' }),
    { ...plainOf({ name: 'bare letters', kind: 'letters', hex: '#f0ede4' }), takesColour: true },
  ],
  sheets: [{ id: 'k', name: 'Quiet kraft', sides: [calm, calm] }],
};
const mended = (options: CompareOptions & MendOptions = {}) => advise(hearts, lanterns, options);
const worse = (one: string, other: string) =>
  verdictOrder.indexOf(one as never) - verdictOrder.indexOf(other as never);
const drawn = (rows: readonly string[]): Places => ({
  width: rows[0]!.length,
  height: rows.length,
  labels: Uint8Array.from(rows.join(''), Number),
});

describe('a pair that quarrels', () => {
  it('is helped by a strip between, and is told what that answers', () => {
    const found = mended({ distance: 'touching' });
    expect(found.verdict).not.toBe('holds-together');
    const strip = found.remedies.find(({ kind }) => kind === 'buffer')!;
    expect(strip.says).toContain('where the two meet');
    expect(worse(strip.verdictAfter, found.verdict)).toBeLessThanOrEqual(0);
    expect(strip.lifts!.length).toBeGreaterThan(0);
    expect(strip.says).toContain('Takes away: ');
    const parted = whatIf(found.anchor, found.candidate, [
      { kind: 'strip', ink: handInk('#c19a6c', 'k', 1) },
    ]);
    expect(parted.distance).toBe('apart');
    expect(parted.standing!.balance).toBeGreaterThan(found.standing!.balance);
  });

  it('is mended with what is owned: its neutral, its other sheets by their side, the other side to turn', () => {
    const { remedies, verdict } = mended({ owned, otherSide: calm, names: { candidate: 'the lanterns' } });
    expect(verdict).not.toBe('holds-together');
    const titles = remedies.map(({ title }) => title);
    expect(titles[0]).toBe('Turn the lanterns over');
    expect(titles.join()).toContain('grey cardstock');
    expect(titles.join()).not.toContain('bare letters');
    expect(titles.filter((title) => title.startsWith('Take'))).toEqual([
      'Take side A of Quiet kraft instead',
    ]);
    const swap = remedies.at(-1)!;
    expect(swap.kind).toBe('swap');
    expect(swap.says).not.toContain('drawer');
    // A knife is warned of where one is asked for, and only there.
    for (const { kind, caution } of remedies)
      if (kind === 'turn' || kind === 'swap') expect(caution).toBeUndefined();
    expect(remedies.find(({ title }) => title.includes('between'))?.caution).toBe(bladeCaution);
  });

  it('has a colour cut away only where enough of the sheet is known to be without it', () => {
    const trims = (places?: Places) =>
      mended(places ? { places: { candidate: places } } : {}).remedies.flatMap(({ changes }) =>
        changes!.filter(({ kind }) => kind === 'trim'),
      );
    expect(trims()).toEqual([]);
    expect(trims(drawn(['12121212', '21212121', '12121212', '21212121', '12121212', '21212121']))).toEqual(
      [],
    );
    const ideas = trims(drawn(['00001122', '00001122', '00001122', '00001122']));
    for (const one of ideas) expect(one).toMatchObject({ of: 'candidate' });
  });

  it('never has all that is printed covered or cut away', () => {
    for (const { changes } of mended({ owned }).remedies)
      for (const side of ['anchor', 'candidate'] as const) {
        const gone = changes!.filter(
          (one) => (one.kind === 'cover' || one.kind === 'trim') && one.of === side,
        );
        expect(gone.length).toBeLessThan(2);
      }
  });

  it('is as it was where a change is left out, and another where it is made', () => {
    const found = mended();
    expect(whatIf(found.anchor, found.candidate, []).verdict).toBe(found.verdict);
    const trimmed = whatIf(found.anchor, found.candidate, [{ kind: 'trim', of: 'candidate', ink: 'b' }]);
    expect(trimmed.candidate.inks).toHaveLength(1);
    // What is left keeps its colour, and an eye sees less contrast of it.
    expect(trimmed.candidate.seen!.colour).toBeLessThan(found.candidate.seen!.colour);
  });
});

describe('what could stand between two', () => {
  it('is what holds with both', () => {
    const plain = sideOfPlain(plainOf({ name: 'kraft', kind: 'cardstock', hex: '#c19a6c' }));
    const found = findBridge(hearts, lanterns, [lanterns, plain], ['Lanterns', 'kraft']);
    expect(found.map(({ index }) => index)).toEqual([1]);
    expect(found[0]!.says).toBe('Kraft: quiet, a rest between the two.');
    expect(found[0]).toMatchObject({ toAnchor: 'holds-together', toCandidate: 'holds-together' });
  });
});

describe('the parts of a sheet', () => {
  it('are judged by what lies in them, by family', () => {
    const side: Side = lanterns;
    const places = drawn(['111000', '111000', '111000', '222000', '222000', '222000']);
    const { squares, cells } = judgeParts(hearts, { side, places }, { across: 2 });
    expect(squares).toHaveLength(4);
    expect(cells).toHaveLength(36);
    // Only its ground lies in the squares on the right: a plain white there quarrels with nothing.
    for (const at of [1, 3]) expect(squares[at]!.alone).toEqual([]);
    expect(compare(hearts, lanterns).verdict).not.toBe('holds-together');
  });
});
