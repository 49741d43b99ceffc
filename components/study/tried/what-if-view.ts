import type { Change, Comparison } from '../../../src/harmony/model.ts';
import type { Ink } from '../../../src/sheet/model.ts';

/** What a what-if works on and shows. */
export interface WhatIfView {
  /** The pair as it is. */
  readonly from: Comparison;
  readonly names: { readonly anchor: string; readonly candidate: string };
  /** The reader's plains: what she can cover with, lay on or put between. */
  readonly plains: readonly Material[];
  readonly changes: readonly Change[];
  /** One clause a change: "raspberry (c) is cut away". */
  readonly clauses: readonly string[];
  /** How many steps can be taken back. */
  readonly steps: number;
}

export interface Material {
  readonly id: string;
  readonly name: string;
  readonly ink: Ink;
  /** True where it can lie between two papers: a white, grey, black, cream or kraft. */
  readonly neutral: boolean;
  /** True for what most have, where the drawer has no neutral of its own. */
  readonly usual?: boolean;
}

/** The list of changes with one more; a change of the same kind to the same ink, when it was the last, is replaced. */
export function withChange(changes: readonly Change[], next: Change): readonly Change[] {
  const last = changes.at(-1);
  return last && sameKnob(last, next) ? [...changes.slice(0, -1), next] : [...changes, next];
}

function sameKnob(one: Change, other: Change): boolean {
  if (one.kind !== other.kind) return false;
  if (one.kind === 'strip') return true;
  if ('of' in one && 'of' in other && one.of !== other.of) return false;
  if (one.kind === 'add' && other.kind === 'add') return one.ink.hex === other.ink.hex;
  return 'ink' in one && 'ink' in other && one.ink === other.ink;
}
