import { warmCoolCentred } from '../../colour/emotion.ts';
import type { Lab } from '../../colour/model.ts';
import type { NeutralKind } from '../../colour/neutral.ts';
import type { Base, Ink } from '../../sheet/model.ts';
import type { FamilySide } from '../model.ts';
import { inkLimits } from '../thresholds.ts';
import {
  atA,
  atB,
  atChroma,
  atCounts,
  atEye,
  atHue,
  atL,
  atNeutral,
  atPainter,
  atSaturation,
  atValue,
  colourWidth,
} from './fade.ts';
import { measureInto, neutralKinds } from './quick-colour.ts';

/** A colour with all that the rules ask of it, computed once. */
export interface MeasuredColour {
  readonly lab: Lab;
  /** C*ab. */
  readonly chroma: number;
  /** C* ÷ √(C*² + L*²), 0–1. */
  readonly saturation: number;
  /** Munsell hue, 0–100 around the circle, or null. */
  readonly munsellHue: number | null;
  /** Munsell value, 0–10. */
  readonly munsellValue: number;
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
  readonly side: FamilySide;
  readonly inks: readonly MeasuredInk[];
  /** True where no ink of it is strong enough to clash by hue. */
  readonly quiet: boolean;
  /** True for a one-colour paper: nothing on it is large enough to be seen. */
  readonly plain: boolean;
}

/** Measures a side that `takeSide` has labelled. */
export function measureSide(side: FamilySide, of: 'anchor' | 'candidate'): MeasuredSide {
  const all = [side.base, ...side.inks];
  const sum = all.reduce((total, ink) => total + ink.share, 0);
  const inks = all.map((ink, place): MeasuredInk => {
    const colour = measureColour(ink);
    const isBase = place === 0;
    // Written out: to spread a colour takes longer than to measure it.
    return {
      lab: colour.lab,
      chroma: colour.chroma,
      saturation: colour.saturation,
      munsellHue: colour.munsellHue,
      munsellValue: colour.munsellValue,
      hueDeg: colour.hueDeg,
      painterDeg: colour.painterDeg,
      neutral: colour.neutral,
      counts: colour.counts,
      warmth: colour.warmth,
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
  return { side, inks, quiet, plain: inks.every((ink) => ink.isBase || ink.share < inkLimits.strayShare) };
}

/** Measures one ink's colour. The same tuple is measured once. */
export function measureColour(ink: Ink): MeasuredColour {
  const known = kept.get(ink.oklch);
  if (known) return known;
  const [l, c, h] = ink.oklch;
  measureInto(line, 0, l, c, h);
  const lab = { l: line[atL]!, a: line[atA]!, b: line[atB]! };
  const measured: MeasuredColour = {
    lab,
    chroma: line[atChroma]!,
    saturation: line[atSaturation]!,
    munsellHue: orNull(line[atHue]!),
    munsellValue: line[atValue]!,
    hueDeg: orNull(line[atEye]!),
    painterDeg: orNull(line[atPainter]!),
    neutral: neutralKinds[line[atNeutral]!]!,
    counts: line[atCounts]!,
    warmth: warmCoolCentred(lab),
  };
  kept.set(ink.oklch, measured);
  return measured;
}

const kept = new WeakMap<object, MeasuredColour>();
const line = /* @__PURE__ */ new Float64Array(colourWidth);

function orNull(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}

function neutralOfBase(base: Base): NeutralKind | null {
  return base.kind === 'white' || base.kind === 'cream' || base.kind === 'kraft' ? base.kind : null;
}
