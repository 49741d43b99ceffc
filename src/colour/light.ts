import { chart24 } from '../../reference-data/chart24/chart.ts';
import { type AdaptationMethod, adaptationMatrix, adaptXyz } from './adaptation.ts';
import { deltaE2000 } from './difference.ts';
import { whites, xyzFromXyY } from './illuminants.ts';
import { leastSquares } from './least-squares.ts';
import { inverse, type Matrix, product, type Triple, times } from './matrix.ts';
import type { Lab, Rgb } from './model.ts';
import { labFromXyz } from './spaces.ts';
import { xyzOfRgb } from './srgb-digits.ts';

/** What undoes the light of a photograph: a matrix on linear sRGB, and how well it does. */
export interface LightFit {
  readonly matrix: Matrix;
  readonly from: 'white card' | 'grey card' | 'chart';
  /** ΔE₀₀ left on the chart's patches, mean and worst; null for a card, which leaves nothing to check by. */
  readonly residual: { readonly mean: number; readonly worst: number; readonly worstPatch: string } | null;
}

/** Share of light that a card reflects where nothing is said, 0–1. Common practice, no source. */
export const usualReflectance = { 'white card': 0.9, 'grey card': 0.18 } as const;

export interface CardOptions {
  /** Share of light the card reflects, 0–1. Default: the usual one of its kind. */
  readonly reflectance?: number;
  readonly method?: AdaptationMethod;
  /** How far the eye is taken to have adapted, 0–1. Default 1. */
  readonly degree?: number;
}

/**
 * Light from a card: `measured` is its colour in the photograph, in linear light. Colour by adaptation from the card's
 * white to D65, exposure from its luminance. Never take a sheet of paper for the card.
 * @throws RangeError where a channel is 0 or less: a black card tells nothing.
 * Source: as for `adaptXyz`.
 */
export function lightFromCard(
  measured: Rgb,
  kind: 'white card' | 'grey card',
  options: CardOptions = {},
): LightFit {
  const { method = 'bradford', degree = 1, reflectance = usualReflectance[kind] } = options;
  if (!(Math.min(measured.r, measured.g, measured.b) > 0))
    throw new RangeError(`The card is too dark to tell the light from: ${JSON.stringify(measured)}`);
  const [x, y, z] = times(xyzOfRgb, triple(measured));
  const adapt = adaptationMatrix({ x: x / y, y: 1, z: z / y }, whites.D65, method, degree);
  const s = reflectance / y;
  const exposed = product([s, 0, 0, 0, s, 0, 0, 0, s], adapt);
  return { matrix: product(linearFromXyz, product(exposed, xyzOfRgb)), from: kind, residual: null };
}

/**
 * Light from the 24-patch chart: `measured` are its patches in reading order, in linear light. Least squares in linear
 * light to the 1976 values, adapted from illuminant C to D65.
 * @throws RangeError where there are not 24 patches, or they do not differ enough to fit a matrix.
 * Source: `chart-24`.
 */
export function lightFromChart(measured: readonly Rgb[]): LightFit {
  if (measured.length !== chart24.length)
    throw new RangeError(`The chart has 24 patches, not ${measured.length}`);
  const seen = measured.map(triple);
  const aims = chartXyz();
  const matrix = leastSquares(
    seen,
    aims.map((xyz) => times(linearFromXyz, xyz)),
  );
  const off = seen.map((patch, i) =>
    deltaE2000(labOf(times(xyzOfRgb, times(matrix, patch))), labOf(aims[i]!)),
  );
  const worst = Math.max(...off);
  return {
    matrix,
    from: 'chart',
    residual: {
      mean: off.reduce((sum, d) => sum + d, 0) / off.length,
      worst,
      worstPatch: chart24[off.indexOf(worst)]![0],
    },
  };
}

/** Linear sRGB with the light undone; it may leave 0–1. */
export function correctLight({ r, g, b }: Rgb, { matrix }: LightFit): Rgb {
  const [red, green, blue] = times(matrix, [r, g, b]);
  return { r: red, g: green, b: blue };
}

/** The chart's 24 colours in CIELAB D65, in reading order, with their names. Source: McCamy et al. 1976, adapted. */
export function chartLabs(): { readonly name: string; readonly lab: Lab }[] {
  return chartXyz().map((xyz, i) => ({ name: chart24[i]![0], lab: labOf(xyz) }));
}

function chartXyz(): Triple[] {
  return chart24.map(([, x, y, luminance]) => {
    const xyz = adaptXyz(xyzFromXyY(x, y, luminance), whites.C, whites.D65);
    return [xyz.x, xyz.y, xyz.z];
  });
}

const linearFromXyz: Matrix = /* @__PURE__ */ inverse(xyzOfRgb);

function labOf([x, y, z]: Triple): Lab {
  return labFromXyz({ x, y, z });
}

function triple({ r, g, b }: Rgb): Triple {
  return [r, g, b];
}
