import { heldKey } from '../../drawer/held.ts';
import type { Leaf } from '../../notebook/model.ts';
import type { Choice } from '../choice.ts';
import { isObject } from '../is-object.ts';
import {
  type Item,
  type Lists,
  listsOf,
  type StoredKind,
  storedKinds,
  type Written,
  writtenOf,
} from '../written.ts';
import { mergedOrder } from './merge-order.ts';

export interface Merged {
  readonly written: Written;
  /** The notebook's title in the other tab, where both tabs gave it another; null where not. */
  readonly otherTitle: string | null;
}

/**
 * What two tabs made of one notebook, in one, record by record. Where one side changed a record it is taken; a record
 * that one took out and the other changed stays. Where both wrote the same text of a leaf, `mine` stands on it and
 * `theirs` becomes a choice. `before`: what both began from.
 */
export function merge(before: Written, mine: Written, theirs: Written, newId: () => string): Merged {
  const lists = { before: listsOf(before), mine: listsOf(mine), theirs: listsOf(theirs) };
  const clashes: Clash[] = [];
  const merged = Object.fromEntries(
    storedKinds.map((kind) => [
      kind,
      mergedList<Item>(kind, lists.before[kind], lists.mine[kind], lists.theirs[kind], clashes),
    ]),
  ) as unknown as Lists;
  const { id, title } = mine.notebook;
  const isMine = title !== before.notebook.title;
  const bothNamed =
    isMine && theirs.notebook.title !== before.notebook.title && theirs.notebook.title !== title;
  return {
    written: writtenOf(id, isMine ? title : theirs.notebook.title, {
      ...merged,
      choice: choicesAfter(merged.choice, merged.leaf, clashes, newId),
    }),
    otherTitle: bothNamed ? theirs.notebook.title : null,
  };
}

/** A text of a leaf that both sides wrote. */
export interface Clash {
  readonly leafId: string;
  readonly of: Choice['of'];
  /** What this side began from, where that is known. */
  readonly before: string | null;
  readonly theirs: string;
}

/** The choices, and one more for each clash. What was begun from, or stands on the leaf as it is, need not be chosen. */
export function choicesAfter(
  choices: readonly Choice[],
  leaves: readonly Leaf[],
  clashes: readonly Clash[],
  newId: () => string,
): readonly Choice[] {
  if (clashes.length === 0) return choices;
  const isOf = (choice: Choice, clash: Clash) => choice.leafId === clash.leafId && choice.of === clash.of;
  const open = choices.filter(
    (choice) => !clashes.some((clash) => isOf(choice, clash) && choice.other === clash.before),
  );
  for (const { leafId, of, theirs } of clashes) {
    const leaf = leaves.find(({ id }) => id === leafId);
    if (leaf === undefined || textOf(leaf, of) === theirs) continue;
    if (open.some((choice) => choice.leafId === leafId && choice.of === of && choice.other === theirs))
      continue;
    open.push({ id: newId(), leafId, of, other: theirs });
  }
  return open;
}

export function textOf(leaf: Leaf, of: Choice['of']): string {
  if (of === 'title') return leaf.title;
  return leaf.kind === 'board' ? leaf.words : leaf.text;
}

function mergedList<T extends Item>(
  kind: StoredKind,
  before: readonly T[],
  mine: readonly T[],
  theirs: readonly T[],
  clashes: Clash[],
): readonly T[] {
  if (theirs === before) return mine;
  if (mine === before) return theirs;
  const [was, here, there] = [before, mine, theirs].map((list) => new Map(list.map((one) => [one.id, one])));
  const items = new Map<string, T>();
  for (const id of new Set([...here!.keys(), ...there!.keys()])) {
    const item = mergedItem(kind, was!.get(id), here!.get(id), there!.get(id), clashes);
    if (item !== undefined) items.set(id, item);
  }
  const ids = (list: readonly T[]) => list.map(({ id }) => id);
  return mergedOrder(ids(before), ids(mine), ids(theirs)).flatMap((id) => items.get(id) ?? []);
}

function mergedItem<T extends Item>(
  kind: StoredKind,
  before: T | undefined,
  mine: T | undefined,
  theirs: T | undefined,
  clashes: Clash[],
): T | undefined {
  if (mine === theirs || isSame(theirs, before)) return mine;
  if (isSame(mine, before) || mine === undefined) return theirs;
  if (theirs === undefined) return mine;
  return mergedFields(kind, before, mine, theirs, clashes);
}

/** Field by field. `before` unknown: whatever differs was changed by both. */
export function mergedFields<T extends Item>(
  kind: StoredKind,
  before: T | undefined,
  mine: T,
  theirs: T,
  clashes: Clash[],
): T {
  const [b, m, t] = [before ?? {}, mine, theirs] as unknown as Record<string, unknown>[];
  const fields: Record<string, unknown> = {};
  for (const key of new Set([...Object.keys(m!), ...Object.keys(t!)])) {
    const [old, here, there] = [b![key], m![key], t![key]];
    const value =
      isSame(here, old) || isSame(here, there)
        ? there
        : isSame(there, old)
          ? here
          : both(kind, mine.id, key, old, here, there, clashes);
    if (value !== undefined) fields[key] = value;
  }
  return fields as unknown as T;
}

/** What becomes of a field that both sides changed. */
function both(
  kind: StoredKind,
  id: string,
  key: string,
  old: unknown,
  here: unknown,
  there: unknown,
  clashes: Clash[],
): unknown {
  if (kind === 'leaf' && typeof here === 'string' && typeof there === 'string') {
    const of = key === 'title' ? 'title' : key === 'text' || key === 'words' ? 'text' : null;
    if (of !== null)
      clashes.push({ leafId: id, of, before: typeof old === 'string' ? old : null, theirs: there });
    return here;
  }
  // A note on a sheet has no place for a choice: it holds both.
  if (kind === 'sheet' && key === 'note') return [here, there].filter((text) => text !== '').join('\n\n');
  if (kind === 'leaf' && Array.isArray(here) && Array.isArray(there))
    return union(Array.isArray(old) ? old : [], here, there);
  if ((key === 'opinions' || key === 'sides') && isObject(here) && isObject(there)) {
    const was = isObject(old) ? old : {};
    const keys = new Set([...Object.keys(here), ...Object.keys(there)]);
    return Object.fromEntries(
      [...keys].flatMap((one) => {
        const value = isSame(here[one], was[one]) ? there[one] : here[one];
        return value === undefined ? [] : [[one, value]];
      }),
    );
  }
  return here;
}

/** What both lists hold, and what either of them added; what either took out is gone. */
function union(
  before: readonly unknown[],
  here: readonly unknown[],
  there: readonly unknown[],
): readonly unknown[] {
  const has = (list: readonly unknown[], one: unknown) => list.some((other) => keyOf(other) === keyOf(one));
  return [
    ...here.filter((one) => has(there, one) || !has(before, one)),
    ...there.filter((one) => !has(here, one) && !has(before, one)),
  ];
}

function keyOf(one: unknown): string {
  if (isObject(one) && 'kind' in one && 'id' in one) return heldKey(one as Parameters<typeof heldKey>[0]);
  return JSON.stringify(one);
}

/** The same values, whatever objects they stand in and in whatever order their fields are. */
export function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((one, at) => isSame(one, b[at]));
  }
  if (!isObject(a) || !isObject(b) || Array.isArray(a) || Array.isArray(b)) return false;
  const keys = Object.keys(a).filter((key) => a[key] !== undefined);
  return (
    keys.every((key) => isSame(a[key], b[key])) &&
    Object.keys(b).every((key) => b[key] === undefined || key in a)
  );
}
