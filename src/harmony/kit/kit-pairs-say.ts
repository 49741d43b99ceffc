import type { Reason, ReasonKind } from '../model.ts';
import { strayReasons } from '../reasons/stray.ts';
import type { BrightMuted, NearMiss, Stray } from '../rules/troubles.ts';
import { troubleWeights } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
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

/** The troubles of a kit's colours in the words of the pairs that have them: near misses, strays, bright against muted. */
export function troublesSaid(kit: Measured, judgement: KitJudgement): Reason[] {
  return [...misses(kit, judgement), ...strays(judgement), ...brightness(kit, judgement)];
}

/** A near miss weighs less where a third member shows both colours: then it is said where they stand together. */
function misses(kit: Measured, { troubles, answeredBy }: KitJudgement): Reason[] {
  const told = findingsOf(kit, 'near miss');
  return troubles
    .filter((one): one is NearMiss => one.kind === 'near miss' && one.weight >= troubleWeights.worthSaying)
    .flatMap(({ tied, weight, answered }) => {
      const [a, b] = [tied.a, tied.b];
      const own = told.find(({ found: { inks } }) => inks.includes(a.id) && inks.includes(b.id));
      if (!own) return [];
      const third = answeredBy.get(tied);
      if (third === undefined) return [own.found];
      const says = sentences.nearMissAnswered(kit.say(a), kit.say(b), kit.members[third]!.name);
      return [{ ...own.found, says, weighs: -weight, evidence: { ...own.found.evidence, answered } }];
    });
}

/** An ink that nothing in the kit answers. */
function strays({ troubles, strayTold }: KitJudgement): Reason[] {
  return troubles
    .filter((one): one is Stray => one.kind === 'stray')
    .flatMap((stray) => {
      const told = strayTold.get(stray)!;
      const judgement = { ...told.judgement, troubles: [stray] };
      return strayReasons({ ...told, judgement }).map(inKitOrder);
    });
}

function brightness(kit: Measured, { troubles }: KitJudgement): Reason[] {
  const worst = troubles.find((one): one is BrightMuted => one.kind === 'bright against muted');
  if (!worst) return [];
  const ends = [worst.anchor.lead.id, worst.candidate.lead.id];
  const own = findingsOf(kit, 'bright against muted').find(
    ({ found }) => found.weighs < 0 && ends.every((id) => found.inks.includes(id)),
  );
  return own ? [own.found] : [];
}

/** Inks in the order of the kit's members. */
export function inKitOrder(reason: Reason): Reason {
  return { ...reason, inks: [...reason.inks].sort((a, b) => placeOf(a) - placeOf(b)) };
}
