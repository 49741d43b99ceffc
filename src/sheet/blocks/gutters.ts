import { type Box, type Mosaic, partsIn, unlike } from '../print/mosaic.ts';

/** What lies between two blocks: from where the one ends to where the next begins, and how plainly, 0–1. */
export interface Boundary {
  readonly from: number;
  readonly to: number;
  readonly sure: number;
}

/** What the gutters of one sheet have in common. */
export interface GutterKind {
  /** Number of their colour in the map. */
  readonly colour: number;
  readonly width: number;
}

/** The numbers that judge what is a block. All ours, set on drawn patchworks and on papers that are none. */
export const blockLimits = {
  /** A block is at least this part of the picture, either way. */
  leastBlock: 0.09,
  /** A gutter is one colour over this part of its length, … */
  gutterOneColour: 0.96,
  /** … at most this part of the picture wide, and other than its neighbours over this part of both edges. */
  widestGutter: 0.08,
  gutterEdge: 0.5,
  /** … which is enough over this part where another gutter of the sheet is like it. */
  gutterEdgeAgain: 0.15,
  /** (or over this part of one edge, since a print may have the gutter's colour for its ground) */
  gutterOneEdge: 0.7,
  /** A seam changes colour over this part of its length, … */
  seamEdge: 0.6,
  /** … and the prints on its two sides differ by this much, this deep. */
  seamUnlike: 0.3,
  depth: 0.12,
  /** A piece of a seam's length parts two prints where they differ by this much, … */
  pieceUnlike: 0.2,
  /** … which holds over this part of a seam, and of a gutter: between rows of one print it does not. */
  seamPieces: 0.8,
  gutterPieces: 0.5,
  /** What is of one colour over this part is plain: an accent may lie on it. */
  plainFrom: 0.92,
} as const;

/** All straight gutters across a box, upright or level, in order; of one kind, where the sheet's gutters are known. */
export function guttersOf(
  map: Mosaic,
  box: Box,
  upright: boolean,
  kind: GutterKind | null,
): (Boundary & GutterKind)[] {
  const [from, to, least, widest] = span(map, box, upright);
  const depth = depthOf(map, upright);
  const boundaries: (Boundary & GutterKind)[] = [];
  const look = (at: number, end: number, colour: number): void => {
    if (at - from < least || to - end < least || end - at > widest) return;
    const edges = [at - 2, end + 1].map(
      (beyond) => 1 - partsIn(map, line(box, upright, beyond, beyond + 1))[colour]!,
    );
    const sure = Math.min(...edges);
    const plain =
      kind && (sure >= blockLimits.gutterEdgeAgain || Math.max(...edges) >= blockLimits.gutterOneEdge);
    if (!plain && sure < blockLimits.gutterEdge) return;
    if (piecesParted(map, box, upright, at, end, depth).part < blockLimits.gutterPieces) return;
    boundaries.push({ from: at, to: end, sure: Math.min(1, 0.3 + 0.7 * sure), colour, width: end - at });
  };
  for (let at = from; at < to; ) {
    const colour = onlyColour(map, line(box, upright, at, at + 1));
    let end = at + 1;
    if (colour >= 0) while (end < to && onlyColour(map, line(box, upright, end, end + 1)) === colour) end++;
    const width = end - at;
    if (colour >= 0 && !kind) look(at, end, colour);
    else if (kind?.colour === colour && width >= 0.5 * kind.width - 1) {
      // Wider than a gutter: the print on one of its sides has the gutter's colour for its ground.
      if (width <= 1.6 * kind.width + 3) look(at, end, colour);
      else {
        const before = boundaries.length;
        look(at, at + kind.width, colour);
        if (boundaries.length === before) look(end - kind.width, end, colour);
      }
    }
    at = end;
  }
  return boundaries;
}

/** The plainest straight seam across a box, or null: a line at which one print ends and another begins. */
export function seamOf(map: Mosaic, box: Box, upright: boolean): Boundary | null {
  const [from, to, least] = span(map, box, upright);
  const depth = depthOf(map, upright);
  const edges = new Float64Array(to + 3);
  for (let at = from + 3; at < to - 2; at++) edges[at] = changing(map, box, upright, at);
  let best: Boundary | null = null;
  for (let at = from + least; at <= to - least; at++) {
    const edge = edges[at]!;
    // A line that comes again on both sides belongs to a print: stripes, checks, rows.
    const again = [at - 2 * depth, at + 4].map((start) =>
      edges
        .subarray(Math.max(from, start), Math.max(from, start + 2 * depth - 3))
        .some((e) => e > 0.8 * edge),
    );
    if (edge < blockLimits.seamEdge || (again[0] && again[1])) continue;
    const { mean, part } = piecesParted(map, box, upright, at, at, depth);
    const sure = Math.sqrt(edge * Math.min(1, mean / 0.7));
    if (mean >= blockLimits.seamUnlike && part >= blockLimits.seamPieces && (!best || sure > best.sure))
      best = { from: at, to: at, sure };
  }
  return best;
}

