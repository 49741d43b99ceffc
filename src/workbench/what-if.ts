import { oklabFromOklch } from '../colour/spaces.ts';
import { pairNames } from '../drawer/find.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { changeSays, type PairNames, whatIfNote, whatIfSays } from '../harmony/change-words.ts';
import type { Change, Comparison } from '../harmony/model.ts';
import { whatIf } from '../harmony/what-if.ts';
import type { NoteLeaf } from '../notebook/model.ts';
import { inkOf } from '../sheet/ink.ts';
import type { Ink } from '../sheet/model.ts';

/** A pair as it would be after some changes. Nothing of it is stored. */
export interface Supposed {
  readonly comparison: Comparison;
  /** What is supposed, one clause a change. */
  readonly clauses: readonly string[];
  /** The same as one sentence. */
  readonly question: string;
}

/** Compares a held pair again as if the changes were made; remedies are left out, so that it keeps up with a drag. */
export function supposeOn(
  drawer: Drawer,
  pair: { readonly anchor: Held; readonly candidate: Held },
  from: Comparison,
  changes: readonly Change[],
): Supposed {
  const names = namesOf(drawer, pair);
  const comparison = whatIf(from.anchor, from.candidate, changes, {
    distance: from.distance,
    names,
    withoutRemedies: true,
  });
  const clauses = changes.map((change) => changeSays(change, from, names));
  return { comparison, clauses, question: whatIfSays(clauses) };
}

/** The note that keeps a what-if. */
export function noteOfSupposed(id: string, from: Comparison, supposed: Supposed): NoteLeaf {
  const { question, comparison } = supposed;
  return { id, kind: 'note', title: question, text: whatIfNote(question, from, comparison) };
}

/** An ink of a colour that was set by hand: OKLCH lightness 0–1, chroma, hue in degrees. */
export function supposedInk(l: number, c: number, h: number): Ink {
  return inkOf(oklabFromOklch({ l, c, h }), 'X', 0, false);
}

function namesOf(drawer: Drawer, pair: { readonly anchor: Held; readonly candidate: Held }): PairNames {
  return pairNames(drawer, pair.anchor, pair.candidate);
}
