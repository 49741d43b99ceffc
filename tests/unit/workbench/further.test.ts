import { describe, expect, it } from 'vitest';
import { readsAsNeutral } from '../../../src/colour/neutral.ts';
import { labFromOklch, oklchFromTuple } from '../../../src/colour/spaces.ts';
import { sideOfHeld } from '../../../src/drawer/held.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { colourIt } from '../../../src/harmony/further/colour-it.ts';
import { cellStates, judgeParts } from '../../../src/harmony/further/judge-parts.ts';
import type { Change } from '../../../src/harmony/model.ts';
import type { Places } from '../../../src/sheet/model.ts';
import { inkFromHex, sideOfPlain } from '../../../src/sheet/plain.ts';
import { colourablesIn, findColourIt } from '../../../src/workbench/colour-it.ts';
import { findParts } from '../../../src/workbench/parts.ts';
import { usualNeutrals } from '../../../src/workbench/usual-plains.ts';
import { noteOfSupposed, supposedInk, supposeOn } from '../../../src/workbench/what-if.ts';
import { bunting, dots, ledger, sampleNotebook } from '../notebook/sample-notebook.ts';

const { drawer } = sampleNotebook();
const comparison = compare(sideOfHeld(drawer, bunting)!, sideOfHeld(drawer, ledger)!);
const pair = { anchor: bunting, candidate: ledger };

describe('what if', () => {
  it('compares again with the change made, names what is supposed, and leaves the rest as it is', () => {
    const same = supposeOn(drawer, pair, comparison, []);
    expect(same.comparison.links).toEqual(comparison.links);
    const cut = supposeOn(drawer, pair, comparison, [{ kind: 'trim', of: 'candidate', ink: 'c' }]);
    expect(cut.comparison.candidate.inks).toHaveLength(comparison.candidate.inks.length - 1);
    expect(cut.clauses).toHaveLength(1);
    expect(cut.question).toMatch(/^What if .+ \(c\) is cut away\?$/);
    expect(noteOfSupposed('n', comparison, cut, null)).not.toHaveProperty('picture');
    expect(noteOfSupposed('n', comparison, cut, 'picture-1')).toMatchObject({
      id: 'n',
      kind: 'note',
      title: cut.question,
      picture: { pictureId: 'picture-1', alt: expect.stringMatching(/as they are.*changed/) },
    });
  });

  it('speaks of the paper that lies there once one is exchanged, and starts from its inks', () => {
    const side = sideOfHeld(drawer, dots)!;
    const exchange: Change = { kind: 'replace', of: 'candidate', side };
    const supposed = supposeOn(drawer, pair, comparison, [exchange]);
    expect(supposed.papers).toEqual({ anchor: bunting, candidate: dots });
    expect(supposed.clauses).toEqual(['Dots lies in place of Ledger']);
    expect(supposed.question).toBe('What if Dots lies in place of Ledger?');
    expect(supposed.start.candidate.inks.map(({ hex }) => hex)).toEqual(side.inks.map(({ hex }) => hex));
  });

  it('names a colour that is set by hand, and fits it into the screen', () => {
    expect(supposedInk(0.6, 0, 0).name).toMatch(/gray|grey/);
    expect(supposedInk(0.6, 0.4, 140).hex).toMatch(/^#[0-9a-f]{6}$/);
  });
});

describe('cardstocks that most have', () => {
  it('are neutrals that the reading calls by their names', () => {
    const kinds = usualNeutrals().map((plain) => [plain.name, sideOfPlain(plain).base.kind]);
    expect(kinds).toEqual([
      ['White cardstock', 'white'],
      ['Cream cardstock', 'cream'],
      ['Kraft cardstock', 'kraft'],
      ['Black cardstock', 'dark'],
    ]);
    for (const { ink } of usualNeutrals())
      expect(readsAsNeutral(labFromOklch(oklchFromTuple(ink.oklch)))).toBe(true);
  });
});

describe('which parts', () => {
  it('shades the candidate as the engine does, and veils what is alone', () => {
    const places: Places = { width: 2, height: 2, labels: Uint8Array.from([0, 1, 2, 255]) };
    const { shading, veil } = findParts(drawer, pair, comparison, places);
    const engine = judgeParts(comparison.anchor, { side: comparison.candidate, places });
    expect([...shading.cells]).toEqual([...engine.cells]);
    [...shading.cells].forEach((cell, at) => {
      expect(veil[at] === 0).toBe(cell === cellStates.holds);
    });
  });
});

describe('colour it yourself', () => {
  const bare = {
    id: 'bare',
    name: 'Bare letters',
    kind: 'letters',
    ink: inkFromHex('#dcc39a'),
    takesColour: true,
  } as const;

  it('offers what takes any colour, and white cardstock always', () => {
    expect(colourablesIn(drawer).map(({ name }) => name)).toEqual(['White cardstock']);
    const more = { ...drawer, plains: [...drawer.plains, bare] };
    expect(colourablesIn(more).map(({ name }) => name)).toEqual(['Bare letters', 'White cardstock']);
  });

  it('asks the engine with the reader’s plains and the ground that is coloured', () => {
    const [white] = colourablesIn(drawer);
    expect(findColourIt(drawer, comparison, white!)).toEqual(
      colourIt(comparison.anchor, comparison.candidate, { plains: drawer.plains, base: white!.base }),
    );
  });
});
