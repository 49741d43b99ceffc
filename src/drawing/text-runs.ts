/** A piece of a text that is set at one size: subscript digits are set as small ordinary ones. */
export interface TextRun {
  readonly text: string;
  readonly sub: boolean;
}

/** How far a subscript is lowered, and its size, as fractions of the type size. */
export const subscript = { drop: 0.16, size: 0.68 } as const;

/** A text in runs; the bundled fonts have no subscript digits, so a renderer sets ordinary ones small and low. */
export function textRuns(text: string): TextRun[] {
  const runs: TextRun[] = [];
  for (const part of text.split(/([\u2080-\u2089]+)/)) {
    if (part === '') continue;
    const code = part.charCodeAt(0);
    const sub = code >= 0x2080 && code <= 0x2089;
    runs.push({ text: sub ? [...part].map((c) => String(c.charCodeAt(0) - 0x2080)).join('') : part, sub });
  }
  return runs;
}
