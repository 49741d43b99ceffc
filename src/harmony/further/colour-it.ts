import { deltaE2000 } from '../../colour/difference.ts';
import { hexFromOklch, isInSrgb } from '../../colour/gamut.ts';
import type { OklchTuple } from '../../colour/model.ts';
import {
  linearFromRgb,
  oklchFromRgb,
  oklchFromTuple,
  rgbFromLinear,
  rgbFromOklch,
  tupleFromOklch,
} from '../../colour/spaces.ts';
import type { Ink, Plain, Side } from '../../sheet/model.ts';
import { inkFromHex } from '../../sheet/plain.ts';
import { tiedOf } from '../measure/links.ts';
import { type MeasuredInk, type MeasuredSide, measureColour, measureSide } from '../measure/measured.ts';
import { takeSide } from '../measure/take-side.ts';
import type { ColourIt, ColourRegion } from '../model.ts';
import { nearMissWeight, tieWeight } from '../rules/weights.ts';
import { answerLimits, carriedShare, colourItGrid } from '../thresholds.ts';
import { said } from '../words/ink-word.ts';
import * as sentences from '../words/study-sentences.ts';

export interface ColourItOptions {
  /** Inks, mists and paints to choose from. */
  readonly plains?: readonly Plain[];
  /** What is coloured: its own colour shows through. Default a white. */
  readonly base?: Ink;
}

/**
 * Which colour would tie two sides most, for a thing that takes any colour. A colour qualifies if it is tied to both
 * sides and nearly misses nothing on either; among those the ones count that answer most inks. What comes back is a
 * region, not a proposal: anything in it does as well.
 */
export function colourIt(anchorSide: Side, candidateSide: Side, options: ColourItOptions = {}): ColourIt {
  const sides = [
    measureSide(takeSide(anchorSide, 'anchor'), 'anchor'),
    measureSide(takeSide(candidateSide, 'candidate'), 'candidate'),
  ];
  const tried = gridColours().flatMap((oklch) => tryColour(oklch, sides) ?? []);
  const most = Math.max(0, ...tried.map(({ answers }) => answers.length));
  const good = tried.filter(({ answers }) => answers.length === most && most > 0);
  if (good.length === 0) {
    return { regions: [], best: null, answers: [], nearest: null, says: sentences.colourItNothing() };
  }
  const groups = groupsByHue(good);
  const best = middleOf(groups[0]!);
  const ink = inkFromHex(hexFromOklch(oklchFromTuple(best.oklch)), 'new', carriedShare);
  return {
    regions: groups.map(regionOf),
    best: ink,
    answers: best.answers.map(({ id }) => id),
    ...nearestAndSays(ink, best, options),
  };
}

/** How an ink, mist or paint looks on a ground: light goes through it, off the ground, and back. Ours, linear light. */
export function onBase(ink: Ink, base: Ink): Ink {
  const over = linearFromRgb(rgbFromOklch(oklchFromTuple(ink.oklch)));
  const under = linearFromRgb(rgbFromOklch(oklchFromTuple(base.oklch)));
  const oklch = oklchFromRgb(
    rgbFromLinear({ r: over.r * under.r, g: over.g * under.g, b: over.b * under.b }),
  );
  return { ...inkFromHex(hexFromOklch(oklch), ink.id, ink.share), oklch: tupleFromOklch(oklch) };
}

interface Tried {
  readonly oklch: OklchTuple;
  readonly answers: readonly MeasuredInk[];
}

function tryColour(oklch: OklchTuple, sides: readonly MeasuredSide[]): Tried | null {
  const colour = measureColour({ oklch } as Ink);
  if (colour.neutral !== null) return null;
  const answers: MeasuredInk[] = [];
  for (const { inks, quiet } of sides) {
    let tie = 0;
    for (const b of inks) {
      if (b.actsAs !== null) continue;
      const a: MeasuredInk = {
        ...colour,
        ink: b.ink,
        id: 'new',
        share: b.share,
        isBase: false,
        actsAs: null,
        of: 'anchor',
      };
      const tied = tiedOf(a, b, 'apart');
      if (tied.link.kind === 'near miss' && nearMissWeight(tied, 'apart') >= answerLimits.trouble / 2)
        return null;
      const weight = tieWeight(tied, 'apart');
      tie = Math.max(tie, weight);
      if (weight >= answerLimits.tie) answers.push(b);
    }
    if (tie < answerLimits.tie && !quiet) return null;
  }
  return { oklch, answers };
}

