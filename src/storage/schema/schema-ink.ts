import * as v from 'valibot';
import { keptName, keptText, limits } from '../../notebook/limits.ts';
import { type Frame, type Ink, specialFinishes } from '../../sheet/model.ts';

/** One schema for every field of T, so that a field added to the model and forgotten here is a compile error. */
export type EntriesOf<T> = { [K in keyof Required<T>]: v.GenericSchema };

/** A value as it is after it was read: the same, and nothing in it can be written. */
type Read<T> = T extends string | number | boolean | null | undefined
  ? T
  : { readonly [K in keyof T]: Read<T[K]> };

/**
 * The schema itself, which must take every T and give nothing else: one that lacks a member of a union of the model is a
 * compile error, for what is made with that member would be stored and never open again.
 */
export const schemaOf =
  <T>() =>
  <S extends v.GenericSchema<unknown, T>>(
    schema: S,
    ..._all: [T] extends [Read<v.InferOutput<S>>] ? [] : ['the model has what this schema does not take']
  ): S =>
    schema;

/** Letters, digits and a few marks, so that an id can stand in an address, an attribute and a file name. */
export const idSchema = v.pipe(v.string(), v.regex(/^[\w][\w .:~-]{0,99}$/));
export const nameSchema = v.pipe(v.string(), v.maxLength(limits.text), v.transform(keptName));
export const textSchema = v.pipe(
  v.string(),
  v.transform((text) => keptText(text, limits.text)),
);

export const finite = v.pipe(v.number(), v.finite());
export const between = (low: number, high: number) => v.pipe(v.number(), v.minValue(low), v.maxValue(high));
export const share = between(0, 1);
export const length = between(0, limits.lengthMm);
export const whole = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));

export const frameSchema = v.strictObject({
  x: finite,
  y: finite,
  width: between(0, 1e6),
  height: between(0, 1e6),
} satisfies EntriesOf<Frame>);
const oklch = v.strictTuple([
  between(limits.oklch.darkest, limits.oklch.lightest),
  between(0, limits.oklch.chroma),
  v.nullable(between(0, 360)),
]);

export const inkEntries = {
  id: idSchema,
  hex: v.pipe(v.string(), v.regex(/^#[0-9a-f]{6}$/i)),
  oklch,
  name: nameSchema,
  trade: v.exactOptional(v.nullable(nameSchema)),
  share,
  accent: v.boolean(),
  sure: v.exactOptional(share),
  special: v.exactOptional(v.picklist(specialFinishes)),
  byHand: v.exactOptional(v.boolean()),
} satisfies EntriesOf<Ink>;
export const inkSchema = schemaOf<Ink>()(v.strictObject(inkEntries));
