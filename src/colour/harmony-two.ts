import type { Lab } from './model.ts';
import { chromaAb, hueAbDeg } from './spaces.ts';

/** The two-colour model's score and its three parts: chroma, lightness, hue. Higher is more harmonious. */
export interface TwoColourHarmony {
  readonly hc: number;
  readonly hl: number;
  readonly hh: number;
  readonly ch: number;
}

/**
 * How harmonious two touching uniform patches are found, CIELAB D65; from about −1.3 to 1.6 over sRGB.
 * Source: L.-C. Ou, M. R. Luo, Color Res. Appl. 31(3):191–204 (2006), doi 10.1002/col.20208.
 */
export function ouLuo(labA: Lab, labB: Lab): TwoColourHarmony {
  const hc = chromaPart(labA, labB);
  const hl = lightnessPart(labA.l, labB.l);
  const hh = huePart(labA) + huePart(labB);
  return { hc, hl, hh, ch: hc + hl + hh };
}

function chromaPart(labA: Lab, labB: Lab): number {
  const dC = chromaAb(labA) - chromaAb(labB);
  const dHSquared = Math.max(0, (labA.a - labB.a) ** 2 + (labA.b - labB.b) ** 2 - dC * dC);
  const deltaC = Math.sqrt(dHSquared + (dC / 1.46) ** 2);
  return 0.04 + 0.53 * Math.tanh(0.8 - 0.045 * deltaC);
}

function lightnessPart(l1: number, l2: number): number {
  const sum = 0.28 + 0.54 * Math.tanh(-3.88 + 0.029 * (l1 + l2));
  const difference = 0.14 + 0.15 * Math.tanh(-2 + 0.2 * Math.abs(l1 - l2));
  return sum + difference;
}

function huePart(lab: Lab): number {
  const h = hueAbDeg(lab);
  const chromaEffect = 0.5 + 0.5 * Math.tanh(-2 + 0.5 * chromaAb(lab));
  const hueEffect = -0.08 - 0.14 * sinDeg(h + 50) - 0.07 * sinDeg(2 * h + 90);
  const fromYellow = (90 - h) / 10;
  const yellowEffect = ((0.22 * lab.l - 12.8) / 10) * Math.exp(fromYellow - Math.exp(fromYellow));
  return chromaEffect * (hueEffect + yellowEffect);
}

function sinDeg(deg: number): number {
  return Math.sin((deg * Math.PI) / 180);
}
