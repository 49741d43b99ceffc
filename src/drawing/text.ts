import { type AdvanceFace, advanceIndex, advances } from './advances.ts';

/** How a run of text is set. Size in the drawing's units; weight defaults to 400. */
export interface TextStyle {
  readonly size: number;
  readonly face: 'serif' | 'sans';
  readonly weight?: number;
  readonly italic?: boolean;
}

/**
 * Width of one line in the drawing's units, from the bundled fonts' advances and without kerning, so that it is
 * seldom too small. A character that the fonts lack counts as wide as a capital M; a subscript digit as small.
 */
export function textWidth(text: string, style: TextStyle): number {
  let sum = 0;
  for (const character of text) sum += advanceOf(character, style);
  return (sum * style.size) / 1000;
}

/** Advance of one character in thousandths of the type size. */
function advanceOf(character: string, style: TextStyle): number {
  const table = advances[faceOf(style)];
  const code = character.codePointAt(0) ?? 0;
  const known = table[advanceIndex(code)];
  if (known !== undefined) return known;
  if (code === 0x394) return 660;
  if (isSubscriptDigit(code)) return 430;
  if (isZeroWidth(code)) return 0;
  return (table[advanceIndex(0x4d)] ?? 900) * (code > 0x2e80 ? 1.3 : 1);
}

/**
 * Lines that fit a width, broken at spaces (a word too long for a line is broken inside). Line feeds in the text
 * are kept as breaks. With `maxLines`, the last line ends in an ellipsis where text is left over.
 */
export function wrapText(text: string, width: number, style: TextStyle, maxLines = Infinity): string[] {
  const lines: string[] = [];
  for (const paragraph of text.split(/\r\n|\r|\n/)) lines.push(...wrapParagraph(paragraph, width, style));
  while (lines.length > 1 && lines.at(-1) === '') lines.pop();
  if (lines.length <= maxLines) return lines;
  const kept = lines.slice(0, maxLines);
  kept[maxLines - 1] = withEllipsis(`${kept[maxLines - 1]}`, width, style);
  return kept;
}

/** The text itself where it fits a width, otherwise as much of it as fits, ending in an ellipsis. */
export function fitText(text: string, width: number, style: TextStyle): string {
  return textWidth(text, style) <= width ? text : withEllipsis(text, width, style);
}

function withEllipsis(text: string, width: number, style: TextStyle): string {
  const room = (width * 1000) / style.size - advanceOf('…', style);
  let kept = '';
  let used = 0;
  for (const character of text) {
    used += advanceOf(character, style);
    if (used > room) break;
    kept += character;
  }
  return `${kept.replace(/[\s,;:.·–—]+$/u, '')}…`;
}

function wrapParagraph(text: string, width: number, style: TextStyle): string[] {
  const lines: string[] = [];
  let line = '';
  // A no-break space must not break, so the split is at the plain space and the tab only.
  for (const word of text.split(/[ \t]+/).filter((w) => w !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, style) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = breakWord(word, width, style);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  lines.push(line);
  return lines;
}

function breakWord(word: string, width: number, style: TextStyle): string[] {
  if (textWidth(word, style) <= width) return [word];
  const room = (width * 1000) / style.size;
  const pieces: string[] = [];
  let piece = '';
  let used = 0;
  for (const character of word) {
    const advance = advanceOf(character, style);
    if (piece !== '' && used + advance > room) {
      pieces.push(piece);
      piece = '';
      used = 0;
    }
    piece += character;
    used += advance;
  }
  pieces.push(piece);
  return pieces;
}

function faceOf(style: TextStyle): AdvanceFace {
  const weight = style.weight ?? 400;
  if (style.face === 'sans') return weight > 450 ? 'sans600' : 'sans400';
  if (style.italic) return 'serif400i';
  if (weight > 550) return 'serif600';
  return weight > 400 ? 'serif500' : 'serif400';
}

function isSubscriptDigit(code: number): boolean {
  return code >= 0x2080 && code <= 0x2089;
}

function isZeroWidth(code: number): boolean {
  return (
    (code >= 0x300 && code <= 0x36f) ||
    (code >= 0x200b && code <= 0x200f) ||
    (code >= 0xfe00 && code <= 0xfe0f)
  );
}
