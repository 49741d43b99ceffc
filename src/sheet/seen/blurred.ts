import { steadyExp } from '../../colour/steady.ts';

/** A plane blurred by a Gaussian of this standard deviation in its own squares; at the border it is mirrored. */
export function blurred(plane: Float64Array, width: number, height: number, sd: number): Float64Array {
  if (sd < leastSd) return plane;
  if (sd >= wide) {
    const widths = meansFor(sd);
    return byMeans(byMeans(plane, width, height, widths), height, width, widths);
  }
  const half = weightsOf(sd);
  return along(along(plane, width, height, half), height, width, half);
}

/** Below this a blur is within a tenth of a square and changes next to nothing. */
const leastSd = 0.25;
/** From here on three running means are as good as a Gaussian, and take as long for any width. */
const wide = 2;

function weightsOf(sd: number): Float64Array {
  const reach = Math.ceil(3 * sd);
  const half = Float64Array.from({ length: reach + 1 }, (_, i) => steadyExp((-i * i) / (2 * sd * sd)));
  const sum = half.reduce((s, v, i) => s + (i ? 2 * v : v), 0);
  return half.map((v) => v / sum);
}

/** Blurs along the lines and turns the plane over its diagonal, so that twice is a blur both ways, the right way up. */
function along(plane: Float64Array, width: number, height: number, half: Float64Array): Float64Array {
  const out = new Float64Array(plane.length);
  const reach = half.length - 1;
  const line = new Float64Array(width + 2 * reach);
  for (let y = 0; y < height; y++) {
    for (let i = -reach; i < width + reach; i++) line[i + reach] = plane[y * width + mirrored(i, width)]!;
    for (let x = 0; x < width; x++) {
      const at = x + reach;
      let sum = half[0]! * line[at]!;
      for (let k = 1; k <= reach; k++) sum += half[k]! * (line[at - k]! + line[at + k]!);
      out[x * height + y] = sum;
    }
  }
  return out;
}

/** Reaches of three running means (2 r + 1 squares wide) whose variances, (w² − 1) / 12 each, sum to that of the Gaussian as near as whole squares allow. */
function meansFor(sd: number): number[] {
  const variance = (r: number): number => ((2 * r + 1) ** 2 - 1) / 12;
  const low = Math.max(0, Math.floor((Math.sqrt(4 * sd * sd + 1) - 1) / 2));
  const choices = [0, 1, 2, 3].map((more) => Array.from({ length: 3 }, (_, i) => low + (i < more ? 1 : 0)));
  const off = (reaches: readonly number[]): number =>
    Math.abs(reaches.reduce((sum, r) => sum + variance(r), 0) - sd * sd);
  return choices.reduce((best, one) => (off(one) < off(best) ? one : best));
}

/** As `along`, by running means. */
function byMeans(
  plane: Float64Array,
  width: number,
  height: number,
  reaches: readonly number[],
): Float64Array {
  const out = new Float64Array(plane.length);
  const pad = reaches.reduce((sum, r) => sum + r, 0);
  const from = Int32Array.from({ length: width + 2 * pad }, (_, i) => mirrored(i - pad, width));
  let line = new Float64Array(from.length);
  let next = new Float64Array(from.length);
  for (let y = 0; y < height; y++) {
    for (let i = 0; i < from.length; i++) line[i] = plane[y * width + from[i]!]!;
    let margin = 0;
    for (const r of reaches) {
      const span = 2 * r + 1;
      let sum = 0;
      for (let i = margin; i < margin + span - 1; i++) sum += line[i]!;
      margin += r;
      for (let i = margin; i < from.length - margin; i++) {
        sum += line[i + r]!;
        next[i] = sum / span;
        sum -= line[i - r]!;
      }
      [line, next] = [next, line];
    }
    for (let x = 0; x < width; x++) out[x * height + y] = line[x + pad]!;
  }
  return out;
}

function mirrored(i: number, n: number): number {
  const turn = ((i % (2 * n)) + 2 * n) % (2 * n);
  return turn < n ? turn : 2 * n - 1 - turn;
}
