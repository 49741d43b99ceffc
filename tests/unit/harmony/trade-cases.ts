import type { Distance, ReasonKind, Verdict } from '../../../src/harmony/model.ts';
import type { HandSide } from '../../support/sides.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

/** A pair as someone who knows paper would judge it. Common practice, no source; written before any tuning. */
export interface TradeCase {
  readonly name: string;
  readonly anchor: HandSide;
  readonly candidate: HandSide;
  readonly distance?: Distance;
  /** Every verdict that a reasonable maker of pages could give. */
  readonly verdicts: readonly Verdict[];
  /** Kinds that must be named, with the side they stand on: for, against, or only mentioned. */
  readonly names?: readonly (readonly [ReasonKind, 'for' | 'against' | 'any'])[];
  /** Kinds that must not be named. */
  readonly never?: readonly ReasonKind[];
  /** Where the table of links and common practice part: the verdict that the engine gives, and why. */
  readonly parts?: { readonly verdict: Verdict; readonly why: string };
}

const holds: readonly Verdict[] = ['holds-together'];
const bridge: readonly Verdict[] = ['needs-a-bridge'];
const apart: readonly Verdict[] = ['pulls-apart'];
const notHolds: readonly Verdict[] = ['needs-a-bridge', 'pulls-apart'];
const notApart: readonly Verdict[] = ['holds-together', 'needs-a-bridge'];

const onKraft = (...inks: [string, number][]): HandSide => ({ base: 'kraft', hex: c.kraft, inks });

const bunting = onCream([c.coral, 0.14], [c.navy, 0.1], [c.aqua, 0.08], [c.mustard, 0.05], ['#f6f3ec', 0.02]);

