import { sourceById } from '../../colour/sources.ts';
import type { MeasuredInk } from '../measure/measured.ts';
import type { Pair } from '../measure/pair.ts';
import type { Reason, ReasonKind } from '../model.ts';
import type { Judgement } from '../rules/verdict.ts';
import type { Names } from '../words/ink-word.ts';
import { said } from '../words/ink-word.ts';
import type { Said } from '../words/sentences.ts';

/** All that a reason is told from. */
export interface Told {
  readonly pair: Pair;
  readonly judgement: Judgement;
  readonly names: Names;
}

/** One kind of finding, looked for in a pair; none, one or a few come back. */
export type ReasonBuilder = (told: Told) => Reason[];

/** What a builder says of a reason; inks are put in order and the source is written out. */
export interface Draft {
  readonly kind: ReasonKind;
  readonly weighs: number;
  readonly says: string;
  readonly inks: readonly MeasuredInk[];
  readonly evidence: Readonly<Record<string, number>>;
  readonly figure: string;
  /** Ids of sources, the one to be shown first. */
  readonly sources: readonly [string, ...string[]];
  /** What is shown of them, where the first alone would not be all that the sentence rests on. */
  readonly source?: string;
}

/** A reason from its draft: the anchor's inks first, weight held to −1…1. */
export function reason({ kind, weighs, says, inks, evidence, figure, sources, source }: Draft): Reason {
  const ordered = [...inks].sort((a, b) => order(a) - order(b));
  return {
    kind,
    weighs: Math.max(-1, Math.min(1, weighs)) + 0,
    says,
    inks: [...new Set(ordered.map((ink) => ink.id))],
    evidence,
    figure,
    source: source ?? sourceById(sources[0]!)!.short,
    sourceIds: sources,
  };
}

/** An ink ready to be said. */
export function say({ names }: Told, ink: MeasuredInk): Said {
  return said(ink, names);
}

const order = (ink: MeasuredInk): number => (ink.of === 'anchor' ? 0 : 1);
