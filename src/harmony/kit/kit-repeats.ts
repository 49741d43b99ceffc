import type { MeasuredInk } from '../measure/measured.ts';
import { inkLimits } from '../thresholds.ts';
import { wordOf } from '../words/ink-word.ts';
import { type Measured, placeOf } from './kit-members.ts';

/** One strong colour and the inks in which it comes, one group of inks that repeat each other. */
export interface ColourGroup {
  readonly word: string;
  readonly inks: readonly MeasuredInk[];
  /** Its largest ink in each place on the page that it is in. */
  readonly placed: readonly MeasuredInk[];
  /** How many those are. */
  readonly places: number;
}

/** Every strong colour of a kit, most places first, then the larger. */
export function colourGroups(kit: Measured): ColourGroup[] {
  const strong = kit.papers.flatMap((at) => kit.sides[at]!.inks.filter(isStrong));
  const group = new Map(strong.map((ink) => [ink.id, ink.id]));
  const root = (id: string): string => (group.get(id) === id ? id : root(group.get(id)!));
  const links = kit.pairs.flatMap(({ pair }) => pair.tied);
  const misses = links.filter(({ link }) => link.kind === 'near miss');
  /** What nearly misses is not one colour, whatever lies between. */
  const part = (one: string, other: string) =>
    misses.some(({ a, b }) => {
      if (!group.has(a.id) || !group.has(b.id)) return false;
      const [x, y] = [root(a.id), root(b.id)];
      return (x === one && y === other) || (x === other && y === one);
    });
  const repeats = links
    .filter(({ link, a, b }) => link.kind === 'repeat' && group.has(a.id) && group.has(b.id))
    .sort((one, other) => one.link.deltaE00 - other.link.deltaE00);
  for (const { a, b } of repeats) {
    const [one, other] = [root(a.id), root(b.id)];
    if (one !== other && !part(one, other)) group.set(other, one);
  }
  const groups = new Map<string, MeasuredInk[]>();
  for (const ink of strong) {
    const name = root(ink.id);
    groups.set(name, [...(groups.get(name) ?? []), ink]);
  }
  return [...groups.values()]
    .map((inks) => {
      const placed = onePerSpot(kit, inks);
      return { word: wordOf(largest(inks)), inks, placed, places: placed.length };
    })
    .sort((one, other) => other.places - one.places || areaOf(kit, other.inks) - areaOf(kit, one.inks));
}

/** Share of the page that some inks of a kit cover. */
export function areaOf(kit: Measured, inks: readonly MeasuredInk[]): number {
  return inks.reduce((sum, ink) => sum + ink.share * kit.areas[placeOf(ink.id)]!, 0);
}

function onePerSpot(kit: Measured, inks: readonly MeasuredInk[]): MeasuredInk[] {
  const spotOf = ({ id }: MeasuredInk) => kit.spots[placeOf(id)]!;
  const spots = [...new Set(inks.map(spotOf))];
  return spots.map((spot) => largest(inks.filter((ink) => spotOf(ink) === spot)));
}

function isStrong(ink: MeasuredInk): boolean {
  return ink.actsAs === null && ink.chroma >= inkLimits.quietChroma && ink.share >= inkLimits.strayShare;
}

function largest(inks: readonly MeasuredInk[]): MeasuredInk {
  return inks.reduce((best, ink) => (ink.share > best.share ? ink : best));
}
