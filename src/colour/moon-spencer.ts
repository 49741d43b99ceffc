import type { Munsell } from './model.ts';
import { munsellHueSteps } from './munsell.ts';

/** How a step in hue, value or chroma reads. The two ambiguities are neither the same nor a clear step. */
export type Interval =
  | 'identity'
  | 'first ambiguity'
  | 'similarity'
  | 'second ambiguity'
  | 'contrast'
  | 'glare';

/** The three steps between two Munsell colours, and how each reads. Hue is null where either is a neutral. */
export interface MunsellIntervals {
  readonly hue: { readonly steps: number; readonly reads: Interval } | null;
  readonly value: { readonly steps: number; readonly reads: Interval };
  readonly chroma: { readonly steps: number; readonly reads: Interval };
}

/**
 * Moon and Spencer's intervals between two Munsell colours. An explanation with a caveat (later experiments contradict
 * parts of it), never a prediction.
 * Source: P. Moon, D. E. Spencer, Geometric formulation of classical color harmony, JOSA 34(1):46–59 (1944).
 */
export function intervalsBetween(a: Munsell, b: Munsell): MunsellIntervals {
  const value = Math.abs(a.value - b.value);
  const chroma = Math.abs(a.chroma - b.chroma);
  const hue = a.hue === null || b.hue === null ? null : munsellHueSteps(a.hue, b.hue);
  return {
    hue: hue === null ? null : { steps: hue, reads: reading(hue, intervalLimits.hue) },
    value: { steps: value, reads: reading(value, intervalLimits.value) },
    chroma: { steps: chroma, reads: reading(chroma, intervalLimits.chroma) },
  };
}

/**
 * Upper ends of identity, first ambiguity, similarity, second ambiguity and contrast, in Munsell steps (hue: of 100).
 * The ends of identity in value and chroma are ours: a step too small to write in Munsell's own decimals.
 */
export const intervalLimits = {
  hue: [1, 7, 12, 28, 50],
  value: [0.05, 0.5, 1.5, 2.5, 10],
  chroma: [0.05, 3, 5, 7, Number.POSITIVE_INFINITY],
} as const;

const names = ['identity', 'first ambiguity', 'similarity', 'second ambiguity', 'contrast'] as const;

function reading(steps: number, limits: readonly number[]): Interval {
  return names[limits.findIndex((limit) => steps <= limit)] ?? 'glare';
}
