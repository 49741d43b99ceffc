import type { Leaf } from '../notebook/model.ts';
import type { Choice } from './choice.ts';
import { choicesAfter, textOf } from './records/merge.ts';
import type { Written } from './written.ts';

/** A text of a leaf. */
export interface TextAt {
  readonly leafId: string;
  readonly of: Choice['of'];
}

/** Texts that differ between two states of a notebook, on leaves that are in both. */
export function textsChanged(before: Written, after: Written): readonly TextAt[] {
  if (before.notebook.leaves === after.notebook.leaves) return [];
  const was = new Map(before.notebook.leaves.map((leaf) => [leaf.id, leaf]));
  return after.notebook.leaves.flatMap((leaf): readonly TextAt[] => {
    const old = was.get(leaf.id);
    if (old === undefined || old === leaf) return [];
    return fields.filter((of) => textOf(old, of) !== textOf(leaf, of)).map((of) => ({ leafId: leaf.id, of }));
  });
}

const fields = ['text', 'title'] as const;

/**
 * `merged` with those texts that are being typed here left as they stand in `mine`: what came from the other tab in their
 * place becomes a choice, so that neither text goes under the other's pen. The same object where nothing came.
 */
export function keptTyping(
  merged: Written,
  mine: Written,
  typed: readonly TextAt[],
  newId: () => string,
): Written {
  const here = new Map(mine.notebook.leaves.map((leaf) => [leaf.id, leaf]));
  return typed.reduce((written, { leafId, of }) => {
    const [leaf, own] = [written.notebook.leaves.find(({ id }) => id === leafId), here.get(leafId)];
    if (leaf === undefined || own === undefined || textOf(leaf, of) === textOf(own, of)) return written;
    const theirs = textOf(leaf, of);
    const leaves = written.notebook.leaves.map((one) => (one === leaf ? withText(one, of, own) : one));
    // What stands on the leaf need not be chosen.
    const clash = { leafId, of, before: textOf(own, of), theirs };
    return {
      notebook: { ...written.notebook, leaves },
      choices: choicesAfter(written.choices, leaves, [clash], newId),
    };
  }, merged);
}

function withText(leaf: Leaf, of: Choice['of'], own: Leaf): Leaf {
  const text = textOf(own, of);
  if (of === 'title') return { ...leaf, title: text };
  return leaf.kind === 'board' ? { ...leaf, words: text } : { ...leaf, text };
}
