import * as v from 'valibot';
import { limits } from '../notebook/limits.ts';
import type { Notebook } from '../notebook/model.ts';
import { type RecordKind, recordRefused } from './records/records.ts';
import { idSchema, nameSchema } from './schema/schema-ink.ts';
import { whyRefused } from './words/notebook-words.ts';

/**
 * Null where the notebook, stored as it now is, would open again; else why not, as one sentence for the reader. Only
 * what differs from `before` by identity is looked at, so that a keystroke costs the check of one leaf.
 */
export function refusalOf(after: Notebook, before: Notebook | null = null): string | null {
  const { sheets, plains, parts } = after.drawer;
  const was = before?.drawer;
  return (
    (hasOnly(after, ['id', 'title', 'leaves', 'drawer']) &&
    hasOnly(after.drawer, ['sheets', 'plains', 'parts'])
      ? null
      : whyRefused.noPlace) ??
    (after.id === before?.id && after.title === before.title ? null : titleRefused(after)) ??
    listRefused('leaf', after.leaves, before?.leaves, limits.leaves) ??
    listRefused('sheet', sheets, was?.sheets, limits.sheets) ??
    listRefused('plain', plains, was?.plains, limits.plains) ??
    listRefused('part', parts, was?.parts, limits.parts)
  );
}

function titleRefused({ id, title }: Notebook): string | null {
  return v.is(nameSchema, title) && v.is(idSchema, id) ? null : whyRefused.longTitle;
}

/** What has no place in a notebook would be left out when it is opened. */
function hasOnly(value: object, known: readonly string[]): boolean {
  return Object.keys(value).every((key) => known.includes(key));
}

interface WithId {
  readonly id: string;
}

function listRefused(
  what: RecordKind,
  list: readonly WithId[],
  before: readonly WithId[] | undefined,
  most: number,
): string | null {
  if (list === before) return null;
  if (list.length > most) {
    return whyRefused.full(what, most);
  }
  let isLonger = before === undefined || list.length > before.length;
  for (const [at, record] of list.entries()) {
    if (record === before?.[at]) continue;
    const why = recordRefused(what, record);
    if (why !== null) return whyRefused.unsound(why);
    if (record.id !== before?.[at]?.id) isLonger = true;
  }
  if (isLonger && new Set(list.map((one) => one.id)).size < list.length) {
    return whyRefused.sameId;
  }
  return null;
}
