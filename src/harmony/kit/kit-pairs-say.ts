import type { Reason, ReasonKind } from '../model.ts';
import * as kitSentences from '../words/kit-sentences.ts';
import type { KitJudgement } from './kit-judge.ts';
import { type Measured, type PlacedPair, placeOf, sheetPairs } from './kit-members.ts';

/** The findings of a kit's pairs of one kind, each with its pair; a sheet that is in the kit twice speaks once. */
export function findingsOf(
  kit: Measured,
  kind: ReasonKind,
): readonly { readonly placed: PlacedPair; readonly found: Reason }[] {
  return sheetPairs(kit).flatMap((placed) =>
    placed.findings.filter((found) => found.kind === kind).map((found) => ({ placed, found })),
  );
}

/**
 * What the pairs of a kit say: of those that do not hold, what counts most against each, several of one kind once; where a member
 * bridges two, that; and what ties most of the rest.
 */
export function pairsSaid(kit: Measured, { open, bridged }: KitJudgement): Reason[] {
  const against = open.flatMap(({ findings }) => findings.find(({ weighs }) => weighs < 0) ?? []);
  const between = [...bridged].map(([{ one, other, findings }, by]): Reason => {
    const found = findings.find(({ weighs }) => weighs < 0) ?? findings[0]!;
    const name = (at: number): string => kit.members[at]!.name;
    const says = kitSentences.bridged(name(one), name(other), name(by));
    return { ...found, says, weighs: 0, inks: [...found.inks, kit.sides[by]!.inks[0]!.id] };
  });
  const holding = sheetPairs(kit).filter(({ told }) => told.judgement.verdict === 'holds-together');
  const forIt = holding.flatMap(({ findings }) => findings.find(({ weighs }) => weighs > 0) ?? []);
  return [...oneOfKind(against), ...between, ...oneOfKind(forIt)].map(inKitOrder);
}

/** Of reasons of one kind the weightiest; what the others say is said in numbers. */
function oneOfKind(reasons: readonly Reason[]): Reason[] {
  const sorted = [...reasons].sort((one, other) => Math.abs(other.weighs) - Math.abs(one.weighs));
  return sorted
    .filter(({ kind }, at) => sorted.findIndex((one) => one.kind === kind) === at)
    .map((reason) => {
      const more = sorted.filter(({ kind }) => kind === reason.kind).length - 1;
      return more > 0 ? { ...reason, says: `${reason.says} ${kitSentences.ofOthers(more)}` } : reason;
    });
}

/** Inks in the order of the kit's members. */
export function inKitOrder(reason: Reason): Reason {
  return { ...reason, inks: [...new Set(reason.inks)].sort((a, b) => placeOf(a) - placeOf(b)) };
}
