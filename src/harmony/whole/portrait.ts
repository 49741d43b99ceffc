import { angleDeg } from '../../colour/hue.ts';
import type { Lab, Oklch } from '../../colour/model.ts';
import { type NeutralKind, neutralKind } from '../../colour/neutral.ts';
import { linearFromOklab } from '../../colour/oklab-linear.ts';
import {
  chromaAb,
  encodedFromLinear,
  labFromOklch,
  oklabFromOklch,
  oklchFromTuple,
} from '../../colour/spaces.ts';
import type { Ink, Seen, Side } from '../../sheet/model.ts';
import type { FamilySide } from '../model.ts';
import { ramp } from './ramp.ts';
import { portraitLimits as limits } from './whole-thresholds.ts';

/** What a side does beside another. */
export type PaperRole = 'rests' | 'is soft' | 'speaks';

/** A family with what the findings ask of it, computed once. */
export interface SeenFamily {
  readonly id: string;
  readonly lab: Lab;
  readonly share: number;
  /** C*ab. */
  readonly chroma: number;
  /** h*ab, degrees. */
  readonly hueDeg: number;
  readonly neutral: NeutralKind | null;
  /** How far it has a hue, 0–1. */
  readonly tint: number;
  /** Its inks, for what comes back: a family's mean hides which of its depths is seen elsewhere. */
  readonly inks: readonly SeenInk[];
  /** How much grey is mixed into it: the smaller of whiteness and blackness, 0–0.5. Source: CSS Color 4, HWB. */
  readonly grey: number;
}

/** An ink of a family. */
export interface SeenInk {
  readonly id: string;
  readonly lab: Lab;
  readonly chroma: number;
  readonly share: number;
}

/** A side as a whole. */
export interface Portrait {
  readonly side: FamilySide;
  readonly families: readonly SeenFamily[];
  readonly base: SeenFamily;
  /** All inks of all families. */
  readonly inks: readonly SeenInk[];
  /** Contrast at arm's length, in steps of L*; plain stock under 3, a bold check 27. */
  readonly contrast: number;
  /** Contrast of its colours in pattern, root mean square in a*, b*. */
  readonly seenColour: number;
  /** How far it rests, 0–1. */
  readonly rest: number;
  /** How far it is a small print that comes back on itself exactly, 0–1. */
  readonly regular: number;
  /** How far such a print is sparse or of little contrast, and so soft, 0–1. */
  readonly soft: number;
  /** How far such a print is hard: much contrast in equal halves, 0–1. */
  readonly hard: number;
  /** How many families are seen; a family counts less the smaller it is. */
  readonly colours: number;
  /** How many of them have a hue. */
  readonly hues: number;
  /** Mean C*ab of its colours; what is neutral counts little, large families count more. */
  readonly strength: number;
  /** How much grey is in its colours on the whole, 0–0.5; large families count more. */
  readonly grey: number;
  /** How much of it has a hue at all, 0–1: what is not neutral, by the root of its share. */
  readonly coloured: number;
  /** Mean L* by share. */
  readonly lightness: number;
  readonly role: PaperRole;
}

/** A side as its pair is judged by, once. Sides that were read before `seen` was measured get what their inks and print tell. */
export function portraitOf(side: FamilySide): Portrait {
  const known = kept.get(side);
  if (known) return known;
  const portrait = portraitFrom(side);
  kept.set(side, portrait);
  return portrait;
}

const kept = new WeakMap<FamilySide, Portrait>();

