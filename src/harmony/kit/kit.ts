import type { Decision, Kit, KitMember, KitMissing, KitPair, Reason } from '../model.ts';
import { decisionOf } from '../reasons/from-findings.ts';
import { inkLimits, kitLimits } from '../thresholds.ts';
import * as kitSentences from '../words/kit-sentences.ts';
import { judgeKit, type KitJudgement } from './kit-judge.ts';
import { type Measured, measureKit, type PlacedPair, sheetPairs } from './kit-members.ts';
import { kitReasons, neutralsOf } from './kit-reasons.ts';
import { type ColourGroup, colourGroups } from './kit-repeats.ts';

/**
 * Judges several papers and plains for one page as a whole: the pairs as a matrix, the reasons of the whole, where each
 * strong colour comes back, and what is missing. Photographs are judged only for how they stand out. The verdict
 * follows from those of its pairs; no score is taken over them. What is said of two members is what a study of the two
 * says. Of very many papers the first 40 are judged, and that is said.
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

function decisionOfKit(
  kit: Measured,
  { rule, open, outcast, bridged }: KitJudgement,
  groups: readonly ColourGroup[],
  reasons: readonly Reason[],
): Decision {
  const words = groups.filter(({ places }) => places > 1).map(({ word }) => word);
  const found = (at: number): number[] => (at >= 0 ? [at] : []);
  const name = (at: number): string => kit.members[at]!.name;
  const [worst] = open;
  if (rule === 'holds') {
    const repeated = reasons.findIndex(({ kind, weighs }) => kind === 'repeat' && weighs > 0);
    const uneasy =
      bridged.size > 0 || sheetPairs(kit).some(({ findings }) => findings.some(({ weighs }) => weighs < 0));
    return {
      rule: kitSentences.rules.holds(),
      turnedBy: found(repeated >= 0 ? repeated : reasons.findIndex(({ weighs }) => weighs > 0)),
      summary:
        kit.papers.length < 2
          ? kitSentences.summaries.single()
          : kitSentences.summaries.holds(words.slice(0, 3), uneasy),
    };
  }
  const turnedBy = found(
    reasons.findIndex(
      ({ kind, weighs }) =>
        weighs < 0 && open.some(({ findings }) => findings.some((one) => one.kind === kind)),
    ),
  );
  if (rule === 'outcast')
    return {
      rule: kitSentences.rules.outcast(),
      turnedBy,
      summary: kitSentences.summaries.outcast(name(outcast!), kit.sheets.length === 2),
    };
  return {
    rule: kitSentences.rules.open(),
    turnedBy,
    summary: kitSentences.summaries.open(
      name(worst!.one),
      name(worst!.other),
      decisionOf(worst!.told, []).summary,
    ),
  };
}

/** What a kit lacks: partners for colours that are alone, a third place for its strongest colour, a neutral. */
function missingIn(kit: Measured, judgement: KitJudgement, groups: readonly ColourGroup[]): KitMissing[] {
  const lonely = judgement.lonely.map((ink) => ({
    says: kitSentences.missing(kit.say(ink)),
    inks: [ink.id],
  }));
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
  const neutral =
    kit.papers.length > 1 && neutralsOf(kit).length === 0
      ? [{ says: kitSentences.missingNeutral(), inks: [] }]
      : [];
  const many =
    kit.unjudged > 0 ? [{ says: kitSentences.tooMany(kitLimits.papers, kit.unjudged), inks: [] }] : [];
  return [...many, ...lonely, ...third, ...neutral];
}
