import { adaptXyz } from '../colour/adaptation.ts';
import { parseCssColour } from '../colour/css.ts';
import { mapToSrgb } from '../colour/gamut.ts';
import { whites } from '../colour/illuminants.ts';
import type { Lab, Oklch, OklchTuple } from '../colour/model.ts';
import { labFromMunsell, parseMunsell } from '../colour/munsell/munsell.ts';
import {
  labFromXyz,
  oklchFromLab,
  oklchFromRgb,
  parseHex,
  tupleFromOklch,
  xyzFromLab,
} from '../colour/spaces.ts';

import { paperLimits } from './limits.ts';
import { refusals } from './words/refusals.ts';

/** How a colour was written. */
export type ColourNotation = 'hex' | 'CSS' | 'CIELAB, D65' | 'CIELAB, D50' | 'OKLCH' | 'Munsell';

/** A colour that was typed. */
export interface TypedColour {
  /** Mapped into sRGB where it lies outside. */
  readonly hex: string;
  /** As it was meant, unmapped. */
  readonly oklch: OklchTuple;
  readonly notation: ColourNotation;
  /** True where a screen of sRGB can't show it as it is. */
  readonly mapped: boolean;
}

/**
 * The colour of a text: hex (`#e2725b`, `e27`), CIELAB (`Lab 60 42 33`: D65; `Lab D50 60 42 33` or CSS `lab(60 42 33)`:
 * D50, brought to D65 by Bradford), OKLCH (`oklch 0.67 0.15 35`, L also as a percentage), Munsell (`5R 4/14`, `N 5/`),
 * or a CSS colour (`rgb(…)`, a name). Undefined where it is none of these, or a number is out of its range.
 * Source: W3C CSS Color 4 for the forms and the white of `lab()`.
 */
export function parseColourText(text: string): TypedColour | undefined {
  const colour = anyColour(text);
  return colour && isThere(colour) ? colour : undefined;
}

/** Why a text that is written as a colour is none, as a sentence; undefined where it is one, or is not written so at all. */
export function whyNoColour(text: string): string | undefined {
  const colour = anyColour(text);
  if (!colour || isThere(colour)) return undefined;
  return colour.notation === 'Munsell' ? refusals.tooStrongForMunsell : refusals.noSuchColour;
}

/** Slips of the pen, as 5PB 4/100 for 4/10, and numbers of colours that no eye can see are none. */
function isThere({ oklch: [l, c] }: TypedColour): boolean {
  return l >= -0.01 && l <= 1.01 && c <= paperLimits.chromaTyped;
}

function anyColour(text: string): TypedColour | undefined {
  const plain = text.trim().replaceAll('−', '-');
  const hex = parseHex(plain);
  if (hex) return typed(oklchFromRgb(hex), 'hex');
  const munsell = parseMunsell(plain);
  if (munsell) return typed(oklchFromLab(labFromMunsell(munsell)), 'Munsell');
  const lab = parseLab(plain);
  if (lab) return lab;
  const oklch = parseOklch(plain);
  if (oklch) return typed(oklch, 'OKLCH');
  const css = parseCssColour(plain);
  return css && typed(oklchFromRgb(css), 'CSS');
}

const number = '([+-]?\\d*\\.?\\d+)';
const gap = '\\s*[,;\\s]\\s*';
const labPattern = new RegExp(
  `^(?:cie)?\\s*l\\*?a\\*?b\\*?\\s*(\\(|d50|d65)?\\s*${number}%?${gap}${number}${gap}${number}\\s*\\)?$`,
  'i',
);
const oklchPattern = new RegExp(
  `^oklch\\s*\\(?\\s*${number}(%?)${gap}${number}${gap}${number}(?:deg|°)?\\s*\\)?$`,
  'i',
);

function parseLab(text: string): TypedColour | undefined {
  const match = labPattern.exec(text);
  if (!match) return undefined;
  const lab = { l: Number(match[2]), a: Number(match[3]), b: Number(match[4]) };
  if (lab.l < 0 || lab.l > 100 || Math.abs(lab.a) > 160 || Math.abs(lab.b) > 160) return undefined;
  const d50 = match[1] === '(' || match[1]?.toLowerCase() === 'd50';
  return d50 ? typed(oklchFromLab(labUnderD65(lab)), 'CIELAB, D50') : typed(oklchFromLab(lab), 'CIELAB, D65');
}

/** CIELAB counts from its white, so the same numbers under D50 are the same fractions of that white. */
function labUnderD65(lab: Lab): Lab {
  const { x, y, z } = xyzFromLab(lab);
  const under = { x: (x / whites.D65.x) * whites.D50.x, y, z: (z / whites.D65.z) * whites.D50.z };
  return labFromXyz(adaptXyz(under, whites.D50, whites.D65));
}

function parseOklch(text: string): Oklch | undefined {
  const match = oklchPattern.exec(text);
  if (!match) return undefined;
  const l = Number(match[1]) / (match[2] === '%' ? 100 : 1);
  const c = Number(match[3]);
  if (l < 0 || l > 1 || c < 0) return undefined;
  const h = ((Number(match[4]) % 360) + 360) % 360;
  return { l, c, h: c === 0 ? null : h };
}

function typed(oklch: Oklch, notation: ColourNotation): TypedColour {
  const { hex, mapped } = mapToSrgb(oklch);
  return { hex, oklch: tupleFromOklch(oklch), notation, mapped };
}
