import { warmCoolCentred } from '../colour/emotion.ts';
import type { Lab, Munsell } from '../colour/model.ts';
import { munsellFromLab } from '../colour/munsell.ts';
import { type NeutralKind, neutralKind } from '../colour/neutral.ts';
import { chromaAb, labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import { painterFromHue } from '../colour/wheels.ts';
import type { Base, Ink, Side } from '../sheet/model.ts';
import { hueCounts } from './hue-counts.ts';
import { inkLimits } from './thresholds.ts';

/** A colour with all that the rules ask of it, computed once. */
export interface MeasuredColour {
  readonly lab: Lab;
  /** C*ab. */
  readonly chroma: number;
  /** C* ÷ √(C*² + L*²), 0–1. */
  readonly saturation: number;
  readonly munsell: Munsell;
  /** OKLCH hue, degrees, or null. */
  readonly hueDeg: number | null;
  /** The same on the painter's wheel. */
  readonly painterDeg: number | null;
  readonly neutral: NeutralKind | null;
  /** How far its hue counts, 0–1: see `hueCounts`. */
  readonly counts: number;
  /** Warm (above 0 once centred) to cool. Ou et al. 2004, centred so that neutrals stand at 0. */
  readonly warmth: number;
}

/** An ink or a base of one side. */
export interface MeasuredInk extends MeasuredColour {
  readonly ink: Ink;
  readonly id: string;
  /** Share of the side, 0–1; all of one side sum to 1. */
  readonly share: number;
  readonly isBase: boolean;
  /** What it acts as; for a base, its kind has the first word. */
  readonly actsAs: NeutralKind | null;
  readonly of: 'anchor' | 'candidate';
}

/** A side, measured: base first. */
export interface MeasuredSide {
  readonly side: Side;
  readonly inks: readonly MeasuredInk[];
  /** True where no ink of it is strong enough to clash by hue. */
  readonly quiet: boolean;
  /** True for a one-colour paper. */
  readonly plain: boolean;
}

/** Measures a side that `takeSide` has labelled. */
export function measureSide(side: Side, of: 'anchor' | 'candidate'): MeasuredSide {
  const all = [side.base, ...side.inks];
  const sum = all.reduce((total, ink) => total + ink.share, 0);
  const inks = all.map((ink, place): MeasuredInk => {
    const colour = measureColour(ink);
    const isBase = place === 0;
    return {
      ...colour,
      ink,
      id: ink.id,
      share: sum > 0 ? ink.share / sum : 1 / all.length,
      isBase,
      actsAs: isBase ? (neutralOfBase(side.base) ?? colour.neutral) : colour.neutral,
      of,
    };
  });
  const quiet = inks.every(
    (ink) => ink.actsAs !== null || ink.chroma < inkLimits.quietChroma || ink.share < inkLimits.strayShare,
  );
  return { side, inks, quiet, plain: side.inks.length === 0 };
}

/** Measures one ink's colour. The same tuple is measured once. */
export function measureColour(ink: Ink): MeasuredColour {
  const known = kept.get(ink.oklch);
  if (known) return known;
  const oklch = oklchFromTuple(ink.oklch);
  const lab = labFromOklch(oklch);
  const chroma = chromaAb(lab);
  const measured: MeasuredColour = {
    lab,
    chroma,
    saturation: chroma / Math.hypot(chroma, lab.l, 1e-9),
    munsell: munsellFromLab(lab),
    hueDeg: oklch.h,
    painterDeg: oklch.h === null ? null : painterFromHue(oklch.h),
    neutral: neutralKind(lab),
    counts: hueCounts(lab),
    warmth: warmCoolCentred(lab),
  };
  kept.set(ink.oklch, measured);
  return measured;
}

const kept = new WeakMap<object, MeasuredColour>();

function neutralOfBase(base: Base): NeutralKind | null {
  return base.kind === 'white' || base.kind === 'cream' || base.kind === 'kraft' ? base.kind : null;
}
