import type { Planes } from '../planes.ts';

/** What windows of 3 × 3 pixels centred on one row hold. Indexed by x; `spread` is −1 where the window leaves the sheet. */
export interface WindowRow {
  readonly l: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  /** Standard deviation over L, 2a and 2b together. */
  readonly spread: Float32Array;
}

/** Mean colour and spread of the 3 × 3 windows of every `step`-th row (of those `wanted`), one row at a time; the arrays are used again. */
export function eachWindowRow(
  planes: Planes,
  step: number,
  each: (y: number, row: WindowRow) => void,
  wanted?: (y: number) => boolean,
): void {
  const { width, height, on } = planes;
  if (width < 3 || height < 3) return;
  const whole = planes.count === width * height;
  const row: WindowRow = {
    l: new Float32Array(width),
    a: new Float32Array(width),
    b: new Float32Array(width),
    spread: new Float32Array(width).fill(-1),
  };
  const sums = {
    l: new Float32Array(width),
    a: new Float32Array(width),
    b: new Float32Array(width),
    q: new Float32Array(width),
  };
  // Every `step`-th row on the whole, but not in step with what is drawn on even rows.
  for (let y = 1, n = 0; y < height - 1; y += step > 1 ? step - 1 + (n++ % 3) : 1) {
    if (wanted && !wanted(y)) continue;
    columnSums(planes, y, sums);
    rowOf(sums, row, width);
    if (!whole) markOff(on, y, width, row.spread);
    each(y, row);
  }
}

interface Sums {
  readonly l: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  readonly q: Float32Array;
}

function columnSums({ width, l, a, b }: Planes, y: number, sums: Sums): void {
  const { l: sl, a: sa, b: sb, q } = sums;
  let i = (y - 1) * width;
  let j = y * width;
  let k = (y + 1) * width;
  for (let x = 0; x < width; x++, i++, j++, k++) {
    const l0 = l[i]!;
    const l1 = l[j]!;
    const l2 = l[k]!;
    const a0 = a[i]!;
    const a1 = a[j]!;
    const a2 = a[k]!;
    const b0 = b[i]!;
    const b1 = b[j]!;
    const b2 = b[k]!;
    sl[x] = l0 + l1 + l2;
    sa[x] = a0 + a1 + a2;
    sb[x] = b0 + b1 + b2;
    q[x] = l0 * l0 + l1 * l1 + l2 * l2 + a0 * a0 + a1 * a1 + a2 * a2 + b0 * b0 + b1 * b1 + b2 * b2;
  }
}

function rowOf({ l, a, b, q }: Sums, row: WindowRow, width: number): void {
  const { l: ml, a: ma, b: mb, spread } = row;
  for (let x = 1; x < width - 1; x++) {
    const u = (l[x - 1]! + l[x]! + l[x + 1]!) / 9;
    const v = (a[x - 1]! + a[x]! + a[x + 1]!) / 9;
    const w = (b[x - 1]! + b[x]! + b[x + 1]!) / 9;
    const variance = (q[x - 1]! + q[x]! + q[x + 1]!) / 9 - u * u - v * v - w * w;
    ml[x] = u;
    ma[x] = v;
    mb[x] = w;
    spread[x] = variance > 0 ? Math.sqrt(variance) : 0;
  }
}

function markOff(on: Uint8Array, y: number, width: number, spread: Float32Array): void {
  for (let x = 1; x < width - 1; x++) {
    const i = y * width + x;
    const all =
      on[i - width - 1]! &
      on[i - width]! &
      on[i - width + 1]! &
      on[i - 1]! &
      on[i]! &
      on[i + 1]! &
      on[i + width - 1]! &
      on[i + width]! &
      on[i + width + 1]!;
    if (!all) spread[x] = -1;
  }
}
