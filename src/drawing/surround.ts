import type { Surround } from './model.ts';

/** Achromatic colours that a chart uses on a surround, as `#rrggbb`; all have zero chroma. */
export interface SurroundTones {
  /** The mat itself. */
  readonly mat: string;
  readonly text: string;
  readonly soft: string;
  /** Rings, ticks and axes. */
  readonly line: string;
  /** Edge around a mark, so that an ink as light as the mat still has a shape. */
  readonly edge: string;
  /** Under a link, so that it stands clear of what it passes: the mat's own tone. */
  readonly halo: string;
  /** The strip's empty stretch, and the hub. */
  readonly veil: string;
}

/**
 * Tones of a surround. Grey is L* 76: a mid-light neutral, as appraisal asks for; white and dark are there because
 * a colour looks different on each. Source: ISO 3664 (neutral and matt surround); the exact lightness is our choice.
 */
export function surroundTones(surround: Surround = 'grey'): SurroundTones {
  return tones[surround];
}

const tones: Record<Surround, SurroundTones> = {
  grey: {
    mat: '#bababa',
    text: '#151515',
    soft: '#333333',
    line: '#a2a2a2',
    edge: '#fafafa',
    halo: '#bababa',
    veil: '#cbcbcb',
  },
  white: {
    mat: '#ffffff',
    text: '#151515',
    soft: '#4a4a4a',
    line: '#d4d4d4',
    edge: '#8c8c8c',
    halo: '#ffffff',
    veil: '#ececec',
  },
  dark: {
    mat: '#2c2c2c',
    text: '#f2f2f2',
    soft: '#c9c9c9',
    line: '#4c4c4c',
    edge: '#d8d8d8',
    halo: '#2c2c2c',
    veil: '#3c3c3c',
  },
};
