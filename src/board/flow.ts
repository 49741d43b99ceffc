import { letterOn } from '../drawing/ladders.ts';
import type { SceneNode } from '../drawing/model.ts';
import { type TextStyle, textWidth, wrapText } from '../drawing/text.ts';
import type { Ink } from '../sheet/model.ts';

/** Nodes laid out downward from y = 0 at x = 0, and how much room they take. */
export interface Block {
  readonly nodes: readonly SceneNode[];
  readonly height: number;
}

export interface FlowStyle extends TextStyle {
  /** Distance of base lines, as a multiple of the size. Default 1.4. */
  readonly leading?: number;
  readonly fill: string;
  readonly anchor?: 'start' | 'end';
  readonly maxLines?: number;
}

/** Plain text in lines that fit the width. With anchor 'end' the lines end at x = width. */
export function flowLines(text: string, width: number, style: FlowStyle): Block {
  const leading = style.size * (style.leading ?? 1.4);
  const lines = wrapText(text, width, style, style.maxLines);
  return {
    height: lines.length * leading,
    nodes: lines.map((line, i) =>
      textNode(line, style.anchor === 'end' ? width : 0, baseLine(style, i), style),
    ),
  };
}

/**
 * A sentence in lines that fit the width, in which "(C)" becomes a small chip of that ink with its letter, for each id
 * in the table. Other brackets stay as they are.
 */
export function flowSentence(
  text: string,
  width: number,
  style: FlowStyle,
  inks: ReadonlyMap<string, Ink>,
): Block {
  const leading = style.size * (style.leading ?? 1.4);
  const lines = breakLines(words(text, inks), width, style);
  const shown = style.maxLines ? lines.slice(0, style.maxLines) : lines;
  return {
    height: shown.length * leading,
    nodes: shown.flatMap((line, i) =>
      lineNodes(line, baseLine(style, i), style, i === shown.length - 1 && shown.length < lines.length),
    ),
  };
}

/** The same block moved. */
export function moved(block: Block, x: number, y: number): SceneNode {
  return { type: 'group', x, y, children: block.nodes };
}

type Piece = string | Ink;
type Word = readonly Piece[];

/** The sentence cut at its spaces, each word cut at its inks. */
function words(text: string, inks: ReadonlyMap<string, Ink>): Word[] {
  return text
    .split(/[ \t\r\n]+/)
    .filter((word) => word !== '')
    .map((word) => {
      const pieces: Piece[] = [];
      let from = 0;
      for (const match of word.matchAll(/\(([A-Za-z]{1,2})\)/g)) {
        const ink = inks.get(match[1]!);
        if (!ink) continue;
        if (match.index > from) pieces.push(word.slice(from, match.index));
        pieces.push(ink);
        from = match.index + match[0].length;
      }
      if (from < word.length) pieces.push(word.slice(from));
      return pieces;
    });
}

function breakLines(all: readonly Word[], width: number, style: FlowStyle): Word[][] {
  const space = textWidth(' ', style);
  const lines: Word[][] = [];
  let line: Word[] = [];
  let used = 0;
  for (const word of all.flatMap((word) => split(word, width, style))) {
    const wide = widthOf(word, style);
    if (line.length > 0 && used + space + wide > width) {
      lines.push(line);
      line = [];
      used = 0;
    }
    used += (line.length > 0 ? space : 0) + wide;
    line.push(word);
  }
  if (line.length > 0) lines.push(line);
  return lines;
}

/** A word of plain text that is too long for a line, in pieces that fit. */
function split(word: Word, width: number, style: FlowStyle): Word[] {
  if (widthOf(word, style) <= width) return [word];
  return word.flatMap((piece): Word[] =>
    typeof piece === 'string' ? wrapText(piece, width, style).map((part) => [part]) : [[piece]],
  );
}

function widthOf(word: Word, style: FlowStyle): number {
  return word.reduce(
    (sum, piece) => sum + (typeof piece === 'string' ? textWidth(piece, style) : chipWidth(piece, style)),
    0,
  );
}

function chipWidth(ink: Ink, style: FlowStyle): number {
  return Math.max(style.size * 1.02, textWidth(ink.id, letterStyle(style)) + style.size * 0.5);
}

function letterStyle(style: FlowStyle): TextStyle {
  return { size: style.size * 0.72, face: 'sans', weight: 600 };
}

function lineNodes(line: readonly Word[], y: number, style: FlowStyle, cut: boolean): SceneNode[] {
  const nodes: SceneNode[] = [];
  const space = textWidth(' ', style);
  let x = 0;
  let run = '';
  let runX = 0;
  const flush = (): void => {
    if (run !== '') nodes.push(textNode(run, runX, y, style));
    run = '';
  };
  line.forEach((word, w) => {
    if (w > 0) {
      if (run !== '') run += ' ';
      x += space;
    }
    for (const piece of word) {
      if (typeof piece === 'string') {
        if (run === '') runX = x;
        run += piece;
        x += textWidth(piece, style);
      } else {
        run = run.trimEnd();
        flush();
        nodes.push(...chipNodes(piece, x, y, style));
        x += chipWidth(piece, style);
      }
    }
  });
  if (cut) run += '…';
  flush();
  return nodes;
}

function chipNodes(ink: Ink, x: number, y: number, style: FlowStyle): SceneNode[] {
  const width = chipWidth(ink, style);
  const { size } = style;
  const letter = letterStyle(style);
  return [
    {
      type: 'rect',
      x,
      y: y - size * 0.82,
      width,
      height: size * 1.06,
      fill: ink.hex,
      stroke: '#9a9a9a',
      strokeWidth: size * 0.018,
    },
    {
      type: 'text',
      x: x + width / 2,
      y: y - size * 0.05,
      text: ink.id,
      anchor: 'middle',
      fill: letterOn(ink.hex),
      size: letter.size,
      face: 'sans',
      weight: 600,
    },
  ];
}

function textNode(text: string, x: number, y: number, style: FlowStyle): SceneNode {
  const { size, face, weight, italic, fill, anchor } = style;
  return {
    type: 'text',
    x,
    y,
    text,
    size,
    face,
    fill,
    ...(weight === undefined ? {} : { weight }),
    ...(italic ? { italic } : {}),
    ...(anchor ? { anchor } : {}),
  };
}

function baseLine(style: FlowStyle, line: number): number {
  const leading = style.size * (style.leading ?? 1.4);
  return line * leading + leading / 2 + style.size * 0.34;
}
