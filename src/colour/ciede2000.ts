/** Numbers, three a colour: L*, a*, b*. */
export type Numbers = Float32Array | Float64Array;

/**
 * CIEDE2000 of the colours that begin at places `i` and `j` of two lists, for one pair and for millions alike:
 * `difference.ts` and `batch.ts` both call this, so they agree bit for bit. Mean hue and hue difference come from
 * vectors, not from angles: one arctangent at most instead of two, and no cosine.
 * Source: G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30(1):21–30 (2005), doi 10.1002/col.20070. The form for
 * touching sheets: F. Mirjalili, M. R. Luo, G. Cui, J. Morovic, JOSA A 36(5):789–799 (2019).
 */
export function ciede2000At(labsA: Numbers, i: number, labsB: Numbers, j: number, touching: boolean): number {
  const l1 = labsA[i]!;
  const a1 = labsA[i + 1]!;
  const b1 = labsA[i + 2]!;
  const l2 = labsB[j]!;
  const a2 = labsB[j + 1]!;
  const b2 = labsB[j + 2]!;
  const meanC = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2;
  const stretch = 1.5 - 0.5 * saturation(meanC);
  const x1 = a1 * stretch;
  const x2 = a2 * stretch;
  const c1 = Math.sqrt(x1 * x1 + b1 * b1);
  const c2 = Math.sqrt(x2 * x2 + b2 * b2);

  // Each chroma vector times the other's length: the sum points along the mean hue and is 2 c1 c2 cos(Δh/2) long.
  let cos = c2 * x1 + c1 * x2;
  let sin = c2 * b1 + c1 * b2;
  const reach = Math.sqrt(cos * cos + sin * sin);
  let sinHalf: number;
  if (reach <= opposite * c1 * c2) {
    // A grey, or hues half a circle apart: the sum has no direction left, so the mean comes from the angles themselves.
    const h1 = c1 > 0 ? angle(x1, b1) : 0;
    const h2 = c2 > 0 ? angle(x2, b2) : 0;
    const colourless = c1 === 0 || c2 === 0;
    const over = Math.abs(h1 - h2) > Math.PI;
    const mean = colourless ? h1 + h2 : (h1 + h2) / 2 + (over ? Math.PI : 0);
    sinHalf = colourless ? 0 : Math.sin((h2 - h1) / 2) * (over ? -1 : 1);
    cos = Math.cos(mean);
    sin = Math.sin(mean);
  } else {
    const each = 1 / reach;
    sinHalf = (x1 * b2 - x2 * b1) * each;
    cos *= each;
    sin *= each;
  }

  const cos2 = cos * cos - sin * sin;
  const sin2 = 2 * sin * cos;
  const cos3 = cos2 * cos - sin2 * sin;
  const sin3 = sin2 * cos + cos2 * sin;
  const cos4 = cos2 * cos2 - sin2 * sin2;
  const sin4 = 2 * sin2 * cos2;
  const t =
    1 -
    0.17 * (cos * cos30 + sin * sin30) +
    0.24 * cos2 +
    0.32 * (cos3 * cos6 - sin3 * sin6) -
    0.2 * (cos4 * cos63 + sin4 * sin63);

  const lightness = (l1 + l2) / 2 - 50;
  const chroma = (c1 + c2) / 2;
  const dL = (l2 - l1) / (1 + (0.015 * lightness * lightness) / Math.sqrt(20 + lightness * lightness));
  const dC = (c2 - c1) / (1 + 0.045 * chroma);
  const dH = (2 * Math.sqrt(c1 * c2) * sinHalf) / (1 + 0.015 * chroma * t);
  const rT = sin > 0 && cos > notBlue ? 0 : blueRotation(cos, sin, chroma);

  const rest = dC * dC + dH * dH + rT * dC * dH;
  const whole = Math.sqrt(Math.max(0, dL * dL + rest));
  if (!touching) return whole;
  const l = dL / (noSeparationSlope * whole + noSeparationOffset);
  return Math.sqrt(Math.max(0, l * l + rest));
}

/** Coefficients of D_L, no unit. Source: Mirjalili et al. 2019. */
export const noSeparationSlope = 0.08;
export const noSeparationOffset = 0.27;

const deg = Math.PI / 180;
const cos30 = Math.cos(30 * deg);
const sin30 = Math.sin(30 * deg);
const cos6 = Math.cos(6 * deg);
const sin6 = Math.sin(6 * deg);
const cos63 = Math.cos(63 * deg);
const sin63 = Math.sin(63 * deg);
const blue = 275 * deg;
const blueWidth = 25 * deg;
const blueTurn = 60 * deg;
/** Mean hues from 0° to 155° are so far from blue that R_T is under 1e-9: it is not worth its arctangent. */
const notBlue = Math.cos(155 * deg);
/** Length of the summed unit vectors below which their direction is lost: hues within 0.006° of half a circle. */
const opposite = 1e-4;
const twentyFiveTo7 = 25 ** 7;

/** R_T: how far chroma and hue differences turn into each other near blue. */
function blueRotation(cos: number, sin: number, chroma: number): number {
  const fromBlue = (angle(cos, sin) - blue) / blueWidth;
  return -2 * saturation(chroma) * Math.sin(blueTurn * Math.exp(-fromBlue * fromBlue));
}

/** √(c⁷ / (c⁷ + 25⁷)). */
function saturation(c: number): number {
  const c2 = c * c;
  const c7 = c2 * c2 * c2 * c;
  return Math.sqrt(c7 / (c7 + twentyFiveTo7));
}

/** Angle in radians, 0–2π. */
function angle(x: number, y: number): number {
  const at = Math.atan2(y, x);
  return at < 0 ? at + 2 * Math.PI : at;
}
