import { toldOf } from '../lazy-comparison.ts';
import { familyPlaces } from '../measure/family-places.ts';
import { measureSide } from '../measure/measured.ts';
import { pairOf } from '../measure/pair.ts';
import { takeSide } from '../measure/take-side.ts';
import type { Change, Comparison, MendOptions, Remedy, Verdict } from '../model.ts';
import type { Told } from '../reasons/build.ts';
import { type Judgement, judge, verdictOrder } from '../rules/verdict.ts';
import { remedyEffort } from '../thresholds.ts';
import type { FindingName, Judged } from '../whole/model.ts';
import {
  bladeCaution,
  liftsSaid,
  notEnoughAlone,
  onlyABeginning,
  together,
} from '../words/remedy-sentences.ts';
import { applyChanges } from './changes.ts';
import { keepsPrint } from './keeps-print.ts';
import { type Idea, ideasFor } from './remedy-ideas.ts';

/**
 * What could mend a pair, by search: each idea is carried out, the two are compared again, and what helps is kept,
 * least effort first; to take another sheet comes last, and is offered once at most, since it mends nothing of this
 * pair. Two ideas are tried together where one is not enough. At least two come back where the pair does not hold;
 * where it holds, none.
 */
export function remediesFor(comparison: Comparison, options: MendOptions = {}): Remedy[] {
  const told = toldOf(comparison);
  const before = told.judgement.verdict;
  if (before === 'holds-together') return [];
  const tried = named(ideasFor(told, withFamilies(comparison, options))).map((idea) => tryIdea(told, idea));
  const helps = ({ verdict }: Tried) => rank(verdict) < rank(before);
  const own = tried.filter(({ idea }) => idea.kind !== 'swap');
  const swap = tried
    .filter((one) => one.idea.kind === 'swap' && helps(one))
    .sort(byUse)
    .slice(0, 1);
  const helping = bestOfKind(own.filter(helps));
  const mending = helping.filter(({ verdict }) => verdict === 'holds-together');
  const more = mending.length >= remedyEffort.least ? [] : pairsOf(told, own, before);
  const found = [...helping, ...more];
  const missing = Math.max(0, remedyEffort.least - found.length - swap.length);
  const rest = own.filter((one) => !found.includes(one)).sort(byWorst);
  const kept = [...found, ...rest.slice(0, missing)].sort(byUse).slice(0, remedyEffort.most - swap.length);
  const inOrder = kept.sort((one, other) => one.idea.effort - other.idea.effort);
  return [...inOrder, ...swap].map((one) => remedyOf(one, told.judgement));
}

/** Whether what could mend the pair depends on where its inks lie: only what is troubled is ever cut away. */
export function goesByPlaces({ verdict }: Comparison): boolean {
  return verdict !== 'holds-together';
}

/** The verdict after some changes: what a remedy promises. */
export function verdictAfter(told: Told, changes: readonly Change[]): After {
  const { pair } = told;
  const laid = applyChanges(pair.anchor.side, pair.candidate.side, changes, pair.strip);
  const anchor = measureSide(takeSide(laid.anchor, 'anchor'), 'anchor');
  const candidate = measureSide(takeSide(laid.candidate, 'candidate'), 'candidate');
  const { verdict, whole } = judge(pairOf(anchor, candidate, pair.distance, laid.strip));
  return { verdict, worst: -whole.balance, lifts: liftedBy(told.judgement.whole, whole) };
}

interface After {
  readonly verdict: Verdict;
  /** How far what is against the pair outweighs what is for it; less is better. */
  readonly worst: number;
  /** Findings against that are lighter for it, the one that is most so first. */
  readonly lifts: readonly FindingName[];
}

function liftedBy(before: Judged, after: Judged): FindingName[] {
  return before.counted
    .filter(({ counts }) => counts < 0)
    .map(({ name, counts }) => {
      const left = after.counted.find((finding) => finding.name === name)?.counts ?? 0;
      return { name, by: left - counts };
    })
    .filter(({ by }) => by >= remedyEffort.liftsFrom)
    .sort((one, other) => other.by - one.by)
    .map(({ name }) => name);
}

