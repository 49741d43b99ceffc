import type { Side } from '../../sheet/model.ts';
import { LazyComparison, namesIn } from '../lazy-comparison.ts';
import { type MeasuredSide, measureSide } from '../measure/measured.ts';
import { takeSide } from '../measure/take-side.ts';
import type { CompareOptions, Comparison, Ranked, Standing } from '../model.ts';
import { verdictOrder } from '../rules/verdict.ts';
import { type Score, scorerOf } from './score.ts';

/** How many of the best come with their reasons ready: a first screen. */
export const readyPlaces = 24;

/**
 * Compares every candidate with the anchor, best first: by verdict; then by what ties the two less what quarrels; then by
 * the balance; then in the order given. The first 24 have their reasons ready; all other parts are computed when they are read. Each place spreads
 * and serialises like a plain `Comparison` with its `index`.
 */
export function rank(
  anchorSide: Side,
  candidateSides: readonly Side[],
  options: CompareOptions = {},
): Ranked[] {
  const anchor = measureSide(takeSide(anchorSide, 'anchor'), 'anchor');
  const distance = options.distance ?? 'apart';
  const strip = options.strip ?? false;
  const names = namesIn(options);
  const score = scorerOf(anchor.side, { distance: strip ? 'apart' : distance, strip });
  const ranking: Ranking = { anchor, options, distance: strip ? 'apart' : distance, strip, names };
  const places = candidateSides.map((side, index) => new Place(index, ranking, side, score(side)));
  places.sort(byStanding);
  for (const place of (places as unknown as Ranked[]).slice(0, readyPlaces)) void place.reasons;
  return places as unknown as Ranked[];
}

/** The order of two places: verdict, ties less quarrels, balance, order given. */
export function byStanding(one: Placed, other: Placed): number {
  return (
    (one.verdict === other.verdict
      ? 0
      : verdictOrder.indexOf(one.verdict) - verdictOrder.indexOf(other.verdict)) ||
    fitness(other.standing!) - fitness(one.standing!) ||
    other.standing!.balance - one.standing!.balance ||
    one.index - other.index
  );
}

/** What ties two papers less what quarrels. */
export function fitness({ ties, quarrels }: Standing): number {
  return ties - quarrels;
}

type Placed = Pick<Ranked, 'index' | 'verdict' | 'standing'>;

/** What all places of a ranking share. */
interface Ranking {
  readonly anchor: MeasuredSide;
  readonly options: CompareOptions;
  readonly distance: Comparison['distance'];
  readonly strip: boolean;
  readonly names: Comparison['names'];
}

/** One place of a ranking. What it is asked for it works out, once. */
class Place {
  readonly index: number;
  readonly verdict: Comparison['verdict'];
  readonly distance: Comparison['distance'];
  readonly strip: boolean;
  readonly names: Comparison['names'];
  readonly anchor: Side;
  readonly standing: Standing;
  readonly #ranking: Ranking;
  readonly #side: Side;
  #found: LazyComparison | undefined;

  constructor(index: number, ranking: Ranking, side: Side, score: Score) {
    this.index = index;
    this.verdict = score.verdict;
    this.distance = ranking.distance;
    this.strip = ranking.strip;
    this.names = ranking.names;
    this.anchor = ranking.anchor.side;
    this.standing = score.standing;
    this.#ranking = ranking;
    this.#side = side;
    for (const name of lazyNames) Object.defineProperty(this, name, lazyParts[name]);
  }

  static found(place: Place): LazyComparison {
    const { anchor, options } = place.#ranking;
    return (place.#found ??= new LazyComparison(anchor, place.#side, options));
  }
}

const lazyNames = ['candidate', 'decision', 'findings', 'links', 'reasons'] as const;

/** Own and enumerable, so that a place spreads and serialises; shared, so that ten thousand places are cheap. */
const lazyParts = {
  candidate: part((found) => found.candidate),
  decision: part((found) => found.decision),
  findings: part((found) => found.told.judgement.whole.findings),
  links: part((found) => found.links),
  reasons: part((found) => found.reasons),
} as const;

function part<T>(of: (found: LazyComparison) => T): PropertyDescriptor {
  return {
    enumerable: true,
    get(this: Place) {
      return of(Place.found(this));
    },
  };
}