function portraitFrom(side: FamilySide): Portrait {
  const seen = side.seen ?? seenBefore(side);
  const families = seenFamilies(side);
  const base = families[0]!;
  const contrast = Math.hypot(seen.light, limits.colourCounts * seen.colour, limits.largeCounts * seen.large);
  const rest = 1 - ramp(contrast, limits.restFull, limits.restNone);
  const even = 1 - ramp(base.share, limits.sparseFrom, limits.sparseFull);
  const hard = seen.regular * even * ramp(contrast, limits.hardFrom, limits.hardFull);
  const soft = seen.regular * (1 - hard / Math.max(1e-9, seen.regular || 1));
  const weights = families.map(
    (f) =>
      Math.sqrt(f.share) *
      ramp(f.chroma, limits.tintFrom, limits.tintFull) *
      (f.neutral === null || f.neutral === 'kraft' ? 1 : limits.neutralCounts),
  );
  const coloured = weights.reduce((sum, w) => sum + w, 0);
  const mean = (of: (f: SeenFamily) => number): number =>
    coloured > 0 ? families.reduce((sum, f, i) => sum + weights[i]! * of(f), 0) / coloured : 0;
  return {
    side,
    families,
    base,
    inks: families.flatMap((family) => family.inks),
    contrast,
    seenColour: seen.colour,
    rest,
    regular: seen.regular,
    soft,
    hard,
    colours: families.reduce((n, f) => n + ramp(f.share, limits.colourFrom, limits.colourFull), 0),
    hues: families.reduce(
      (n, f) =>
        n +
        ramp(f.share, limits.colourFrom, limits.colourFull) * ramp(f.chroma, limits.hueFrom, limits.hueFull),
      0,
    ),
    strength: mean((f) => f.chroma),
    grey: mean((f) => f.grey),
    coloured: Math.min(1, coloured),
    lightness: families.reduce((sum, f) => sum + f.share * f.lab.l, 0),
    role: rest >= 0.5 ? 'rests' : soft >= 0.5 || contrast < limits.softContrast ? 'is soft' : 'speaks',
  };
}

function seenFamilies(side: FamilySide): SeenFamily[] {
  const all: readonly Ink[] = [side.base, ...side.inks];
  const whole = all.reduce((sum, ink) => sum + ink.share, 0);
  const within = new Map(side.within.map((ink) => [ink.id, ink]));
  return all.map((ink, at): SeenFamily => {
    const share = whole > 0 ? ink.share / whole : 1 / all.length;
    const oklch = oklchFromTuple(ink.oklch);
    const lab = labFromOklch(oklch);
    const chroma = chromaAb(lab);
    const inside = side.families[at]!.inks.map((id) => within.get(id)!);
    const of = inside.reduce((sum, one) => sum + one.share, 0);
    return {
      id: ink.id,
      lab,
      share,
      chroma,
      hueDeg: angleDeg(lab.a, lab.b),
      neutral: neutralKind(lab),
      tint: ramp(chroma, limits.tintFrom, limits.tintFull),
      inks: inside.map((one) => {
        const its = labFromOklch(oklchFromTuple(one.oklch));
        const part = of > 0 ? one.share / of : 1 / inside.length;
        return { id: one.id, lab: its, chroma: chromaAb(its), share: share * part };
      }),
      grey: greyOf(oklch),
    };
  });
}

function greyOf(oklch: Oklch): number {
  const { l, a, b } = oklabFromOklch(oklch);
  const rgb = linearFromOklab(l, a, b).map((v) => Math.min(1, Math.max(0, encodedFromLinear(v))));
  return Math.min(Math.min(...rgb), 1 - Math.max(...rgb));
}

/** What busyness and shares tell of a side whose pixels were not looked at. */
function seenBefore({ base, inks, print }: Side): Seen {
  const all = [base, ...inks];
  const l = all.reduce((sum, ink) => sum + ink.share * 100 * ink.oklch[0], 0);
  const spread = Math.sqrt(all.reduce((sum, ink) => sum + ink.share * (100 * ink.oklch[0] - l) ** 2, 0));
  const chroma = all.reduce((sum, ink) => sum + ink.share * 250 * ink.oklch[1], 0);
  const colour = Math.sqrt(all.reduce((sum, ink) => sum + ink.share * (250 * ink.oklch[1] - chroma) ** 2, 0));
  // A print whose edges are few and far between shows half of it as pattern.
  const pattern = ramp(print.busyness, 0, limits.patternBusyness);
  const short = print.repeatMm === null ? 0 : 1 - ramp(print.repeatMm, 32, 56);
  return {
    light: spread * pattern,
    colour: colour * pattern,
    large: spread * (1 - pattern) * (print.busyness > 0 ? 1 : 0),
    fine: 0.1,
    regular: short,
    repeatMm: short > 0 ? print.repeatMm : null,
  };
}
