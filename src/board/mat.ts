import type { Drawing, NamedSide, SceneNode, Surround } from '../drawing/model.ts';
import { lightnessStrip } from '../drawing/strip.ts';
import { gapIn, type Stretch } from '../drawing/strip-gap.ts';
import { surroundTones } from '../drawing/surround.ts';
import { hueWheel } from '../drawing/wheel.ts';
import type { Comparison } from '../harmony/model.ts';
import type { Block } from './flow.ts';
import { moved } from './flow.ts';
import type { BoardOptions } from './model.ts';
import { paperBlock } from './paper-block.ts';
import type { Page } from './sizes.ts';

export interface MatPapers {
  readonly anchor: NamedSide;
  readonly candidate: NamedSide;
}

/**
 * The mat with all that is coloured: both papers with their chips, the wheel and the strip. On a square page the
 * wheel stands between the papers; on an upright one the papers stand above each other, left of it. `paper` is a
 * paper's edge as a fraction of the mat's width.
 */
export function matBlock(
  comparison: Comparison,
  papers: MatPapers,
  options: BoardOptions,
  page: Page,
  width: number,
  paper: number,
): Block {
  const wheel = hueWheel(
    { ...papers, links: comparison.links },
    { ...(options.wheel ? { wheel: options.wheel } : {}), ...surroundIn(options) },
  );
  const place = page.width === page.height ? placeWide : placeUpright;
  const { nodes, height } = place({
    papers,
    gap: gapIn(comparison.reasons),
    wheel,
    options,
    k: page.k,
    width,
    edge: width * paper,
  });
  return {
    height,
    nodes: [{ type: 'rect', x: 0, y: 0, width, height, fill: surroundTones(options.surround).mat }, ...nodes],
  };
}

interface MatParts {
  readonly papers: MatPapers;
  readonly gap: Stretch | null;
  readonly wheel: Drawing;
  readonly options: BoardOptions;
  readonly k: number;
  readonly width: number;
  readonly edge: number;
}

/** What one unit of the strip's own drawing measures on a board, times `k`: its letters come out nearly as large as the wheel's. */
const stripUnit = { wide: 3, upright: 3.5 } as const;

function placeWide({ papers, gap, wheel, options, k, width, edge }: MatParts): Block {
  const pad = 76 * k;
  const look = { edge, k, ...surroundIn(options) };
  const left = paperBlock(papers.anchor, { ...look, picture: options.pictures?.anchor, role: 'anchor' });
  const right = paperBlock(papers.candidate, {
    ...look,
    picture: options.pictures?.candidate,
    role: 'candidate',
  });
  const papersHeight = Math.max(left.height, right.height);
  const room = width - 2 * (pad + edge) - 40 * k;
  const scale = Math.min(room / wheel.width, (papersHeight * 1.06) / wheel.height);
  const wheelHeight = wheel.height * scale;
  const row = Math.max(papersHeight, wheelHeight - 40 * k);
  const strip = stripBlock(papers, gap, options, width - 2 * pad, k * stripUnit.wide);
  const stripY = pad + row + 24 * k;
  return {
    height: stripY + strip.height + 18 * k,
    nodes: [
      moved(left, pad, pad),
      moved(right, width - pad - edge, pad),
      scaled(wheel, (width - wheel.width * scale) / 2, pad - 30 * k + (row - wheelHeight) / 2, scale),
      moved(strip, pad, stripY),
    ],
  };
}

function placeUpright({ papers, gap, wheel, options, k, width, edge }: MatParts): Block {
  const pad = 66 * k;
  const look = { edge, k, ...surroundIn(options) };
  const upper = paperBlock(papers.anchor, { ...look, picture: options.pictures?.anchor, role: 'anchor' });
  const lower = paperBlock(papers.candidate, {
    ...look,
    picture: options.pictures?.candidate,
    role: 'candidate',
  });
  const between = 50 * k;
  const column = upper.height + between + lower.height;
  const room = width - 2 * pad - edge - 30 * k;
  const scale = Math.min(room / wheel.width, column / wheel.height);
  const strip = stripBlock(papers, gap, options, width - 2 * pad, k * stripUnit.upright);
  const stripY = pad + column + 30 * k;
  return {
    height: stripY + strip.height + 18 * k,
    nodes: [
      moved(upper, pad, pad),
      moved(lower, pad, pad + upper.height + between),
      scaled(
        wheel,
        pad + edge + 30 * k + (room - wheel.width * scale) / 2,
        pad + (column - wheel.height * scale) / 2,
        scale,
      ),
      moved(strip, pad, stripY),
    ],
  };
}

function stripBlock(
  papers: MatPapers,
  gap: Stretch | null,
  options: BoardOptions,
  width: number,
  scale: number,
): Block {
  const strip = lightnessStrip(papers, { gap, width: width / scale, ...surroundIn(options) });
  return { height: strip.height * scale, nodes: [scaled(strip, 0, 0, scale)] };
}

function surroundIn({ surround }: BoardOptions): { readonly surround?: Surround } {
  return surround === undefined ? {} : { surround };
}

function scaled(drawing: Drawing, x: number, y: number, scale: number): SceneNode {
  return { type: 'group', x, y, scale, children: drawing.nodes };
}
