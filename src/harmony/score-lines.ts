import type { Side } from '../sheet/model.ts';
import {
  atA,
  atB,
  atChroma,
  atCounts,
  atL,
  atMissSize,
  atNeutral,
  atSaturation,
  atSeen,
  atShare,
  atSize,
  atStrong,
  atTint,
  lineWidth,
} from './line.ts';
import { missSizeOf, presenceOf, seenOf, sizeOf, strongOf, tintOf } from './meeting.ts';
import { measureHuesInto, measureLabInto, neutralKinds } from './quick-colour.ts';
import { takeSide } from './take-side.ts';
import { inkLimits } from './thresholds.ts';

/**
 * A side as lines of numbers (see `line.ts`), base first; the next side may be written over it. Hues and value are only
 * those of an ink that does not act as a neutral.
 */
export interface Lines {
  data: Float64Array;
  /** Where its first line begins. */
  start: number;
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
    start: 0,
    count: 0,
    presence: 0.5,
    quiet: true,
    plain: true,
    chroma: 0.5,
    saturation: 0.5,
  };
}

/** The lines of many sides in one stretch of numbers; each is measured when it is first asked for. */
export class LinesOfMany {
  readonly sides: readonly Side[];
  private readonly data: Float64Array;
  /** Place of each side's first line, and of the end. */
  private readonly starts: Int32Array;
  /** What `sumUp` finds: three numbers a side, and its marks. */
  private readonly sums: Float64Array;
  private readonly marks: Uint8Array;

  constructor(sides: readonly Side[]) {
    this.sides = [...sides];
    let inks = 0;
    this.starts = new Int32Array(sides.length + 1);
    for (let i = 0; i < sides.length; i++)
      this.starts[i + 1] = (inks += (sides[i]!.inks?.length ?? 0) + 1) * lineWidth;
    this.data = new Float64Array(inks * lineWidth);
    this.sums = new Float64Array(3 * sides.length);
    this.marks = new Uint8Array(sides.length);
  }

  /** The lines of one side, written into `into`, which comes back. */
  of(index: number, into: Lines): Lines {
    const { starts, sums, marks } = this;
    into.data = this.data;
    into.start = starts[index]!;
    const mark = marks[index]!;
    if (mark === 0) return this.measure(index, into);
    into.count = (starts[index + 1]! - into.start) / lineWidth;
    into.presence = sums[3 * index]!;
    into.chroma = sums[3 * index + 1]!;
    into.saturation = sums[3 * index + 2]!;
    into.quiet = (mark & marked.quiet) !== 0;
    into.plain = (mark & marked.plain) !== 0;
    return into;
  }

  private measure(index: number, into: Lines): Lines {
    const side = this.sides[index]!;
    if (!measured(side, into)) linesOf(takeSide(side, 'candidate'), into);
    this.sums[3 * index] = into.presence;
    this.sums[3 * index + 1] = into.chroma;
    this.sums[3 * index + 2] = into.saturation;
    this.marks[index] = marked.measured | (into.quiet ? marked.quiet : 0) | (into.plain ? marked.plain : 0);
    return into;
  }
}

const marked = { measured: 1, quiet: 2, plain: 4 } as const;

/** The lines of many sides, measured once for as long as the list of them lives: a drawer is ranked again and again. */
export function linesOfAll(sides: readonly Side[]): LinesOfMany {
  const known = kept.get(sides);
  if (known?.sides.length === sides.length && sides.every((side, i) => side === known.sides[i])) return known;
  const lines = new LinesOfMany(sides);
  kept.set(sides, lines);
  return lines;
}

const kept = new WeakMap<readonly Side[], LinesOfMany>();

/** Measures a side into lines, from `start` on. It must be whole: every ink with its OKLCH colour and its share. */
export function linesOf(side: Side, into: Lines): Lines {
  measured(side, into);
  return into;
}

/** The same of a side that was written by hand and may lack something: false where it does. */
function measured({ base, inks }: Side, into: Lines): boolean {
  if (inks === undefined) return false;
  const count = inks.length + 1;
  into.count = count;
  if (into.data.length < into.start + count * lineWidth)
    into.data = new Float64Array(into.start + count * lineWidth);
  const { data, start } = into;
  // What was given is fetched first, all of it: far-flung as it lies, that is half of the work, and it runs side by side.
  let sum = 0;
  for (let i = 0, o = start; i < count; i++, o += lineWidth) {
    const { oklch, share } = i === 0 ? base : inks[i - 1]!;
    if (oklch === undefined || share === undefined) return false;
    data[o + atL] = oklch[0];
    data[o + atA] = oklch[1];
    data[o + atB] = oklch[2] ?? Number.NaN;
    data[o + atShare] = share;
    sum += share;
  }
  const { kind } = base;
  const ground = kind === 'white' || kind === 'cream' || kind === 'kraft' ? neutralKinds.indexOf(kind) : 0;
  for (let i = 0, o = start; i < count; i++, o += lineWidth) {
    const given = data[o + atB]!;
    const hue = Number.isNaN(given) ? null : given;
    measureLabInto(data, o, data[o + atL]!, data[o + atA]!, hue);
    if (i === 0 && ground !== 0) data[o + atNeutral] = ground;
    if (data[o + atNeutral] === 0) measureHuesInto(data, o, hue);
    const share = sum > 0 ? data[o + atShare]! / sum : 1 / count;
    const chroma = data[o + atChroma]!;
    data[o + atShare] = share;
    data[o + atSize] = sizeOf(share);
    data[o + atMissSize] = missSizeOf(share);
    data[o + atSeen] = seenOf(share);
    data[o + atTint] = tintOf(chroma);
    data[o + atStrong] = strongOf(chroma);
  }
  sumUp(into);
  return true;
}

function sumUp(lines: Lines): void {
  const { data, start, count } = lines;
  let presence = 0;
  let quiet = true;
  let plain = true;
  let area = 0;
  let chroma = 0;
  let saturation = 0;
  for (let i = 0, o = start; i < count; i++, o += lineWidth) {
    const share = data[o + atShare]!;
    if (i > 0 && share >= inkLimits.strayShare) plain = false;
    if (data[o + atNeutral] !== 0) continue;
    const c = data[o + atChroma]!;
    area += share;
    chroma += c * share;
    saturation += data[o + atSaturation]! * share;
    if (share < inkLimits.strayShare) continue;
    presence = Math.max(presence, presenceOf(c) * data[o + atCounts]!);
    if (c >= inkLimits.quietChroma) quiet = false;
  }
  lines.presence = presence;
  lines.quiet = quiet;
  lines.plain = plain;
  lines.chroma = area > 0 ? chroma / area : 0;
  lines.saturation = area > 0 ? saturation / area : 0;
}
