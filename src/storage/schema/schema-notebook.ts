import * as v from 'valibot';
import { boardKindNames, boardSizes } from '../../board/model.ts';
import { wheels } from '../../colour/model.ts';
import type { Drawer, Held } from '../../drawer/model.ts';
import { distances, verdicts } from '../../harmony/model.ts';
import { limits } from '../../notebook/limits.ts';
import {
  type BoardLeaf,
  type ExerciseLeaf,
  exerciseAsks,
  type KitLeaf,
  type KitPiece,
  type Leaf,
  type Notebook,
  type NoteLeaf,
  type SheetLeaf,
  type StudyLeaf,
} from '../../notebook/model.ts';
import { sheetSides } from '../../sheet/model.ts';
import { type EntriesOf, idSchema, length, nameSchema, schemaOf, textSchema, whole } from './schema-ink.ts';
import { partSchema, plainSchema, sheetSchema } from './schema-sheet.ts';

/** What is believed of a notebook that comes from a file or the browser's store. */

const heldSchema = schemaOf<Held>()(
  v.variant('kind', [
    v.strictObject({ kind: v.literal('sheet'), id: idSchema, side: v.picklist(sheetSides) }),
    v.strictObject({ kind: v.literal('plain'), id: idSchema }),
    v.strictObject({ kind: v.literal('part'), id: idSchema }),
  ]),
);

const verdict = v.picklist(verdicts);
const head = { id: idSchema, title: nameSchema };

/** A key made by heldKey; a record of these could otherwise carry `__proto__`. */
const heldKeySchema = v.pipe(v.string(), v.regex(/^(sheet|plain|part):[\w .:~-]{1,110}$/));

const opinions = v.pipe(
  v.record(heldKeySchema, v.strictObject({ verdict: v.nullable(verdict), likes: v.nullable(v.boolean()) })),
  v.maxEntries(limits.opinions),
);

export const leafSchema = schemaOf<Leaf>()(
  v.variant('kind', [
    v.strictObject({
      kind: v.literal('note'),
      ...head,
      text: textSchema,
      picture: v.exactOptional(v.strictObject({ pictureId: idSchema, alt: nameSchema })),
    } satisfies EntriesOf<NoteLeaf>),
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
      distance: v.picklist(distances),
      wheel: v.picklist(wheels),
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
            areaMm2: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(limits.areaMm2))),
            role: v.exactOptional(v.literal('photo')),
            sizeMm: v.exactOptional(v.strictObject({ width: length, height: length })),
            count: v.exactOptional(whole(limits.pieceCount)),
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
      size: v.picklist(boardSizes),
      shows: v.exactOptional(v.picklist(boardKindNames)),
    } satisfies EntriesOf<BoardLeaf>),
    v.strictObject({
      kind: v.literal('exercise'),
      ...head,
      text: textSchema,
      studyId: idSchema,
      answered: v.nullable(verdict),
      ask: v.exactOptional(v.picklist(exerciseAsks)),
      candidate: v.exactOptional(heldSchema),
      pointed: v.exactOptional(v.pipe(v.array(idSchema), v.maxLength(2))),
    } satisfies EntriesOf<ExerciseLeaf>),
  ]),
);

interface WithId {
  readonly id: string;
}
const apart = (list: readonly WithId[]) => new Set(list.map((one) => one.id)).size === list.length;
const listOf = <T extends v.GenericSchema<unknown, WithId>>(item: T, most: number) =>
  v.pipe(
    v.array(item),
    v.maxLength(most),
    v.check((list: v.InferOutput<T>[]) => apart(list)),
  );

export const notebookSchema = schemaOf<Notebook>()(
  v.strictObject({
    id: idSchema,
    title: nameSchema,
    leaves: listOf(leafSchema, limits.leaves),
    drawer: v.strictObject({
      sheets: listOf(sheetSchema, limits.sheets),
      plains: listOf(plainSchema, limits.plains),
      parts: listOf(partSchema, limits.parts),
    } satisfies EntriesOf<Drawer>),
  } satisfies EntriesOf<Notebook>),
);
