import * as v from 'valibot';
import { limits } from '../notebook/limits.ts';
import type {
  Base,
  Card,
  KeptSide,
  Part,
  Plain,
  Print,
  ReadOptions,
  Sheet,
  Side,
  Spot,
  Tags,
  Weight,
} from '../sheet/model.ts';
import { mostCorners } from '../sheet/outline.ts';
import { handSchema, takenSchema } from './schema-hand.ts';
import {
  between,
  type EntriesOf,
  finite,
  frameSchema,
  idSchema,
  inkEntries,
  inkSchema,
  length,
  nameSchema,
  share,
  textSchema,
} from './schema-ink.ts';

/** What is believed of papers that come from a file or the browser's store: every field by its type and range. */

const card = v.strictObject({
  ...frameSchema.entries,
  kind: v.exactOptional(v.picklist(['white', 'grey'])),
  reflectance: v.exactOptional(share),
} satisfies EntriesOf<Card>);

const outline = v.pipe(
  v.array(v.strictObject({ x: share, y: share } satisfies EntriesOf<Spot>)),
  v.minLength(3),
  v.maxLength(mostCorners),
);

const readOptions = v.strictObject({
  mmPerPixel: v.exactOptional(v.pipe(finite, v.gtValue(0))),
  crop: v.exactOptional(frameSchema),
  outline: v.exactOptional(outline),
  card: v.exactOptional(card),
  chart: v.exactOptional(frameSchema),
} satisfies EntriesOf<ReadOptions>);

const base = v.strictObject({
  ...inkEntries,
  kind: v.picklist(['white', 'cream', 'kraft', 'tinted', 'dark']),
  printed: v.nullable(v.boolean()),
} satisfies EntriesOf<Base>);

const weight = v.strictObject({
  gsm: between(0, 10_000),
  lb: v.exactOptional(between(0, 10_000)),
  grade: v.exactOptional(v.picklist(['cover', 'text', 'bond', 'index'])),
  weighed: v.exactOptional(v.boolean()),
} satisfies EntriesOf<Weight>);

const motifs = [
  'floral',
  'leaf',
  'dot',
  'stripe',
  'chevron',
  'grid',
  'text',
  'heart',
  'star',
  'wood grain',
  'patchwork',
  'bird',
  'fruit',
  'map',
  'abstract',
] as const;

const tags = v.strictObject({
  motifs: v.exactOptional(v.pipe(v.array(v.picklist(motifs)), v.maxLength(motifs.length))),
  finishes: v.exactOptional(
    v.pipe(
      v.array(v.picklist(['hand-drawn', 'watercolour', 'flat', 'distressed', 'photographic'])),
      v.maxLength(5),
    ),
  ),
  weight: v.exactOptional(v.nullable(weight)),
} satisfies EntriesOf<Tags>);

const inks = v.pipe(v.array(inkSchema), v.maxLength(limits.inks));

export const sideSchema = v.strictObject({
  file: v.exactOptional(nameSchema),
  base,
  inks,
  print: v.strictObject({
    busyness: share,
    repeatMm: v.nullable(length),
    scale: v.nullable(v.picklist(['small', 'medium', 'large'])),
    assumedSize: v.exactOptional(v.literal(true)),
  } satisfies EntriesOf<Print>),
  light: v.strictObject({ known: v.boolean(), note: textSchema }),
  motif: v.exactOptional(
    v.strictObject({
      family: v.picklist(['plain', 'dots', 'stripe', 'grid', 'chevron', 'text', 'organic']),
      sure: share,
    }),
  ),
  ramps: v.exactOptional(
    v.pipe(
      v.array(v.strictObject({ inks: v.pipe(v.array(idSchema), v.maxLength(limits.inks)) })),
      v.maxLength(limits.inks),
    ),
  ),
  tags: v.exactOptional(tags),
} satisfies EntriesOf<Side>) satisfies v.GenericSchema<unknown, Side>;

const kept = v.strictObject({
  reading: sideSchema,
  pictureId: v.nullable(idSchema),
  digest: v.exactOptional(v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/))),
  options: v.exactOptional(readOptions),
  taken: v.exactOptional(takenSchema),
  asRead: v.exactOptional(sideSchema),
  hand: v.exactOptional(handSchema),
} satisfies EntriesOf<KeptSide>) satisfies v.GenericSchema<unknown, KeptSide>;

const sizeMm = v.strictObject({ width: length, height: length });

export const sheetSchema = v.strictObject({
  id: idSchema,
  name: nameSchema,
  sides: v.strictObject({ A: kept, B: v.exactOptional(kept) }),
  sizeMm,
  weight: v.nullable(weight),
  count: between(0, 1_000_000),
  note: textSchema,
} satisfies EntriesOf<Sheet>) satisfies v.GenericSchema<unknown, Sheet>;

export const plainSchema = v.strictObject({
  id: idSchema,
  name: nameSchema,
  kind: v.picklist(['cardstock', 'letters', 'ink pad', 'thread', 'tape', 'mist', 'tag']),
  ink: inkSchema,
  takesColour: v.exactOptional(v.boolean()),
  weight: v.exactOptional(v.nullable(weight)),
} satisfies EntriesOf<Plain>) satisfies v.GenericSchema<unknown, Plain>;

export const partSchema = v.strictObject({
  id: idSchema,
  name: nameSchema,
  sheetId: idSchema,
  side: v.picklist(['A', 'B']),
  frame: frameSchema,
  outline: v.exactOptional(outline),
  sizeMm,
  reading: sideSchema,
  pictureId: v.exactOptional(idSchema),
  asRead: v.exactOptional(sideSchema),
  hand: v.exactOptional(handSchema),
} satisfies EntriesOf<Part>) satisfies v.GenericSchema<unknown, Part>;
