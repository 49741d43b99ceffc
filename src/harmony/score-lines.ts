import type { Side } from '../sheet/model.ts';
import { missSizeOf, presenceOf, seenOf, sizeOf, strongOf, tintOf } from './meeting.ts';
import { at as colourAt, measureInto, neutralKinds } from './quick-colour.ts';
import { takeSide } from './take-side.ts';
import { inkLimits } from './thresholds.ts';

/** One line of numbers an ink: its colour as in `quick-colour.ts`, then what its share and chroma give. */
export const at = {
  ...colourAt,
  share: 11,
  size: 12,
  missSize: 13,
  seen: 14,
  tint: 15,
  strong: 16,
  width: 17,
} as const;

/** A side as lines of numbers, base first; the next side may be written over it. */
export interface Lines {
  data: Float64Array;
  count: number;
  /** How strongly coloured its strongest visible ink is, 0–1. */
  presence: number;
  /** True where no ink of it is strong enough to clash by hue. */
  quiet: boolean;
  /** True for a one-colour paper. */
  plain: boolean;
  /** Share-weighted means over the inks that have a hue; 0 without one. */
  chroma: number;
  saturation: number;
}

/** Empty lines, to be filled by `linesOf`. */
export function emptyLines(): Lines {
  return {
    data: new Float64Array(0),
    count: 0,
    presence: 0,
    quiet: true,
    plain: true,
    chroma: 0,
    saturation: 0,
  };
}

/**
 * The lines of many sides, measured once for as long as the list of them lives: a drawer is ranked again and again.
 * All stand in one stretch of numbers.
 */
export function linesOfAll(sides: readonly Side[]): readonly Lines[] {
  const known = kept.get(sides);
  if (known?.sides.length === sides.length && sides.every((side, i) => side === known.sides[i]))
    return known.lines;
  const whole = sides.map(wholeSide);
  const inks = whole.reduce((sum, side) => sum + side.inks.length + 1, 0);
  const data = new Float64Array(inks * at.width);
  let start = 0;
  const lines = whole.map((side) => {
    const end = start + (side.inks.length + 1) * at.width;
    const own = linesOf(side, { ...emptyLines(), data: data.subarray(start, end) });
    start = end;
    return own;
  });
  kept.set(sides, { sides: [...sides], lines });
  return lines;
}

const kept = new WeakMap<readonly Side[], { sides: readonly Side[]; lines: readonly Lines[] }>();

/** A side read by the engine is whole; one written by hand may not be. */
function isWhole({ base, inks }: Side): boolean {
  if (!inks || base.oklch === undefined || base.share === undefined) return false;
  for (const ink of inks) if (ink.oklch === undefined || ink.share === undefined) return false;
  return true;
}

function wholeSide(side: Side): Side {
  return isWhole(side) ? side : takeSide(side, 'candidate');
}

/** Measures a side into lines. The side must be whole: every ink with its OKLCH colour and its share. */
export function linesOf(side: Side, into: Lines): Lines {
  const inks = side.inks;
  into.count = inks.length + 1;
  if (into.data.length < into.count * at.width) into.data = new Float64Array(into.count * at.width);
  let sum = side.base.share;
  for (let i = 0; i < inks.length; i++) sum += inks[i]!.share;
  const { data } = into;
  for (let i = 0; i < into.count; i++) {
    const ink = i === 0 ? side.base : inks[i - 1]!;
    const o = i * at.width;
    measureInto(data, o, ink.oklch[0], ink.oklch[1], ink.oklch[2]);
    const share = sum > 0 ? ink.share / sum : 1 / into.count;
    data[o + at.share] = share;
    data[o + at.size] = sizeOf(share);
    data[o + at.missSize] = missSizeOf(share);
    data[o + at.seen] = seenOf(share);
    data[o + at.tint] = tintOf(data[o + at.chroma]!);
    data[o + at.strong] = strongOf(data[o + at.chroma]!);
  }
  const { kind } = side.base;
  if (kind === 'white' || kind === 'cream' || kind === 'kraft') data[at.neutral] = neutralKinds.indexOf(kind);
  sumUp(into);
  return into;
}

function sumUp(lines: Lines): void {
  const { data, count } = lines;
  let presence = 0;
  let quiet = true;
  let plain = true;
  let area = 0;
  let chroma = 0;
  let saturation = 0;
  for (let i = 0, o = 0; i < count; i++, o += at.width) {
    const share = data[o + at.share]!;
    if (i > 0 && share >= inkLimits.strayShare) plain = false;
    if (data[o + at.neutral] !== 0) continue;
    const c = data[o + at.chroma]!;
    area += share;
    chroma += c * share;
    saturation += data[o + at.saturation]! * share;
    if (share < inkLimits.strayShare) continue;
    presence = Math.max(presence, presenceOf(c) * data[o + at.counts]!);
    if (c >= inkLimits.quietChroma) quiet = false;
  }
  lines.presence = presence;
  lines.quiet = quiet;
  lines.plain = plain;
  lines.chroma = area > 0 ? chroma / area : 0;
  lines.saturation = area > 0 ? saturation / area : 0;
}
