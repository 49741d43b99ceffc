import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sfntFromWoff } from './woff.ts';

/** One bundled font file: what it is called in CSS, and where it lies in its package. */
interface FontFile {
  readonly family: string;
  readonly weight: 400 | 500 | 600;
  readonly italic: boolean;
  readonly path: string;
  /** The characters that it holds, as CSS says it. */
  readonly range: string;
}

const latin =
  'U+0000-00FF, U+0131, U+0152-0153, U+02BB-02BC, U+02C6, U+02DA, U+02DC, U+2000-206F, U+20AC, U+2122, U+2212';
const greek = 'U+0370-03FF';

/** The faces that a board is set in. Literata also lends the sans its Greek letters. */
export const boardFonts: readonly FontFile[] = [
  ...serif('latin', latin, [400, 500, 600]),
  { ...serif('latin', latin, [400])[0]!, italic: true, path: literata('latin-400-italic') },
  ...serif('greek', greek, [400, 600]),
  ...([400, 600] as const).map((weight) => ({
    family: 'Atkinson Hyperlegible Next',
    weight,
    italic: false,
    path: `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal`,
    range: latin,
  })),
];

/** `@font-face` rules that hold the fonts themselves, for a picture that is opened elsewhere. */
export async function fontFaceCss(): Promise<string> {
  const rules = boardFonts.map(async ({ family, weight, italic, path, range }) => {
    const bytes = await readFile(find(`${path}.woff2`));
    return (
      `@font-face{font-family:"${family}";font-weight:${weight};font-style:${italic ? 'italic' : 'normal'};` +
      `unicode-range:${range};src:url(data:font/woff2;base64,${bytes.toString('base64')}) format("woff2")}`
    );
  });
  return (await Promise.all(rules)).join('\n');
}

/**
 * Calls back with the paths of the fonts as plain sfnt files, which stand only until it has answered.
 */
export async function withFontFiles<T>(use: (paths: readonly string[]) => T | Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'quirewise-fonts-'));
  try {
    const paths = boardFonts.map(async ({ path, family }, i) => {
      const to = join(folder, `${i}.ttf`);
      await writeFile(to, sfntFromWoff(await readFile(find(`${path}.woff`)), family));
      return to;
    });
    return await use(await Promise.all(paths));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function serif(set: string, range: string, weights: readonly (400 | 500 | 600)[]): FontFile[] {
  return weights.map((weight) => ({
    family: 'Literata',
    weight,
    italic: false,
    path: literata(`${set}-${weight}-normal`),
    range,
  }));
}

function literata(name: string): string {
  return `@fontsource/literata/files/literata-${name}`;
}

function find(path: string): string {
  return createRequire(import.meta.url).resolve(path);
}
