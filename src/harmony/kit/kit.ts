import type { Decision, Kit, KitMember, KitMissing, KitPair, Reason } from '../model.ts';
import { decisionOf, listsTrouble } from '../reasons/decision.ts';
import type { Stray, Trouble } from '../rules/troubles.ts';
import { inkLimits, kitLimits, verdictLimits } from '../thresholds.ts';
import * as kitSentences from '../words/kit-sentences.ts';
import * as sentences from '../words/verdict-sentences.ts';
import { judgeKit, type KitJudgement, stands } from './kit-judge.ts';
import { type Measured, measureKit, type PlacedPair } from './kit-members.ts';
import { kitReasons, neutralsOf } from './kit-reasons.ts';
import { type ColourGroup, colourGroups } from './kit-repeats.ts';

/**
 * Judges several papers and plains for one page as a whole: the pairs as a matrix, the reasons of the whole, where each
 * strong colour comes back, and what is missing. Photographs are judged only for how they stand out. The verdict
 * follows by the rules of a pair, each member against all the others; no score is taken over the pairs. What is said of
 * two members is what a study of the two says. Of very many papers the first 40 are judged, and that is said.
 */
export function kitOf(members: readonly KitMember[]): Kit {
  const kit = measureKit(members);
  const judgement = judgeKit(kit);
  const groups = colourGroups(kit);
  const reasons = kitReasons(kit, judgement, groups);
  return {
    members: kit.members,
    verdict: judgement.verdict,
    decision: decisionOfKit(kit, judgement, groups, reasons),
    pairs: kit.pairs.map(pairSaid),
    reasons,
    repeats: groups.map(({ word, inks, places }) => ({
      word,
      hex: inks[0]!.ink.hex,
      inks: inks.map(({ id }) => id),
      places,
    })),
    missing: missingIn(kit, judgement, groups),
  };
}

function pairSaid({ one, other, told, findings }: PlacedPair): KitPair {
  return {
    one,
    other,
    verdict: told.judgement.verdict,
    summary: decisionOf(told, findings).summary,
    weightiest: findings[0] ?? null,
  };
}

function shortly({ say }: Measured, trouble: Trouble): string {
  const words = kitSentences.troubleInShort;
  switch (trouble.kind) {
    case 'stray':
      return words.stray(say(trouble.ink));
    case 'near miss':
    case 'base quarrel':
      return words[trouble.kind](say(trouble.tied.a), say(trouble.tied.b));
    case 'bright against muted': {
      const ends = [trouble.anchor, trouble.candidate].sort((a, b) => b.chroma - a.chroma);
      return words[trouble.kind](say(ends[0]!.lead), say(ends[1]!.lead));
    }
  }
}

function decisionOfKit(
  kit: Measured,
  { rule, troubles, loosest }: KitJudgement,
  groups: readonly ColourGroup[],
  reasons: readonly Reason[],
): Decision {
  const [worst, second] = troubles;
  const at = reasons.findIndex(
    ({ weighs, kind }) => worst && kind === worst.kind && weighs === -worst.weight,
  );
  const words = groups.filter(({ places }) => places > 1).map(({ word }) => word);
  const ofTrouble = at >= 0 ? [at] : [];
  switch (rule) {
    case 'apart':
      return {
        rule: sentences.rules.apart(worst!.kind, worst!.weight, verdictLimits.serious),
        turnedBy: ofTrouble,
        summary: shortly(kit, worst!),
      };
    case 'strangers':
      return {
        rule: sentences.rules.strangers(worst!.kind, second!.kind, second!.weight, verdictLimits.serious),
        turnedBy: ofTrouble,
        summary: shortly(kit, worst!),
      };
    case 'trouble':
      return {
        rule: sentences.rules.trouble(worst!.kind, worst!.weight, verdictLimits.trouble),
        turnedBy: ofTrouble,
        summary: shortly(kit, worst!),
      };
    case 'untied':
      return {
        rule: sentences.rules.untied(verdictLimits.tie),
        turnedBy: [],
        summary: kitSentences.summaries.untied(kit.members[loosest.at]!.name),
      };
    case 'quiet':
    case 'tied': {
      const tied = reasons.findIndex(({ kind, weighs }) => kind === 'repeat' && weighs > 0);
      return {
        rule: kitSentences.ruleHolds(verdictLimits.tie),
        turnedBy: tied >= 0 ? [tied] : [],
        summary:
          kit.papers.length < 2
            ? kitSentences.summaries.single()
            : kitSentences.summaries.holds(words.slice(0, 3), listsTrouble(reasons)),
      };
    }
  }
}

/** What a kit lacks: partners for its strays, a third place for its strongest colour, a tie, a neutral. */
function missingIn(kit: Measured, judgement: KitJudgement, groups: readonly ColourGroup[]): KitMissing[] {
  const strays = judgement.troubles.filter(
    (one): one is Stray => one.kind === 'stray' && one.beside === null,
  );
  const lonely = strays.map(({ ink }) => ({ says: kitSentences.missing(kit.say(ink)), inks: [ink.id] }));
  const two = groups.find(({ places, inks }) => places === 2 && inks[0]!.chroma >= inkLimits.strayChroma);
  const hasTriangle = groups.some(({ places }) => places > 2);
  const third =
    two && !hasTriangle && kit.papers.length > 2
      ? [
          {
            says: kitSentences.missingThird(two.word, two.placed.map(kit.say)),
            inks: two.inks.map(({ id }) => id),
          },
        ]
      : [];
  const loose =
    judgement.loosest.tie < verdictLimits.tie && !judgement.troubles.some(stands)
      ? [
          {
            says: kitSentences.missingTie(kit.members[judgement.loosest.at]!.name),
            inks: [kit.sides[judgement.loosest.at]!.inks[0]!.id],
          },
        ]
      : [];
  const neutral =
    kit.papers.length > 1 && neutralsOf(kit).length === 0
      ? [{ says: kitSentences.missingNeutral(), inks: [] }]
      : [];
  const many =
    kit.unjudged > 0 ? [{ says: kitSentences.tooMany(kitLimits.papers, kit.unjudged), inks: [] }] : [];
  return [...many, ...lonely, ...third, ...loose, ...neutral];
}
