import { deltaE2000 } from '../../colour/difference.ts';
import { hueDistanceDeg } from '../../colour/hue.ts';
import type { Lab } from '../../colour/model.ts';
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
  const apart = apartBy(a, b);
  // Two sheets of one paper show its hues once, and nothing of it quarrels with itself.
  const other = ramp(apart, ...limits.otherPaper);
  // A plain white, black, grey, cream or kraft quarrels with nothing by its colour.
  const colours = isPlainNeutral(a) || isPlainNeutral(b) ? 0 : other;
  const hues = Math.max(a.hues, b.hues) + other * Math.min(a.hues, b.hues);
  const colour = Math.max(a.seenColour, b.seenColour);
  const soft = Math.max(a.soft * (1 - b.regular), b.soft * (1 - a.regular)) * (1 - rest);
  const ground = deltaE2000(a.base.lab, b.base.lab);
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
    'comes back': largest(a, b, notBoth(comesBack, a.base, b.base)),
    'many hues': { size: other * ramp(hues, ...limits.hues), numbers: { huesA: a.hues, huesB: b.hues } },
    'strong contrast of colour': {
      size: other * ramp(colour, ...limits.contrastOfColour),
      numbers: { colourContrastA: a.seenColour, colourContrastB: b.seenColour },
    },
    'strong beside soft': times(colours, strongBesideSoft(a, b)),
    'nothing shared': {
      size: ramp(apart, ...limits.sharedDeltaE) * (1 - rest),
      numbers: { meanDeltaE00: apart },
    },
    ...nearOrGreyed(times(colours, largest(a, b, nearMiss)), times(colours, largest(a, b, duller))),
    'hues far apart': times(colours, larger(largest(a, b, farApart), largest(a, b, opposite))),
    'hard beside hard': { size: other * Math.min(a.hard, b.hard), numbers: repeats },
  };
}

