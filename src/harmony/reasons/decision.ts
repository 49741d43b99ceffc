import type { MeasuredInk } from '../measure/measured.ts';
import type { Decision, Reason, ReasonKind } from '../model.ts';
import type { Trouble } from '../rules/troubles.ts';
import { counted } from '../rules/verdict.ts';
import { verdictLimits } from '../thresholds.ts';
import { wordOf, wordsApart } from '../words/ink-word.ts';
import { listed } from '../words/sentences.ts';
import * as sentences from '../words/verdict-sentences.ts';
import type { Told } from './build.ts';

/** How the verdict was reached: its rule, the one or two reasons that turned it, and a sentence under it. */
export function decisionOf(told: Told, reasons: readonly Reason[]): Decision {
  return { rule: ruleSentence(told), turnedBy: turnedBy(told, reasons), summary: summaryOf(told, reasons) };
}

function ruleSentence({ judgement: { rule, troubles, tie } }: Told): string {
  const worst = troubles[0];
  switch (rule) {
    case 'apart':
      return sentences.rules.apart(worst!.kind, worst!.weight, verdictLimits.serious);
    case 'strangers': {
      const [first, second] = counted(troubles);
      return sentences.rules.strangers(first!.kind, second!.kind, second!.weight, verdictLimits.serious);
    }
    case 'trouble':
      return sentences.rules.trouble(worst!.kind, worst!.weight, verdictLimits.trouble);
    case 'quiet':
      return sentences.rules.quiet();
    case 'tied':
      return sentences.rules.tied(tie!.tied.link.kind, tie!.weight, verdictLimits.tie);
    case 'untied':
      return sentences.rules.untied(verdictLimits.tie);
  }
}

function turnedBy({ judgement: { rule, troubles, tie } }: Told, reasons: readonly Reason[]): number[] {
  const found = (at: number) => (at < 0 ? [] : [at]);
  const ofTrouble = (trouble: Trouble) => {
    const ids = inksOf(trouble).map((ink) => ink.id);
    return reasons.findIndex(
      ({ kind, inks }) => kind === trouble.kind && ids.every((id) => inks.includes(id)),
    );
  };
  switch (rule) {
    case 'apart':
    case 'strangers':
    case 'trouble': {
      const standing = counted(troubles).filter((trouble) => trouble.weight >= verdictLimits.trouble);
      const at = standing.flatMap((trouble) => found(ofTrouble(trouble)));
      return [...new Set(at)].slice(0, 2);
    }
    case 'quiet':
      return found(reasons.findIndex(({ kind }) => kind === 'base agreement' || kind === 'repeated neutral'));
    case 'tied': {
      const ends = [tie!.tied.a.id, tie!.tied.b.id];
      const exact = reasons.findIndex(
        ({ kind, inks, weighs }) =>
          weighs > 0 && kind !== 'dominance' && ends.every((id) => inks.includes(id)),
      );
      return found(exact >= 0 ? exact : reasons.findIndex(({ weighs }) => weighs > 0));
    }
    case 'untied':
      return [];
  }
}

function summaryOf(told: Told, reasons: readonly Reason[]): string {
  const { judgement, pair, names } = told;
  const worst = judgement.troubles[0];
  // A trouble below the limit turns nothing, and may still be worth a word.
  const uneasy = worst && worst.weight >= verdictLimits.trouble / 2 ? worst : null;
  const troubled = listsTrouble(reasons);
  const ties = tieWords(told, reasons);
  const tied = listed(ties);
  switch (judgement.rule) {
    case 'quiet': {
      const quiet = pair.candidate.quiet ? names.candidate : names.anchor;
      return uneasy
        ? sentences.summaries.quietUneasy(quiet, shortly(told, uneasy))
        : sentences.summaries.quiet(quiet);
    }
    case 'tied':
      return sentences.summaries.held(tied, ties.length > 1, troubled);
    case 'untied':
      return uneasy
        ? sentences.summaries.bridgeUntiedUneasy(shortly(told, uneasy))
        : sentences.summaries.bridgeUntied(troubled);
    case 'apart':
      return sentences.summaries.apart(shortly(told, worst!));
    case 'strangers': {
      const [first, second] = counted(judgement.troubles);
      return sentences.summaries.strangers(shortly(told, first!), shortly(told, second!));
    }
    case 'trouble':
      return ties.length > 0
        ? sentences.summaries.bridge(tied, ties.length > 1, shortly(told, worst!))
        : sentences.summaries.troubleOnly(shortly(told, worst!));
  }
}

/** Whether any trouble stands among the reasons, however light: then it is not true that nothing quarrels. */
export function listsTrouble(reasons: readonly Reason[]): boolean {
  return reasons.some(({ kind, weighs }) => weighs < 0 && troubleKinds.has(kind));
}

const troubleKinds: ReadonlySet<ReasonKind> = new Set([
  'near miss',
  'stray',
  'base quarrel',
  'bright against muted',
]);

/** Words of what ties them, strongest first, three at most: what is on both sheets, else what is kin. */
function tieWords({ pair }: Told, reasons: readonly Reason[]): string[] {
  const inks = new Map([...pair.anchor.inks, ...pair.candidate.inks].map((ink) => [ink.id, ink]));
  const of = (...kinds: readonly ReasonKind[]) =>
    reasons.filter(({ kind, weighs }) => weighs > 0 && kinds.includes(kind));
  const shared = of('repeat', 'base agreement').map(({ inks: [id] }) => wordOf(inks.get(id!)!));
  const colours = of('repeat').length > 0;
  const kin = of('tone on tone', 'opposites', 'neighbours').map(({ inks: [a, b] }) =>
    sentences.together(...wordsApart(inks.get(a!)!, inks.get(b!)!)),
  );
  return [...new Set(colours ? shared : [...kin, ...shared])].slice(0, 3);
}

function shortly({ names }: Told, trouble: Trouble): string {
  switch (trouble.kind) {
    case 'near miss':
      return sentences.troubleInShort['near miss'](...wordsApart(trouble.tied.a, trouble.tied.b));
    case 'stray':
      return sentences.troubleInShort.stray(wordOf(trouble.ink));
    case 'base quarrel':
      return sentences.troubleInShort['base quarrel'](...wordsApart(trouble.tied.a, trouble.tied.b));
    case 'bright against muted': {
      const anchorBright = trouble.anchor.chroma > trouble.candidate.chroma;
      const [bright, muted] = anchorBright
        ? [names.anchor, names.candidate]
        : [names.candidate, names.anchor];
      return sentences.troubleInShort['bright against muted'](bright, muted);
    }
  }
}

/** The inks a trouble speaks of. */
export function inksOf(trouble: Trouble): readonly MeasuredInk[] {
  switch (trouble.kind) {
    case 'near miss':
    case 'base quarrel':
      return [trouble.tied.a, trouble.tied.b];
    case 'stray':
      return [trouble.ink];
    case 'bright against muted':
      return [trouble.anchor.lead, trouble.candidate.lead];
  }
}
