import type { Side } from '../sheet/model.ts';
import { compare } from './compare.ts';
import type { CompareOptions, Comparison, Ranked, Standing } from './model.ts';
import { type Score, scorerOf } from './score.ts';
import { emptyLines, linesOfAll } from './score-lines.ts';
import { takeSide } from './take-side.ts';
import { verdictOrder } from './verdict.ts';

/** How many of the best come with their reasons ready: a first screen. */
export const readyPlaces = 24;

/**
 * Compares every candidate with the anchor, best first: by verdict; then the weight of the worst unanswered trouble;
 * then the share of the anchor's inks that is answered; then the share of the candidate that intrudes; then the
 * order given. The first 24 have their reasons ready; all other parts, and all remedies, are computed when they are
 * read. Each place spreads and serialises like a plain `Comparison` with its `index`.
 */
export function rank(
  anchorSide: Side,
  candidateSides: readonly Side[],
  options: CompareOptions = {},
): Ranked[] {
  const anchor = takeSide(anchorSide, 'anchor');
  const distance = options.distance ?? 'apart';
  const score = scorerOf(anchor, distance, options.strip ?? false);
  const lines = linesOfAll(candidateSides);
  const one = emptyLines();
  const places = candidateSides.map(
    (side, index) => new Place(index, anchor, side, score(lines.of(index, one)), options),
  );
  places.sort(byStanding);
  for (const place of (places as unknown as Ranked[]).slice(0, readyPlaces)) void place.reasons;
  return places as unknown as Ranked[];
}

/** The order of two places: verdict, worst trouble, anchor answered, candidate intruding, order given. */
export function byStanding(one: Placed, other: Placed): number {
  return (
    (one.verdict === other.verdict
      ? 0
      : verdictOrder.indexOf(one.verdict) - verdictOrder.indexOf(other.verdict)) ||
    one.standing!.worst - other.standing!.worst ||
    other.standing!.answered - one.standing!.answered ||
    one.standing!.intrudes - other.standing!.intrudes ||
    one.index - other.index
  );
}

type Placed = Pick<Ranked, 'index' | 'verdict' | 'standing'>;

/** One place of a ranking. What it is asked for it works out, once. */
class Place {
  readonly index: number;
  readonly verdict: Comparison['verdict'];
  readonly distance: Comparison['distance'];
  readonly anchor: Side;
  readonly standing: Standing;
  readonly #side: Side;
  readonly #options: CompareOptions;
  #found: Comparison | undefined;
  #remedies: Comparison['remedies'] | undefined;

  constructor(index: number, anchor: Side, side: Side, score: Score, options: CompareOptions) {
    this.index = index;
    this.verdict = verdictOrder[score.verdict]!;
    this.distance = options.strip ? 'apart' : (options.distance ?? 'apart');
    this.anchor = anchor;
    this.standing = { worst: score.worst, answered: score.answered, intrudes: score.intrudes };
    this.#side = side;
    this.#options = options;
    for (const name of lazyNames) Object.defineProperty(this, name, lazyParts[name]);
  }

  static found(place: Place): Comparison {
    place.#found ??= compare(place.anchor, place.#side, { ...place.#options, withoutRemedies: true });
    return place.#found;
  }

  static remedies(place: Place): Comparison['remedies'] {
    const { withoutRemedies } = place.#options;
    place.#remedies ??= withoutRemedies ? [] : compare(place.anchor, place.#side, place.#options).remedies;
    return place.#remedies;
  }
}

/** Own and enumerable, so that a place spreads and serialises; shared, so that ten thousand places are cheap. */
const lazyParts = {
  candidate: part((place) => Place.found(place).candidate),
  decision: part((place) => Place.found(place).decision),
  links: part((place) => Place.found(place).links),
  reasons: part((place) => Place.found(place).reasons),
  remedies: part((place) => Place.remedies(place)),
} as const;

const lazyNames = ['candidate', 'decision', 'links', 'reasons', 'remedies'] as const;

function part<T>(of: (place: Place) => T): PropertyDescriptor {
  return {
    enumerable: true,
    get(this: Place) {
      return of(this);
    },
  };
}
