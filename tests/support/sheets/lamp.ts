import { inverse, type Matrix, times } from '../../../src/colour/matrix.ts';
import type { Dice } from './dice.ts';
import { linearOf, type Rgb3 } from './truth-colour.ts';

/**
 * What a camera makes of colours under a lamp, made three ways, none of which is the engine's own transform run backwards
 * on its own matrix (only the plain algebra of matrices is shared): an adaptation (CAT02 with incomplete white balance), gains on a camera's own channels, and spectra.
 * Each gives the new linear sRGB of any colour.
 */
export type Cast = (rgb: Rgb3) => Rgb3;

const toXyz: Matrix = [
  0.4123908, 0.3575843, 0.1804808, 0.212639, 0.7151687, 0.0721923, 0.0193308, 0.1191948, 0.9505322,
];
const cat02: Matrix = [0.7328, 0.4296, -0.1624, -0.7036, 1.6975, 0.0061, 0.003, 0.0136, 0.9834];

/** Warm by adaptation: the colours as an eye adapted to D65 would see them under a warmer white. */
export function adaptationCast(roll: Dice): Cast {
  const warmth = roll.between(0.25, 0.8);
  const exposure = roll.between(0.6, 0.92);
  const white = times(cat02, times(toXyz, [1, 1, 1]));
  // Towards illuminant A's white (CIE 15): XYZ 1.0985, 1, 0.3558.
  const warm = times(cat02, [0.9505 + warmth * (1.0985 - 0.9505), 1, 1.089 + warmth * (0.3558 - 1.089)]);
  const back = inverse(cat02);
  const fromXyz = inverse(toXyz);
  // The camera exposes so that white paper does not clip.
  const top = Math.max(...times(fromXyz, times(back, warm)));
  return (rgb) => {
    const cone = times(cat02, times(toXyz, linearOf(rgb)));
    const lit = times(
      fromXyz,
      times(back, cone.map((v, i) => (v * warm[i]!) / white[i]!) as unknown as Rgb3),
    );
    return lit.map((v) => Math.max(0, (v * exposure) / top)) as unknown as Rgb3;
  };
}

/** Wrong gains on a camera's own channels, which see the world through a matrix of their own. */
export function gainsCast(roll: Dice): Cast {
  const leak = roll.between(0.06, 0.18);
  const camera: Matrix = [
    1 - leak,
    leak * 0.8,
    leak * 0.2,
    leak * 0.5,
    1 - leak,
    leak * 0.5,
    leak * 0.1,
    leak * 1.2,
    1 - leak * 1.3,
  ];
  const gains: Rgb3 = [roll.between(0.88, 1), roll.between(0.7, 0.82), roll.between(0.42, 0.72)];
  const back = inverse(camera);
  return (rgb) => {
    const seen = times(camera, linearOf(rgb));
    return times(back, seen.map((v, i) => v * gains[i]!) as unknown as Rgb3).map((v) =>
      Math.max(0, v),
    ) as unknown as Rgb3;
  };
}

/**
 * By spectra: each colour gets a smooth reflectance that shows it under daylight (a sigmoid of a quadratic: Jakob and
 * Hanika 2019, doi:10.1111/cgf.13626), is lit by a glowing body of 2700–4200 K (Planck), and is seen by an observer fitted by
 * lobes (Wyman, Sloan and Shirley 2013, JCGT 2(2)). The camera balances for daylight, or half-way.
 */
export function spectraCast(roll: Dice): Cast {
  const kelvin = roll.between(2900, 4600);
  const exposure = roll.between(0.65, 0.92);
  const half = roll.between(0.35, 0.7);
  const lamp = wavelengths.map((nm) => planck(nm, kelvin));
  const lampWhite = seenOf(
    wavelengths.map(() => 1),
    lamp,
  );
  const scale = 1 / lampWhite[1];
  const fromXyz = inverse(toXyz);
  const white = times(fromXyz, lampWhite.map((v) => v * scale) as unknown as Rgb3);
  // A camera's half-way white balance, on its own (sRGB-like) channels.
  const balance = white.map((v) => v ** -half) as unknown as Rgb3;
  const top = Math.max(...white.map((v, i) => v * balance[i]!));
  return (rgb) => {
    const xyz = seenOf(reflectanceOf(rgb), lamp).map((v) => v * scale) as unknown as Rgb3;
    return times(fromXyz, xyz).map((v, i) =>
      Math.max(0, (v * balance[i]! * exposure) / top),
    ) as unknown as Rgb3;
  };
}

