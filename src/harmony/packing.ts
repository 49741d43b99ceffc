import type { SizeMm } from '../sheet/model.ts';

/** A rectangle on a sheet, mm from its upper left corner. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A piece where it is to be cut; `turned` by a quarter where width and height have changed places. */
export interface Placed extends Rect {
  /** Index into the pieces that were asked for. */
  readonly piece: number;
  readonly turned: boolean;
}

/** Every cut from edge to edge, as a trimmer makes them; or some that stop inside the sheet, as only a knife can. */
export type CutStyle = 'edge to edge' | 'stopped';

/** A way to cut one sheet. */
export interface Layout {
  readonly style: CutStyle;
  readonly placed: readonly Placed[];
  /** What is left, as rectangles, largest first. */
  readonly left: readonly Rect[];
}

/**
 * A way to cut these pieces from one sheet, or null where none was found: from edge to edge if that is possible, else,
 * unless `style` forbids it, with stopped cuts. Pieces may be turned. The search is complete for a handful of pieces and
 * gives up after a fixed number of tries beyond that.
 */
export function layOut(sheet: SizeMm, pieces: readonly SizeMm[], style: CutStyle = 'stopped'): Layout | null {
  if (pieces.length === 0) return { style: 'edge to edge', placed: [], left: [whole(sheet)] };
  const area = pieces.reduce((sum, { width, height }) => sum + width * height, 0);
  if (area > sheet.width * sheet.height + slack) return null;
  const straight = search(sheet, pieces, true);
  if (straight) return finished(sheet, straight, 'edge to edge');
  const stopped = style === 'stopped' ? search(sheet, pieces, false) : null;
  return stopped ? finished(sheet, stopped, 'stopped') : null;
}

/** How many pieces of one size come out of a sheet. */
export function mostOf(sheet: SizeMm, piece: SizeMm, style: CutStyle): number {
  const ceiling = Math.floor((sheet.width * sheet.height + slack) / (piece.width * piece.height));
  let most = 0;
  for (let count = 1; count <= ceiling; count++) {
    if (!layOut(sheet, new Array<SizeMm>(count).fill(piece), style)) break;
    most = count;
  }
  return most;
}

/** Whether pieces can be parted from a sheet by cuts that each run from edge to edge of what is in hand. */
export function isEdgeToEdge(region: Rect, placed: readonly Rect[]): boolean {
  if (placed.length < 2) return true;
  for (const side of ['x', 'y'] as const) {
    const length = side === 'x' ? 'width' : 'height';
    for (const cut of new Set(placed.map((rect) => rect[side] + rect[length]))) {
      if (placed.some((rect) => rect[side] < cut - slack && rect[side] + rect[length] > cut + slack))
        continue;
      const before = placed.filter((rect) => rect[side] + rect[length] <= cut + slack);
      if (before.length === 0 || before.length === placed.length) continue;
      const after = placed.filter((rect) => !before.includes(rect));
      const first = { ...region, [length]: cut - region[side] };
      const second = { ...region, [side]: cut, [length]: region[side] + region[length] - cut };
      return isEdgeToEdge(first, before) && isEdgeToEdge(second, after);
    }
  }
  return false;
}

/** Hundredths of a millimetre are the paper's, not the knife's. */
const slack = 0.01;
/** Tries before the search gives up. */
const mostTries = 60_000;

/** Places pieces one after another at corners that sums of their sides can reach. */
function search(sheet: SizeMm, pieces: readonly SizeMm[], straight: boolean): Placed[] | null {
  const order = pieces.map((_, i) => i).sort((i, j) => areaOf(pieces[j]!) - areaOf(pieces[i]!) || i - j);
  const lengths = pieces.flatMap(({ width, height }) => [width, height]);
  const xs = reachable(lengths, sheet.width);
  const ys = reachable(lengths, sheet.height);
  const placed: Placed[] = [];
  let tries = 0;
  const place = (n: number): boolean => {
    if (n === order.length) return !straight || isEdgeToEdge(whole(sheet), placed);
    const piece = order[n]!;
    const { width, height } = pieces[piece]!;
    const before = n > 0 && sameSize(pieces[order[n - 1]!]!, pieces[piece]!) ? placed[n - 1]! : null;
    for (const turned of width === height ? [false] : [false, true]) {
      const [w, h] = turned ? [height, width] : [width, height];
      for (const y of ys) {
        for (const x of xs) {
          if (x + w > sheet.width + slack || y + h > sheet.height + slack) continue;
          // Equal pieces in any other order are the same layout again.
          if (before && (y < before.y - slack || (Math.abs(y - before.y) < slack && x < before.x))) continue;
          if (++tries > mostTries) return false;
          const rect: Placed = { x, y, width: w, height: h, piece, turned };
          if (placed.some((other) => overlap(other, rect))) continue;
          placed.push(rect);
          if (place(n + 1)) return true;
          placed.pop();
        }
      }
    }
    return false;
  };
  return place(0) ? placed : null;
}

function reachable(lengths: readonly number[], most: number): number[] {
  const sums = new Set([0]);
  for (const length of lengths) {
    for (const sum of [...sums]) {
      const next = Math.round((sum + length) * 100) / 100;
      if (next < most && sums.size < 64) sums.add(next);
    }
  }
  return [...sums].sort((a, b) => a - b);
}

function finished(sheet: SizeMm, placed: readonly Placed[], style: CutStyle): Layout {
  return { style, placed: [...placed].sort((a, b) => a.piece - b.piece), left: leftOver(sheet, placed) };
}

/** The free rest as rectangles: again and again the largest that is still free. */
function leftOver(sheet: SizeMm, placed: readonly Rect[]): Rect[] {
  const taken = [...placed];
  const left: Rect[] = [];
  for (let rect = largestFree(sheet, taken); rect && left.length < 12; rect = largestFree(sheet, taken)) {
    left.push(rect);
    taken.push(rect);
  }
  return left;
}

function largestFree(sheet: SizeMm, taken: readonly Rect[]): Rect | null {
  const xs = edges(taken, 'x', 'width', sheet.width);
  const ys = edges(taken, 'y', 'height', sheet.height);
  let best: Rect | null = null;
  for (const [i, x] of xs.entries()) {
    for (const [j, y] of ys.entries()) {
      for (const right of xs.slice(i + 1)) {
        for (const below of ys.slice(j + 1)) {
          const rect = { x, y, width: right - x, height: below - y };
          if (rect.width < slack || rect.height < slack || taken.some((other) => overlap(other, rect)))
            continue;
          if (!best || areaOf(rect) > areaOf(best) + slack) best = rect;
        }
      }
    }
  }
  return best;
}

function edges(rects: readonly Rect[], side: 'x' | 'y', length: 'width' | 'height', most: number): number[] {
  const all = [0, most, ...rects.flatMap((rect) => [rect[side], rect[side] + rect[length]])];
  return [...new Set(all.map((v) => Math.round(v * 100) / 100))].sort((a, b) => a - b);
}

function overlap(a: Rect, b: Rect): boolean {
  return (
    a.x < b.x + b.width - slack &&
    b.x < a.x + a.width - slack &&
    a.y < b.y + b.height - slack &&
    b.y < a.y + a.height - slack
  );
}

function whole({ width, height }: SizeMm): Rect {
  return { x: 0, y: 0, width, height };
}

function areaOf({ width, height }: SizeMm): number {
  return width * height;
}

function sameSize(a: SizeMm, b: SizeMm): boolean {
  return a.width === b.width && a.height === b.height;
}