function isPlainNeutral({ families, base }: Portrait): boolean {
  return families.length === 1 && base.neutral !== null;
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

/** A finding on two families: how far it holds, 0–1, and the numbers behind it, asked for where it is the largest. */
interface OfTwo {
  readonly size: (x: SeenFamily, y: SeenFamily) => number;
  readonly numbers: (x: SeenFamily, y: SeenFamily) => Record<string, number>;
}

const deltaE = (x: Spot, y: Spot): number => deltaE2000(x.lab, y.lab);
const hueDeg = (x: SeenFamily, y: SeenFamily): number => hueDistanceDeg(x.hueDeg, y.hueDeg);
const lower = (x: Spot, y: Spot): number => Math.min(x.chroma, y.chroma);

interface Spot {
  readonly lab: Lab;
  readonly chroma: number;
}

/** Two families that lead, near in hue and depth and yet not the same. It ends where the hues are clearly two. */
const nearMiss: OfTwo = {
  size(x, y) {
    const degrees = hueDeg(x, y);
    const size =
      lead(x, y) *
      ramp(lower(x, y), ...limits.leadChroma) *
      ramp(degrees, ...limits.missHueFrom) *
      (1 - ramp(degrees, ...limits.missHueTo)) *
      (1 - ramp(Math.abs(x.lab.l - y.lab.l), ...limits.missLightness));
    // The dearest question comes last.
    if (size === 0) return 0;
    const apart = deltaE(x, y);
    const near = size * ramp(apart, ...limits.missDeltaE) * (1 - ramp(apart, ...limits.missEnds));
    return near > 0 ? near * (1 - gradation(x, y)) : 0;
  },
  numbers: (x, y) => ({ deltaE00: deltaE(x, y), hueDeg: hueDeg(x, y), dL: Math.abs(x.lab.l - y.lab.l) }),
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
const duller: OfTwo = {
  size(x, y) {
    const size =
      lead(x, y) *
      ramp(lower(x, y), ...limits.leadChroma) *
      (1 - ramp(hueDeg(x, y), ...limits.dullHue)) *
      ramp(Math.abs(x.grey - y.grey), ...limits.dullGrey) *
      ramp(Math.max(x.chroma, y.chroma), ...limits.dullChroma);
    return size === 0 ? 0 : size * ramp(deltaE(x, y), ...limits.dullDeltaE);
  },
  numbers: (x, y) => ({ deltaE00: deltaE(x, y), hueDeg: hueDeg(x, y), grey: Math.abs(x.grey - y.grey) }),
};

/** Two large coloured families whose hues have nothing to do with each other. */
const farApart: OfTwo = {
  size: (x, y) =>
    seenBoth(x.share, y.share, limits.farShare) *
    ramp(lower(x, y), ...limits.farChroma) *
    ramp(hueDeg(x, y), ...limits.farHue),
  numbers: (x, y) => ({ hueDeg: hueDeg(x, y), deltaE00: deltaE(x, y) }),
};

/** Two opposites, both strong. */
const opposite: OfTwo = {
  size: (x, y) =>
    seenBoth(x.share, y.share, limits.farShare) *
    ramp(lower(x, y), ...limits.oppositeChroma) *
    ramp(hueDeg(x, y), ...limits.oppositeHue),
  numbers: farApart.numbers,
};

/** A colour that is on both: the nearest inks of two families, both seen. */
const comesBack: OfTwo = {
  size: (x, y) => backOf(x, y).size,
  numbers: (x, y) => ({ deltaE00: backOf(x, y).deltaE00 }),
};

/** Two bases that agree are told as such. */
const notBoth = (one: OfTwo, a: SeenFamily, b: SeenFamily): OfTwo => ({
  ...one,
  size: (x, y) => (x === a && y === b ? 0 : one.size(x, y)),
});

function backOf(x: SeenFamily, y: SeenFamily): { size: number; deltaE00: number } {
  let best = { size: 0, deltaE00: Number.POSITIVE_INFINITY };
  for (const p of x.inks)
    for (const q of y.inks) {
      const most = seenBoth(p.share, q.share, limits.backShare) * ramp(lower(p, q), ...limits.backChroma);
      if (most <= best.size) continue;
      const deltaE00 = deltaE(p, q);
      const size = most * (1 - ramp(deltaE00, ...limits.backDeltaE));
      if (size > best.size) best = { size, deltaE00 };
    }
  return best;
}

/**
 * How far the inks of either side lie from the nearest of the other, on the mean of both ways, ΔE₀₀ held at 40; each counts by the
 * root of its share.
 */
function apartBy(a: Portrait, b: Portrait): number {
  const [ours, theirs] = [a.inks, b.inks];
  const [toTheirs, toOurs] = [
    new Float64Array(ours.length).fill(limits.farDeltaE),
    new Float64Array(theirs.length).fill(limits.farDeltaE),
  ];
  for (let i = 0; i < ours.length; i++)
    for (let k = 0; k < theirs.length; k++) {
      const found = deltaE2000(ours[i]!.lab, theirs[k]!.lab);
      if (found < toTheirs[i]!) toTheirs[i] = found;
      if (found < toOurs[k]!) toOurs[k] = found;
    }
  return (meanOf(ours, toTheirs) + meanOf(theirs, toOurs)) / 2;
}

function meanOf(inks: readonly SeenInk[], apart: Float64Array): number {
  let [sum, whole] = [0, 0];
  for (let i = 0; i < inks.length; i++) {
    const weight = Math.sqrt(inks[i]!.share);
    sum += weight * apart[i]!;
    whole += weight;
  }
  return whole > 0 ? sum / whole : 0;
}

function lead(x: SeenFamily, y: SeenFamily): number {
  return seenBoth(x.share, y.share, limits.leadShare);
}

/** How far both are large enough, 0–1. */
function seenBoth(one: number, other: number, share: readonly [number, number]): number {
  return Math.sqrt(ramp(one, ...share) * ramp(other, ...share));
}

/** The largest of a measure over all pairs of families. */
function largest(a: Portrait, b: Portrait, { size: of, numbers }: OfTwo): Measure {
  let size = 0;
  let best: readonly [SeenFamily, SeenFamily] | null = null;
  for (const x of a.families)
    for (const y of b.families) {
      const found = of(x, y);
      if (found > size) {
        size = found;
        best = [x, y];
      }
    }
  return best === null ? { size: 0, numbers: {} } : { size, numbers: numbers(...best), families: best };
}

function times(by: number, measure: Measure): Measure {
  return by === 1 ? measure : { ...measure, size: by * measure.size };
}

function larger(p: Measure, q: Measure): Measure {
  return q.size > p.size ? q : p;
}