const wavelengths: readonly number[] = Array.from({ length: 65 }, (_, i) => 400 + 5 * i);

function planck(nm: number, kelvin: number): number {
  const m = nm * 1e-9;
  return 1e-13 / (m ** 5 * (Math.exp(0.014387769 / (m * kelvin)) - 1));
}

function lobe(nm: number, middle: number, below: number, above: number): number {
  const t = (nm - middle) * (nm < middle ? below : above);
  return Math.exp(-0.5 * t * t);
}

const observer: readonly Rgb3[] = wavelengths.map((nm) => [
  0.362 * lobe(nm, 442, 0.0624, 0.0374) +
    1.056 * lobe(nm, 599.8, 0.0264, 0.0323) -
    0.065 * lobe(nm, 501.1, 0.049, 0.0382),
  0.821 * lobe(nm, 568.8, 0.0213, 0.0247) + 0.286 * lobe(nm, 530.9, 0.0613, 0.0322),
  1.217 * lobe(nm, 437, 0.0845, 0.0278) + 0.681 * lobe(nm, 459, 0.0385, 0.0725),
]);

function seenOf(reflectance: readonly number[], lamp: readonly number[]): Rgb3 {
  let [x, y, z] = [0, 0, 0];
  for (let i = 0; i < wavelengths.length; i++) {
    const v = reflectance[i]! * lamp[i]!;
    x += v * observer[i]![0];
    y += v * observer[i]![1];
    z += v * observer[i]![2];
  }
  return [x, y, z];
}

// Daylight here is a smooth 6504 K body, scaled so that a perfect white comes out as D65's.
const day = wavelengths.map((nm) => planck(nm, 6504));
const dayWhite = seenOf(
  wavelengths.map(() => 1),
  day,
);
const d65: Rgb3 = times(toXyz, [1, 1, 1]);
const known = new Map<string, readonly number[]>();

/** A smooth reflectance whose colour under daylight is the given one, by Gauss–Newton on three coefficients. */
export function reflectanceOf(rgb: Rgb3): readonly number[] {
  const key = rgb.join();
  const old = known.get(key);
  if (old) return old;
  const goal = linearOf(rgb).map((v) => Math.min(0.985, Math.max(0.006, v))) as unknown as Rgb3;
  const fromXyz = inverse(toXyz);
  let c: number[] = [0, 0, 0];
  const spectrum = (k: readonly number[]): number[] =>
    wavelengths.map((nm) => {
      const t = (nm - 560) / 160;
      const u = k[0]! * t * t + k[1]! * t + k[2]!;
      return 0.5 + u / (2 * Math.sqrt(1 + u * u));
    });
  const colour = (k: readonly number[]): Rgb3 =>
    times(fromXyz, seenOf(spectrum(k), day).map((v, i) => (v / dayWhite[i]!) * d65[i]!) as unknown as Rgb3);
  const error = (k: readonly number[]): number =>
    colour(k).reduce((s, v, i) => s + (Math.cbrt(v) - Math.cbrt(goal[i]!)) ** 2, 0);
  let best = error(c);
  let reach = 1;
  for (let turn = 0; turn < 400 && best > 1e-9; turn++) {
    const here = colour(c).map((v, i) => Math.cbrt(v) - Math.cbrt(goal[i]!)) as unknown as Rgb3;
    const slope: number[] = [];
    for (let j = 0; j < 3; j++) {
      const moved = c.slice();
      moved[j]! += 1e-4;
      const there = colour(moved);
      for (let i = 0; i < 3; i++)
        slope[i * 3 + j] = (Math.cbrt(there[i]!) - Math.cbrt(goal[i]!) - here[i]!) / 1e-4;
    }
    const step = times(inverse(slope as unknown as Matrix), here);
    const next = c.map((v, j) => v - reach * step[j]!);
    const e = error(next);
    if (Number.isFinite(e) && e < best) {
      c = next;
      best = e;
      reach = Math.min(1, reach * 2);
    } else reach /= 2;
    if (reach < 1e-6) break;
  }
  const out = spectrum(c);
  known.set(key, out);
  return out;
}
