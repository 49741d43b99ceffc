import type { Link, LinkKind } from '../harmony/model.ts';
import { diamondPath } from './marks.ts';
import type { SceneNode } from './model.ts';
import type { SurroundTones } from './surround.ts';
import { textWidth } from './text.ts';
import { n } from './torn.ts';
import { linkStrokes } from './wheel-links.ts';

export interface KeyNeeds {
  readonly candidate: boolean;
  readonly others: boolean;
  readonly links: readonly Link[];
}

const style = { size: 11.5, face: 'sans' } as const;
const sample = 22;
const between = 15;
const rowStep = 22;

/**
 * What discs, diamonds and lines stand for, centred, in one row or two as the width allows; only what is there is
 * explained. `y` is the middle of the first row.
 */
export function wheelKey(needs: KeyNeeds, width: number, y: number, tones: SurroundTones): WheelKey {
  const kinds = (['repeat', 'near miss', 'opposite'] as const).filter((kind) =>
    needs.links.some((link) => link.kind === kind),
  );
  const entries: Entry[] = [
    { word: 'anchor', width: 11, draw: (x, y) => disc(x, y, tones) },
    ...(needs.candidate ? [{ word: 'candidate', width: 13, draw: diamondDraw(true, tones) }] : []),
    ...(needs.others ? [{ word: 'others', width: 13, draw: diamondDraw(false, tones) }] : []),
  ];
  const lines: Entry[] = kinds.map((kind) => ({
    word: kind,
    width: sample,
    draw: (x, y) => stroke(kind, x, y, tones),
  }));
  const all = [...entries, ...lines];
  const rows = rowWidth(all) <= width - 8 || lines.length === 0 ? [all] : [entries, lines];
  const children = rows.flatMap((row, i) => rowNodes(row, width / 2, y + i * rowStep, tones));
  return { height: 15 + (rows.length - 1) * rowStep, node: { type: 'group', className: 'key', children } };
}

export interface WheelKey {
  readonly node: SceneNode;
  /** From the middle of the first row down. */
  readonly height: number;
}

function rowWidth(entries: readonly Entry[]): number {
  const widths = entries.map((entry) => entry.width + 5 + textWidth(entry.word, style));
  return widths.reduce((a, b) => a + b, 0) + between * Math.max(0, entries.length - 1);
}

function rowNodes(entries: readonly Entry[], centreX: number, y: number, tones: SurroundTones): SceneNode[] {
  let x = centreX - rowWidth(entries) / 2;
  return entries.flatMap((entry): SceneNode[] => {
    const textX = x + entry.width + 5;
    const drawn = entry.draw(x, y);
    x = textX + textWidth(entry.word, style) + between;
    return [drawn, { type: 'text', x: n(textX), y: n(y + 4), text: entry.word, fill: tones.text, ...style }];
  });
}

interface Entry {
  readonly word: string;
  readonly width: number;
  readonly draw: (x: number, y: number) => SceneNode;
}

function disc(x: number, y: number, tones: SurroundTones): SceneNode {
  return { type: 'circle', cx: n(x + 5.5), cy: y, r: 5.5, fill: tones.soft };
}

function diamondDraw(full: boolean, tones: SurroundTones): (x: number, y: number) => SceneNode {
  return (x, y) => {
    const d = diamondPath(x + 6.5, y, 6.5);
    return full
      ? { type: 'path', d, fill: tones.soft }
      : { type: 'path', d, fill: 'none', stroke: tones.soft, strokeWidth: 1.1 };
  };
}

function stroke(kind: LinkKind, x: number, y: number, tones: SurroundTones): SceneNode {
  const { width, dash } = linkStrokes[kind] ?? { width: 1 };
  return {
    type: 'line',
    x1: n(x + 1.5),
    y1: y,
    x2: n(x + sample - 1.5),
    y2: y,
    stroke: tones.text,
    strokeWidth: width,
    lineCap: 'round',
    ...(dash ? { dash } : {}),
  };
}
