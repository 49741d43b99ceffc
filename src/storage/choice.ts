import * as v from 'valibot';
import { idSchema, textSchema } from './schema/schema-ink.ts';

/**
 * What was written in two tabs at once, and is not decided yet. The leaf holds one text; the other stands here until
 * the reader has chosen.
 */
export interface Choice {
  readonly id: string;
  readonly leafId: string;
  /** `text` is what is written on the leaf, whatever its field is called. */
  readonly of: 'text' | 'title';
  readonly other: string;
}

const schema = v.strictObject({
  id: idSchema,
  leafId: idSchema,
  of: v.picklist(['text', 'title']),
  other: textSchema,
}) satisfies v.GenericSchema<unknown, Choice>;

/** `undefined` where it is none. */
export function parseChoice(value: unknown): Choice | undefined {
  const checked = v.safeParse(schema, value);
  return checked.success ? checked.output : undefined;
}
