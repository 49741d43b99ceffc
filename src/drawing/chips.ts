import type { Ink } from '../sheet/model.ts';
import { inkWord } from '../sheet/words/side-words.ts';
import { letterNode } from './marks.ts';
import type { Drawing, NamedSide, SceneNode, Surround } from './model.ts';
import { surroundTones } from './surround.ts';
import { tornChipPath } from './torn.ts';
import { inkSays, inksOf, shareWords } from './words/says.ts';

export interface ChipsOptions {
  /** Width of the row in the drawing's units. Default 300; never less than the letters need. */
  readonly width?: number;
  /** Height of a chip down to its tear. Default 38. */
  readonly height?: number;
  /** Default 'grey'. */
  readonly surround?: Surround;
}

const between = 3;
const narrowest = 19;
const tear = 6;

/** A side's inks as a row of chips torn along the lower edge, each as wide as its share, with its letter. */
export function tornChips(paper: NamedSide, options: ChipsOptions = {}): Drawing {
  const inks = inksOf(paper.side);
  const least = inks.length * (narrowest + between) - between;
  const width = Math.max(options.width ?? 300, least);
  const height = options.height ?? 38;
  const tones = surroundTones(options.surround);
  const widths = chipWidths(
    inks.map((ink) => ink.share),
    width - between * (inks.length - 1),
  );
  let x = 0;
  const nodes = inks.map((ink, i): SceneNode => {
    const chip = chipNode(ink, x, widths[i]!, height, paper.name, tones.line);
    x += widths[i]! + between;
    return chip;
  });
  return {
    width,
    height: height + tear,
    title: `Inks of ${paper.name}`,
    description: `${inks.map((ink) => `${inkWord(ink)} ${shareWords(ink.share)}`).join(', ')}.`,
    nodes,
    table: {
      caption: `Inks of ${paper.name}`,
      columns: ['Ink', 'Colour', 'Standard name', 'Hex', 'Share'],
      rows: inks.map((ink) => [ink.id, inkWord(ink), ink.name, ink.hex, shareWords(ink.share)]),
    },
  };
}

/** Widths that follow the shares and fill the room, none narrower than a letter needs; in the drawing's units. */
export function chipWidths(shares: readonly number[], room: number): number[] {
  const narrow = new Set<number>();
  for (;;) {
    const free = room - narrow.size * narrowest;
    const total = shares.reduce((sum, share, i) => (narrow.has(i) ? sum : sum + Math.max(0, share)), 0);
    const widths = shares.map((share, i) =>
      narrow.has(i) || total <= 0 ? narrowest : (Math.max(0, share) / total) * free,
    );
    const next = widths.findIndex((width, i) => !narrow.has(i) && width < narrowest);
    if (next < 0) return widths;
    narrow.add(next);
  }
}

function chipNode(ink: Ink, x: number, width: number, height: number, of: string, line: string): SceneNode {
  return {
    type: 'group',
    className: 'ink-mark',
    mark: { kind: 'ink', inks: [ink.id], label: inkSays(ink, of) },
    children: [
      {
        type: 'path',
        d: tornChipPath({ x, y: 0, width, height: height - 1 }, `${ink.id}${ink.hex}`),
        fill: ink.hex,
        stroke: line,
        strokeWidth: 0.4,
      },
      letterNode(ink, x + width / 2, height / 2, 13),
    ],
  };
}
