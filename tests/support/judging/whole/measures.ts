import { deltaE2000 } from '../../../../src/colour/difference.ts';
import { hueDistanceDeg } from '../../../../src/colour/hue.ts';
import type { Lab } from '../../../../src/colour/model.ts';
import type { Portrait, SeenFamily, SeenInk } from './portrait.ts';
import { ramp } from './ramp.ts';
import { measureLimits as limits } from './whole-thresholds.ts';

/** What can be found of a pair as a whole and counts in its verdict. */
export const measureNames = [
  'one rests',
  'few colours',
  'soft beside loose',
  'grounds agree',
  'comes back',
  'many hues',
  'strong contrast of colour',
  'strong beside soft',
  'nothing shared',
  'near miss',
  'one is greyed',
  'hues far apart',
  'hard beside hard',
] as const;
export type MeasureName = (typeof measureNames)[number];

/** One measure of a pair. */
export interface Measure {
  /** How far it holds, 0–1. */
  readonly size: number;
  /** The families that it rests on, where it rests on two: the first side's, the second's. */
  readonly families?: readonly [SeenFamily, SeenFamily];
  /** The numbers behind it; the unit is in the name. */
  readonly numbers: Readonly<Record<string, number>>;
}

/** All measures of a pair. When the two change places, sizes stay and families and numbers change places with them. */
export function measuresOf(a: Portrait, b: Portrait): Record<MeasureName, Measure> {
  const rest = Math.max(a.rest, b.rest);
  const few = Math.min(a.colours, b.colours);
  const hues = a.hues + b.hues;
  const colour = Math.max(a.seenColour, b.seenColour);
  const soft = Math.max(a.soft * (1 - b.regular), b.soft * (1 - a.regular)) * (1 - rest);
  const ground = deltaE2000(a.base.lab, b.base.lab);
  const apart = (towards(a, b) + towards(b, a)) / 2;
  const repeats = { regularA: a.regular, regularB: b.regular };
  return {
    'one rests': { size: rest, numbers: { contrastA: a.contrast, contrastB: b.contrast } },
    'few colours': {
      size: 1 - ramp(few, ...limits.few),
      numbers: { coloursA: a.colours, coloursB: b.colours },
    },
    'soft beside loose': { size: soft, numbers: repeats },
    'grounds agree': {
      size: (1 - ramp(ground, ...limits.groundDeltaE)) * (1 - rest),
      families: [a.base, b.base],
      numbers: { deltaE00: ground },
    },
    'comes back': largest(a, b, comesBack),
    'many hues': { size: ramp(hues, ...limits.hues), numbers: { huesA: a.hues, huesB: b.hues } },
    'strong contrast of colour': {
      size: ramp(colour, ...limits.contrastOfColour),
      numbers: { colourContrastA: a.seenColour, colourContrastB: b.seenColour },
    },
    'strong beside soft': strongBesideSoft(a, b),
    'nothing shared': {
      size: ramp(apart, ...limits.sharedDeltaE) * (1 - rest),
      numbers: { meanDeltaE00: apart },
    },
    ...nearOrGreyed(largest(a, b, nearMiss), largest(a, b, duller)),
    'hues far apart': larger(largest(a, b, farApart), largest(a, b, opposite)),
    'hard beside hard': { size: Math.min(a.hard, b.hard), numbers: repeats },
  };
}

/** Two colours of one hue that are not one colour trouble a pair once, by what is worse: that they are close, or that one is greyed. */
function nearOrGreyed(near: Measure, greyed: Measure): Record<'near miss' | 'one is greyed', Measure> {
  const none: Measure = { size: 0, numbers: {} };
  return near.size > greyed.size
    ? { 'near miss': near, 'one is greyed': none }
    : { 'near miss': none, 'one is greyed': greyed };
}

/** One side's colours full, the other's pale or greyed, and neither is neutral. */
function strongBesideSoft(a: Portrait, b: Portrait): Measure {
  const one = (strong: Portrait, soft: Portrait): number =>
    ramp(strong.strength, ...limits.strongChroma) * (1 - ramp(soft.strength, ...limits.softChroma));
  return {
    size: Math.max(one(a, b), one(b, a)) * ramp(Math.min(a.coloured, b.coloured), ...limits.coloured),
    numbers: { chromaA: a.strength, chromaB: b.strength, greyA: a.grey, greyB: b.grey },
  };
}

type OfTwo = (x: SeenFamily, y: SeenFamily) => { size: number; numbers: Record<string, number> };

/** Two families that lead, near in hue and depth and yet not the same. It ends where the hues are clearly two. */
const nearMiss: OfTwo = (x, y) => {
  const [deltaE00, hueDeg] = [deltaE2000(x.lab, y.lab), hueDistanceDeg(x.hueDeg, y.hueDeg)];
  const dL = Math.abs(x.lab.l - y.lab.l);
  const size =
    lead(x, y) *
    ramp(Math.min(x.chroma, y.chroma), ...limits.leadChroma) *
    ramp(hueDeg, ...limits.missHueFrom) *
    (1 - ramp(hueDeg, ...limits.missHueTo)) *
    (1 - ramp(dL, ...limits.missLightness)) *
    ramp(deltaE00, ...limits.missDeltaE) *
    (1 - ramp(deltaE00, ...limits.missEnds));
  return { size: size > 0 ? size * (1 - gradation(x, y)) : 0, numbers: { deltaE00, hueDeg, dL } };
};