export const tradeCases: readonly TradeCase[] = [
  {
    name: 'the same paper twice holds together',
    anchor: bunting,
    candidate: bunting,
    verdicts: holds,
    names: [
      ['repeat', 'for'],
      ['base agreement', 'for'],
    ],
    never: ['stray', 'base quarrel'],
  },
  {
    name: 'two papers that share only a few coral specks hold',
    anchor: onWhite([c.navy, 0.25], [c.coral, 0.02]),
    candidate: onWhite([c.sage, 0.3], [c.coral, 0.02]),
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'a mustard accent ties a teal print to a brown one',
    anchor: onCream([c.teal, 0.25], [c.mustard, 0.015]),
    candidate: onCream([c.brown, 0.2], [c.mustard, 0.02]),
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'a raspberry accent ties a navy print to a leaf-green one',
    anchor: onWhite([c.navy, 0.3], [c.raspberry, 0.03]),
    candidate: onWhite([c.leaf, 0.2], [c.raspberry, 0.03]),
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'cream against cool white is named as a base quarrel, although the navy repeats',
    anchor: onCream([c.navy, 0.2]),
    candidate: { base: 'white', hex: c.coolWhite, inks: [[c.navyToo, 0.2]] },
    verdicts: bridge,
    names: [
      ['base quarrel', 'against'],
      ['repeat', 'for'],
    ],
    never: ['base agreement'],
  },
  {
    name: 'two creams of the same age agree',
    anchor: onCream([c.navy, 0.2]),
    candidate: { base: 'cream', hex: c.oldCream, inks: [[c.navyToo, 0.3]] },
    verdicts: holds,
    names: [['base agreement', 'for']],
    never: ['base quarrel'],
  },
  {
    name: 'raspberry dots on an otherwise kindred ledger need a bridge to a coral bunting',
    anchor: bunting,
    candidate: {
      base: 'cream',
      hex: c.oldCream,
      inks: [
        [c.aquaToo, 0.28],
        [c.raspberry, 0.04],
        [c.navyToo, 0.02],
        [c.grey, 0.02],
      ],
    },
    verdicts: bridge,
    names: [
      ['near miss', 'against'],
      ['repeat', 'for'],
      ['base agreement', 'for'],
    ],
  },
  {
    name: 'coral with a not-quite raspberry, and nothing else, does not hold',
    anchor: onWhite([c.coral, 0.3]),
    candidate: onWhite([c.raspberry, 0.3]),
    verdicts: notHolds,
    names: [['near miss', 'against']],
  },
  {
    name: 'two reds that nearly agree look like a mistake',
    anchor: onWhite([c.red, 0.3]),
    candidate: onWhite([c.tomato, 0.25]),
    verdicts: notHolds,
    names: [['near miss', 'against']],
  },
  {
    name: 'two strong blues that nearly agree look like a mistake',
    anchor: onWhite([c.royal, 0.3]),
    candidate: onWhite([c.ultramarine, 0.25]),
    verdicts: notHolds,
    names: [['near miss', 'against']],
  },
  {
    name: 'coral beside raspberry is a choice where the anchor already shows both',
    anchor: onCream([c.coral, 0.15], [c.raspberry, 0.1], [c.navy, 0.05]),
    candidate: onCream([c.raspberry, 0.2], [c.navy, 0.05]),
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'plain grey cardstock holds with a many-coloured print',
    anchor: bunting,
    candidate: { base: 'tinted', hex: c.grey },
    verdicts: holds,
    never: ['near miss', 'stray'],
  },
  {
    name: 'plain kraft cardstock holds with a many-coloured print',
    anchor: bunting,
    candidate: { base: 'kraft', hex: c.kraft },
    verdicts: holds,
    never: ['near miss', 'stray', 'base quarrel'],
  },
  {
    name: 'plain white cardstock holds with a print on white',
    anchor: onWhite([c.coral, 0.2], [c.leaf, 0.15], [c.royal, 0.1]),
    candidate: { base: 'white', hex: c.white },
    verdicts: holds,
    never: ['near miss', 'stray'],
  },
  {
    name: 'plain black cardstock holds with a bright print',
    anchor: onWhite([c.neonPink, 0.2], [c.lime, 0.15]),
    candidate: { base: 'dark', hex: c.black },
    verdicts: holds,
    never: ['near miss', 'stray', 'base quarrel'],
  },
  {
    name: 'plain cream cardstock holds with a print on cream',
    anchor: bunting,
    candidate: { base: 'cream', hex: c.oldCream },
    verdicts: holds,
    names: [['base agreement', 'for']],
  },
  {
    name: 'plain cream cardstock on a cool-white print is named as a base quarrel',
    anchor: { base: 'white', hex: c.coolWhite, inks: [[c.royal, 0.3]] },
    candidate: { base: 'cream', hex: c.cream },
    verdicts: notApart,
    names: [['base quarrel', 'against']],
    never: ['stray'],
  },
  {
    name: 'plain navy cardstock holds with a print that has navy in it',
    anchor: bunting,
    candidate: { base: 'dark', hex: c.navyToo },
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'plain violet cardstock finds no partner in coral and aqua',
    anchor: onWhite([c.coral, 0.25], [c.aqua, 0.1]),
    candidate: { base: 'dark', hex: c.violet },
    verdicts: notHolds,
    names: [['stray', 'against']],
  },
  {
    name: 'kraft printed in black holds with anything bright',
    anchor: onKraft([c.black, 0.12]),
    candidate: onWhite([c.red, 0.2], [c.royal, 0.2]),
    verdicts: holds,
    never: ['near miss', 'stray', 'base quarrel'],
  },
  {
    name: 'black and grey text on white holds with a bunting in five colours',
    anchor: { ...bunting, base: 'white', hex: c.white },
    candidate: onWhite([c.black, 0.1], [c.grey, 0.1]),
    verdicts: holds,
    never: ['near miss', 'stray'],
  },
  {
    name: 'a strong violet with no partner is a stray',
    anchor: onCream([c.coral, 0.25], [c.aqua, 0.1]),
    candidate: onCream([c.coral, 0.1], [c.violet, 0.25]),
    verdicts: notHolds,
    names: [
      ['stray', 'against'],
      ['repeat', 'for'],
    ],
  },
  {
    name: 'a little violet beside its own yellow is tolerated',
    anchor: onCream([c.coral, 0.25], [c.aqua, 0.1]),
    candidate: onCream([c.coral, 0.2], [c.yellow, 0.12], [c.violet, 0.02]),
    verdicts: holds,
    names: [['stray', 'any']],
  },
  {
    name: 'red and green are opposites that hold',
    anchor: onWhite([c.red, 0.2]),
    candidate: onWhite([c.forest, 0.25]),
    verdicts: holds,
    names: [['opposites', 'for']],
  },
  {
    name: 'navy and orange are opposites that hold',
    anchor: onWhite([c.navy, 0.3]),
    candidate: onWhite([c.orange, 0.12]),
    verdicts: holds,
    names: [['opposites', 'for']],
  },
  {
    name: 'yellow and violet are opposites that hold',
    anchor: onCream([c.yellow, 0.3]),
    candidate: onCream([c.violet, 0.1]),
    verdicts: holds,
    names: [['opposites', 'for']],
  },
  {
    name: 'teal and burgundy are opposites that hold',
    anchor: onCream([c.teal, 0.25]),
    candidate: onCream([c.burgundy, 0.15]),
    verdicts: holds,
    names: [['opposites', 'for']],
  },
  {
    name: 'navy with powder blue is tone on tone',
    anchor: onWhite([c.navy, 0.25]),
    candidate: onWhite([c.powder, 0.4]),
    verdicts: holds,
    names: [['tone on tone', 'for']],
  },
  {
    name: 'forest green with mint is tone on tone',
    anchor: onWhite([c.forest, 0.25]),
    candidate: onWhite([c.mint, 0.4]),
    verdicts: holds,
    names: [['tone on tone', 'for']],
  },
  {
    name: 'burgundy with blush is tone on tone',
    anchor: onCream([c.burgundy, 0.2]),
    candidate: onCream([c.blush, 0.4]),
    verdicts: holds,
    names: [['tone on tone', 'for']],
  },
  {
    name: 'coral and mustard are neighbours',
    anchor: onCream([c.coral, 0.25]),
    candidate: onCream([c.mustard, 0.2]),
    verdicts: holds,
    names: [['neighbours', 'for']],
  },
  {
    name: 'aqua and leaf green are neighbours',
    anchor: onWhite([c.aqua, 0.25]),
    candidate: onWhite([c.leaf, 0.2]),
    verdicts: holds,
    names: [['neighbours', 'for']],
    parts: {
      verdict: 'needs-a-bridge',
      why: 'the two are 20.4 Munsell hue steps apart and the table of links ends neighbours at 17',
    },
  },
  {
    name: 'neon pink and lime shout down dusty rose and sage',
    anchor: onWhite([c.dustyRose, 0.3], [c.sage, 0.2]),
    candidate: onWhite([c.neonPink, 0.3], [c.lime, 0.25]),
    verdicts: notHolds,
    names: [['bright against muted', 'against']],
  },
  {
    name: 'two faded papers in rose and olive hold',
    anchor: onCream([c.dustyRose, 0.25], [c.sage, 0.15]),
    candidate: onCream([c.dustyRose, 0.1], [c.olive, 0.15]),
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'royal blue against leaf green with nothing shared does not hold',
    anchor: onWhite([c.royal, 0.3]),
    candidate: onWhite([c.leaf, 0.3]),
    verdicts: notHolds,
    names: [['stray', 'against']],
  },
  {
    name: 'orange against violet with nothing shared pulls apart',
    anchor: onWhite([c.orange, 0.3]),
    candidate: onWhite([c.violet, 0.25]),
    verdicts: apart,
    names: [['stray', 'against']],
  },
  {
    name: 'the same violet holds once orange dots lie on it',
    anchor: onWhite([c.orange, 0.3]),
    candidate: onWhite([c.violet, 0.12], [c.orange, 0.1]),
    verdicts: notApart,
    names: [['repeat', 'for']],
  },
  {
    name: 'a navy ground holds with a white sheet that has navy pinstripes',
    anchor: { base: 'dark', hex: c.navy, inks: [[c.white, 0.15]] },
    candidate: onWhite([c.navyToo, 0.12]),
    verdicts: holds,
    names: [['repeat', 'for']],
  },
  {
    name: 'a chalkboard print holds with a white print in the same brights',
    anchor: {
      base: 'dark',
      hex: c.charcoal,
      inks: [
        [c.yellow, 0.1],
        [c.aqua, 0.1],
      ],
    },
    candidate: onWhite([c.yellow, 0.15], [c.aquaToo, 0.2]),
    verdicts: holds,
    names: [['repeat', 'for']],
    never: ['base quarrel'],
  },
  {
    name: 'kraft and cream do not quarrel',
    anchor: onKraft([c.red, 0.15]),
    candidate: onCream([c.red, 0.2]),
    verdicts: holds,
    never: ['base quarrel'],
  },
  {
    name: 'kraft and white do not quarrel',
    anchor: onKraft([c.navy, 0.15]),
    candidate: onWhite([c.navy, 0.2]),
    verdicts: holds,
    never: ['base quarrel'],
  },
  {
    name: 'a grey print never clashes by hue',
    anchor: onWhite([c.grey, 0.3], [c.charcoal, 0.05]),
    candidate: onWhite([c.neonPink, 0.2], [c.orange, 0.2]),
    verdicts: holds,
    never: ['near miss', 'stray'],
  },
  {
    name: 'baby pink and baby blue do not pull apart, whatever else is said of them',
    anchor: onWhite([c.blush, 0.3]),
    candidate: onWhite([c.powder, 0.3]),
    verdicts: notApart,
    never: ['stray', 'near miss'],
  },
  {
    name: 'two busy prints in the same inks are told to rest the eye',
    anchor: { ...bunting, busyness: 0.62, scale: 'large', repeatMm: 90 },
    candidate: { ...bunting, busyness: 0.6, scale: 'large', repeatMm: 84 },
    verdicts: notApart,
    names: [
      ['busyness', 'against'],
      ['print scale', 'against'],
    ],
  },
  {
    name: 'one busy print and one calm one is as it should be',
    anchor: { ...bunting, busyness: 0.6, scale: 'large', repeatMm: 90 },
    candidate: { ...onCream([c.navyToo, 0.2]), busyness: 0.12, scale: 'small', repeatMm: 8 },
    verdicts: holds,
    names: [
      ['busyness', 'for'],
      ['print scale', 'for'],
    ],
  },
  {
    name: 'a warm sheet and a cool sheet with navy in both are told so',
    anchor: onCream([c.coral, 0.3], [c.mustard, 0.2], [c.navy, 0.05]),
    candidate: onWhite([c.skyBlue, 0.4], [c.navyToo, 0.2]),
    verdicts: notApart,
    names: [['warm and cool', 'any']],
  },
  {
    name: 'watercolour with watercolour is alike in finish',
    anchor: { ...bunting, tags: { finishes: ['watercolour'], motifs: ['floral'] } },
    candidate: { ...bunting, tags: { finishes: ['watercolour'], motifs: ['floral'] } },
    verdicts: holds,
    names: [
      ['finish', 'for'],
      ['motif', 'any'],
    ],
  },
  {
    name: 'a distressed print beside a photographic one is told so',
    anchor: { ...bunting, tags: { finishes: ['distressed'] } },
    candidate: { ...bunting, tags: { finishes: ['photographic'] } },
    verdicts: notApart,
    names: [['finish', 'against']],
  },
  {
    name: 'a thin sheet is to be mounted',
    anchor: bunting,
    candidate: { ...bunting, tags: { weight: { gsm: 110 } } },
    verdicts: holds,
    names: [['weight', 'any']],
  },
  {
    name: 'a paper read without a card is judged with that said',
    anchor: bunting,
    candidate: { ...bunting, lightKnown: false },
    verdicts: holds,
    names: [['light unknown', 'any']],
  },
  {
    name: 'an aqua a little off repeats across a page',
    anchor: onCream([c.aqua, 0.2]),
    candidate: onCream(['#6cc4bd', 0.2]),
    verdicts: holds,
    names: [['repeat', 'for']],
  },
];
