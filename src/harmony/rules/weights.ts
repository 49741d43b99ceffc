import { nearMissOf, tieOf, vividOf } from '../measure/link-kind.ts';
import { repeatLimit, type Tied } from '../measure/links.ts';
import type { MeasuredInk } from '../measure/measured.ts';
import type { Distance } from '../model.ts';

/** How much a link of two measured inks weighs, for or against; the arithmetic is in `link-kind.ts`. */

/** What a link of its own kind weighs as a tie, 0–1; 0 where its kind ties nothing. */
export function tieWeight({ link, linkNumbers }: Tied, distance: Distance): number {
  return tieOf(linkNumbers, link.kind, repeatLimit(distance));
}

/** What a near miss weighs, 0–1, if nothing answers it. */
export function nearMissWeight({ linkNumbers }: Tied, distance: Distance): number {
  return nearMissOf(linkNumbers, repeatLimit(distance));
}

/** How vivid a strong ink is, 0–1. */
export function vividness(ink: MeasuredInk): number {
  return vividOf(ink.chroma) * ink.counts;
}
