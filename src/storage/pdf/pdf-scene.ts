import {
  clip,
  degrees,
  endPath,
  LineCapStyle,
  lineTo,
  moveTo,
  type PDFDocument,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  rgb,
} from 'pdf-lib';
import type { Scene } from '../../board/model.ts';
import { parseCssColour } from '../../colour/css.ts';
import type { ImageNode, Paint, RectNode, SceneNode } from '../../drawing/model.ts';
import { type PdfFonts, setText, UnsetText } from './pdf-text.ts';

export { UnsetText };

/** A similarity: scale, then turn (degrees, clockwise as drawn), then move. From a node's units to the scene's. */
interface At {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly turn: number;
  readonly opacity: number;
}

/** Draws a scene onto a page, `points` to each of its units. @throws UnsetText where a letter is in none of the fonts. */
export async function drawScene(
  document: PDFDocument,
  page: PDFPage,
  scene: Scene,
  points: number,
  fonts: PdfFonts,
): Promise<void> {
  const at: At = { x: 0, y: 0, scale: 1, turn: 0, opacity: 1 };
  /** PDF counts from the bottom. */
  const toPage = (x: number, y: number) => ({ x: x * points, y: (scene.height - y) * points });
  const place = (from: At, x: number, y: number) => {
    const moved = throughAt(from, x, y);
    return toPage(moved.x, moved.y);
  };

  const path = (d: string, node: Paint, from: At) => {
    const fill = colourOf(node.fill ?? '#000000');
    const line = node.stroke === undefined ? undefined : colourOf(node.stroke);
    if (fill === undefined && line === undefined) return;
    const opacity = from.opacity * (node.opacity ?? 1);
    const dash = node.dash?.map((part) => part);
    page.drawSvgPath(d, {
      ...place(from, 0, 0),
      scale: from.scale * points,
      rotate: degrees(-from.turn),
      ...(fill === undefined ? {} : { color: fill, opacity }),
      ...(line === undefined
        ? {}
        : {
            borderColor: line,
            borderWidth: node.strokeWidth ?? 1,
            borderOpacity: opacity,
            borderLineCap: node.lineCap === 'round' ? LineCapStyle.Round : LineCapStyle.Butt,
            ...(dash === undefined || dash.length === 0 ? {} : { borderDashArray: dash }),
          }),
    });
  };

  const image = async (node: ImageNode, from: At) => {
    const found = /^data:image\/(png|jpeg);base64,/.exec(node.href);
    if (found === null) return;
    const bytes = node.href;
    const embedded = found[1] === 'png' ? await document.embedPng(bytes) : await document.embedJpg(bytes);
    // As in the SVG: the box is filled and what juts out is cut off.
    const scale = Math.max(node.width / embedded.width, node.height / embedded.height);
    const [w, h] = [embedded.width * scale, embedded.height * scale];
    const left = node.x + (node.width - w) / 2;
    const bottom = node.y + (node.height + h) / 2;
    const corners = [
      place(from, node.x, node.y),
      place(from, node.x + node.width, node.y),
      place(from, node.x + node.width, node.y + node.height),
      place(from, node.x, node.y + node.height),
    ];
    page.pushOperators(
      pushGraphicsState(),
      ...corners.map((corner, i) => (i === 0 ? moveTo(corner.x, corner.y) : lineTo(corner.x, corner.y))),
      clip(),
      endPath(),
    );
    page.drawImage(embedded, {
      ...place(from, left, bottom),
      width: w * from.scale * points,
      height: h * from.scale * points,
      rotate: degrees(-from.turn),
      opacity: from.opacity,
    });
    page.pushOperators(popGraphicsState());
  };

  const draw = async (node: SceneNode, from: At): Promise<void> => {
    switch (node.type) {
      case 'group': {
        const inside = throughAt(from, node.x ?? 0, node.y ?? 0);
        const next = {
          ...from,
          ...inside,
          scale: from.scale * (node.scale ?? 1),
          turn: from.turn + (node.rotate ?? 0),
        };
        for (const child of node.children) await draw(child, next);
        return;
      }
      case 'path':
        return path(node.d, node, from);
      case 'rect':
        return path(rectPath(node), node, from);
      case 'circle': {
        const { cx, cy, r } = node;
        return path(`M${cx - r} ${cy}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`, node, from);
      }
      case 'line':
        return path(`M${node.x1} ${node.y1}L${node.x2} ${node.y2}`, { ...node, fill: 'none' }, from);
      case 'image':
        return image(node, from);
      case 'text': {
        const color = colourOf(node.fill ?? '#000000');
        if (color === undefined) return;
        for (const run of await setText(node, fonts)) {
          page.drawText(run.text, {
            ...place(from, node.x + run.along, node.y + run.drop),
            font: run.font,
            size: run.size * from.scale * points,
            rotate: degrees(-from.turn),
            color,
            opacity: from.opacity * (node.opacity ?? 1),
          });
        }
      }
    }
  };

  path(`M0 0H${scene.width}V${scene.height}H0Z`, { fill: scene.background }, at);
  for (const node of scene.nodes) await draw(node, at);
}

function throughAt(at: At, x: number, y: number): { x: number; y: number } {
  const angle = (at.turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle) * at.scale, Math.sin(angle) * at.scale];
  return { x: at.x + x * cos - y * sin, y: at.y + x * sin + y * cos };
}

function rectPath({ x, y, width, height, radius = 0 }: RectNode): string {
  const r = Math.min(radius, width / 2, height / 2);
  if (r <= 0) return `M${x} ${y}h${width}v${height}h${-width}Z`;
  const arc = (dx: number, dy: number) => `a${r} ${r} 0 0 1 ${dx} ${dy}`;
  return `M${x + r} ${y}h${width - 2 * r}${arc(r, r)}v${height - 2 * r}${arc(-r, r)}h${2 * r - width}${arc(-r, -r)}v${2 * r - height}${arc(r, -r)}Z`;
}

/** A page of paper has one theme: dark on light, as in the SVG. */
function colourOf(value: string): ReturnType<typeof rgb> | undefined {
  if (value === 'none' || value === 'transparent') return undefined;
  const named = value === 'ink' ? '#1c1c1c' : value === 'paper' ? '#f4f4f4' : value;
  const parsed = parseCssColour(named);
  return parsed === undefined ? undefined : rgb(parsed.r, parsed.g, parsed.b);
}
