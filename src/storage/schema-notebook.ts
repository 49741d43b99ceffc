import * as v from 'valibot';
import type { Drawer, Held } from '../drawer/model.ts';
import { limits } from '../notebook/limits.ts';
import type {
  BoardLeaf,
  ExerciseLeaf,
  KitLeaf,
  KitPiece,
  Leaf,
  Notebook,
  NoteLeaf,
  SheetLeaf,
  StudyLeaf,
} from '../notebook/model.ts';
import { type EntriesOf, idSchema, length, nameSchema, textSchema, whole } from './schema-ink.ts';
import { partSchema, plainSchema, sheetSchema } from './schema-sheet.ts';

/** What is believed of a notebook that comes from a file or the browser's store. */

const heldSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('sheet'), id: idSchema, side: v.picklist(['A', 'B']) }),
  v.strictObject({ kind: v.literal('plain'), id: idSchema }),
  v.strictObject({ kind: v.literal('part'), id: idSchema }),
]) satisfies v.GenericSchema<unknown, Held>;

const verdict = v.picklist(['holds-together', 'needs-a-bridge', 'pulls-apart']);
const head = { id: idSchema, title: nameSchema };

/** A key made by heldKey; a record of these could otherwise carry `__proto__`. */
const heldKeySchema = v.pipe(v.string(), v.regex(/^(sheet|plain|part):[\w .:~-]{1,110}$/));

const opinions = v.pipe(
  v.record(heldKeySchema, v.strictObject({ verdict: v.nullable(verdict), likes: v.nullable(v.boolean()) })),
  v.maxEntries(5_000),
);

const leafSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('note'), ...head, text: textSchema } satisfies EntriesOf<NoteLeaf>),
  v.strictObject({
    kind: v.literal('sheet'),
    ...head,
    sheetId: idSchema,
    text: textSchema,
  } satisfies EntriesOf<SheetLeaf>),
  v.strictObject({
    kind: v.literal('study'),
    ...head,
    text: textSchema,
    anchor: v.nullable(heldSchema),
    candidates: v.pipe(v.array(heldSchema), v.maxLength(limits.candidates)),
    shown: whole(limits.candidates),
    distance: v.picklist(['touching', 'apart']),
    wheel: v.picklist(['eye', 'painter']),
    asksFirst: v.boolean(),
    opinions,
  } satisfies EntriesOf<StudyLeaf>),
  v.strictObject({
    kind: v.literal('kit'),
    ...head,
    text: textSchema,
    pieces: v.pipe(
      v.array(
        v.strictObject({
          held: heldSchema,
          areaMm2: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(1e9))),
          role: v.exactOptional(v.literal('photo')),
          sizeMm: v.exactOptional(v.strictObject({ width: length, height: length })),
          count: v.exactOptional(whole(limits.pieces)),
          mat: v.exactOptional(v.strictObject({ plainId: idSchema, borderMm: length })),
        } satisfies EntriesOf<KitPiece>),
      ),
      v.maxLength(limits.pieces),
    ),
  } satisfies EntriesOf<KitLeaf>),
  v.strictObject({
    kind: v.literal('board'),
    ...head,
    studyId: idSchema,
    candidate: v.nullable(heldSchema),
    words: textSchema,
    size: v.picklist(['square', 'a4', 'letter']),
  } satisfies EntriesOf<BoardLeaf>),
  v.strictObject({
    kind: v.literal('exercise'),
    ...head,
    text: textSchema,
    studyId: idSchema,
    answered: v.nullable(verdict),
    ask: v.exactOptional(v.picklist(['verdict', 'near miss', 'repeat', 'opposite'])),
    candidate: v.exactOptional(heldSchema),
    pointed: v.exactOptional(v.pipe(v.array(idSchema), v.maxLength(2))),
  } satisfies EntriesOf<ExerciseLeaf>),
]) satisfies v.GenericSchema<unknown, Leaf>;

interface WithId {
  readonly id: string;
}
const apart = (list: readonly WithId[]) => new Set(list.map((one) => one.id)).size === list.length;
const listOf = <T extends v.GenericSchema<unknown, WithId>>(item: T, most: number) =>
  v.pipe(
    v.array(item),
    v.maxLength(most),
    v.check((list: v.InferOutput<T>[]) => apart(list), 'two things have the same id'),
  );

export const notebookSchema = v.strictObject({
  id: idSchema,
  title: nameSchema,
  leaves: listOf(leafSchema, limits.leaves),
  drawer: v.strictObject({
    sheets: listOf(sheetSchema, limits.sheets),
    plains: listOf(plainSchema, limits.plains),
    parts: listOf(partSchema, limits.parts),
  } satisfies EntriesOf<Drawer>),
} satisfies EntriesOf<Notebook>) satisfies v.GenericSchema<unknown, Notebook>;
