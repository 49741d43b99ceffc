import {
  nearKinOf,
  nearMissOf,
  nearSameOf,
  presenceOf,
  stepsFromAnswerOf,
  tieOf,
  vividOf,
} from '../measure/link-kind.ts';
import { repeatLimit, type Tied } from '../measure/links.ts';
import type { MeasuredInk, MeasuredSide } from '../measure/measured.ts';
import type { Distance } from '../model.ts';
import { inkLimits } from '../thresholds.ts';

/** How much a link of two measured inks weighs, for or against; the arithmetic is in `meeting.ts`. */

/** What a link of its own kind weighs as a tie, 0–1; 0 where its kind ties nothing. */
export function tieWeight({ link, meeting }: Tied, distance: Distance): number {
  return tieOf(meeting, link.kind, repeatLimit(distance));
}

/** How near a link comes to tying. */
export interface NearTie {
  /** What it would weigh if every band were a little wider. */
  readonly any: number;
  /** The same, of a repeat or tone on tone only: one colour on both sheets. */
  readonly same: number;
}

/** What a link would weigh as a tie of colour if every band were a little wider: how near it comes to tying. */
export function nearTieOf({ meeting }: Tied, distance: Distance): NearTie {
  const limit = repeatLimit(distance);
  const same = nearSameOf(meeting, limit);
  return { same, any: Math.max(same, nearKinOf(meeting, limit)) };
}

/** What a near miss weighs, 0–1, if nothing answers it. */
export function nearMissWeight({ meeting }: Tied, distance: Distance): number {
  return nearMissOf(meeting, repeatLimit(distance));
}

/** How vivid a strong ink is, 0–1. */
export function vividness(ink: MeasuredInk): number {
  return vividOf(ink.chroma) * ink.counts;
}

/** How strongly coloured the strongest visible ink of a side is, 0 (quiet) to 1. */
export function presence(side: MeasuredSide): number {
  const strong = side.inks
    .filter((ink) => ink.actsAs === null && ink.share >= inkLimits.strayShare)
    .map((ink) => presenceOf(ink.chroma) * ink.counts);
  return Math.max(0, ...strong);
}

/** How far a link lies outside the nearest band that would answer, in hue steps; 0 inside one. */
export function stepsFromAnswer({ link, meeting }: Tied, distance: Distance): number {
  return stepsFromAnswerOf(meeting, link.kind, repeatLimit(distance));
}
