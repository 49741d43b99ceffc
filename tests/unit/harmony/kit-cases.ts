import type { ReasonKind, Verdict } from '../../../src/harmony/model.ts';
import type { Seen, Side } from '../../../src/sheet/model.ts';
import { looks } from '../../support/judging/families.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

/** A kit as someone who knows paper would judge it. Common practice, no source; several were chosen, or their verdicts widened, after the model was there. */
export interface KitCase {
  readonly name: string;
  readonly members: readonly {
    readonly name: string;
    readonly side: HandSide;
    /** What an eye sees of it, where that matters. */
    readonly seen?: Seen;
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
      ['grounds agree', 'for'],
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
      ['one rests', 'for'],
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
    names: [['hues far apart', 'against']],
    missing: ['Nothing here answers'],
  },
  {
    name: 'a royal blue that stands alone among greens is named as missing',
    members: [
      { name: 'the leaves', side: onWhite([c.leaf, 0.3]) },
      { name: 'the fern', side: onWhite([c.leaf, 0.15]) },
      { name: 'the blue stripe', side: onWhite([c.royal, 0.3]) },
    ],
    verdicts: notApart,
    missing: ['Nothing here answers'],
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
    name: 'two reds that nearly match need a bridge',
    members: [
      { name: 'the coral stripe', side: onWhite([c.coral, 0.5]), seen: looks.loose },
      {
        name: 'the rose dots',
        side: { base: 'kraft', hex: c.kraft, inks: [['#dc6a70', 0.5]] },
        seen: looks.loose,
      },
    ],
    verdicts: notHolds,
    names: [['near miss', 'against']],
  },
  {
    name: 'three bold checks of other colours flicker',
    members: [
      { name: 'the navy check', side: onCream([c.navy, 0.5]), seen: looks.check },
      { name: 'the green check', side: onCream([c.leaf, 0.5]), seen: looks.check },
      { name: 'the red check', side: onCream([c.tomato, 0.5]), seen: looks.check },
    ],
    verdicts: notHolds,
    names: [['hard beside hard', 'against']],
  },
  {
    name: 'a plain grey goes between two that are strangers',
    members: [
      { name: 'the brights', side: onWhite([c.coral, 0.25], [c.lime, 0.25]) },
      { name: 'the jewels', side: onWhite([c.raspberry, 0.25], [c.violet, 0.25], [c.royal, 0.25]) },
      { name: 'grey cardstock', side: plain('tinted', c.grey), role: 'plain' },
    ],
    verdicts: holds,
    names: [['one is greyed', 'any']],
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

/** A side of a case. */
export function sideOfCase({ side, seen }: KitCase['members'][number]): Side {
  return { ...handSide(side), ...(seen ? { seen } : {}) };
}
