import { packedMachado } from '../../reference-data/colour-vision/machado.ts';
import { deltaE2000 } from './difference.ts';
import { type Matrix, type Triple, times } from './matrix.ts';
import type { Rgb } from './model.ts';
import { labFromRgb, linearFromRgb, rgbFromLinear } from './spaces.ts';

/** Which cones differ: long (protan), middle (deutan) or short (tritan). */
export type VisionKind = 'protan' | 'deutan' | 'tritan';

/**
 * Gamma-encoded sRGB as an eye of this kind sees it, computed on linear light and held to 0–1.
 * `severity` runs from 0 (no difference) to 1 (the cone is missing) and is held to that.
 * Source: protan, deutan: Machado, Oliveira, Fernandes, IEEE TVCG 15(6):1291–1298 (2009), doi 10.1109/TVCG.2009.113,
 * tenths of severity interpolated. Tritan: Brettel, Viénot, Mollon, JOSA A 14:2647–2655 (1997), mixed with the original.
 */
export function seenBy(rgb: Rgb, kind: VisionKind, severity = 1): Rgb {
  const { r, g, b } = linearFromRgb(rgb);
  const [x, y, z] = seenLinear([r, g, b], kind, severity);
  return rgbFromLinear({ r: unit(x), g: unit(y), b: unit(z) });
}

/** The same on linear sRGB, held to nothing. */
export function seenLinear(linear: Triple, kind: VisionKind, severity = 1): Triple {
  const s = unit(severity);
  if (kind !== 'tritan') return times(machadoMatrix(kind, s), linear);
  const { plane, above, below } = brettelTritan;
  const side = plane[0] * linear[0] + plane[1] * linear[1] + plane[2] * linear[2];
  const seen = times(side >= 0 ? above : below, linear);
  return [mix(linear[0], seen[0], s), mix(linear[1], seen[1], s), mix(linear[2], seen[2], s)];
}

/** ΔE₀₀ (CIELAB D65) that is left between two colours for such an eye. */
export function differenceSeenBy(rgbA: Rgb, rgbB: Rgb, kind: VisionKind, severity = 1): number {
  return deltaE2000(labFromRgb(seenBy(rgbA, kind, severity)), labFromRgb(seenBy(rgbB, kind, severity)));
}

/** On linear sRGB, as in a public-domain implementation of Brettel et al. 1997. */
const brettelTritan: { readonly plane: Triple; readonly above: Matrix; readonly below: Matrix } = {
  plane: [0.03901, -0.02788, -0.01113],
  above: [1.01277, 0.13548, -0.14826, -0.01243, 0.86812, 0.14431, 0.07589, 0.805, 0.11911],
  below: [0.93678, 0.18979, -0.12657, 0.06154, 0.81526, 0.1232, -0.37562, 1.12767, 0.24796],
};

const kept = new Map<'protan' | 'deutan', readonly Matrix[]>();

function machadoMatrix(kind: 'protan' | 'deutan', severity: number): Matrix {
  let matrices = kept.get(kind);
  if (!matrices) {
    matrices = packedMachado[kind].map((row) => row.split(' ').map(Number) as unknown as Matrix);
    kept.set(kind, matrices);
  }
  const place = severity * 10;
  const low = Math.min(9, Math.floor(place));
  const high = matrices[low + 1]!;
  return matrices[low]!.map((v, i) => mix(v, high[i]!, place - low)) as unknown as Matrix;
}

function mix(a: number, b: number, share: number): number {
  return a + share * (b - a);
}

function unit(v: number): number {
  return Math.min(1, Math.max(0, v));
}
