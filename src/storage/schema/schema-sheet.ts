import * as v from 'valibot';
import { limits } from '../../notebook/limits.ts';
import {
  type Base,
  baseKinds,
  type Card,
  finishes,
  type KeptSide,
  motifFamilies,
  motifs,
  type PaperWeight,
  type Part,
  type Plain,
  type Print,
  plainKinds,
  printScales,
  type ReadOptions,
  type Seen,
  type Sheet,
  type Side,
  type Spot,
  sheetSides,
  type Tags,
  weightGrades,
} from '../../sheet/model.ts';
import { mostCorners } from '../../sheet/outline/outline.ts';
import { cornersSchema, handSchema, takenSchema } from './schema-hand.ts';
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
  schemaOf,
  share,
  textSchema,
} from './schema-ink.ts';

/** What is believed of papers that come from a file or the browser's store: every field by its type and range. */

const card = schemaOf<Card>()(
  v.strictObject({
    ...frameSchema.entries,
    kind: v.exactOptional(v.picklist(['white', 'grey'])),
    reflectance: v.exactOptional(share),
  } satisfies EntriesOf<Card>),
);

const outline = v.pipe(
  v.array(v.strictObject({ x: share, y: share } satisfies EntriesOf<Spot>)),
  v.minLength(3),
  v.maxLength(mostCorners),
);

const readOptions = schemaOf<ReadOptions>()(
  v.strictObject({
    mmPerPixel: v.exactOptional(v.pipe(finite, v.gtValue(0))),
    crop: v.exactOptional(frameSchema),
    outline: v.exactOptional(outline),
    card: v.exactOptional(card),
    chart: v.exactOptional(frameSchema),
  } satisfies EntriesOf<ReadOptions>),
);

const base = schemaOf<Base>()(
  v.strictObject({
    ...inkEntries,
    kind: v.picklist(baseKinds),
    printed: v.nullable(v.boolean()),
  } satisfies EntriesOf<Base>),
);

const weight = schemaOf<PaperWeight>()(
  v.strictObject({
    gsm: between(0, limits.gsm),
    lb: v.exactOptional(between(0, limits.lb)),
    grade: v.exactOptional(v.picklist(weightGrades)),
    weighed: v.exactOptional(v.boolean()),
  } satisfies EntriesOf<PaperWeight>),
);

const tags = schemaOf<Tags>()(
  v.strictObject({
    motifs: v.exactOptional(v.pipe(v.array(v.picklist(motifs)), v.maxLength(motifs.length))),
    finishes: v.exactOptional(v.pipe(v.array(v.picklist(finishes)), v.maxLength(finishes.length))),
    weight: v.exactOptional(v.nullable(weight)),
  } satisfies EntriesOf<Tags>),
);

/** Root mean square of L*, or of a* and b*: no more than the whole range. */
const contrast = v.pipe(v.number(), v.minValue(0), v.maxValue(300));
const inks = v.pipe(v.array(inkSchema), v.maxLength(limits.inks));

export const sideSchema = schemaOf<Side>()(
  v.strictObject({
    file: v.exactOptional(nameSchema),
    base,
    inks,
    print: v.strictObject({
      busyness: share,
      repeatMm: v.nullable(length),
      scale: v.nullable(v.picklist(printScales)),
      assumedSize: v.exactOptional(v.literal(true)),
    } satisfies EntriesOf<Print>),
    light: v.strictObject({ known: v.boolean(), note: textSchema }),
    motif: v.exactOptional(
      v.strictObject({
        family: v.picklist(motifFamilies),
        sure: share,
      }),
    ),
    ramps: v.exactOptional(
      v.pipe(
        v.array(v.strictObject({ inks: v.pipe(v.array(idSchema), v.maxLength(limits.inks)) })),
        v.maxLength(limits.inks),
      ),
    ),
    seen: v.exactOptional(
      v.strictObject({
        light: contrast,
        colour: contrast,
        large: contrast,
        fine: share,
        regular: share,
        repeatMm: v.nullable(length),
      } satisfies EntriesOf<Seen>),
    ),
    tags: v.exactOptional(tags),
  } satisfies EntriesOf<Side>),
);

const kept = schemaOf<KeptSide>()(
  v.strictObject({
    reading: sideSchema,
    pictureId: v.nullable(idSchema),
    digest: v.exactOptional(v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/))),
    options: v.exactOptional(readOptions),
    taken: v.exactOptional(takenSchema),
    asks: v.exactOptional(cornersSchema),
    asRead: v.exactOptional(sideSchema),
    hand: v.exactOptional(handSchema),
  } satisfies EntriesOf<KeptSide>),
);

const sizeMm = v.strictObject({ width: length, height: length });

export const sheetSchema = schemaOf<Sheet>()(
  v.strictObject({
    id: idSchema,
    name: nameSchema,
    sides: v.strictObject({ A: kept, B: v.exactOptional(kept) }),
    sizeMm,
    weight: v.nullable(weight),
    count: between(0, limits.count),
    note: textSchema,
  } satisfies EntriesOf<Sheet>),
);

export const plainSchema = schemaOf<Plain>()(
  v.strictObject({
    id: idSchema,
    name: nameSchema,
    kind: v.picklist(plainKinds),
    ink: inkSchema,
    takesColour: v.exactOptional(v.boolean()),
    weight: v.exactOptional(v.nullable(weight)),
  } satisfies EntriesOf<Plain>),
);

export const partSchema = schemaOf<Part>()(
  v.strictObject({
    id: idSchema,
    name: nameSchema,
    sheetId: idSchema,
    side: v.picklist(sheetSides),
    frame: frameSchema,
    outline: v.exactOptional(outline),
    sizeMm,
    reading: sideSchema,
    pictureId: v.exactOptional(idSchema),
    asRead: v.exactOptional(sideSchema),
    hand: v.exactOptional(handSchema),
  } satisfies EntriesOf<Part>),
);
