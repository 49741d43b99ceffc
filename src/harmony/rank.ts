import type { Side } from '../sheet/model.ts';
import { compare } from './compare.ts';
import type { CompareOptions, Comparison, Ranked } from './model.ts';
import { scorerOf } from './score.ts';
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
  const { length } = candidateSides;
  const columns = {
    verdict: new Uint8Array(length),
    worst: new Float64Array(length),
    answered: new Float64Array(length),
    intrudes: new Float64Array(length),
  };
  for (let i = 0; i < length; i++) {
    const found = score(wholeSide(candidateSides[i]!));
    columns.verdict[i] = found.verdict;
    columns.worst[i] = found.worst;
    columns.answered[i] = found.answered;
    columns.intrudes[i] = found.intrudes;
  }
  const order = new Uint32Array(length).map((_, i) => i).sort(byColumns(columns));
  const places: Ranked[] = new Array(length);
  order.forEach((index, place) => {
    const ranked = lazily(
      anchor,
      candidateSides[index]!,
      index,
      verdictOrder[columns.verdict[index]!]!,
      options,
    );
    if (place < readyPlaces) void ranked.reasons;
    places[place] = ranked;
  });
  return places;
}

interface Columns {
  readonly verdict: Uint8Array;
  readonly worst: Float64Array;
  readonly answered: Float64Array;
  readonly intrudes: Float64Array;
}

function byColumns({ verdict, worst, answered, intrudes }: Columns): (i: number, j: number) => number {
  return (i, j) =>
    verdict[i]! - verdict[j]! ||
    worst[i]! - worst[j]! ||
    answered[j]! - answered[i]! ||
    intrudes[i]! - intrudes[j]! ||
    i - j;
}

/** A side read by the engine is whole already; one written by hand may not be. */
function wholeSide(side: Side): Side {
  const whole = side.inks && side.base.oklch && side.base.share !== undefined && side.inks.every(isWhole);
  return whole ? side : takeSide(side, 'candidate');
}

function isWhole(ink: Side['base'] | Side['inks'][number]): boolean {
  return ink.oklch !== undefined && ink.share !== undefined;
}

function lazily(
  anchor: Side,
  side: Side,
  index: number,
  verdict: Comparison['verdict'],
  options: CompareOptions,
): Ranked {
  let bare: Comparison | undefined;
  let mended: Comparison['remedies'] | undefined;
  const found = () => (bare ??= compare(anchor, side, { ...options, withoutRemedies: true }));
  return {
    index,
    verdict,
    distance: options.strip ? 'apart' : (options.distance ?? 'apart'),
    get anchor() {
      return found().anchor;
    },
    get candidate() {
      return found().candidate;
    },
    get decision() {
      return found().decision;
    },
    get links() {
      return found().links;
    },
    get reasons() {
      return found().reasons;
    },
    get remedies() {
      return (mended ??= options.withoutRemedies ? [] : compare(anchor, side, options).remedies);
    },
    get standing() {
      return found().standing!;
    },
  };
}
