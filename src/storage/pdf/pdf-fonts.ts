import sans400 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url';
import sans600 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-600-normal.woff?url';
import greek400 from '@fontsource/literata/files/literata-greek-400-normal.woff?url';
import serifItalic from '@fontsource/literata/files/literata-latin-400-italic.woff?url';
import serif400 from '@fontsource/literata/files/literata-latin-400-normal.woff?url';
import serif500 from '@fontsource/literata/files/literata-latin-500-normal.woff?url';
import serif600 from '@fontsource/literata/files/literata-latin-600-normal.woff?url';
import fontkit from '@pdf-lib/fontkit';
import type { PDFDocument } from 'pdf-lib';
import { type FontBytes, fontsFor, type PdfFonts } from './pdf-text.ts';

const urls: Readonly<Record<keyof FontBytes, string>> = {
  sans400,
  sans600,
  greek400,
  serifItalic,
  serif400,
  serif500,
  serif600,
};

/** The bundled fonts, embedded in a document as far as they are used. */
export async function pdfFonts(document: PDFDocument): Promise<PdfFonts> {
  document.registerFontkit(fontkit);
  return fontsFor(document, async (name) => new Uint8Array(await (await fetch(urls[name])).arrayBuffer()));
}
