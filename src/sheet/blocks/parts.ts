import type { Frame, PixelImage, Places, ReadOptions, Side, SizeMm } from '../model.ts';
import { reduced } from '../outline/table-map.ts';
import { type Box, type Mosaic, mosaicOf, mosaicOfPlaces, partsIn, unlike } from '../print/mosaic.ts';
import { readSide } from '../read-side.ts';
import { UnreadableImage } from '../unreadable.ts';
import { refusals } from '../words/refusals.ts';
import {
  type Boundary,
  blockLimits,
  type GutterKind,
  guttersOf,
  isBanded,
  seamOf,
  trimmed,
} from './gutters.ts';

/** A block of a patchwork: where it lies, as fractions 0–1 of the picture, and how plainly it is one, 0–1. */
export interface Block {
  readonly frame: Frame;
  readonly sure: number;
}

/** Longer side of the map in which blocks are looked for. */
const longest = 300;

/** Two blocks that differ by less look the same; of all blocks, so much must bear a print. Ours. */
const sameLook = 0.18;
const leastPrinted = 0.4;

/**
 * The blocks of a patchwork or of a sheet of cut-aparts, from the top left by rows: rectangles that straight cuts part,
 * each right across what is left, at gutters of one colour or at seams where one print ends and another begins. None on
 * a paper that is no patchwork, which is also a paper that repeats one block, and stripes and checks of plain colours.
 * With `places` (of the whole picture), its inks are the colours that are looked at.
 */
export function findBlocks(image: PixelImage, places?: Places): Block[] {
  if (!(image.width >= 24 && image.height >= 24)) return [];
  const map = places ? mosaicOfPlaces(places) : mosaicOf(reduced(image, longest));
  const whole = { x0: 0, y0: 0, x1: map.width, y1: map.height };
  const leaves = cutUp(
    map,
    trimmed(map, whole, null, Math.round(blockLimits.widestGutter * map.width)),
    1,
    null,
  );
  if (leaves.length < 2) return [];
  return leaves
    .map(({ box, sure }) => ({
      frame: {
        x: box.x0 / map.width,
        y: box.y0 / map.height,
        width: (box.x1 - box.x0) / map.width,
        height: (box.y1 - box.y0) / map.height,
      },
      sure: Math.round(sure * 100) / 100,
    }))
    .sort((p, q) => (Math.abs(p.frame.y - q.frame.y) > 0.02 ? p.frame.y - q.frame.y : p.frame.x - q.frame.x));
}

/**
 * A part of a sheet read from its own pixels: what is printed on it, with its print scale in its own millimetres.
 * `frame` is in fractions 0–1 of the picture, `sizeMm` the size of the part.
 * @throws UnreadableImage where nothing of the frame lies on the picture.
 */
export function readPart(
  image: PixelImage,
  frame: Frame,
  sizeMm: SizeMm,
  options: Pick<ReadOptions, 'card' | 'chart'> = {},
): Side {
  const crop = {
    x: frame.x * image.width,
    y: frame.y * image.height,
    width: frame.width * image.width,
    height: frame.height * image.height,
  };
  if (!(crop.width > 0 && crop.height > 0 && sizeMm.width > 0 && sizeMm.height > 0))
    throw new UnreadableImage(refusals.partWithoutSize);
  // A part whose frame and size differ in proportion is measured by its area.
  const mmPerPixel = Math.sqrt((sizeMm.width * sizeMm.height) / (crop.width * crop.height));
  return readSide(image, { ...options, crop, mmPerPixel });
}

interface Leaf {
  readonly box: Box;
  readonly sure: number;
}

/** A sheet has gutters or it has seams: the first cut tells which, and what its gutters are like. */
type Kind = GutterKind | 'seams' | null;

function cutUp(map: Mosaic, box: Box, sure: number, kind: Kind, depth = 0): Leaf[] {
  const cut = depth < 8 ? bestCuts(map, box, kind) : null;
  if (!cut) return [{ box, sure }];
  const ends = cut.upright ? [box.x0, box.x1] : [box.y0, box.y1];
  const edges = [ends[0]!, ...cut.boundaries.flatMap(({ from, to }) => [from, to]), ends[1]!];
  const out: Leaf[] = [];
  for (let i = 0; i < edges.length; i += 2) {
    const [from, to] = [edges[i]!, edges[i + 1]!];
    const piece = cut.upright ? { ...box, x0: from, x1: to } : { ...box, y0: from, y1: to };
    const least = Math.min(
      ...[cut.boundaries[i / 2 - 1], cut.boundaries[i / 2]].map((one) => one?.sure ?? 1),
    );
    const inner =
      cut.kind === 'seams'
        ? piece
        : trimmed(map, piece, cut.kind.colour, Math.ceil(1.5 * cut.kind.width) + 2);
    out.push(...cutUp(map, inner, Math.min(sure, least), cut.kind, depth + 1));
  }
  return isPatchwork(map, out) ? out : [{ box, sure }];
}

interface Cuts {
  readonly upright: boolean;
  readonly boundaries: readonly Boundary[];
  readonly kind: GutterKind | 'seams';
}

/** All gutters one way, or else the plainest seam. */
function bestCuts(map: Mosaic, box: Box, kind: Kind): Cuts | null {
  if (kind !== 'seams') {
    const found = [true, false].map((upright) => {
      const first = kind ?? plainest(guttersOf(map, box, upright, null));
      return {
        upright,
        kind: first,
        boundaries: first ? apart(map, guttersOf(map, box, upright, first), upright) : [],
      };
    });
    const most = found.reduce((p, q) => (q.boundaries.length > p.boundaries.length ? q : p));
    if (most.kind && most.boundaries.length > 0) return { ...most, kind: most.kind };
    if (kind) return null;
  }
  const seams = [true, false].flatMap((upright): Cuts[] => {
    const seam = seamOf(map, box, upright);
    return seam ? [{ upright, boundaries: [seam], kind: 'seams' }] : [];
  });
  return seams.length > 0
    ? seams.reduce((p, q) => (q.boundaries[0]!.sure > p.boundaries[0]!.sure ? q : p))
    : null;
}

function plainest(gutters: readonly (Boundary & GutterKind)[]): GutterKind | null {
  return gutters.length > 0 ? gutters.reduce((p, q) => (q.sure > p.sure ? q : p)) : null;
}

/** Gutters that leave a whole block between them. */
function apart(map: Mosaic, boundaries: readonly Boundary[], upright: boolean): Boundary[] {
  const least = blockLimits.leastBlock * (upright ? map.width : map.height);
  const out: Boundary[] = [];
  for (const cut of boundaries) if (out.length === 0 || cut.from - out.at(-1)!.to >= least) out.push(cut);
  return out;
}

/** Blocks that all look the same are a repeat, and blocks that are plain or bands are stripes or checks. */
function isPatchwork(map: Mosaic, leaves: readonly Leaf[]): boolean {
  const looks: Float64Array[] = [];
  let [all, printed] = [0, 0];
  for (const { box } of leaves) {
    const look = partsIn(map, box);
    if (looks.every((other) => unlike(look, other) > sameLook)) looks.push(look);
    const area = (box.x1 - box.x0) * (box.y1 - box.y0);
    all += area;
    if (!isBanded(map, box)) printed += area;
  }
  return looks.length >= (leaves.length > 6 ? 3 : 2) && printed >= leastPrinted * all;
}
