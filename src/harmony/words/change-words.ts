import { isccName } from '../../colour/naming/names.ts';
import { tradeWord } from '../../colour/naming/trade-words.ts';
import { neutralKind } from '../../colour/neutral.ts';
import { labFromOklch, oklchFromTuple } from '../../colour/spaces.ts';
import type { Ink, Side } from '../../sheet/model.ts';
import { inkWord } from '../../sheet/words/side-words.ts';
import type { Change, Comparison } from '../model.ts';
import { capital, percent } from './sentences.ts';
import { verdictWords } from './verdict-words.ts';

/** What the two papers are called where a change is told. */
export interface PairNames {
  readonly anchor: string;
  readonly candidate: string;
}

/**
 * One change as a short clause that follows "What if": "raspberry (c) is covered with navy". Ids are those of the
 * comparison that the change starts from. `instead`: what a paper is exchanged for. The third file to translate, beside
 * `sentences.ts`.
 */
export function changeSays(
  change: Change,
  from: Pick<Comparison, 'anchor' | 'candidate'>,
  names: PairNames,
  instead = '',
): string {
  if (change.kind === 'strip' && change.as === 'mat')
    return `${names.candidate} lies on a mat of ${neutralWordFor(change.ink)}`;
  if (change.kind === 'strip') return `a strip of ${neutralWordFor(change.ink)} lies between them`;
  const name = names[change.of];
  if (change.kind === 'replace')
    return instead ? `${instead} lies in place of ${name}` : `${name} is turned or exchanged`;
  if (change.kind === 'add') return `${wordFor(change.ink)} lies on ${percent(change.share)} of ${name}`;
  const of = told(from[change.of], change.ink, name);
  switch (change.kind) {
    case 'cover':
      return `${of} is covered with ${wordFor(change.with)}`;
    case 'trim': {
      const to = change.toShare ?? 0;
      return to === 0 ? `${of} is cut away` : `${of} is cut down to ${percent(to)} of its sheet`;
    }
    case 'recolour':
      return `${of} is ${wordFor(change.to)} (${change.to.hex})`;
  }
}

/** All changes as one sentence: "What if raspberry (c) is cut away, and a strip of kraft lies between them?" */
export function whatIfSays(clauses: readonly string[]): string {
  if (clauses.length === 0) return 'What if?';
  const [last, before] = [clauses.at(-1)!, clauses.slice(0, -1)];
  return `What if ${before.length ? `${before.join(', ')}, and ` : ''}${last}?`;
}

/** What is kept of a what-if under its question: the verdict before and after, the reasons as they then stand. */
export function whatIfNote(before: Comparison, after: Comparison): string {
  const verdict = (one: Comparison) => one.verdict.replaceAll('-', ' ');
  const turn =
    before.verdict === after.verdict
      ? `As it is, the pair ${verdict(before)}; then it still ${verdict(after)}.`
      : `As it is, the pair ${verdict(before)}; then it ${verdict(after)}.`;
  const reasons = after.reasons.filter(({ weighs }) => weighs !== 0);
  return [
    `${turn} ${after.decision.summary}`,
    reasons.map(({ says, figure, source }) => `– ${says} (${figure}; ${source})`).join('\n'),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

/** What a picture of both states shows, for who can't see it. */
export function beforeAfterAlt(before: Comparison, after: Comparison): string {
  const { anchor, candidate } = before.names;
  return `Two pictures of ${anchor} and ${candidate}: as they are, where the pair ${verdictWords[before.verdict]}, and changed, where it ${verdictWords[after.verdict]}.`;
}

function told(side: Side, id: string, name: string): string {
  const ink: Ink | undefined = [side.base, ...side.inks].find((one) => one.id === id);
  return ink ? `${wordFor(ink)} (${id})` : `a colour of ${capital(name)}`;
}

/** What a strip is cut from is called by the neutral that it is: kraft, white, grey. */
function neutralWordFor(ink: Ink): string {
  return neutralKind(labFromOklch(oklchFromTuple(ink.oklch))) ?? wordFor(ink);
}

/** As it was read; an ink without a name is named anew. */
function wordFor(ink: Ink): string {
  const oklch = oklchFromTuple(ink.oklch);
  return (ink.name || ink.trade ? inkWord(ink) : tradeWord(oklch)) || isccName(labFromOklch(oklch));
}