/** How far either family holds both colours among its own inks: steps of one colour on one sheet are a gradation, and no mistake. */
function gradation(x: SeenFamily, y: SeenFamily): number {
  const holds = (inks: readonly SeenInk[], lab: Lab): number =>
    Math.max(
      ...inks.map(
        (ink) =>
          ramp(ink.share, ...limits.stepShare) * (1 - ramp(deltaE2000(ink.lab, lab), ...limits.stepDeltaE)),
      ),
    );
  return Math.max(...[x, y].map(({ inks }) => Math.min(holds(inks, x.lab), holds(inks, y.lab))));
}

/** Two families of one hue, of which one is greyed: it makes the other look cheap, and is made to look dirty. */
const duller: OfTwo = (x, y) => {
  const [deltaE00, hueDeg] = [deltaE2000(x.lab, y.lab), hueDistanceDeg(x.hueDeg, y.hueDeg)];
  const grey = Math.abs(x.grey - y.grey);
  const size =
    lead(x, y) *
    ramp(Math.min(x.chroma, y.chroma), ...limits.leadChroma) *
    (1 - ramp(hueDeg, ...limits.dullHue)) *
    ramp(grey, ...limits.dullGrey) *
    ramp(Math.max(x.chroma, y.chroma), ...limits.dullChroma) *
    ramp(deltaE00, ...limits.dullDeltaE);
  return { size, numbers: { deltaE00, hueDeg, grey } };
};

/** Two large coloured families whose hues have nothing to do with each other. */
const farApart: OfTwo = (x, y) => {
  const hueDeg = hueDistanceDeg(x.hueDeg, y.hueDeg);
  const size =
    seenBoth(x.share, y.share, limits.farShare) *
    ramp(Math.min(x.chroma, y.chroma), ...limits.farChroma) *
    ramp(hueDeg, ...limits.farHue);
  return { size, numbers: { hueDeg, deltaE00: deltaE2000(x.lab, y.lab) } };
};

/** Two opposites, both strong. */
const opposite: OfTwo = (x, y) => {
  const hueDeg = hueDistanceDeg(x.hueDeg, y.hueDeg);
  const size =
    seenBoth(x.share, y.share, limits.farShare) *
    ramp(Math.min(x.chroma, y.chroma), ...limits.oppositeChroma) *
    ramp(hueDeg, ...limits.oppositeHue);
  return { size, numbers: { hueDeg, deltaE00: deltaE2000(x.lab, y.lab) } };
};

/** A colour that is on both: the nearest inks of two families, both seen. */
const comesBack: OfTwo = (x, y) => {
  let best = { size: 0, numbers: { deltaE00: Number.POSITIVE_INFINITY } };
  for (const p of x.inks)
    for (const q of y.inks) {
      const deltaE00 = deltaE2000(p.lab, q.lab);
      const size =
        seenBoth(p.share, q.share, limits.backShare) *
        ramp(Math.min(p.chroma, q.chroma), ...limits.backChroma) *
        (1 - ramp(deltaE00, ...limits.backDeltaE));
      if (size > best.size) best = { size, numbers: { deltaE00 } };
    }
  return best;
};

/** How far the inks of one side lie from the nearest of the other, ΔE₀₀ held at 40; each counts by the root of its share. */
function towards(a: Portrait, b: Portrait): number {
  const theirs = b.families.flatMap((family) => family.inks);
  let sum = 0;
  let whole = 0;
  for (const { inks } of a.families)
    for (const ink of inks) {
      const w = Math.sqrt(ink.share);
      sum += w * nearest(ink, theirs);
      whole += w;
    }
  return whole > 0 ? sum / whole : 0;
}

function nearest(ink: SeenInk, among: readonly SeenInk[]): number {
  let best: number = limits.farDeltaE;
  for (const other of among) best = Math.min(best, deltaE2000(ink.lab, other.lab));
  return best;
}

function lead(x: SeenFamily, y: SeenFamily): number {
  return seenBoth(x.share, y.share, limits.leadShare);
}

/** How far both are large enough, 0–1. */
function seenBoth(one: number, other: number, share: readonly [number, number]): number {
  return Math.sqrt(ramp(one, ...share) * ramp(other, ...share));
}

/** The largest of a measure over all pairs of families. */
function largest(a: Portrait, b: Portrait, of: OfTwo): Measure {
  let best: Measure = { size: 0, numbers: {} };
  for (const x of a.families)
    for (const y of b.families) {
      const { size, numbers } = of(x, y);
      if (size > best.size) best = { size, numbers, families: [x, y] };
    }
  return best;
}

function larger(p: Measure, q: Measure): Measure {
  return q.size > p.size ? q : p;
}
