import * as v from 'valibot';
import { limits } from '../../notebook/limits.ts';
import {
  asideReasons,
  type Corners,
  type HandChange,
  type HandMade,
  type LightMark,
  type Spot,
  specialFinishes,
  type Taken,
} from '../../sheet/model.ts';
import {
  between,
  type EntriesOf,
  frameSchema,
  idSchema,
  inkSchema,
  nameSchema,
  schemaOf,
} from './schema-ink.ts';

/** What is believed of photographs and of corrections by hand that come from a file or the browser's store. */

const hex = v.pipe(v.string(), v.regex(/^#[0-9a-f]{6}$/i));
const fraction = between(0, 1);
const spot = v.strictObject({ x: fraction, y: fraction } satisfies EntriesOf<Spot>);
export const cornersSchema: v.GenericSchema<unknown, Corners> = v.strictTuple([spot, spot, spot, spot]);

const light = schemaOf<LightMark>()(
  v.variant('kind', [
    v.strictObject({
      kind: v.picklist(['white', 'grey']),
      frame: frameSchema,
      reflectance: between(0.02, 1),
    }),
    v.strictObject({ kind: v.literal('chart'), frame: frameSchema }),
  ]),
);

export const takenSchema = schemaOf<Taken>()(
  v.strictObject({
    pictureId: idSchema,
    corners: v.exactOptional(cornersSchema),
    unasked: v.exactOptional(v.literal(true)),
    light: v.exactOptional(light),
  } satisfies EntriesOf<Taken>),
);

const change = schemaOf<HandChange>()(
  v.union([
    v.strictObject({ kind: v.literal('rename'), ink: idSchema, name: nameSchema }),
    v.strictObject({ kind: v.literal('merge'), from: idSchema, into: idSchema }),
    v.strictObject({ kind: v.literal('split'), ink: idSchema, spot: v.exactOptional(spot) }),
    v.strictObject({ kind: v.literal('keep'), ink: idSchema }),
    v.strictObject({
      kind: v.literal('set-aside'),
      ink: idSchema,
      reason: v.picklist(asideReasons),
    }),
    v.strictObject({ kind: v.literal('set-share'), ink: idSchema, share: fraction }),
    v.strictObject({ kind: v.literal('add'), spot }),
    v.strictObject({
      kind: v.literal('add'),
      hex,
      special: v.exactOptional(v.picklist(specialFinishes)),
    }),
    v.strictObject({ kind: v.literal('move-spot'), ink: idSchema, spot }),
  ]),
);

export const handSchema = v.pipe(
  v.array(
    schemaOf<HandMade>()(
      v.strictObject({
        change,
        inks: v.pipe(
          v.record(idSchema, inkSchema),
          v.check((inks) => Object.keys(inks).length <= 4),
        ),
        hex: v.exactOptional(hex),
        share: v.exactOptional(fraction),
      } satisfies EntriesOf<HandMade>),
    ),
  ),
  v.maxLength(limits.corrections),
);
