import { ciede2000At, type Numbers } from './ciede2000.ts';
import { cubeRoot } from './cube-root.ts';
import { linearFromEncoded } from './spaces.ts';

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
  const linear = linearTable();
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
    const l = root(0.412221469470763 * r + 0.5363325372617348 * g + 0.0514459932675022 * b);
    const m = root(0.2119034958178252 * r + 0.6806995506452344 * g + 0.1073969535369406 * b);
    const s = root(0.0883024591900564 * r + 0.2817188391361215 * g + 0.6299787016738222 * b);
    const grey = red === green && green === blue;
    out[o] = 0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s;
    out[o + 1] = grey ? 0 : 1.9779985324311684 * l - 2.4285922420485799 * m + 0.450593709617411 * s;
    out[o + 2] = grey ? 0 : 0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s;
  }
  return out;
}

/** CIELAB D65 of 8-bit sRGB; arguments as for `oklabFromBytes`. Source: CSS Color 4, CIE 015:2018. */
export function labFromBytes(bytes: Bytes, stride = 4, out: Numbers = room(bytes, stride)): Numbers {
  const linear = linearTable();
  const root = cubeRoot;
  const end = bytes.length - stride;
  for (let i = 0, o = 0; i <= end; i += stride, o += 3) {
    const red = bytes[i]!;
    const green = bytes[i + 1]!;
    const blue = bytes[i + 2]!;
    const r = linear[red]!;
    const g = linear[green]!;
    const b = linear[blue]!;
    const x = (0.4123907992659593 * r + 0.357584339383878 * g + 0.1804807884018343 * b) / whiteX;
    const y = 0.2126390058715102 * r + 0.715168678767756 * g + 0.0721923153607337 * b;
    const z = (0.0193308187155918 * r + 0.119194779794626 * g + 0.9505321522496607 * b) / whiteZ;
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

/** D65 from its chromaticity 0.3127, 0.3290. */
const whiteX = 0.3127 / 0.329;
const whiteZ = (1 - 0.3127 - 0.329) / 0.329;
const epsilon = 216 / 24389;
const kappa = 24389 / 27;

let kept: Float64Array | undefined;

/** Linear light of the 256 values of a byte. */
function linearTable(): Float64Array {
  kept ??= Float64Array.from({ length: 256 }, (_, i) => linearFromEncoded(i / 255));
  return kept;
}

function room(bytes: Bytes, stride: number): Float64Array {
  return new Float64Array(Math.floor(bytes.length / stride) * 3);
}
