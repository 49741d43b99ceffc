import type { CandidateView, PaperView } from '../../components/study/study-view.ts';
import { eachAlone } from '../../components/support/sample-papers.ts';
import type { Advised, Link, Reason } from '../../src/harmony/model.ts';
import { decidingColours } from '../../src/harmony/reasons/deciding-colours.ts';
import type { StudyLeaf } from '../../src/notebook/model.ts';
import type { Base, Ink, Side } from '../../src/sheet/model.ts';

/** Values written by hand, so that an element can be tried with nothing behind it. None of them is a finding. */

const inks: Record<string, [hex: string, oklch: [number, number, number | null], trade: string]> = {
  cream: ['#f4e8cd', [0.933, 0.037, 87], 'cream'],
  navy: ['#1f3a5f', [0.346, 0.071, 255], 'navy'],
  coral: ['#e2725b', [0.676, 0.143, 33], 'coral'],
  aqua: ['#62bfc1', [0.752, 0.088, 198], 'aqua'],
  raspberry: ['#c23b4e', [0.548, 0.167, 18], 'raspberry'],
  grey: ['#8f8f8c', [0.649, 0.004, 107], 'grey'],
};

function ink(id: string, word: keyof typeof inks, share: number): Ink {
  const [hex, oklch, trade] = inks[word]!;
  return { id, hex, oklch, name: `a ${trade}`, trade, share, accent: share < 0.05 };
}

function base(id: string, share: number): Base {
  return { ...ink(id, 'cream', share), kind: 'cream', printed: null };
}

const light = { known: false, note: 'The light is unknown.' };

export const bunting: Side = {
  base: base('A', 0.73),
  inks: [ink('B', 'navy', 0.11), ink('C', 'coral', 0.1), ink('D', 'aqua', 0.06)],
  print: { busyness: 0.4, repeatMm: 76, scale: 'large' },
  light,
};

export const ledger: Side = {
  base: base('a', 0.64),
  inks: [ink('b', 'aqua', 0.28), ink('c', 'raspberry', 0.04), ink('d', 'navy', 0.02), ink('e', 'grey', 0.02)],
  print: { busyness: 0.3, repeatMm: 20, scale: 'small' },
  light,
};

const links: readonly Link[] = [
  {
    kind: 'near miss',
    anchorInk: 'C',
    candidateInk: 'c',
    deltaE00: 17.9,
    hueDeg: 15,
    dL: -14,
    dC: 5,
    hueSteps: 6,
    dV: -1,
  },
  {
    kind: 'repeat',
    anchorInk: 'D',
    candidateInk: 'b',
    deltaE00: 2.7,
    hueDeg: 3,
    dL: 0,
    dC: 0,
    hueSteps: 1,
    dV: 0,
  },
];

const reasons: readonly Reason[] = [
  reason(
    'near miss',
    -0.9,
    'Coral (C) and raspberry (c) are close but not the same.',
    ['C', 'c'],
    'ΔE₀₀ 17.9 · hue 15°',
  ),
  reason('repeat', 0.7, 'The aqua repeats: (D) and (b).', ['D', 'b'], 'ΔE₀₀ 2.7'),
  reason('light unknown', 0, 'The light is unknown, so warm and cool may be the lamp’s.', [], 'no card'),
];

function reason(
  kind: Reason['kind'],
  weighs: number,
  says: string,
  of: readonly string[],
  figure: string,
): Reason {
  return { kind, weighs, says, inks: of, evidence: {}, figure, source: 'by hand', sourceIds: ['by-hand'] };
}

export const needsABridge: Advised = {
  anchor: eachAlone(bunting),
  candidate: eachAlone(ledger),
  distance: 'apart',
  strip: false,
  findings: [
    {
      kind: 'near miss',
      name: 'near miss',
      speaks: 'against',
      size: 0.9,
      counts: -0.9,
      numbers: {},
      standing: 'O',
      sourceIds: ['by-hand'],
      families: [['C'], ['c']],
    },
  ],
  names: { anchor: 'Harbour bunting', candidate: 'Quay ledger' },
  verdict: 'needs-a-bridge',
  decision: {
    rule: 'One near miss and no stray: a bridge mends it.',
    turnedBy: [0],
    summary: 'The raspberry (c) is what the eye trips over.',
  },
  links,
  reasons,
  remedies: [
    {
      kind: 'buffer',
      title: 'Put kraft between',
      says: 'A 10 mm strip where they meet.',
      inks: ['C', 'c'],
      verdictAfter: 'holds-together',
      cost: 'one cut',
      effort: 1,
    },
    {
      kind: 'turn',
      title: 'Turn the ledger over',
      says: 'Its other side has no raspberry.',
      inks: ['c'],
      verdictAfter: 'holds-together',
      cost: 'no cutting',
      effort: 0,
    },
  ],
};

export const anchorView: PaperView = {
  held: { kind: 'sheet', id: 'bunting', side: 'A' },
  name: 'Harbour bunting',
  side: bunting,
  picture: null,
  places: null,
  facts: ['side A of one', 'repeat 76 mm'],
  turnsTo: null,
};

export const candidateView: CandidateView = {
  deciding: decidingColours(needsABridge),
  ...anchorView,
  held: { kind: 'sheet', id: 'ledger', side: 'A' },
  name: 'Quay ledger',
  side: ledger,
  facts: ['side A of two'],
  turnsTo: 'B',
  index: 0,
  comparison: needsABridge,
  remedies: needsABridge.remedies,
  opinion: { verdict: null, likes: null },
};

export const study: StudyLeaf = {
  id: 'study-1',
  kind: 'study',
  title: 'Does the bunting hold with the ledger?',
  text: '',
  anchor: anchorView.held,
  candidates: [candidateView.held],
  shown: 0,
  distance: 'apart',
  wheel: 'eye',
  asksFirst: false,
  opinions: {},
};
