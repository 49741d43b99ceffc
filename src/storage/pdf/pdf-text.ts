import type { PDFDocument, PDFFont } from 'pdf-lib';
import type { TextNode } from '../../drawing/model.ts';
import { subscript, textRuns } from '../../drawing/text-runs.ts';

export interface FontBytes {
  readonly sans400: Uint8Array;
  readonly sans600: Uint8Array;
  readonly greek400: Uint8Array;
  readonly serifItalic: Uint8Array;
  readonly serif400: Uint8Array;
  readonly serif500: Uint8Array;
  readonly serif600: Uint8Array;
}

export type PdfFonts = (name: keyof FontBytes) => Promise<EmbeddedFont>;

export interface EmbeddedFont {
  readonly font: PDFFont;
  readonly has: ReadonlySet<number>;
}

/** Thrown where none of the fonts has a letter. */
export class UnsetText extends Error {
  override readonly name = 'UnsetText';
}

/** Fonts that are fetched and embedded when first used; only the letters that are used go into the file. */
export function fontsFor(
  document: PDFDocument,
  load: (name: keyof FontBytes) => Promise<Uint8Array>,
): PdfFonts {
  const known = new Map<keyof FontBytes, Promise<EmbeddedFont>>();
  return (name) => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const fresh = load(name).then(async (bytes) => {
      const font = await document.embedFont(bytes, { subset: true });
      return { font, has: new Set(font.getCharacterSet()) };
    });
    known.set(name, fresh);
    return fresh;
  };
}

/** A piece of a line with its font, its place along the line, and how far it is lowered, in the drawing's units. */
export interface SetRun {
  readonly text: string;
  readonly font: PDFFont;
  readonly size: number;
  readonly along: number;
  readonly drop: number;
}

/** A text node set as runs from left to right; `along` is measured from the node's x by its anchor. @throws UnsetText */
export async function setText(node: TextNode, fonts: PdfFonts): Promise<readonly SetRun[]> {
  const main = await fonts(faceOf(node));
  const greek = await fonts('greek400');
  const runs: SetRun[] = [];
  let along = 0;
  for (const run of textRuns(node.text)) {
    const size = run.sub ? node.size * subscript.size : node.size;
    for (const [text, { font }] of byFont(run.text, main, greek)) {
      runs.push({ text, font, size, along, drop: run.sub ? node.size * subscript.drop : 0 });
      along += font.widthOfTextAtSize(text, size);
    }
  }
  const shift = node.anchor === 'middle' ? -along / 2 : node.anchor === 'end' ? -along : 0;
  return runs.map((run) => ({ ...run, along: run.along + shift }));
}

function byFont(text: string, main: EmbeddedFont, greek: EmbeddedFont): [string, EmbeddedFont][] {
  const pieces: [string, EmbeddedFont][] = [];
  for (const letter of text.replaceAll('\t', ' ')) {
    const code = letter.codePointAt(0) ?? 0;
    const font = main.has.has(code) ? main : greek.has.has(code) ? greek : null;
    if (font === null) throw new UnsetText(`no letter for U+${code.toString(16)}`);
    const last = pieces.at(-1);
    if (last !== undefined && last[1] === font) last[0] += letter;
    else pieces.push([letter, font]);
  }
  return pieces;
}

function faceOf({ face, weight = 400, italic = false }: TextNode): keyof FontBytes {
  if (face === 'sans') return weight > 450 ? 'sans600' : 'sans400';
  if (italic) return 'serifItalic';
  return weight > 550 ? 'serif600' : weight > 400 ? 'serif500' : 'serif400';
}
