import { ciede2000At, type Numbers } from './ciede2000.ts';
import { labEpsilon, labKappa } from './cielab.ts';
import { cubeRoot } from './cube-root.ts';
import { whites } from './illuminants.ts';
import { linearOfByte } from './light-tables.ts';
import { conesOfRgb, labOfRoots } from './oklab-digits.ts';
import { xyzOfRgb } from './srgb-digits.ts';

/**
 * The hot paths on typed arrays, three numbers a colour. Differences are the scalar forms' own arithmetic, bit for bit;
 * conversions use our own cube root and agree with the scalar forms to 1e-14 in OKLab and 1e-12 in CIELAB.
 */
export type { Numbers };
export type Bytes = Uint8Array | Uint8ClampedArray;

/**
 * OKLab of 8-bit sRGB.
 * `stride` is the number of bytes a pixel (default 4, RGBA; alpha is not looked at). Writes to `out` (three numbers a
 * pixel; made where none is given) and returns it.
 * Source: Ottosson 2020, with the digits of CSS Color 4.
 */
export function oklabFromBytes(bytes: Bytes, stride = 4, out: Numbers = room(bytes, stride)): Numbers {
  const linear = linearOfByte;
  // A local name, so that no loader's wrapping of imports stands in the loop.
  const root = cubeRoot;
  const end = bytes.length - stride;
  for (let i = 0, o = 0; i <= end; i += stride, o += 3) {
    const red = bytes[i]!;
    const green = bytes[i + 1]!;
    const blue = bytes[i + 2]!;
    const r = linear[red]!;
    const g = linear[green]!;
    const b = linear[blue]!;
    const l = root(longRed * r + longGreen * g + longBlue * b);
    const m = root(middleRed * r + middleGreen * g + middleBlue * b);
    const s = root(shortRed * r + shortGreen * g + shortBlue * b);
    const grey = red === green && green === blue;
    out[o] = lightLong * l + lightMiddle * m + lightShort * s;
    out[o + 1] = grey ? 0 : aLong * l + aMiddle * m + aShort * s;
    out[o + 2] = grey ? 0 : bLong * l + bMiddle * m + bShort * s;
  }
  return out;
}

/** CIELAB D65 of 8-bit sRGB; arguments as for `oklabFromBytes`. Source: CSS Color 4, CIE 015:2018. */
export function labFromBytes(bytes: Bytes, stride = 4, out: Numbers = room(bytes, stride)): Numbers {
  const linear = linearOfByte;
  const root = cubeRoot;
  const end = bytes.length - stride;
  for (let i = 0, o = 0; i <= end; i += stride, o += 3) {
    const red = bytes[i]!;
    const green = bytes[i + 1]!;
    const blue = bytes[i + 2]!;
    const r = linear[red]!;
    const g = linear[green]!;
    const b = linear[blue]!;
    const x = (xRed * r + xGreen * g + xBlue * b) / whiteX;
    const y = yRed * r + yGreen * g + yBlue * b;
    const z = (zRed * r + zGreen * g + zBlue * b) / whiteZ;
    const fx = x > epsilon ? root(x) : (kappa * x + 16) / 116;
    const fy = y > epsilon ? root(y) : (kappa * y + 16) / 116;
    const fz = z > epsilon ? root(z) : (kappa * z + 16) / 116;
    const grey = red === green && green === blue;
    out[o] = 116 * fy - 16;
    out[o + 1] = grey ? 0 : 500 * (fx - fy);
    out[o + 2] = grey ? 0 : 200 * (fy - fz);
  }
  return out;
}

/** ΔE₀₀ of pairs: colour i of the one list with colour i of the other, CIELAB, three numbers each. */
export function deltaE2000Pairs(
  labsA: Numbers,
  labsB: Numbers,
  out: Numbers = new Float64Array(Math.floor(labsA.length / 3)),
): Numbers {
  const difference = ciede2000At;
  for (let i = 0, o = 0; i + 2 < labsA.length; i += 3, o++) out[o] = difference(labsA, i, labsB, i, false);
  return out;
}

/** ΔE₀₀ of one CIELAB colour [l, a, b] with each of many. */
export function deltaE2000FromOne(
  lab: readonly [l: number, a: number, b: number],
  labs: Numbers,
  out: Numbers = new Float64Array(Math.floor(labs.length / 3)),
): Numbers {
  const one = Float64Array.from(lab);
  for (let i = 0, o = 0; i + 2 < labs.length; i += 3, o++) out[o] = ciede2000At(one, 0, labs, i, false);
  return out;
}

/** Index of the colour nearest to (l, a, b) by ΔE OK with a and b weighted; −1 where there is none. */
export function nearestOk(l: number, a: number, b: number, oklabs: Numbers, abWeight = 1): number {
  const weight = abWeight * abWeight;
  let best = -1;
  let bestSquare = Number.POSITIVE_INFINITY;
  for (let i = 0; i + 2 < oklabs.length; i += 3) {
    const dl = oklabs[i]! - l;
    const da = oklabs[i + 1]! - a;
    const db = oklabs[i + 2]! - b;
    const square = dl * dl + weight * (da * da + db * db);
    if (square < bestSquare) {
      bestSquare = square;
      best = i / 3;
    }
  }
  return best;
}

const [longRed, longGreen, longBlue, middleRed, middleGreen, middleBlue, shortRed, shortGreen, shortBlue] =
  conesOfRgb;
const [lightLong, lightMiddle, lightShort, aLong, aMiddle, aShort, bLong, bMiddle, bShort] = labOfRoots;
const [xRed, xGreen, xBlue, yRed, yGreen, yBlue, zRed, zGreen, zBlue] = xyzOfRgb;
const { x: whiteX, z: whiteZ } = whites.D65;
const epsilon = labEpsilon;
const kappa = labKappa;

function room(bytes: Bytes, stride: number): Float64Array {
  return new Float64Array(Math.floor(bytes.length / stride) * 3);
}
