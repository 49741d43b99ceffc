import { deltaE2000, deltaEApart, deltaENoSeparation, deltaEOk } from './difference.ts';
import type { Lab } from './model.ts';
import { oklabFromLab } from './spaces.ts';

/**
 * What is asked of a difference:
 * 'printing' – could these be two printings of one ink? 'touching' – how different do they look edge to edge?
 * 'apart' – and across a gap? 'partner' – which of several inks is nearest, be it far? 'far' – how far apart are two
 * inks that are plainly different?
 */
export type DifferenceQuestion = 'printing' | 'touching' | 'apart' | 'partner' | 'far';

/** The measure that answers a question. */
export interface DifferenceMeasure {
  readonly symbol: string;
  /** Of two CIELAB D65 colours. */
  readonly measure: (labA: Lab, labB: Lab) => number;
  /** Above this its numbers are not to be compared with each other; null where they always may be. */
  readonly trustedUpTo: number | null;
  /** One plain sentence. */
  readonly why: string;
  readonly sourceIds: readonly string[];
}

/**
 * Which measure to use for which question.
 * ΔE₀₀ is fitted to small differences and jumps, by up to 46 units, where two hues stand opposite each other; so above
 * 20 nothing is ranked, gathered or judged by it, and the straight line in OKLab answers instead.
 */
export function differenceFor(question: DifferenceQuestion): DifferenceMeasure {
  return measures[question];
}

/** ΔE₀₀ above which it serves no comparison. Source: Sharma et al. 2005 on its discontinuities; the number is ours. */
export const ciede2000TrustedUpTo = 20;
/** Weight of a and b in OKLab when partners are sought. Ours. */
export const partnerAbWeight = 2;

const measures: Readonly<Record<DifferenceQuestion, DifferenceMeasure>> = {
  printing: {
    symbol: 'ΔE₀₀',
    measure: deltaE2000,
    trustedUpTo: ciede2000TrustedUpTo,
    why: 'Print tolerances are written in ΔE₀₀, and it follows the eye best where colours are nearly alike.',
    sourceIds: ['ciede2000', 'iso-12647-2'],
  },
  touching: {
    symbol: 'ΔE without gap',
    measure: deltaENoSeparation,
    trustedUpTo: ciede2000TrustedUpTo,
    why: 'Where edges meet, a small step in lightness shows more than it does across a gap.',
    sourceIds: ['no-separation'],
  },
  apart: {
    symbol: '0.9 ΔE₀₀',
    measure: deltaEApart,
    trustedUpTo: ciede2000TrustedUpTo,
    why: 'Across a gap, differences look about a tenth smaller.',
    sourceIds: ['no-separation', 'ciede2000'],
  },
  partner: {
    symbol: 'ΔE OK, a and b doubled',
    measure: (labA, labB) => deltaEOk(oklabFromLab(labA), oklabFromLab(labB), partnerAbWeight),
    trustedUpTo: null,
    why: 'The nearest of several inks may still be far away; this measure is smooth at every distance.',
    sourceIds: ['oklab'],
  },
  far: {
    symbol: 'ΔE OK',
    measure: (labA, labB) => deltaEOk(oklabFromLab(labA), oklabFromLab(labB)),
    trustedUpTo: null,
    why: 'Plainly different inks are told by hue, lightness and chroma; this gives one number for the distance.',
    sourceIds: ['oklab'],
  },
};
