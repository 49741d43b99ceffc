import type { Planes } from '../planes.ts';
import type { Mode } from './modes.ts';
import type { Softness } from './softness.ts';

/** The widest stroke that is crossed, and how much beside it is looked at, in pixels. */
const widest = 7;
const beside = 5;
/** Fewer strokes say nothing. */
const fewest = 40;
/** A soft stroke of 2–4 px does not reach its full height, so its sides look this much too steep (computed for a box blurred by a Gaussian). */
const narrower = 1.15;
/** A ground and a stroke must differ by this in OKLab lightness, or in a and b (doubled), for that to be measured. */
const leastStep = 0.1;

/**
 * How soft edges are by the two sides of thin strokes, for papers on which no broad ink meets another: each side is told from
 * its own ground to the stroke's middle. `thin` are the numbers of the inks that have hardly an inside. Null where too few can be crossed.
 */
export function strokeSoftness(
  { width, height, l, a, b }: Planes,
  colours: readonly Mode[],
  labels: Uint8Array,
  thin: readonly number[],
): Softness | null {
  const light: number[] = [];
  const colour: number[] = [];
  const isThin = new Uint8Array(256);
  for (const k of thin) isThin[k] = 1;
  const every = Math.max(1, Math.floor(Math.min(width, height) / 150)) | 1;
  const look = (i: number, step: number, other: number): void => {
    const ink = labels[i]!;
    const before = labels[i - step]!;
    if (!isThin[ink] || before === ink || before >= colours.length) return;
    let n = 1;
    while (n <= widest && labels[i + n * step] === ink) n++;
    const after = labels[i + n * step]!;
    if (n > widest || after >= colours.length) return;
    const [from, to] = [-beside, n + beside - 1];
    for (const k of [from, from + 1, -1]) if (labels[i + k * step] !== before) return;
    for (const k of [n, to - 1, to]) if (labels[i + k * step] !== after) return;
    const [c, p, q] = [colours[ink]!, colours[before]!, colours[after]!];
    if (Math.min(Math.abs(c.l - p.l), Math.abs(c.l - q.l)) > leastStep) {
      const found = sidesOf((j) => l[j]! * l[j]! * l[j]!, i, step, other, n);
      if (found !== null) light.push(found);
    }
    const [da, db] = [c.a - p.a, c.b - p.b];
    const length = Math.sqrt(da * da + db * db);
    // Along one line of a and b only where both grounds lie on one side of the stroke.
    if (length < leastStep || ((c.a - q.a) * da + (c.b - q.b) * db) / length < leastStep) return;
    const found = sidesOf((j) => (a[j]! * da + b[j]! * db) / length, i, step, other, n);
    if (found !== null) colour.push(found);
  };
  const room = widest + beside + 1;
  for (let y = room; y < height - room; y += every)
    for (let x = room; x < width - room; x++) look(y * width + x, 1, width);
  for (let x = room; x < width - room; x += every)
    for (let y = room; y < height - room; y++) look(y * width + x, width, 1);
  if (light.length < fewest && colour.length < fewest) return null;
  const byLight = middle(light.length < fewest ? colour : light);
  return { light: byLight, colour: colour.length < fewest ? byLight : Math.max(byLight, middle(colour)) };
}

/** Standard deviation of one stroke's sides, `n` pixels of it from `i` on along `step`, in a value that rises or falls over both; null where something else lies near. */
function sidesOf(
  value: (i: number) => number,
  i: number,
  step: number,
  other: number,
  n: number,
): number | null {
  const [from, to] = [-beside, n + beside - 1];
  const low = (value(i + from * step) + value(i + (from + 1) * step)) / 2;
  const high = (value(i + (to - 1) * step) + value(i + to * step)) / 2;
  let top = 0;
  let most = -1;
  for (let k = 0; k < n; k++) {
    const v = value(i + k * step);
    const off = Math.min(Math.abs(v - low), Math.abs(v - high));
    if (off > most) [top, most] = [k, off];
  }
  const peak = value(i + top * step);
  const share = (start: number, k: number): number => {
    const ground = k <= top ? low : high;
    return (value(start + k * step) - ground) / (peak - ground);
  };
  let sum = 0;
  for (let k = from; k <= to; k++) {
    const t = share(i, k);
    if ((k <= from + 1 || k >= to - 1) && !(Math.abs(t) <= 0.12)) return null;
    sum += t * (1 - t);
  }
  // A stroke that runs askew is crossed on a longer way.
  const slope = (middleAt(share, i + 2 * other, from, to) - middleAt(share, i - 2 * other, from, to)) / 4;
  if (!(Math.abs(slope) < 1.2)) return null;
  return (sum * Math.sqrt(Math.PI)) / 2 / Math.sqrt(1 + slope * slope);
}

function middleAt(
  share: (start: number, k: number) => number,
  start: number,
  from: number,
  to: number,
): number {
  let sum = 0;
  let at = 0;
  for (let k = from; k <= to; k++) {
    const t = share(start, k);
    sum += t;
    at += t * k;
  }
  return at / sum;
}

function middle(values: number[]): number {
  values.sort((p, q) => p - q);
  const sigma = values[values.length >> 1]!;
  return sigma > 0.4 ? narrower * sigma : sigma;
}