let keptGrid: readonly OklchTuple[] | undefined;

/** Colours all over sRGB, evenly in OKLCH. */
function gridColours(): readonly OklchTuple[] {
  if (keptGrid) return keptGrid;
  const { lightness, chroma, hueStepDeg } = colourItGrid;
  const hues = Array.from({ length: 360 / hueStepDeg }, (_, i) => i * hueStepDeg);
  keptGrid = hues
    .flatMap((h) => chroma.flatMap((c) => lightness.map((l): OklchTuple => [l, c, h])))
    .filter((tuple) => isInSrgb(oklchFromTuple(tuple)));
  return keptGrid;
}

/** Colours that follow each other around the circle, largest group first. */
function groupsByHue(good: readonly Tried[]): Tried[][] {
  const { hueStepDeg } = colourItGrid;
  const hue = ({ oklch }: Tried) => oklch[2] ?? 0;
  const sorted = [...good].sort((a, b) => hue(a) - hue(b));
  const groups: Tried[][] = [];
  for (const one of sorted) {
    const last = groups.at(-1);
    if (last && hue(one) - hue(last.at(-1)!) <= hueStepDeg) last.push(one);
    else groups.push([one]);
  }
  const [first, last] = [groups[0]!, groups.at(-1)!];
  // The circle has no beginning.
  if (first !== last && hue(first[0]!) + 360 - hue(last.at(-1)!) <= hueStepDeg) {
    groups[0] = [...last, ...first];
    groups.pop();
  }
  return groups.sort((a, b) => b.length - a.length);
}

function middleOf(group: readonly Tried[]): Tried {
  return group[Math.floor(group.length / 2)]!;
}

function regionOf(group: readonly Tried[]): ColourRegion {
  // A colour that was tried stands for all that lie nearer to it than to the next one tried.
  const half = colourItGrid.hueStepDeg / 2;
  const light = stepOf(colourItGrid.lightness) / 2;
  const strong = stepOf(colourItGrid.chroma) / 2;
  const lightnessOf = ([l, c, h]: OklchTuple, more: number) =>
    measureColour({ oklch: [l + more, c, h] } as unknown as Ink).lab.l;
  const cs = group.map(({ oklch }) => oklch[1]);
  const from = group[0]!.oklch[2]! - half;
  const to = group.at(-1)!.oklch[2]! + half;
  return {
    hueDeg: [(from + 360) % 360, (to + 360) % 360],
    lightness: [
      Math.min(...group.map(({ oklch }) => lightnessOf(oklch, -light))),
      Math.max(...group.map(({ oklch }) => lightnessOf(oklch, light))),
    ],
    chroma: [Math.min(...cs) - strong, Math.max(...cs) + strong],
  };
}

function stepOf(even: readonly number[]): number {
  return even[1]! - even[0]!;
}

function nearestAndSays(
  ink: Ink,
  best: Tried,
  { plains = [], base }: ColourItOptions,
): Pick<ColourIt, 'nearest' | 'says'> {
  const names = { anchor: 'the anchor', candidate: 'the candidate' };
  const word = ink.trade ?? ink.name;
  const head = sentences.colourIt(
    word,
    best.answers.map((one) => said(one, names)),
  );
  const ground = base ?? inkFromHex('#ffffff', 'ground', 1);
  const target = measureColour({ oklch: best.oklch } as Ink).lab;
  const found = plains
    .filter(({ takesColour }) => takesColour !== true)
    .map((plain) => {
      const seen = onBase(plain.ink, ground);
      return { plain, onBase: seen, deltaE00: deltaE2000(measureColour(seen).lab, target) };
    })
    .sort((a, b) => a.deltaE00 - b.deltaE00)[0];
  if (!found) return { nearest: null, says: head };
  const say =
    found.deltaE00 <= colourItGrid.nearDeltaE ? sentences.colourItNearest : sentences.colourItNoneNear;
  const tail = say(found.plain.name, found.deltaE00, ground.trade ?? ground.name);
  return { nearest: found, says: `${head} ${tail}` };
}