/** A box without the rim of one colour around it, at most so wide (in pixels of the map). */
export function trimmed(map: Mosaic, box: Box, colour: number | null, most: number): Box {
  const rim = (upright: boolean, back: boolean): number => {
    const at = (n: number): Box => {
      const start = upright ? (back ? box.x1 - 1 - n : box.x0 + n) : back ? box.y1 - 1 - n : box.y0 + n;
      return line(box, upright, start, start + 1);
    };
    const rimColour = onlyColour(map, at(0));
    if (rimColour < 0 || (colour !== null && rimColour !== colour)) return 0;
    let n = 1;
    while (n <= most && partsIn(map, at(n))[rimColour]! >= blockLimits.gutterOneColour) n++;
    return n <= most ? n : 0;
  };
  const [x0, x1] = [box.x0 + rim(true, false), box.x1 - rim(true, true)];
  const [y0, y1] = [box.y0 + rim(false, false), box.y1 - rim(false, true)];
  return { x0, y0, x1, y1 };
}

/** Whether a box is plain, or bands of plain colours straight across it: no print that could tell a block from a stripe. */
export function isBanded(map: Mosaic, box: Box): boolean {
  if (Math.max(...partsIn(map, box)) >= blockLimits.plainFrom) return true;
  return [true, false].some((upright) => {
    const [from, to] = upright ? [box.x0, box.x1] : [box.y0, box.y1];
    let plain = 0;
    for (let at = from; at < to; at++)
      if (Math.max(...partsIn(map, line(box, upright, at, at + 1))) >= blockLimits.plainFrom) plain++;
    return plain >= 0.8 * (to - from);
  });
}

function span(map: Mosaic, box: Box, upright: boolean): [number, number, number, number] {
  const size = upright ? map.width : map.height;
  return [
    upright ? box.x0 : box.y0,
    upright ? box.x1 : box.y1,
    Math.max(4, Math.round(blockLimits.leastBlock * size)),
    Math.max(2, Math.round(blockLimits.widestGutter * size)),
  ];
}

/** How deep a print is looked at on each side of a cut, in pixels of the map. */
function depthOf(map: Mosaic, upright: boolean): number {
  return Math.max(4, Math.round(blockLimits.depth * (upright ? map.width : map.height)));
}

function line(box: Box, upright: boolean, from: number, to: number): Box {
  return upright ? { ...box, x0: from, x1: to } : { ...box, y0: from, y1: to };
}

/** Number of the one colour of a line, or −1. */
function onlyColour(map: Mosaic, box: Box): number {
  return partsIn(map, box).findIndex((part) => part >= blockLimits.gutterOneColour);
}

/** Part of a line's length over which the colours just before it and just behind it differ. */
function changing({ width, labels }: Mosaic, box: Box, upright: boolean, at: number): number {
  const [from, to] = upright ? [box.y0, box.y1] : [box.x0, box.x1];
  let n = 0;
  for (let along = from; along < to; along++) {
    const before = upright ? along * width + at - 2 : (at - 2) * width + along;
    const behind = upright ? along * width + at + 1 : (at + 1) * width + along;
    if (labels[before] !== labels[behind]) n++;
  }
  return n / (to - from);
}

/** How unlike the prints before and behind a line or a gutter are, over pieces of its length, so that no patch hides another: the mean, and the part of the pieces that differ. */
function piecesParted(
  map: Mosaic,
  box: Box,
  upright: boolean,
  before: number,
  behind: number,
  depth: number,
): { mean: number; part: number } {
  const [from, to] = upright ? [box.y0, box.y1] : [box.x0, box.x1];
  const [near, end] = upright ? [box.x0, box.x1] : [box.y0, box.y1];
  const pieces = Math.max(1, Math.round((to - from) / (1.5 * depth)));
  let sum = 0;
  let parted = 0;
  for (let k = 0; k < pieces; k++) {
    const [p, q] = [0, 1].map((n) => Math.round(from + ((to - from) * (k + n)) / pieces)) as [number, number];
    const piece = upright ? { ...box, y0: p, y1: q } : { ...box, x0: p, x1: q };
    const first = partsIn(map, line(piece, upright, Math.max(near, before - depth), before));
    const differ = unlike(first, partsIn(map, line(piece, upright, behind, Math.min(end, behind + depth))));
    sum += differ;
    if (differ >= blockLimits.pieceUnlike) parted++;
  }
  return { mean: sum / pieces, part: parted / pieces };
}
