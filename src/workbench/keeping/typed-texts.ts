import { type TextAt, textsChanged } from '../../storage/keep-typing.ts';
import type { Written } from '../../storage/written.ts';

/** Texts that are being typed in this tab. */
export interface TypedTexts {
  changed(before: Written, after: Written): void;
  /** No other tab's text takes the place of these on the leaf. */
  now(): readonly TextAt[];
}

/** @param forMs - a text is being typed for so long after its last letter */
export function watchTyping(forMs: number): TypedTexts {
  const typed = new Map<string, TextAt & { readonly at: number }>();
  return {
    changed(before, after) {
      const at = performance.now();
      for (const text of textsChanged(before, after)) typed.set(`${text.of} ${text.leafId}`, { ...text, at });
    },
    now() {
      const since = performance.now() - forMs;
      for (const [key, { at }] of typed) if (at < since) typed.delete(key);
      return [...typed.values()];
    },
  };
}
