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

/** One line, centred, that says what discs, diamonds and lines stand for; only what is there is explained. */
export function wheelKey(needs: KeyNeeds, centreX: number, y: number, tones: SurroundTones): SceneNode {
  const kinds = (['repeat', 'near miss', 'opposite'] as const).filter((kind) =>
    needs.links.some((link) => link.kind === kind),
  );
  const entries: Entry[] = [
    { word: 'anchor', width: 11, draw: (x) => disc(x, y, tones) },
    ...(needs.candidate
      ? [{ word: 'candidate', width: 13, draw: (x: number) => diamond(x, y, true, tones) }]
      : []),
    ...(needs.others
      ? [{ word: 'others', width: 13, draw: (x: number) => diamond(x, y, false, tones) }]
      : []),
    ...kinds.map((kind) => ({ word: kind, width: sample, draw: (x: number) => stroke(kind, x, y, tones) })),
  ];
  const widths = entries.map((entry) => entry.width + 5 + textWidth(entry.word, style));
  let x = centreX - (widths.reduce((a, b) => a + b, 0) + between * (entries.length - 1)) / 2;
  const children: SceneNode[] = [];
  entries.forEach((entry, i) => {
    children.push(entry.draw(x));
    children.push({
      type: 'text',
      x: n(x + entry.width + 5),
      y: n(y + 4),
      text: entry.word,
      fill: tones.text,
      ...style,
    });
    x += widths[i]! + between;
  });
  return { type: 'group', className: 'key', children };
}

interface Entry {
  readonly word: string;
  readonly width: number;
  readonly draw: (x: number) => SceneNode;
}

function disc(x: number, y: number, tones: SurroundTones): SceneNode {
  return { type: 'circle', cx: n(x + 5.5), cy: y, r: 5.5, fill: tones.soft };
}

function diamond(x: number, y: number, full: boolean, tones: SurroundTones): SceneNode {
  const d = diamondPath(x + 6.5, y, 6.5);
  return full
    ? { type: 'path', d, fill: tones.soft }
    : { type: 'path', d, fill: 'none', stroke: tones.soft, strokeWidth: 1.1 };
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
