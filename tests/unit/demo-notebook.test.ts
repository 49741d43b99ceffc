import { describe, expect, it } from 'vitest';
import { demoLeaves, demoNotebook } from '../../src/demo/notebook.ts';
import { demoPlains } from '../../src/demo/plains.ts';
import { demoSheets } from '../../src/demo/sheets.ts';
import { nameOfHeld, otherSideOfHeld, ownedFrom, sideOfHeld } from '../../src/drawer/held.ts';
import type { Held } from '../../src/drawer/model.ts';
import { advise } from '../../src/harmony/advise.ts';
import type { Advised } from '../../src/harmony/model.ts';
import type { StudyLeaf } from '../../src/notebook/model.ts';
import type { Side } from '../../src/sheet/model.ts';
import { readSide } from '../../src/sheet/read-side.ts';
import { inkWord } from '../../src/sheet/words/side-words.ts';
import { expectComparison, expectSide } from '../support/study-shape.ts';

const { notebook, pictures } = demoNotebook(readSide);
const { drawer } = notebook;

function study(id: string): StudyLeaf {
  return notebook.leaves.find((leaf): leaf is StudyLeaf => leaf.kind === 'study' && leaf.id === id)!;
}

function judged(leaf: StudyLeaf, candidate: Held): Advised {
  const otherSide = otherSideOfHeld(drawer, candidate);
  return advise(sideOfHeld(drawer, leaf.anchor!)!, sideOfHeld(drawer, candidate)!, {
    distance: leaf.distance,
    names: { anchor: nameOfHeld(drawer, leaf.anchor!), candidate: nameOfHeld(drawer, candidate) },
    owned: ownedFrom(drawer, [leaf.anchor!.id, candidate.id]),
    ...(otherSide ? { otherSide } : {}),
  });
}

function reading(id: string, side: 'A' | 'B' = 'A'): Side {
  return sideOfHeld(drawer, { kind: 'sheet', id, side })!;
}

describe('the demo notebook', () => {
  it('shows one pair that holds together, one that needs a bridge and one that pulls apart, by the real engine', () => {
    const verdicts = ['bough-and-ledger', 'bough-and-hearts', 'pips-and-lanterns'].map((id) => {
      const leaf = study(id);
      return judged(leaf, leaf.candidates[leaf.shown]!).verdict;
    });
    expect(verdicts).toEqual(['holds-together', 'needs-a-bridge', 'pulls-apart']);
  });

  it('teaches with the hearts that two reds which nearly agree are what spoils it', () => {
    const leaf = study('bough-and-hearts');
    const [hearts, quilt] = leaf.candidates.map((candidate) => judged(leaf, candidate));
    expect(hearts!.reasons[0]!.kind).toBe('near miss');
    expect(hearts!.reasons.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['comes back', 'grounds agree']),
    );
    expect(quilt!.verdict).toBe('holds-together');
  });

  it('teaches with the ledger that a repeated colour and agreeing grounds hold two papers', () => {
    const leaf = study('bough-and-ledger');
    const kinds = judged(leaf, leaf.candidates[0]!)
      .reasons.filter(({ weighs }) => weighs > 0.3)
      .map(({ kind }) => kind);
    expect(kinds).toEqual(expect.arrayContaining(['comes back', 'grounds agree']));
  });

  it('asks first on one study, and has no opinion on any', () => {
    const studies = notebook.leaves.filter((leaf): leaf is StudyLeaf => leaf.kind === 'study');
    expect(studies.map(({ asksFirst }) => asksFirst)).toEqual([false, false, true]);
    for (const { opinions } of studies) expect(opinions).toEqual({});
  });

  it('gives comparisons of the promised shape for every study and candidate', () => {
    for (const leaf of notebook.leaves) {
      if (leaf.kind !== 'study') continue;
      for (const candidate of leaf.candidates) {
        const comparison = judged(leaf, candidate);
        expectSide(comparison.anchor, 'A');
        expectSide(comparison.candidate, 'a');
        expectComparison(comparison, comparison.anchor, comparison.candidate);
      }
    }
  });

  it('holds in its leaves only what is in its drawer', () => {
    const known = new Set(notebook.leaves.map(({ id }) => id));
    expect(known.size).toBe(notebook.leaves.length);
    for (const leaf of notebook.leaves) {
      if (leaf.kind === 'study')
        for (const held of [leaf.anchor!, ...leaf.candidates])
          expect(sideOfHeld(drawer, held)).not.toBeNull();
      if (leaf.kind === 'board') {
        expect(known).toContain(leaf.studyId);
        expect(sideOfHeld(drawer, leaf.candidate!)).not.toBeNull();
      }
    }
  });

  it('has a picture for every side, under the id that the side names', () => {
    const ids = drawer.sheets.flatMap(({ sides }) =>
      [sides.A, ...(sides.B ? [sides.B] : [])].map((kept) => kept.pictureId),
    );
    expect(pictures.map(({ id }) => id)).toEqual(ids);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { image } of pictures) expect([image.width, image.height]).toEqual([640, 640]);
  });

  it('reads each of its papers as it was drawn: the base that it stands on, and its inks', () => {
    const kinds = Object.fromEntries(drawer.sheets.map(({ id, sides }) => [id, sides.A.reading.base.kind]));
    expect(kinds).toMatchObject({
      'blossom-bough': 'cream',
      'press-ledger': 'cream',
      'minute-book': 'cream',
      'lantern-row': 'white',
      'bee-dots': 'white',
      'basket-chevron': 'kraft',
      'barn-door': 'kraft',
      'starling-night': 'dark',
    });
    const words = (side: Side): string[] => side.inks.map(inkWord);
    expect(words(reading('blossom-bough'))).toEqual([
      'coral',
      expect.stringMatching(/green$/),
      'mustard',
      expect.stringMatching(/brown$/),
    ]);
    expect(words(reading('blossom-bough', 'B'))).toEqual(['coral']);
    expect(words(reading('starling-night', 'B'))).toEqual(['navy']);
    expect(reading('ladder-stripe').print.repeatMm).toBeCloseTo(305 / 8, 0);
  });

  it('keeps plain things of several kinds, one of which takes any colour', () => {
    expect(new Set(demoPlains.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(4);
    expect(new Set(demoPlains.map(({ id }) => id)).size).toBe(demoPlains.length);
    expect(demoPlains.filter(({ takesColour }) => takesColour)).toHaveLength(1);
  });

  it('states weights that agree with the pounds they were sold by', () => {
    // g/m² to the pound: cover 2.704, text 1.480; from the basic sheet sizes (20 × 26 and 25 × 38 in, 500 sheets).
    const factor = { cover: 2.704, text: 1.48, bond: 3.76, index: 1.808 };
    const weighed = [...demoSheets, ...demoPlains].flatMap(({ weight }) =>
      weight?.lb && weight.grade ? [weight] : [],
    );
    expect(weighed.length).toBeGreaterThan(5);
    for (const { gsm, lb, grade } of weighed) expect(Math.abs(gsm - lb! * factor[grade!])).toBeLessThan(1);
  });

  it('opens on a study of two papers, and its last leaf says how to begin with her own', () => {
    expect(demoLeaves[0]).toMatchObject({ kind: 'study', asksFirst: false });
    const last = demoLeaves.at(-1);
    expect(last?.kind === 'note' && last.text).toMatch(/drop two photographs/);
  });
});
