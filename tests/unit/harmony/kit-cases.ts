import type { ReasonKind, Verdict } from '../../../src/harmony/model.ts';
import type { HandSide } from '../../support/sides.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

/** A kit as someone who knows paper would judge it. Common practice, no source; written before any tuning. */
export interface KitCase {
  readonly name: string;
  readonly members: readonly {
    readonly name: string;
    readonly side: HandSide;
    readonly role?: 'paper' | 'plain' | 'photo';
    readonly areaMm2?: number;
  }[];
  readonly verdicts: readonly Verdict[];
  readonly names?: readonly (readonly [ReasonKind, 'for' | 'against' | 'any'])[];
  /** What must be among the missing, as a part of its sentence; an empty list for nothing missing. */
  readonly missing?: readonly string[];
}

const holds: readonly Verdict[] = ['holds-together'];
const notHolds: readonly Verdict[] = ['needs-a-bridge', 'pulls-apart'];
const notApart: readonly Verdict[] = ['holds-together', 'needs-a-bridge'];

const plain = (base: HandSide['base'], hex: string): HandSide => ({ base, hex });
const bunting = onCream([c.coral, 0.14], [c.navy, 0.1], [c.aqua, 0.08]);

export const kitCases: readonly KitCase[] = [
  {
    name: 'coral, navy and aqua run through three papers and make triangles',
    members: [
      { name: 'the bunting', side: bunting },
      { name: 'the ledger', side: onCream([c.aquaToo, 0.28], [c.navyToo, 0.05], [c.coral, 0.03]) },
      { name: 'the coral dots', side: onCream([c.coral, 0.2], [c.aqua, 0.04], [c.navy, 0.02]) },
    ],
    verdicts: holds,
    names: [
      ['repeat', 'for'],
      ['base agreement', 'for'],
    ],
    missing: [],
  },
  {
    name: 'a navy plain, a kraft plain and the bunting hold',
    members: [
      { name: 'the bunting', side: bunting },
      { name: 'navy cardstock', side: plain('dark', c.navyToo), role: 'plain' },
      { name: 'kraft cardstock', side: plain('kraft', c.kraft), role: 'plain' },
    ],
    verdicts: holds,
    names: [
      ['repeat', 'for'],
      ['repeated neutral', 'for'],
    ],
  },
  {
    name: 'a violet sheet that nothing answers is missing its partner',
    members: [
      { name: 'the shells', side: onCream([c.coral, 0.2], [c.aqua, 0.1]) },
      { name: 'the coral dots', side: onCream([c.coral, 0.2]) },
      { name: 'the orchid sheet', side: onCream([c.violet, 0.3]) },
    ],
    verdicts: notHolds,
    names: [['stray', 'against']],
    missing: ['Nothing here answers'],
  },
  {
    name: 'a royal blue that stands alone among greens is named as missing',
    members: [
      { name: 'the leaves', side: onWhite([c.leaf, 0.3]) },
      { name: 'the fern', side: onWhite([c.leaf, 0.15]) },
      { name: 'the blue stripe', side: onWhite([c.royal, 0.3]) },
    ],
    verdicts: notHolds,
    names: [['stray', 'against']],
    missing: ['Nothing here answers'],
  },
  {
    name: 'one cool-white sheet among creams is a base quarrel',
    members: [
      { name: 'the bunting', side: bunting },
      { name: 'the ledger', side: onCream([c.aquaToo, 0.28], [c.navyToo, 0.05]) },
      { name: 'the new stripe', side: { base: 'white', hex: c.coolWhite, inks: [[c.navy, 0.2]] } },
    ],
    verdicts: notHolds,
    names: [['base quarrel', 'against']],
  },
  {
    name: 'a third sheet that shows both reds answers a near miss',
    members: [
      { name: 'the coral stripe', side: onCream([c.coral, 0.2], [c.navy, 0.05]) },
      { name: 'the raspberry dots', side: onCream([c.raspberry, 0.2], [c.navy, 0.05]) },
      { name: 'the dahlias', side: onCream([c.coral, 0.15], [c.raspberry, 0.15], [c.navy, 0.04]) },
    ],
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'without that third sheet the two reds need a bridge',
    members: [
      { name: 'the coral stripe', side: onCream([c.coral, 0.2], [c.navy, 0.05]) },
      { name: 'the raspberry dots', side: onCream([c.raspberry, 0.2], [c.navy, 0.05]) },
    ],
    verdicts: notHolds,
    names: [['near miss', 'against']],
  },
  {
    name: 'three busy prints are told to make room',
    members: [
      { name: 'the bunting', side: { ...bunting, busyness: 0.6, scale: 'large' } },
      { name: 'the posies', side: { ...bunting, busyness: 0.55, scale: 'large' } },
      { name: 'the patchwork', side: { ...bunting, busyness: 0.7, scale: 'large' } },
    ],
    verdicts: notApart,
    names: [
      ['busyness', 'against'],
      ['print scale', 'against'],
    ],
  },
  {
    name: 'a mid-grey photograph sinks into a paper of its own lightness',
    members: [
      { name: 'the ground', side: plain('tinted', c.grey), role: 'plain', areaMm2: 80_000 },
      { name: 'the stripe', side: onWhite([c.navy, 0.2]), areaMm2: 10_000 },
      {
        name: 'the photograph',
        side: { base: 'tinted', hex: '#8a8a88', inks: [['#a0a09e', 0.4]] },
        role: 'photo',
      },
    ],
    verdicts: holds,
    names: [
      ['lightness range', 'against'],
      ['dominance', 'for'],
    ],
  },
  {
    name: 'black, kraft and white plains with one bright print hold',
    members: [
      { name: 'the brights', side: onWhite([c.neonPink, 0.2], [c.lime, 0.15]) },
      { name: 'black cardstock', side: plain('dark', c.black), role: 'plain' },
      { name: 'kraft cardstock', side: plain('kraft', c.kraft), role: 'plain' },
      { name: 'white cardstock', side: plain('white', c.white), role: 'plain' },
    ],
    verdicts: holds,
    names: [['repeated neutral', 'for']],
  },
];
