import type { Print } from '../../sheet/model.ts';
import { repeatWords } from '../../sheet/words/side-words.ts';
import type { MeasuredSide } from '../measure/measured.ts';
import { adviceWeights, pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason } from './build.ts';

/** Sizes of the two prints; what has no print, or none that is left to be seen, has no size of one. */
export const scaleReasons: ReasonBuilder = ({ pair, names }) => {
  if (pair.anchor.plain || pair.candidate.plain) return [];
  const [one, other] = [pair.anchor.side.print, pair.candidate.side.print];
  if (!one.scale || !other.scale) return [];
  const alike = one.scale === other.scale;
  const larger = rank[one.scale] > rank[other.scale] ? 'anchor' : 'candidate';
  const smaller = larger === 'anchor' ? 'candidate' : 'anchor';
  return [
    reason({
      kind: 'print scale',
      weighs: alike ? adviceWeights.scaleAlike : adviceWeights.scaleApart,
      says: alike ? sentences.scaleAlike(one.scale) : sentences.scaleApart(names[larger], names[smaller]),
      inks: [pair.anchor.inks[0]!, pair.candidate.inks[0]!],
      evidence: { ...mm('anchorRepeatMm', one), ...mm('candidateRepeatMm', other) },
      figure: both(one, other),
      sources: ['common-practice'],
    }),
  ];
};

/** One busy print against one calm one, or two that shout. */
export const busynessReasons: ReasonBuilder = ({ pair, names }) => {
  const [one, other] = [busynessOf(pair.anchor), busynessOf(pair.candidate)];
  const common = {
    kind: 'busyness',
    inks: [pair.anchor.inks[0]!, pair.candidate.inks[0]!],
    evidence: { anchorBusyness: one, candidateBusyness: other },
    figure: `busyness ${sentences.number(one, 2)} and ${sentences.number(other, 2)}`,
    sources: ['common-practice', 'reading'],
  } as const;
  if (Math.min(one, other) >= pageLimits.busy)
    return [
      reason({
        ...common,
        weighs: adviceWeights.bothBusy,
        says: sentences.bothBusy(names.anchor, names.candidate),
      }),
    ];
  if (Math.max(one, other) < pageLimits.busy || Math.min(one, other) > pageLimits.calm) return [];
  const [busy, calm] = one > other ? [names.anchor, names.candidate] : [names.candidate, names.anchor];
  return [reason({ ...common, weighs: adviceWeights.busyCalm, says: sentences.busyAndCalm(busy, calm) })];
};

/** How busy a side is, 0–1; what is covered all over is not, whatever was read of it before. */
export function busynessOf({ side, plain }: MeasuredSide): number {
  return plain ? 0 : side.print.busyness;
}

const rank = { small: 0, medium: 1, large: 2 } as const;

function size(print: Print): string {
  const repeat = repeatWords(print);
  return repeat === null ? `${print.scale}` : `repeat ${repeat}`;
}

/** Both sizes; what is assumed of both is said once. */
function both(one: Print, other: Print): string {
  const assumed = one.assumedSize && other.assumedSize;
  if (!assumed || one.repeatMm === null || other.repeatMm === null) return `${size(one)} and ${size(other)}`;
  return `repeats about ${Math.round(one.repeatMm)} and ${Math.round(other.repeatMm)} mm, if the sheets are 12 in`;
}

function mm(name: string, { repeatMm }: Print): Record<string, number> {
  return repeatMm === null ? {} : { [name]: repeatMm };
}
