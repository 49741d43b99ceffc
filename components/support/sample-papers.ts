import { oklchFromHex, tupleFromOklch } from '../../src/colour/spaces.ts';
import type { NamedSide } from '../../src/drawing/model.ts';
import type { Advised, FamilySide, Link } from '../../src/harmony/model.ts';
import type { Base, Ink, Side } from '../../src/sheet/model.ts';

/** Hand-made values for the page that shows each element alone, and for the elements' tests. Nothing is computed here. */

type Row = readonly [hex: string, trade: string, name: string, share: number];

export const bunting: NamedSide = {
  name: 'Regatta bunting',
  side: side('A', 'cream', [
    ['#f4e8cd', 'cream', 'pale yellow', 0.7],
    ['#1f3a5f', 'navy', 'dark blue', 0.1],
    ['#e2725b', 'coral', 'moderate reddish orange', 0.09],
    ['#62bfc1', 'aqua', 'light bluish green', 0.06],
    ['#e8b23a', 'mustard', 'strong orange yellow', 0.03],
    ['#f6f3ec', 'off-white', 'yellowish white', 0.02],
  ]),
};

export const ledger: NamedSide = {
  name: 'Quayside ledger',
  side: side('a', 'cream', [
    ['#f1e4c6', 'cream', 'pale yellow', 0.64],
    ['#66bcc4', 'aqua', 'light greenish blue', 0.28],
    ['#c23b4e', 'raspberry', 'strong red', 0.04],
    ['#22395a', 'navy', 'dark blue', 0.02],
    ['#8f8f8c', 'grey', 'medium gray', 0.02],
  ]),
};

export const pebble: NamedSide = {
  name: 'Pebble dot',
  side: side('a', 'kraft', [
    ['#c8a878', 'kraft', 'light yellowish brown', 0.78],
    ['#f7f4ee', 'white', 'white', 0.14],
    ['#1f3a5f', 'navy', 'dark blue', 0.08],
  ]),
};

export const dahlia: NamedSide = {
  name: 'Dahlia',
  side: side('a', 'white', [
    ['#fbfbfa', 'white', 'white', 0.38],
    ['#8b2f8f', 'plum', 'strong purple', 0.22],
    ['#d64f8e', 'pink', 'strong purplish red', 0.2],
    ['#7fa83c', 'lime', 'strong yellow green', 0.12],
    ['#f0c95a', 'yellow', 'brilliant yellow', 0.08],
  ]),
};

export const links: readonly Link[] = [
  link('repeat', 'A', 'a', 1.3, null),
  link('repeat', 'B', 'd', 1.2, 1),
  link('repeat', 'D', 'b', 2.7, 11),
  link('near miss', 'C', 'c', 17.9, 16),
  { ...link('opposite', 'C', 'b', 52.4, 170), wheels: ['eye', 'painter'] },
];

export const comparison: Advised = {
  anchor: eachAlone(bunting.side),
  candidate: eachAlone(ledger.side),
  distance: 'apart',
  strip: false,
  findings: [],
  names: { anchor: bunting.name, candidate: ledger.name },
  verdict: 'needs-a-bridge',
  decision: {
    rule: 'One near miss that nothing answers, and more than one tie.',
    turnedBy: [0],
    summary: 'Cream, navy and aqua tie them. The raspberry dots are what the eye trips over.',
  },
  links,
  reasons: [
    reason(
      'near miss',
      -0.62,
      'Coral (C) and raspberry (c) are a near miss: too far apart to be the same red, too close to be a choice. Side by side they will look like a mistake.',
      ['C', 'c'],
      'ΔE₀₀ 17.9 · hue 16°',
      'Moon & Spencer 1944',
    ),
    reason(
      'repeat',
      0.55,
      'The aqua repeats: (D) in the pennants, (b) in the grid, over a quarter of that sheet. It will carry the page.',
      ['D', 'b'],
      'ΔE₀₀ 2.7 · apart',
      'ISO/CIE 11664-6',
    ),
    reason(
      'grounds agree',
      0.4,
      'Both are printed on cream (A) (a). Neither will make the other look dirty.',
      ['A', 'a'],
      'Δb* 1.6 · ΔE₀₀ 1.3',
      'common practice',
    ),
    reason(
      'repeat',
      0.3,
      'Navy is in both, (B) and (d): little of it here, but the darkest thing on either sheet.',
      ['B', 'd'],
      'ΔE₀₀ 1.2 · 10 and 2 %',
      'ISO/CIE 11664-6',
    ),
  ],
  remedies: [
    {
      kind: 'turn',
      title: 'Turn the ledger over',
      says: 'Side B is a navy pinstripe on the same cream. No raspberry, and the stripe is the calm one of the pair.',
      inks: ['c'],
      verdictAfter: 'holds-together',
      cost: 'no cutting',
      effort: 0,
    },
    {
      kind: 'buffer',
      title: 'Put kraft between',
      says: 'A 10 mm strip of kraft cardstock where they meet, so that coral and raspberry never touch.',
      inks: ['C', 'c'],
      verdictAfter: 'holds-together',
      cost: 'one cut',
      effort: 1,
    },
    {
      kind: 'cover',
      title: 'Cover the raspberry',
      says: 'Dots punched from plain navy cardstock, over those that show once the photo is down.',
      inks: ['c', 'd'],
      verdictAfter: 'holds-together',
      cost: 'a dozen punches',
      effort: 12,
    },
  ],
};

function side(first: 'A' | 'a', kind: Base['kind'], rows: readonly Row[]): Side {
  const [base, ...inks] = rows.map((row, i) => ink(String.fromCharCode(first.charCodeAt(0) + i), row));
  return {
    base: { ...(base as Ink), kind, printed: false },
    inks,
    print: { busyness: 0.3, repeatMm: 76, scale: 'medium' },
    light: { known: true, note: 'Read with a white card in the picture.' },
  };
}

function ink(id: string, [hex, trade, name, share]: Row): Ink {
  return { id, hex, oklch: tupleFromOklch(oklchFromHex(hex)), name, trade, share, accent: share < 0.05 };
}

function link(
  kind: Link['kind'],
  anchorInk: string,
  candidateInk: string,
  deltaE00: number,
  hueDeg: number | null,
): Link {
  return { kind, anchorInk, candidateInk, deltaE00, hueDeg, dL: 0, dC: 0, hueSteps: null, dV: 0 };
}

function reason(
  kind: Advised['reasons'][number]['kind'],
  weighs: number,
  says: string,
  inks: readonly string[],
  figure: string,
  source: string,
): Advised['reasons'][number] {
  return { kind, weighs, says, inks, evidence: {}, figure, source, sourceIds: [] };
}

/** Every ink a family of its own. */
export function eachAlone(side: Side): FamilySide {
  const all = [side.base, ...side.inks];
  return {
    ...side,
    families: all.map(({ id, trade, name, hex, share, oklch: [l] }) => ({
      id,
      name: trade ?? name,
      hex,
      share,
      inks: [`${id}1`],
      lightness: [100 * l, 100 * l],
      chroma: [0, 0],
    })),
    within: all.map((ink) => ({ ...ink, id: `${ink.id}1` })),
  };
}
