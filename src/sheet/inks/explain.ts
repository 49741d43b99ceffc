import { steadyCos, steadySin } from '../../colour/steady.ts';
import type { Planes } from '../planes.ts';
import { cellCount, cellOf, middleOf } from './cells.ts';
import { nothing } from './label-counts.ts';
import { Edges } from './mixtures.ts';

interface Colour3 {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** Every pixel told as an ink, an edge between two inks near it, or neither. */
export interface Explained {
  /** The ink at each pixel: on an edge the one that has more of it; where nothing explains the pixel, the nearest. */
  readonly labels: Uint8Array;
  /** How far each pixel is from its explanation, in steps of 1/200; 0 where it is explained. */
  readonly off: Uint8Array;
  /** How many pixels each ink covers, edges shared out by linear light. */
  readonly amounts: Float64Array;
  /** The pixels that nothing explains. */
  readonly open: Int32Array;
}

/** Steps of `off` in a unit of OKLab. */
const offSteps = 200;
/** How far around an edge the inks on its two sides are looked for, in pixels. */
const reach = 4;

/** Which cell of a histogram of colours each pixel falls into, the cells numbered as they were first met. */
export interface PixelCells {
  /** Number of each pixel's cell; 0 where it is not of the sheet. */
  readonly of: Int32Array;
  /** How many cells there are, and number 0, which is none. */
  readonly count: number;
  /** The colour in the middle of each cell, L, a and b one after the other, and its pixels. */
  readonly middle: Float64Array;
  readonly pixels: Int32Array;
}

/** Number of each cell of the histogram in the picture at hand; all nought between two pictures. */
let numberOf: Int32Array | null = null;

/** Found once, for a picture is explained several times. */
export function pixelCells({ l, a, b, on }: Planes): PixelCells {
  const of = new Int32Array(l.length);
  const number = (numberOf ??= new Int32Array(cellCount));
  const cells = [0];
  for (let i = 0; i < of.length; i++) {
    if (!on[i]) continue;
    const at = cellOf(l[i]!, a[i]!, b[i]!);
    let n = number[at]!;
    if (n === 0) {
      n = number[at] = cells.length;
      cells.push(at);
    }
    of[i] = n;
  }
  const count = cells.length;
  const middle = new Float64Array(3 * count);
  for (let n = 1; n < count; n++) {
    number[cells[n]!] = 0;
    middle.set(middleOf(cells[n]!), 3 * n);
  }
  const pixels = new Int32Array(count);
  for (let i = 0; i < of.length; i++) pixels[of[i]!]!++;
  return { of, count, middle, pixels };
}

/** Explains every pixel by these colours (a and b doubled). `near` is how close an explanation must come. */
export function explain(
  planes: Planes,
  { of, count, middle, pixels }: PixelCells,
  colours: readonly Colour3[],
  near: number,
): Explained {
  const amounts = new Float64Array(colours.length);
  const nearest = new Uint8Array(count).fill(nothing);
  const far = new Uint8Array(count);
  let waiting = 0;
  for (let n = 1; n < count; n++) {
    let best = 1e9;
    let at = 0;
    for (let k = 0; k < colours.length; k++) {
      const d = distance2(colours[k]!, middle[3 * n]!, middle[3 * n + 1]!, middle[3 * n + 2]!);
      if (d < best) {
        best = d;
        at = k;
      }
    }
    nearest[n] = at;
    if (best > near * near) {
      far[n] = 255;
      waiting += pixels[n]!;
    } else amounts[at]! += pixels[n]!;
  }
  const labels = new Uint8Array(of.length);
  const off = new Uint8Array(of.length);
  const list = new Int32Array(waiting);
  for (let i = 0, w = 0; i < of.length; i++) {
    const n = of[i]!;
    labels[i] = nearest[n]!;
    if (far[n]) {
      off[i] = 255;
      list[w++] = i;
    }
  }
  const open = shareEdges(planes, colours, near, labels, off, amounts, list);
  return { labels, off, amounts, open };
}

/** The same with more colours: `colours` begins with those that explained before. Only what was open is looked at again. */
export function explainMore(
  planes: Planes,
  before: Explained,
  colours: readonly Colour3[],
  near: number,
): Explained {
  const { labels, off, open } = before;
  const { l, a, b } = planes;
  const fresh = before.amounts.length;
  const amounts = new Float64Array(colours.length);
  amounts.set(before.amounts);
  let waiting = 0;
  const list = new Int32Array(open.length);
  for (const i of open) {
    amounts[labels[i]!]!--;
    let best = distance2(colours[labels[i]!]!, l[i]!, a[i]!, b[i]!);
    for (let k = fresh; k < colours.length; k++) {
      const d = distance2(colours[k]!, l[i]!, a[i]!, b[i]!);
      if (d >= best) continue;
      best = d;
      labels[i] = k;
    }
    if (best <= near * near) {
      off[i] = 0;
      amounts[labels[i]!]!++;
    } else {
      off[i] = 255;
      list[waiting++] = i;
    }
  }
  const left = shareEdges(planes, colours, near, labels, off, amounts, list.subarray(0, waiting));
  return { labels, off, amounts, open: left };
}

function distance2(c: Colour3, l: number, a: number, b: number): number {
  return (c.l - l) ** 2 + (c.a - a) ** 2 + (c.b - b) ** 2;
}

/** Tells which waiting pixels are edges between inks that lie near them; those that are not are handed back. */
function shareEdges(
  { width, height, l, a, b }: Planes,
  colours: readonly Colour3[],
  near: number,
  labels: Uint8Array,
  off: Uint8Array,
  amounts: Float64Array,
  waiting: Int32Array,
): Int32Array {
  const ring = ringSteps(width);
  const edges = new Edges(colours);
  const here = new Uint8Array(mostHere);
  const blocksAcross = (width + 3) >> 2;
  const most = mostAbout(labels, off, width, height, colours.length);
  // The label of what is explained, and nothing for the rest: one look in place of two.
  const sure = new Uint8Array(labels.length);
  for (let i = 0; i < sure.length; i++) sure[i] = off[i] === 0 ? labels[i]! : nothing;
  // Told labels wait until the end, so that a pixel never leans on another that was itself told as an edge.
  const told = new Uint8Array(waiting.length).fill(nothing);
  let open = 0;
  for (let w = 0; w < waiting.length; w++) {
    const i = waiting[w]!;
    const x = i % width;
    const y = (i - x) / width;
    const k = labels[i]!;
    const pl = l[i]!;
    const pa = a[i]!;
    const pb = b[i]!;
    let least = Math.sqrt(distance2(colours[k]!, pl, pa, pb));
    let first = -1;
    let second = -1;
    let n = 0;
    let last = nothing;
    // With one colour about there is no edge.
    const few = most[(y >> 2) * blocksAcross + (x >> 2)]!;
    if (few > 1 && x >= reach && y >= reach && x < width - reach && y < height - reach)
      for (let s = 0; s < ring.length && n < few; s++) {
        const m = sure[i + ring[s]!]!;
        if (m === last || m === nothing) continue;
        last = m;
        let seen = false;
        for (let e = 0; e < n; e++) if (here[e] === m) seen = true;
        if (!seen) here[n++] = m;
      }
    for (let p = 1; p < n; p++)
      for (let q = 0; q < p; q++) {
        const d = edges.between(here[p]!, here[q]!).off(pl, pa, pb, least);
        if (d >= least) continue;
        least = d;
        first = Math.min(here[p]!, here[q]!);
        second = Math.max(here[p]!, here[q]!);
      }
    if (first >= 0 && least <= near) {
      const t = edges.between(first, second).share(pl, pa, pb);
      amounts[first]! += 1 - t;
      amounts[second]! += t;
      told[w] = t < 0.5 ? first : second;
    } else {
      amounts[k]!++;
      open++;
      off[i] = Math.min(254, Math.max(1, Math.round(least * offSteps)));
    }
  }
  const left = new Int32Array(open);
  for (let w = 0, n = 0; w < waiting.length; w++) {
    const i = waiting[w]!;
    if (told[w] === nothing) left[n++] = i;
    else {
      labels[i] = told[w]!;
      off[i] = 0;
    }
  }
  return left;
}

/** How many inks an edge is looked for between. */
const mostHere = 8;

/** For each block of 4 × 4 pixels, how many labels its explained pixels and those of the blocks about it have, up to eight: no pixel in it has more on its rings. */
function mostAbout(
  labels: Uint8Array,
  off: Uint8Array,
  width: number,
  height: number,
  inks: number,
): Uint8Array {
  const across = (width + 3) >> 2;
  const down = (height + 3) >> 2;
  const out = new Uint8Array(across * down);
  // A bit a label.
  if (inks > 31) return out.fill(mostHere);
  const bits = new Int32Array(across * down);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0, row = (y >> 2) * across; x < width; x++, i++)
      if (off[i] === 0 && labels[i] !== nothing) bits[row + (x >> 2)]! |= 1 << labels[i]!;
  for (let y = 0; y < down; y++)
    for (let x = 0; x < across; x++) {
      let about = 0;
      for (let v = Math.max(0, y - 1); v <= Math.min(down - 1, y + 1); v++)
        for (let u = Math.max(0, x - 1); u <= Math.min(across - 1, x + 1); u++)
          about |= bits[v * across + u]!;
      let n = 0;
      for (; about !== 0; about &= about - 1) n++;
      out[y * across + x] = Math.min(mostHere, n);
    }
  return out;
}

/** Places on four rings about a pixel, nearest first, as steps in a plane. */
function ringSteps(width: number): Int32Array {
  const steps = new Set<number>();
  for (let radius = 1; radius <= reach; radius++)
    for (let k = 0; k < 8; k++) {
      const t = ((k + (radius % 2) / 2) * Math.PI) / 4;
      steps.add(Math.round(radius * steadySin(t)) * width + Math.round(radius * steadyCos(t)));
    }
  return Int32Array.from(steps);
}
