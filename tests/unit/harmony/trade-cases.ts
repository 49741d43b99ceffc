import type { HandSide } from '../../support/sides.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

/** A pair of papers as they are met with, to try what must be true of any pair; no verdict of one is written here. Ours. */
export interface TradeCase {
  readonly name: string;
  readonly anchor: HandSide;
  readonly candidate: HandSide;
}

const onKraft = (...inks: [string, number][]): HandSide => ({ base: 'kraft', hex: c.kraft, inks });

const bunting = onCream([c.coral, 0.14], [c.navy, 0.1], [c.aqua, 0.08], [c.mustard, 0.05], ['#f6f3ec', 0.02]);

export const tradeCases: readonly TradeCase[] = [
  {
    name: 'the same paper twice',
    anchor: bunting,
    candidate: bunting,
  },
  {
    name: 'two papers that share only a few coral specks',
    anchor: onWhite([c.navy, 0.25], [c.coral, 0.02]),
    candidate: onWhite([c.sage, 0.3], [c.coral, 0.02]),
  },
  {
    name: 'a teal print and a brown one, both with a mustard accent',
    anchor: onCream([c.teal, 0.25], [c.mustard, 0.015]),
    candidate: onCream([c.brown, 0.2], [c.mustard, 0.02]),
  },
  {
    name: 'a navy print and a leaf-green one, both with a raspberry accent',
    anchor: onWhite([c.navy, 0.3], [c.raspberry, 0.03]),
    candidate: onWhite([c.leaf, 0.2], [c.raspberry, 0.03]),
  },
  {
    name: 'cream against cool white, with navy on both',
    anchor: onCream([c.navy, 0.2]),
    candidate: { base: 'white', hex: c.coolWhite, inks: [[c.navyToo, 0.2]] },
  },
  {
    name: 'two creams of the same age',
    anchor: onCream([c.navy, 0.2]),
    candidate: { base: 'cream', hex: c.oldCream, inks: [[c.navyToo, 0.3]] },
  },
  {
    name: 'raspberry dots on an otherwise kindred ledger, beside a coral bunting',
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
  },
  {
    name: 'coral with a not-quite raspberry, and nothing else',
    anchor: onWhite([c.coral, 0.3]),
    candidate: onWhite([c.raspberry, 0.3]),
  },
  {
    name: 'two reds that nearly agree',
    anchor: onWhite([c.red, 0.3]),
    candidate: onWhite([c.tomato, 0.25]),
  },
  {
    name: 'two strong blues that nearly agree',
    anchor: onWhite([c.royal, 0.3]),
    candidate: onWhite([c.ultramarine, 0.25]),
  },
  {
    name: 'coral and raspberry on the anchor, raspberry on the other',
    anchor: onCream([c.coral, 0.15], [c.raspberry, 0.1], [c.navy, 0.05]),
    candidate: onCream([c.raspberry, 0.2], [c.navy, 0.05]),
  },
  {
    name: 'plain grey cardstock beside a many-coloured print',
    anchor: bunting,
    candidate: { base: 'tinted', hex: c.grey },
  },
  {
    name: 'plain kraft cardstock beside a many-coloured print',
    anchor: bunting,
    candidate: { base: 'kraft', hex: c.kraft },
  },
  {
    name: 'plain white cardstock beside a print on white',
    anchor: onWhite([c.coral, 0.2], [c.leaf, 0.15], [c.royal, 0.1]),
    candidate: { base: 'white', hex: c.white },
  },
  {
    name: 'plain black cardstock beside a bright print',
    anchor: onWhite([c.neonPink, 0.2], [c.lime, 0.15]),
    candidate: { base: 'dark', hex: c.black },
  },
  {
    name: 'plain cream cardstock beside a print on cream',
    anchor: bunting,
    candidate: { base: 'cream', hex: c.oldCream },
  },
  {
    name: 'plain cream cardstock beside a print on cool white',
    anchor: { base: 'white', hex: c.coolWhite, inks: [[c.royal, 0.3]] },
    candidate: { base: 'cream', hex: c.cream },
  },
  {
    name: 'plain navy cardstock beside a print that has navy in it',
    anchor: bunting,
    candidate: { base: 'dark', hex: c.navyToo },
  },
  {
    name: 'plain violet cardstock beside coral and aqua',
    anchor: onWhite([c.coral, 0.25], [c.aqua, 0.1]),
    candidate: { base: 'dark', hex: c.violet },
  },
  {
    name: 'kraft printed in black beside brights',
    anchor: onKraft([c.black, 0.12]),
    candidate: onWhite([c.red, 0.2], [c.royal, 0.2]),
  },
  {
    name: 'black and grey text on white beside a bunting in five colours',
    anchor: { ...bunting, base: 'white', hex: c.white },
    candidate: onWhite([c.black, 0.1], [c.grey, 0.1]),
  },
  {
    name: 'a strong violet with no partner',
    anchor: onCream([c.coral, 0.25], [c.aqua, 0.1]),
    candidate: onCream([c.coral, 0.1], [c.violet, 0.25]),
  },
  {
    name: 'a little violet beside its own yellow',
    anchor: onCream([c.coral, 0.25], [c.aqua, 0.1]),
    candidate: onCream([c.coral, 0.2], [c.yellow, 0.12], [c.violet, 0.02]),
  },
  {
    name: 'red and green',
    anchor: onWhite([c.red, 0.2]),
    candidate: onWhite([c.forest, 0.25]),
  },
  {
    name: 'navy and orange',
    anchor: onWhite([c.navy, 0.3]),
    candidate: onWhite([c.orange, 0.12]),
  },
  {
    name: 'yellow and violet',
    anchor: onCream([c.yellow, 0.3]),
    candidate: onCream([c.violet, 0.1]),
  },
  {
    name: 'teal and burgundy',
    anchor: onCream([c.teal, 0.25]),
    candidate: onCream([c.burgundy, 0.15]),
  },
  {
    name: 'navy with powder blue',
    anchor: onWhite([c.navy, 0.25]),
    candidate: onWhite([c.powder, 0.4]),
  },
  {
    name: 'forest green with mint',
    anchor: onWhite([c.forest, 0.25]),
    candidate: onWhite([c.mint, 0.4]),
  },
  {
    name: 'burgundy with blush',
    anchor: onCream([c.burgundy, 0.2]),
    candidate: onCream([c.blush, 0.4]),
  },
  {
    name: 'coral and mustard',
    anchor: onCream([c.coral, 0.25]),
    candidate: onCream([c.mustard, 0.2]),
  },
  {
    name: 'aqua and leaf green',
    anchor: onWhite([c.aqua, 0.25]),
    candidate: onWhite([c.leaf, 0.2]),
  },
  {
    name: 'neon pink and lime beside dusty rose and sage',
    anchor: onWhite([c.dustyRose, 0.3], [c.sage, 0.2]),
    candidate: onWhite([c.neonPink, 0.3], [c.lime, 0.25]),
  },
  {
    name: 'two faded papers in rose and olive',
    anchor: onCream([c.dustyRose, 0.25], [c.sage, 0.15]),
    candidate: onCream([c.dustyRose, 0.1], [c.olive, 0.15]),
  },
  {
    name: 'royal blue against leaf green with nothing shared',
    anchor: onWhite([c.royal, 0.3]),
    candidate: onWhite([c.leaf, 0.3]),
  },
  {
    name: 'orange against violet with nothing shared',
    anchor: onWhite([c.orange, 0.3]),
    candidate: onWhite([c.violet, 0.25]),
  },
  {
    name: 'the same violet with orange dots on it',
    anchor: onWhite([c.orange, 0.3]),
    candidate: onWhite([c.violet, 0.12], [c.orange, 0.1]),
  },
  {
    name: 'a navy ground beside a white sheet that has navy pinstripes',
    anchor: { base: 'dark', hex: c.navy, inks: [[c.white, 0.15]] },
    candidate: onWhite([c.navyToo, 0.12]),
  },
  {
    name: 'a chalkboard print beside a white print in the same brights',
    anchor: {
      base: 'dark',
      hex: c.charcoal,
      inks: [
        [c.yellow, 0.1],
        [c.aqua, 0.1],
      ],
    },
    candidate: onWhite([c.yellow, 0.15], [c.aquaToo, 0.2]),
  },
  {
    name: 'the same red on kraft and on cream',
    anchor: onKraft([c.red, 0.15]),
    candidate: onCream([c.red, 0.2]),
  },
  {
    name: 'the same navy on kraft and on white',
    anchor: onKraft([c.navy, 0.15]),
    candidate: onWhite([c.navy, 0.2]),
  },
  {
    name: 'a grey print beside two brights',
    anchor: onWhite([c.grey, 0.3], [c.charcoal, 0.05]),
    candidate: onWhite([c.neonPink, 0.2], [c.orange, 0.2]),
  },
  {
    name: 'baby pink and baby blue',
    anchor: onWhite([c.blush, 0.3]),
    candidate: onWhite([c.powder, 0.3]),
  },
  {
    name: 'two busy prints in the same inks',
    anchor: { ...bunting, busyness: 0.62, scale: 'large', repeatMm: 90 },
    candidate: { ...bunting, busyness: 0.6, scale: 'large', repeatMm: 84 },
  },
  {
    name: 'one busy print and one calm one',
    anchor: { ...bunting, busyness: 0.6, scale: 'large', repeatMm: 90 },
    candidate: { ...onCream([c.navyToo, 0.2]), busyness: 0.12, scale: 'small', repeatMm: 8 },
  },
  {
    name: 'a warm sheet and a cool sheet with navy in both',
    anchor: onCream([c.coral, 0.3], [c.mustard, 0.2], [c.navy, 0.05]),
    candidate: onWhite([c.skyBlue, 0.4], [c.navyToo, 0.2]),
  },
  {
    name: 'watercolour with watercolour',
    anchor: { ...bunting, tags: { finishes: ['watercolour'], motifs: ['floral'] } },
    candidate: { ...bunting, tags: { finishes: ['watercolour'], motifs: ['floral'] } },
  },
  {
    name: 'a distressed print beside a photographic one',
    anchor: { ...bunting, tags: { finishes: ['distressed'] } },
    candidate: { ...bunting, tags: { finishes: ['photographic'] } },
  },
  {
    name: 'a thin sheet',
    anchor: bunting,
    candidate: { ...bunting, tags: { weight: { gsm: 110 } } },
  },
  {
    name: 'a paper read without a card',
    anchor: bunting,
    candidate: { ...bunting, lightKnown: false },
  },
  {
    name: 'an aqua and another a little off',
    anchor: onCream([c.aqua, 0.2]),
    candidate: onCream(['#6cc4bd', 0.2]),
  },
];
