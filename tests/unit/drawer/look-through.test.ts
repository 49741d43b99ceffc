import { describe, expect, it } from 'vitest';
import { heldKey, sideOfHeld } from '../../../src/drawer/held.ts';
import { filterChoices, matchesInDrawer } from '../../../src/drawer/look-through.ts';
import { compare } from '../../../src/harmony/compare.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { bunting, dots, ledger, sampleNotebook } from '../notebook/sample-notebook.ts';

const notebook = sampleNotebook();
const { drawer } = notebook;
const study = notebook.leaves.find((leaf): leaf is StudyLeaf => leaf.kind === 'study')!;
const anchorSide = sideOfHeld(drawer, bunting)!;

describe('the drawer held against an anchor', () => {
  it('says for every place what the comparison of that pair says, and leaves the anchor out', () => {
    const { places, all } = matchesInDrawer(drawer, study, { by: 'anchor' }, {}, 24);
    expect(all).toBe(places.length);
    expect(places.map(({ held }) => heldKey(held))).not.toContain(heldKey(bunting));
    for (const { held, verdict, says } of places) {
      const alone = compare(anchorSide, sideOfHeld(drawer, held)!, { distance: study.distance });
      expect([verdict, says]).toEqual([alone.verdict, alone.decision.summary]);
    }
  });

  it('puts in words only as many as are shown, and counts them all', () => {
    const { places, all } = matchesInDrawer(drawer, study, { by: 'anchor' }, {}, 2);
    expect(places).toHaveLength(2);
    expect(all).toBeGreaterThan(2);
  });

  it('is filtered by what a paper is and by how many there are', () => {
    const kinds = (filter: object) => [
      ...new Set(
        matchesInDrawer(drawer, study, { by: 'anchor' }, filter, 24).places.map(({ held }) => held.kind),
      ),
    ];
    expect(kinds({ kinds: ['plain'] })).toEqual(['plain']);
    // There is one of each sheet in the sample; a plain is not counted.
    expect(kinds({ leastCount: 2 })).toEqual(['plain']);
    expect(kinds({ leastCount: 1 })).toContain('sheet');
  });

  it('finds what repeats an ink, nearest first, with how much there is of it and how close it comes', () => {
    const ink = sideOfHeld(drawer, ledger)!.inks[0]!;
    const { places } = matchesInDrawer(drawer, study, { by: 'ink', ink }, {}, 24);
    expect(places.map(({ held }) => heldKey(held))).toEqual(
      expect.arrayContaining([heldKey(ledger), heldKey(dots)]),
    );
    expect(places[0]!.says).toMatch(/28 % of it, repeats the ink \(ΔE₀₀ 0\.0\)\.$/);
    expect(places[0]!.verdict).toBeNull();
  });

  it('finds what could stand between two papers, and how it holds with each', () => {
    const bridges = (candidates: StudyLeaf['candidates']) =>
      matchesInDrawer(drawer, { ...study, candidates }, { by: 'bridge', candidate: ledger }, {}, 24).places;
    const places = bridges([ledger]);
    for (const { held, verdict, toCandidate, says, of } of places) {
      expect([heldKey(bunting), heldKey(ledger)]).not.toContain(heldKey(held));
      expect([verdict, toCandidate]).toEqual(['holds-together', 'holds-together']);
      // Each ink by the letter that it has in the study: capitals of the anchor, small ones of the candidate.
      const [one, other] = says.split(' on one side, ');
      if (other === undefined) continue;
      const known = (side: Side) => [side.base, ...side.inks].map(({ id }) => id);
      for (const [part, ids] of [
        [one!, known(of!.anchor)],
        [other, known(of!.candidate)],
      ] as const) {
        const named = [...part.matchAll(/\(([A-Za-z]\d*)\)/g)].map((match) => match[1]);
        expect(named.length).toBeGreaterThan(0);
        expect(ids).toEqual(expect.arrayContaining(named));
      }
    }
    expect(places.length).toBeGreaterThan(0);
    // What lies in the study already is not offered again.
    const found = places.map(({ held }) => held);
    expect(bridges([ledger, found[0]!]).map(({ held }) => held)).toEqual(found.slice(1));
  });

  it('has nothing to rank without an anchor', () => {
    expect(matchesInDrawer(drawer, { ...study, anchor: null }, { by: 'anchor' }, {}, 24)).toEqual({
      places: [],
      all: 0,
    });
  });

  it('offers only what something in the drawer has', () => {
    const { bases, mostCount } = filterChoices(drawer);
    expect(bases).toEqual([...new Set(bases)].sort());
    expect(bases).toContain('cream');
    expect(mostCount).toBe(1);
  });
});
