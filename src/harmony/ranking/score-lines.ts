import type { Side } from '../../sheet/model.ts';
import { atChroma, atCounts, atNeutral, atSaturation, atShare, lineWidth } from '../measure/fade.ts';
import { presenceOf } from '../measure/link-kind.ts';
import { giveInto, measureHuesInto, measureLabInto, neutralKinds } from '../measure/quick-colour.ts';
import { takeSide } from '../measure/take-side.ts';
import { inkLimits } from '../thresholds.ts';

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

/**
 * The lines of many sides in one stretch of numbers; each is measured when it is first asked for. What was given is
 * fetched before, of all of them in one go: far-flung as it lies, that would be half of the work side by side, and takes
 * a fifth of the time where nothing stands between one fetch and the next.
 */
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
    for (let i = 0; i < sides.length; i++)
      if (!fetched(sides[i]!, this.data, this.starts[i]!)) this.marks[i] = marked.lacking;
  }

  /** The lines of one side, written into `into`, which comes back. */
  of(index: number, into: Lines): Lines {
    const { starts, sums, marks } = this;
    into.data = this.data;
    into.start = starts[index]!;
    into.count = (starts[index + 1]! - into.start) / lineWidth;
    const mark = marks[index]!;
    if ((mark & marked.measured) === 0) return this.measure(index, into);
    into.presence = sums[3 * index]!;
    into.chroma = sums[3 * index + 1]!;
    into.saturation = sums[3 * index + 2]!;
    into.quiet = (mark & marked.quiet) !== 0;
    into.plain = (mark & marked.plain) !== 0;
    return into;
  }

  private measure(index: number, into: Lines): Lines {
    const side = this.sides[index]!;
    if (this.marks[index] === marked.lacking) linesOf(takeSide(side, 'candidate'), into);
    else measure(into, groundOf(side));
    this.sums[3 * index] = into.presence;
    this.sums[3 * index + 1] = into.chroma;
    this.sums[3 * index + 2] = into.saturation;
    this.marks[index] = marked.measured | (into.quiet ? marked.quiet : 0) | (into.plain ? marked.plain : 0);
    return into;
  }
}

const marked = { measured: 1, quiet: 2, plain: 4, lacking: 8 } as const;

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
  into.count = side.inks.length + 1;
  if (into.data.length < into.start + into.count * lineWidth)
    into.data = new Float64Array(into.start + into.count * lineWidth);
  fetched(side, into.data, into.start);
  measure(into, groundOf(side));
  return into;
}

/** Writes what was given of a side into its lines; false where something is lacking, as in one written by hand. */
function fetched({ base, inks }: Side, data: Float64Array, start: number): boolean {
  if (inks === undefined) return false;
  for (let i = 0, o = start; i <= inks.length; i++, o += lineWidth) {
    const { oklch, share } = i === 0 ? base : inks[i - 1]!;
    if (oklch === undefined || share === undefined) return false;
    giveInto(data, o, oklch[0], oklch[1], oklch[2]);
    data[o + atShare] = share;
  }
  return true;
}

/** The number of the neutral that a base is by its kind; 0 where its colour has to say. */
function groundOf({ base: { kind } }: Side): number {
  return kind === 'white' || kind === 'cream' || kind === 'kraft' ? neutralKinds.indexOf(kind) : 0;
}

/** Measures lines into which was written what was given. */
function measure(into: Lines, ground: number): void {
  const { data, start, count } = into;
  let sum = 0;
  for (let i = 0, o = start; i < count; i++, o += lineWidth) sum += data[o + atShare]!;
  for (let i = 0, o = start; i < count; i++, o += lineWidth) {
    measureLabInto(data, o);
    if (i === 0 && ground !== 0) data[o + atNeutral] = ground;
    if (data[o + atNeutral] === 0) measureHuesInto(data, o);
    const share = sum > 0 ? data[o + atShare]! / sum : 1 / count;
    data[o + atShare] = share;
  }
  sumUp(into);
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
