import type { Held } from '../../drawer/model.ts';
import { nearestHueName } from '../../drawing/hue-names.ts';
import type { Comparison, Distance, Reason, ReasonKind, Verdict } from '../../harmony/model.ts';
import { opinionOf } from '../apply-study.ts';
import type { Notebook, StudyLeaf } from '../model.ts';

/** Where the reader's verdicts and the engine's differ: for her to read, never to tune by. */
export interface Differences {
  /** Pairs of which she has said her verdict, and of how many both say the same. */
  readonly said: number;
  readonly agreed: number;
  readonly differ: readonly Difference[];
  /** What returns among the differences, as sentences. */
  readonly patterns: readonly string[];
}

export interface Difference {
  readonly study: StudyLeaf;
  readonly candidate: Held;
  readonly hers: Verdict;
  readonly likes: boolean | null;
  readonly comparison: Comparison;
  /** The reason that she seems to weigh less: the weightiest one against where she is milder, for where she is sterner. */
  readonly reason: Reason | null;
}

/** The engine's comparison of a pair, or null where a paper has left the drawer. */
type Compare = (anchor: Held, candidate: Held, distance: Distance) => Comparison | null;

/** Gathers every pair on a study of which the reader has said her verdict. */
export function findDifferences(notebook: Notebook, compare: Compare): Differences {
  const pairs = notebook.leaves.flatMap((leaf) => (leaf.kind === 'study' ? saidOn(leaf, compare) : []));
  const differ = pairs.filter(({ hers, comparison }) => hers !== comparison.verdict);
  return {
    said: pairs.length,
    agreed: pairs.length - differ.length,
    differ,
    patterns: patternsOf(differ, pairs),
  };
}

const order: readonly Verdict[] = ['holds-together', 'needs-a-bridge', 'pulls-apart'];

/** True where she finds more together than the engine does. */
export function isMilder({ hers, comparison }: Difference): boolean {
  return order.indexOf(hers) < order.indexOf(comparison.verdict);
}

function saidOn(study: StudyLeaf, compare: Compare): Difference[] {
  const { anchor } = study;
  if (!anchor) return [];
  return study.candidates.flatMap((candidate) => {
    const { verdict: hers, likes } = opinionOf(study, candidate);
    const comparison = hers && compare(anchor, candidate, study.distance);
    if (!hers || !comparison) return [];
    const milder = order.indexOf(hers) < order.indexOf(comparison.verdict);
    const reason = comparison.reasons.find(({ weighs }) => (milder ? weighs < 0 : weighs > 0)) ?? null;
    return [{ study, candidate, hers, likes, comparison, reason }];
  });
}

/** How often a kind of trouble must have been passed over before it is told as a habit. A choice of ours. */
const leastTimes = 2;

function patternsOf(differ: readonly Difference[], all: readonly Difference[]): readonly string[] {
  const counts = new Map<string, { kind: ReasonKind; hue: string | null; times: number }>();
  for (const { reason, comparison } of differ.filter(isMilder)) {
    if (!reason) continue;
    const hue = reason.kind === 'near miss' ? hueOf(reason, comparison) : null;
    const key = `${reason.kind} ${hue ?? ''}`;
    const before = counts.get(key)?.times ?? 0;
    counts.set(key, { kind: reason.kind, hue, times: before + 1 });
  }
  const habits = [...counts.values()]
    .filter(({ times }) => times >= leastTimes)
    .sort((one, other) => other.times - one.times)
    .map(
      ({ kind, hue, times }) =>
        `You seem to like ${passedOver[kind] ?? `what Quirewise holds against a pair as “${kind}”`}${hue ? ` of ${hue}` : ''}: ${times} times you found more together than Quirewise did.`,
    );
  const sterner = differ.filter((one) => !isMilder(one)).length;
  const stern =
    sterner >= leastTimes
      ? [`${sterner} times you were sterner than Quirewise: you may ask for more than a colour in common.`]
      : [];
  const liked = all.filter(({ likes, comparison }) => likes && comparison.verdict === 'pulls-apart').length;
  const taste =
    liked >= leastTimes
      ? [
          `${liked} pairs that pull apart you like all the same. That is your taste, and it is another question.`,
        ]
      : [];
  return [...habits, ...stern, ...taste];
}

const passedOver: Partial<Record<ReasonKind, string>> = {
  'near miss': 'near misses',
  'strong beside soft': 'strong colours beside soft ones',
  'one is greyed': 'a clean colour beside a greyed one',
  'many hues': 'many hues at once',
  'strong contrast of colour': 'strong contrasts of colour',
  'hues far apart': 'hues that lie far apart',
  'hard beside hard': 'two hard, even prints side by side',
  'nothing shared': 'papers that share no colour',
};

function hueOf({ inks }: Reason, { anchor, candidate }: Comparison): string | null {
  const ink = [anchor.base, ...anchor.inks, candidate.base, ...candidate.inks].find(
    ({ id }) => id === inks[0],
  );
  const hue = ink?.oklch[2];
  return hue === null || hue === undefined ? null : nearestHueName(hue);
}
