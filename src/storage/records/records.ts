import * as v from 'valibot';
import type { Leaf } from '../../notebook/model.ts';
import type { Part, Plain, Sheet } from '../../sheet/model.ts';
import { idSchema } from '../schema/schema-ink.ts';
import { leafSchema } from '../schema/schema-notebook.ts';
import { partSchema, plainSchema, sheetSchema } from '../schema/schema-sheet.ts';
import { whyNot } from '../words/why-not.ts';

/** What a notebook is kept in: one record a leaf, sheet, plain and part, each read by itself. */
export interface RecordOf {
  readonly leaf: Leaf;
  readonly sheet: Sheet;
  readonly plain: Plain;
  readonly part: Part;
}
export type RecordKind = keyof RecordOf;

/** A record that could be read or, as a sentence, why it could not. */
export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

/** What could not be read: kept as it was found, so that it can be saved as a file and, one day, be mended. */
export interface SetAside {
  readonly what: RecordKind;
  /** Null where not even that could be read. */
  readonly id: string | null;
  /** Its title or name, cut to a line; null where it has none that could be read. */
  readonly name: string | null;
  /** As it was found; JSON. */
  readonly value: unknown;
  /** One sentence. */
  readonly why: string;
}

export const leafFrom = (value: unknown): Checked<Leaf> => recordFrom('leaf', value);
export const sheetFrom = (value: unknown): Checked<Sheet> => recordFrom('sheet', value);
export const plainFrom = (value: unknown): Checked<Plain> => recordFrom('plain', value);
export const partFrom = (value: unknown): Checked<Part> => recordFrom('part', value);

/** A record with every field checked. What was given back once, or found sound once, is known and costs nothing. */
export function recordFrom<K extends RecordKind>(what: K, value: unknown): Checked<RecordOf[K]> {
  if (isKnown(value)) return { ok: true, value: value as RecordOf[K] };
  const checked = v.safeParse(schemas[what], value, { abortEarly: true });
  if (!checked.success) return { ok: false, why: whyNot(checked.issues[0]) };
  known.add(checked.output);
  return { ok: true, value: checked.output as RecordOf[K] };
}

/**
 * Null where the record would open again once it is stored; else why not, as a sentence. A record that is given
 * again, or that was opened, is not checked again: records are never written, only replaced.
 */
export function recordRefused(what: RecordKind, record: object): string | null {
  if (known.has(record)) return null;
  const checked = v.safeParse(schemas[what], record, { abortEarly: true });
  if (!checked.success) return whyNot(checked.issues[0]);
  known.add(record);
  return null;
}

/** What is kept of a value that could not be read as a record. */
export function setAside(what: RecordKind, value: unknown, why: string): SetAside {
  const fields = (typeof value === 'object' && value !== null ? value : {}) as Record<string, unknown>;
  const name = what === 'leaf' ? fields.title : fields.name;
  return {
    what,
    id: v.is(idSchema, fields.id) ? fields.id : null,
    name: typeof name === 'string' ? lineOf(name) : null,
    // Nested so deep that the browser could not store it, it is no paper and no leaf of anyone's.
    value: isDeep(value) ? null : value,
    why,
  };
}

const schemas = { leaf: leafSchema, sheet: sheetSchema, plain: plainSchema, part: partSchema } as const;

/** Records that are sound: those that were read here, and those that were found so. */
const known = new WeakSet<object>();

/** How deep a value may be nested; a sheet with everything on it is 8 deep. Ours. */
const mostDeep = 64;

function isDeep(value: unknown): boolean {
  let level: unknown[] = [value];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > mostDeep) return true;
    level = level.flatMap((one) =>
      typeof one === 'object' && one !== null ? (Object.values(one) as unknown[]) : [],
    );
  }
  return false;
}

function isKnown(value: unknown): boolean {
  return typeof value === 'object' && value !== null && known.has(value);
}

function lineOf(name: string): string | null {
  const line = name
    .slice(0, 400)
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\s]+/gu, ' ')
    .trim();
  return line === '' ? null : line.slice(0, 80);
}
