import { adaptationMatrix } from '../adaptation.ts';
import { labResponse, shareOfResponse } from '../cielab.ts';
import { whites } from '../illuminants.ts';
import { type Matrix, type Triple, times } from '../matrix.ts';
import type { Lab, Munsell } from '../model.ts';
import { labFromXyz, xyzFromLab } from '../spaces.ts';
import { munsellFromPolar, polarFromMunsell } from './munsell-grid.ts';
import { munsellLightness, munsellValue } from './munsell-value.ts';

/** Munsell chroma below which there is no hue: rounding, not colour. */
const noHueBelow = 1e-3;

/**
 * Munsell hue, value and chroma of a CIELAB D65 colour, by our own interpolation of the 1943 renotation, after
 * Bradford adaptation to its illuminant C.
 * Source: Newhall, Nickerson, Judd, JOSA 33(7):385–418 (1943).
 */
export function munsellFromLab(lab: Lab): Munsell {
  const { x, y, z } = xyzFromLab(lab);
  const [xc, yc, zc] = times(toC(), [x, y, z]);
  const value = munsellValue(yc);
  const fy = labResponse(yc);
  const a = 500 * (labResponse(xc / whites.C.x) - fy);
  const b = 200 * (fy - labResponse(zc / whites.C.z));
  const radius = Math.hypot(a, b);
  if (radius < noHueBelow || value === 0) return { hue: null, value, chroma: 0 };
  const { hue, chroma } = munsellFromPolar({ radius, angle: Math.atan2(b, a) }, value);
  return chroma < noHueBelow ? { hue: null, value, chroma: 0 } : { hue, value, chroma };
}

/** CIELAB D65 of a Munsell colour; the inverse of `munsellFromLab`. */
export function labFromMunsell({ hue, value, chroma }: Munsell): Lab {
  const l = munsellLightness(value);
  const polar = hue === null ? { radius: 0, angle: 0 } : polarFromMunsell(hue % 100, value, chroma);
  const fy = (l + 16) / 116;
  const under: Triple = [
    whites.C.x * shareOfResponse(fy + (polar.radius * Math.cos(polar.angle)) / 500),
    shareOfResponse(fy),
    whites.C.z * shareOfResponse(fy - (polar.radius * Math.sin(polar.angle)) / 200),
  ];
  const [x, y, z] = times(fromC(), under);
  return labFromXyz({ x, y, z });
}

/** Munsell as it is written: "5R 4/14", "2.5YR 6.2/8.1", "N 5/". One decimal, none where it is 0. */
export function formatMunsell({ hue, value, chroma }: Munsell): string {
  if (hue === null || chroma < 0.05) return `N ${oneDecimal(value)}/`;
  let place = Math.round((hue % 100) * 10) / 10;
  // The circle begins with 10RP: 0 and 100 are both written so, and each family runs from just above 0 to 10.
  if (place === 0) place = 100;
  const family = Math.ceil(place / 10) - 1;
  return `${oneDecimal(place - family * 10)}${families[family]} ${oneDecimal(value)}/${oneDecimal(chroma)}`;
}

/** Munsell of its notation, or undefined where the text is none. */
export function parseMunsell(text: string): Munsell | undefined {
  const grey = /^\s*N\s*(\d+(?:\.\d+)?)\s*\/?\s*0?\s*$/i.exec(text);
  if (grey) return within({ hue: null, value: Number(grey[1]), chroma: 0 });
  const match =
    /^\s*(\d+(?:\.\d+)?)\s*(YR|R|GY|Y|BG|G|PB|B|RP|P)\s*(\d+(?:\.\d+)?)\s*\/\s*(\d+(?:\.\d+)?)\s*$/i.exec(
      text,
    );
  if (!match || Number(match[1]) > 10) return undefined;
  const family = families.indexOf(match[2]!.toUpperCase() as (typeof families)[number]);
  return within({
    hue: (family * 10 + Number(match[1])) % 100,
    value: Number(match[3]),
    chroma: Number(match[4]),
  });
}

/** Munsell hue steps between two hues (0–100 around the circle), 0–50. */
export function munsellHueSteps(a: number, b: number): number {
  const apart = Math.abs(a - b) % 100;
  return apart > 50 ? 100 - apart : apart;
}

/** The ten hue families in order, each ten steps wide. */
const families = ['R', 'YR', 'Y', 'GY', 'G', 'BG', 'B', 'PB', 'P', 'RP'] as const;

let keptToC: Matrix | undefined;
let keptFromC: Matrix | undefined;

function toC(): Matrix {
  keptToC ??= adaptationMatrix(whites.D65, whites.C);
  return keptToC;
}

function fromC(): Matrix {
  keptFromC ??= adaptationMatrix(whites.C, whites.D65);
  return keptFromC;
}

function oneDecimal(v: number): string {
  return String(Math.round(v * 10) / 10);
}

function within(munsell: Munsell): Munsell | undefined {
  return munsell.value <= 10 ? munsell : undefined;
}
