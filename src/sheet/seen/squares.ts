import { labResponse } from '../../colour/cielab.ts';
import { whites } from '../../colour/illuminants.ts';
import { rootsOfAb, xyzOfCones } from '../../colour/oklab-digits.ts';
import type { Planes } from '../planes.ts';
import { seenNumbers } from './seen-numbers.ts';

/** A side in squares of about a millimetre: L*, a*, b* of each. */
export interface Squares {
  readonly width: number;
  readonly height: number;
  /** Side of a square on the sheet, mm. */
  readonly mm: number;
  readonly channels: readonly [Float64Array, Float64Array, Float64Array];
  /** 1 where the square lies on the sheet. */
  readonly on: Uint8Array;
}

/** Averages of squares, each pixel by the area it shares with them; squares off the sheet take the mean colour. */
export function squaresOf(planes: Planes, mmPerPixel: number): Squares {
  const longer = Math.max(planes.width, planes.height);
  const mm = Math.max(
    seenNumbers.squareMm,
    (longer * mmPerPixel) / seenNumbers.mostSquares,
    // No square is smaller than a pixel.
    mmPerPixel,
  );
  const width = Math.max(1, Math.round((planes.width * mmPerPixel) / mm));
  const height = Math.max(1, Math.round((planes.height * mmPerPixel) / mm));
  const [weight, l, a, b] = summed(planes, width, height);
  const channels = [0, 1, 2].map(() => new Float64Array(width * height)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const on = new Uint8Array(width * height);
  const sum = [0, 0, 0];
  let n = 0;
  for (let i = 0; i < on.length; i++) {
    const w = weight![i]!;
    if (w < 0.5) continue;
    on[i] = 1;
    n++;
    toLab(l![i]! / w, a![i]! / w / 2, b![i]! / w / 2, channels, i);
    for (let k = 0; k < 3; k++) sum[k]! += channels[k]![i]!;
  }
  for (let i = 0; i < on.length; i++)
    if (!on[i]) for (let k = 0; k < 3; k++) channels[k]![i] = n ? sum[k]! / n : 0;
  return { width, height, mm, channels, on };
}

/**
 * Sums of what lies on the sheet in each square, as parts of the square: how much of it is on, and L, a and b by that. A pixel on a
 * border counts on both sides by its area.
 */
function summed(planes: Planes, width: number, height: number): Float64Array[] {
  const [across, down] = [placesIn(planes.width, width), placesIn(planes.height, height)];
  const out = [0, 1, 2, 3].map(() => new Float64Array(width * height));
  const rows = [0, 1, 2, 3].map(() => new Float64Array(width + 1));
  const [on, l, a, b] = rows as [Float64Array, Float64Array, Float64Array, Float64Array];
  const area = (width * height) / (planes.width * planes.height);
  for (let y = 0, i = 0; y < planes.height; y++) {
    for (const row of rows) row.fill(0);
    for (let x = 0; x < planes.width; x++, i++) {
      if (!planes.on[i]) continue;
      const c = across.place[x]!;
      const part = across.part[x]!;
      const rest = 1 - part;
      const [pl, pa, pb] = [planes.l[i]!, planes.a[i]!, planes.b[i]!];
      on[c]! += part;
      l[c]! += part * pl;
      a[c]! += part * pa;
      b[c]! += part * pb;
      if (rest > 0) {
        on[c + 1]! += rest;
        l[c + 1]! += rest * pl;
        a[c + 1]! += rest * pa;
        b[c + 1]! += rest * pb;
      }
    }
    const start = down.place[y]! * width;
    const [here, below] = [down.part[y]! * area, (1 - down.part[y]!) * area];
    for (let k = 0; k < 4; k++)
      for (let x = 0; x < width; x++) {
        out[k]![start + x]! += here * rows[k]![x]!;
        if (below > 0) out[k]![start + width + x]! += below * rows[k]![x]!;
      }
  }
  return out;
}

/** For each of `from` places, the first of `to` squares that it lies in, and the part of it that does; the rest lies in the next. */
function placesIn(from: number, to: number): { place: Int32Array; part: Float64Array } {
  const place = new Int32Array(from);
  const part = new Float64Array(from);
  for (let i = 0; i < from; i++) {
    const [start, end] = [(i * to) / from, ((i + 1) * to) / from];
    const first = Math.min(to - 1, Math.floor(start + 1e-9));
    place[i] = first;
    part[i] = first === to - 1 ? 1 : Math.min(1, (first + 1 - start) / (end - start));
  }
  return { place, part };
}

const [la, lb, ma, mb, sa, sb] = rootsOfAb;
const [xl, xm, xs, yl, ym, ys, zl, zm, zs] = xyzOfCones;
const { x: whiteX, z: whiteZ } = whites.D65;

/** CIELAB D65 of OKLab, written to a place. Source: Ottosson 2020 with the digits of CSS Color 4, taken straight to XYZ. */
function toLab(l: number, a: number, b: number, to: readonly Float64Array[], i: number): void {
  const [p, q, r] = [l + la * a + lb * b, l + ma * a + mb * b, l + sa * a + sb * b];
  const [long, middle, short] = [p * p * p, q * q * q, r * r * r];
  const x = labResponse((xl * long + xm * middle + xs * short) / whiteX);
  const y = labResponse(yl * long + ym * middle + ys * short);
  const z = labResponse((zl * long + zm * middle + zs * short) / whiteZ);
  to[0]![i] = 116 * y - 16;
  to[1]![i] = 500 * (x - y);
  to[2]![i] = 200 * (y - z);
}
