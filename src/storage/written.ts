import type { Leaf, Notebook } from '../notebook/model.ts';
import type { Part, Plain, Sheet } from '../sheet/model.ts';
import type { Choice } from './choice.ts';

/** All that is stored of a notebook beside its pictures. Immutable: what did not change is the same object. */
export interface Written {
  readonly notebook: Notebook;
  readonly choices: readonly Choice[];
}

/** The lists that a notebook is stored in, one record an item. */
export interface Lists {
  readonly leaf: readonly Leaf[];
  readonly sheet: readonly Sheet[];
  readonly plain: readonly Plain[];
  readonly part: readonly Part[];
  readonly choice: readonly Choice[];
}
export type StoredKind = keyof Lists;
export type Item = Lists[StoredKind][number];
export const storedKinds = ['leaf', 'sheet', 'plain', 'part', 'choice'] as const satisfies StoredKind[];

/** The name of a record within its notebook. */
export const recordName = (kind: string, id: string): string => `${kind}|${id}`;

export function listsOf({ notebook, choices }: Written): Lists {
  const { sheets, plains, parts } = notebook.drawer;
  return { leaf: notebook.leaves, sheet: sheets, plain: plains, part: parts, choice: choices };
}

export function writtenOf(id: string, title: string, lists: Lists): Written {
  const { leaf, sheet, plain, part, choice } = lists;
  const notebook: Notebook = {
    id,
    title,
    leaves: leaf,
    drawer: { sheets: sheet, plains: plain, parts: part },
  };
  return { notebook, choices: choice };
}

/** One record that differs; `value` null where it was taken out. */
export interface Difference {
  readonly kind: StoredKind;
  readonly id: string;
  readonly value: Item | null;
  /** Where it stands in its list now; 0 where it was taken out. */
  readonly at: number;
}

/** What differs by identity, list by list; a list that is the same object is not looked into. Order alone is no difference. */
export function differences(before: Written | null, after: Written): readonly Difference[] {
  const [old, now] = [before === null ? null : listsOf(before), listsOf(after)];
  return storedKinds.flatMap((kind): readonly Difference[] => {
    const was: readonly Item[] = old?.[kind] ?? [];
    const is: readonly Item[] = now[kind];
    if (was === is) return [];
    const found: Difference[] = [];
    const gone = new Map(was.map((item) => [item.id, item]));
    for (const [at, value] of is.entries()) {
      const { id } = value;
      if (gone.get(id) !== value) found.push({ kind, id, value, at });
      gone.delete(id);
    }
    for (const id of gone.keys()) found.push({ kind, id, value: null, at: 0 });
    return found;
  });
}

/** True where both hold the same records in the same order, by identity, under the same title. */
export function isSameWritten(a: Written, b: Written): boolean {
  const [one, other] = [listsOf(a), listsOf(b)];
  return (
    a.notebook.title === b.notebook.title &&
    storedKinds.every((kind) => {
      const [x, y]: (readonly Item[])[] = [one[kind], other[kind]];
      return x === y || (x!.length === y!.length && x!.every((item, at) => item === y![at]));
    })
  );
}