/** The same options, where inks lie by family. */
function withFamilies({ anchor, candidate }: Comparison, { places, ...rest }: MendOptions): MendOptions {
  if (!places) return rest;
  return {
    ...rest,
    places: {
      ...(places.anchor ? { anchor: familyPlaces(places.anchor, anchor) } : {}),
      ...(places.candidate ? { candidate: familyPlaces(places.candidate, candidate) } : {}),
    },
  };
}

/** No two under one title: those that share one get the letter of their ink, and what is still the same stands once. */
function named(ideas: readonly Idea[]): Idea[] {
  const titles = ideas.map(({ words }) => words.title);
  const told = ideas.map((idea): Idea => {
    const { title } = idea.words;
    const [ink] = idea.inks;
    const shared = titles.indexOf(title) !== titles.lastIndexOf(title);
    return shared && ink ? { ...idea, words: { ...idea.words, title: `${title} (${ink})` } } : idea;
  });
  const seen = new Set<string>();
  return told.filter(({ words: { title } }) => !seen.has(title) && seen.add(title));
}

interface Tried extends After {
  readonly idea: Idea;
}

function tryIdea(told: Told, idea: Idea): Tried {
  return { idea, ...verdictAfter(told, idea.changes) };
}

/** Two ideas together, where both are small and the two do more than either. */
function pairsOf(told: Told, tried: readonly Tried[], before: Verdict): Tried[] {
  const small = [...tried]
    .filter(({ idea }) => combinable.has(idea.kind))
    .sort(byWorst)
    .slice(0, 8);
  const both = small.flatMap((one, i) =>
    small
      .slice(i + 1)
      .map((other) => combined(one.idea, other.idea))
      .filter(({ changes }) => keepsPrint(told.pair, changes))
      .map((idea) => tryIdea(told, idea)),
  );
  const better = (one: Tried) => one.verdict === 'holds-together' && rank(one.verdict) < rank(before);
  const single = new Set(tried.filter(better).map(({ idea }) => idea));
  return both
    .filter(better)
    .filter(({ idea }) => !parts.get(idea)?.some((part) => single.has(part)))
    .sort(byUse)
    .slice(0, 2);
}

const combinable: ReadonlySet<string> = new Set(['cover', 'trim', 'carry', 'buffer']);
const parts = new WeakMap<Idea, readonly Idea[]>();

function combined(one: Idea, other: Idea): Idea {
  const [first, second] = one.effort <= other.effort ? [one, other] : [other, one];
  const idea: Idea = {
    kind: first.kind,
    words: together(first.words, second.words),
    changes: [...first.changes, ...second.changes],
    inks: [...new Set([...first.inks, ...second.inks])],
    effort: first.effort + second.effort,
  };
  parts.set(idea, [one, other]);
  return idea;
}

/** Not every plain in the drawer: of pieces laid on, and of every other kind, the best two. */
function bestOfKind(tried: readonly Tried[]): Tried[] {
  const sorted = [...tried].sort(byUse);
  return sorted.filter(
    (one, at) => sorted.slice(0, at).filter(({ idea }) => idea.kind === one.idea.kind).length < 2,
  );
}

function byUse(one: Tried, other: Tried): number {
  return (
    rank(one.verdict) - rank(other.verdict) || one.idea.effort - other.idea.effort || one.worst - other.worst
  );
}

function byWorst(one: Tried, other: Tried): number {
  return (
    rank(one.verdict) - rank(other.verdict) || one.worst - other.worst || one.idea.effort - other.idea.effort
  );
}

function remedyOf({ idea, verdict, worst, lifts }: Tried, before: Judgement): Remedy {
  const helps = rank(verdict) < rank(before.verdict);
  const eases = worst < -before.whole.balance;
  const cuts = idea.words.blade === true;
  const lifted = lifts.length > 0 ? ` ${liftsSaid(lifts)}` : '';
  const says = `${idea.words.says}${lifted}${helps ? '' : ` ${eases ? notEnoughAlone : onlyABeginning}`}`;
  return {
    kind: idea.kind,
    title: idea.words.title,
    says,
    inks: idea.inks,
    verdictAfter: verdict,
    ...(cuts ? { caution: bladeCaution } : {}),
    cost: idea.words.cost,
    effort: idea.effort,
    changes: idea.changes,
    lifts,
  };
}

function rank(verdict: Verdict): number {
  return verdictOrder.indexOf(verdict);
}
