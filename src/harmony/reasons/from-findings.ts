import type { Decision, Reason } from '../model.ts';
import type { Finding } from '../whole/model.ts';
import { verdictLimits } from '../whole/whole-thresholds.ts';
import { arguableOf, findingWords, ruleOf, summaries, type ToldFinding } from '../words/finding-sentences.ts';
import { reason, say, type Told } from './build.ts';

/** The findings of a pair that are told, as reasons: those that lead first. */
export function findingReasons(told: Told): Reason[] {
  return inOrder(told).map((finding) => reasonOf(told, finding));
}

/** Those that lead, then the rest. */
function inOrder({ judgement: { whole } }: Told): readonly Finding[] {
  return [...whole.leading, ...whole.findings.filter((finding) => !whole.leading.includes(finding))];
}

function reasonOf(told: Told, finding: Finding): Reason {
  const words = findingWords[finding.name];
  const as = toldFinding(told, finding);
  const inks = inksOf(told, finding);
  return reason({
    kind: finding.name,
    weighs: finding.counts,
    says: words.says(as),
    inks,
    evidence: { ...finding.numbers, holds: finding.size },
    figure: words.figure(as),
    sources: finding.sourceIds as [string, ...string[]],
  });
}

/** How the verdict was reached, from the findings. */
export function decisionOf(told: Told, reasons: readonly Reason[]): Decision {
  const { verdict, counted, arguable, findings } = told.judgement.whole;
  const carries = verdict === 'holds-together' ? 1 : -1;
  const short = (sign: 1 | -1): string[] =>
    findings
      .filter(({ counts }) => Math.sign(counts) === sign)
      .map((finding) => findingWords[finding.name].short(toldFinding(told, finding)));
  const turnedBy = reasons
    .map(({ weighs }, at) => ({ weighs, at }))
    .filter(({ weighs }) => Math.sign(weighs) === carries)
    .slice(0, 2)
    .map(({ at }) => at);
  return {
    rule: ruleOf(counted, verdictLimits.holdsFrom, verdictLimits.bridgeFrom),
    turnedBy,
    summary: summaries[verdict](short(1), short(-1)),
    leads: told.judgement.whole.leading.length,
    arguable: arguable === null ? null : arguableOf(arguable.instead, arguable.turnedBy),
  };
}

function toldFinding(told: Told, finding: Finding): ToldFinding {
  const { pair, names } = told;
  const [one, other] = inksOf(told, finding);
  return {
    names: [names.anchor, names.candidate],
    numbers: finding.numbers,
    said: one && other ? [say(told, one), say(told, other)] : null,
    plain: [pair.anchor.inks.length === 1, pair.candidate.inks.length === 1],
    strip: pair.strip,
  };
}

function inksOf({ pair }: Told, { families }: Finding) {
  return [
    ...pair.anchor.inks.filter(({ id }) => families[0].includes(id)),
    ...pair.candidate.inks.filter(({ id }) => families[1].includes(id)),
  ];
}
