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
  const found = arrange(sheet, pieces, style);
  return found && finished(sheet, found);
}

/** Where the pieces lie, and how they are cut: what of a layout can be had without working out what is left. */
export type Arrangement = Omit<Layout, 'left'>;

/** The same as `layOut` gives, but for what is left, which takes longer the more pieces there are. */
export function arrange(
  sheet: SizeMm,
  pieces: readonly SizeMm[],
  style: CutStyle = 'stopped',
): Arrangement | null {
  if (pieces.length === 0) return { style: 'edge to edge', placed: [] };
  const area = pieces.reduce((sum, { width, height }) => sum + width * height, 0);
  if (area > sheet.width * sheet.height + slack) return null;
  const straight = search(sheet, pieces, true);
  if (straight) return { style: 'edge to edge', placed: straight };
  const stopped = style === 'stopped' ? search(sheet, pieces, false) : null;
  return stopped && { style: 'stopped', placed: stopped };
}

/** How many pieces of one size come out of a sheet. */
export function mostOf(sheet: SizeMm, piece: SizeMm, style: CutStyle): number {
  const ceiling = Math.floor((sheet.width * sheet.height + slack) / (piece.width * piece.height));
  let most = 0;
  for (let count = 1; count <= ceiling; count++) {
    if (!arrange(sheet, new Array<SizeMm>(count).fill(piece), style)) break;
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
/** Tries before the search gives up: of a handful all, of many fewer, for each then takes longer and there are more searches. Ours. */
const triesFor = (pieces: number): number => 60_000 * Math.min(1, (fewPieces / pieces) ** 2);
const fewPieces = 20;

/** Places pieces one after another at corners that sums of their sides can reach. */
function search(sheet: SizeMm, pieces: readonly SizeMm[], straight: boolean): Placed[] | null {
  const order = pieces.map((_, i) => i).sort((i, j) => areaOf(pieces[j]!) - areaOf(pieces[i]!) || i - j);
  const lengths = pieces.flatMap(({ width, height }) => [width, height]);
  const xs = reachable(lengths, sheet.width);
  const ys = reachable(lengths, sheet.height);
  const placed: Placed[] = [];
  const mostTries = triesFor(pieces.length);
  let tries = 0;
  const place = (n: number): boolean => {
    if (n === order.length) {
      // To look for cuts among many pieces takes as long as many tries.
      if (pieces.length > fewPieces) tries += pieces.length ** 2;
      return !straight || isEdgeToEdge(whole(sheet), placed);
    }
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

/** The layout of an arrangement: with what is left. */
export function finished(sheet: SizeMm, { style, placed }: Arrangement): Layout {
  const left = placed.length === 0 ? [whole(sheet)] : leftOver(sheet, placed);
  return { style, placed: [...placed].sort((a, b) => a.piece - b.piece), left };
}

/** The free rest as rectangles: again and again the largest that is still free. */
function leftOver(sheet: SizeMm, placed: readonly Rect[]): Rect[] {
  let free = placed.reduce(without, [whole(sheet)]);
  const left: Rect[] = [];
  for (let rect = largest(free); rect && left.length < 12; rect = largest(free)) {
    left.push(rect);
    free = without(free, rect);
  }
  return left;
}

/** The largest rectangles that lie within some of these and clear of another; none of them lies within another. */
function without(free: readonly Rect[], taken: Rect): Rect[] {
  const whole = free.filter((rect) => !overlap(rect, taken));
  const parts = free
    .filter((rect) => overlap(rect, taken))
    .flatMap((rect) => [
      { ...rect, width: taken.x - rect.x },
      { ...rect, height: taken.y - rect.y },
      { ...rect, x: taken.x + taken.width, width: rect.x + rect.width - taken.x - taken.width },
      { ...rect, y: taken.y + taken.height, height: rect.y + rect.height - taken.y - taken.height },
    ])
    .filter(({ width, height }) => width >= slack && height >= slack);
  return [
    ...whole,
    ...parts.filter(
      (part, i) =>
        !whole.some((rect) => isWithin(part, rect)) &&
        !parts.some((rect, k) => k !== i && isWithin(part, rect) && (k < i || !isWithin(rect, part))),
    ),
  ];
}

/** Of those that are equally large the one nearest the upper left. */
function largest(rects: readonly Rect[]): Rect | null {
  const order = [...rects].sort((a, b) => a.x - b.x || a.y - b.y || a.width - b.width);
  return order.reduce<Rect | null>(
    (best, rect) => (best && areaOf(rect) <= areaOf(best) + slack ? best : rect),
    null,
  );
}

function isWithin(a: Rect, b: Rect): boolean {
  return (
    a.x >= b.x - slack &&
    a.y >= b.y - slack &&
    a.x + a.width <= b.x + b.width + slack &&
    a.y + a.height <= b.y + b.height + slack
  );
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
