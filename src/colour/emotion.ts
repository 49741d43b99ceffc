import type { Lab } from './model.ts';
import { chromaAb, hueAbDeg } from './spaces.ts';

/**
 * Three scales of feeling for a single colour, CIELAB D65.
 * Source: L.-C. Ou, M. R. Luo, A. Woodcock, A. Wright, Color Res. Appl. 29(3):232–240 (2004): colour heat, colour weight
 * and colour activity.
 */
export const emotionCoefficients = {
  heat: { offset: -0.5, gain: 0.02, power: 1.07, hueDeg: 50 },
  weight: { offset: -1.8, perLightness: 0.04, hueGain: 0.45, hueDeg: 100 },
  activity: { offset: -2.1, gain: 0.06, l: 50, a: 3, b: 17, bDivisor: 1.4 },
} as const;

/** Warm (positive) or cool; a neutral gives −0.5. As published. */
export function warmCool(lab: Lab): number {
  const { offset, gain, power, hueDeg } = emotionCoefficients.heat;
  return offset + gain * chromaAb(lab) ** power * cosDeg(hueAbDeg(lab) - hueDeg);
}

/** Heavy (positive) or light. As published; a colour without hue counts as hue 0°. */
export function heavyLight(lab: Lab): number {
  return plainWeight(lab) + hueWeight(lab);
}

/** Active (positive) or passive. As published. */
export function activePassive({ l, a, b }: Lab): number {
  const k = emotionCoefficients.activity;
  return k.offset + k.gain * Math.hypot(l - k.l, a - k.a, (b - k.b) / k.bDivisor);
}

/** Warm or cool with every neutral at 0. */
export function warmCoolCentred(lab: Lab): number {
  return warmCool(lab) - emotionCoefficients.heat.offset;
}

/**
 * Heavy or light with middle grey (L* 50) at 0. The part that hue plays comes in with chroma and is whole from
 * C*ab 8 on (ours), so that a grey with a trace of a hue does not jump.
 */
export function heavyLightCentred(lab: Lab): number {
  return plainWeight(lab) - plainWeight(middleGrey) + hueWeight(lab) * Math.min(1, chromaAb(lab) / 8);
}

/** Active or passive with middle grey (L* 50) at 0. */
export function activePassiveCentred(lab: Lab): number {
  return activePassive(lab) - activePassive(middleGrey);
}

const middleGrey: Lab = { l: 50, a: 0, b: 0 };

function plainWeight({ l }: Lab): number {
  const { offset, perLightness } = emotionCoefficients.weight;
  return offset + perLightness * (100 - l);
}

function hueWeight(lab: Lab): number {
  const { hueGain, hueDeg } = emotionCoefficients.weight;
  return hueGain * cosDeg(hueAbDeg(lab) - hueDeg);
}

function cosDeg(deg: number): number {
  return Math.cos((deg * Math.PI) / 180);
}
