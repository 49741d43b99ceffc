import type { Tags } from '../../sheet/model.ts';
import type { MeasuredSide } from '../measure/measured.ts';
import type { Reason } from '../model.ts';
import { adviceWeights, pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, type Told } from './build.ts';

/** How things are drawn, as the user tagged them. */
export const finishReasons: ReasonBuilder = (told) =>
  alikeOrApart(told, 'finish', (tags) => tags.finishes, {
    alike: [adviceWeights.finishAlike, sentences.finishAlike],
    apart: [adviceWeights.finishApart, sentences.finishApart],
  });

/** What is drawn, as the user tagged it. */
export const motifReasons: ReasonBuilder = (told) =>
  alikeOrApart(told, 'motif', (tags) => tags.motifs, {
    alike: [adviceWeights.motifAlike, sentences.motifAlike],
    apart: [adviceWeights.motifApart, sentences.motifApart],
  });

/** Thin sheets, to be mounted. */
export const weightReasons: ReasonBuilder = ({ pair, names }) =>
  (['anchor', 'candidate'] as const).flatMap((of) => thinReasons(pair[of], names[of]));

/** The same of one sheet. */
export function thinReasons({ side, inks }: MeasuredSide, name: string): Reason[] {
  const gsm = side.tags?.weight?.gsm;
  if (gsm === undefined || gsm >= pageLimits.thinGsm) return [];
  return [
    reason({
      kind: 'weight',
      weighs: 0,
      says: sentences.thin(name, gsm),
      inks: [inks[0]!],
      evidence: { gsm, thinBelowGsm: pageLimits.thinGsm },
      figure: `${Math.round(gsm)} g/m²`,
      sources: ['common-practice', 'paper-weights'],
    }),
  ];
}

interface Wording {
  readonly alike: readonly [number, (shared: string) => string];
  readonly apart: readonly [number, (one: string, other: string) => string];
}

function alikeOrApart(
  { pair }: Told,
  kind: 'finish' | 'motif',
  of: (tags: Tags) => readonly string[] | undefined,
  { alike, apart }: Wording,
): Reason[] {
  // Nothing is drawn on a plain paper, or on what is left plain.
  if (pair.anchor.plain || pair.candidate.plain) return [];
  const one = of(pair.anchor.side.tags ?? {}) ?? [];
  const other = of(pair.candidate.side.tags ?? {}) ?? [];
  if (one.length === 0 || other.length === 0) return [];
  const shared = one.filter((tag) => other.includes(tag));
  const [weighs, says] =
    shared.length > 0
      ? [alike[0], alike[1](sentences.listed(shared))]
      : [apart[0], apart[1](sentences.listed(one), sentences.listed(other))];
  return [
    reason({
      kind,
      weighs,
      says,
      inks: [],
      evidence: { shared: shared.length },
      figure: shared.length > 0 ? `${shared.length} shared` : 'none shared',
      sources: ['common-practice'],
    }),
  ];
}
