import sans400 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff2?url';
import sans600 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-600-normal.woff2?url';
import greek400 from '@fontsource/literata/files/literata-greek-400-normal.woff2?url';
import serifItalic from '@fontsource/literata/files/literata-latin-400-italic.woff2?url';
import serif400 from '@fontsource/literata/files/literata-latin-400-normal.woff2?url';
import serif500 from '@fontsource/literata/files/literata-latin-500-normal.woff2?url';
import serif600 from '@fontsource/literata/files/literata-latin-600-normal.woff2?url';

/** The bundled fonts that boards are set in. All come with the page; nothing is fetched from elsewhere. */
const faces: readonly (readonly [
  family: string,
  weight: number,
  style: string,
  url: string,
  range?: string,
])[] = [
  ['Atkinson Hyperlegible Next', 400, 'normal', sans400],
  ['Atkinson Hyperlegible Next', 600, 'normal', sans600],
  ['Literata', 400, 'normal', serif400],
  ['Literata', 500, 'normal', serif500],
  ['Literata', 600, 'normal', serif600],
  ['Literata', 400, 'italic', serifItalic],
  ['Literata', 400, 'normal', greek400, 'U+0370-03FF'],
];

let css: Promise<string> | null = null;

/** `@font-face` rules with the fonts inside them, because an SVG that is drawn as a picture loads nothing. */
export function fontCss(): Promise<string> {
  css ??= Promise.all(faces.map(rule)).then((rules) => rules.join(''));
  css.catch(() => {
    css = null;
  });
  return css;
}

async function rule([family, weight, style, url, range]: (typeof faces)[number]): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(url)).arrayBuffer());
  const data = btoa(String.fromCharCode(...bytes));
  const only = range === undefined ? '' : `unicode-range:${range};`;
  return `@font-face{font-family:"${family}";font-weight:${weight};font-style:${style};${only}src:url(data:font/woff2;base64,${data}) format("woff2")}`;
}
