import type { Tiles } from './mosaic.ts';

/** A joined-up place of one colour other than the ground. Lengths in pixels of the map. */
export interface Body {
  readonly area: number;
  readonly x: number;
  readonly y: number;
  /** 1 for a disc, less for anything else: its area against how far it spreads. */
  readonly roundness: number;
  readonly whole: boolean;
}

export interface Shapes {
  /** Bodies that lie wholly within the picture. */
  readonly count: number;
  /** Part of their area that is in round bodies of like size, 0–1. */
  readonly round: number;
  /** Area of the middle body and of the largest, as parts of the picture. */
  readonly median: number;
  readonly largest: number;
  /** How much more the print changes from row to row than from column to column, or the other way round. */
  readonly inLines: number;
}

export interface Bodies {
  readonly list: readonly Body[];
  readonly width: number;
  readonly height: number;
  readonly rows: Float64Array;
  readonly columns: Float64Array;
}

/** The bodies on the most frequent colour; smaller ones than six pixels are left out. */
export function bodiesOf({ width, height, labels, colours }: Tiles): Bodies {
  const counts = new Int32Array(colours);
  for (const k of labels) counts[k]!++;
  const ground = counts.indexOf(Math.max(...counts));
  const seen = new Uint8Array(labels.length);
  const rows = new Float64Array(height);
  const columns = new Float64Array(width);
  const list: Body[] = [];
  for (let start = 0; start < labels.length; start++) {
    if (labels[start] === ground) continue;
    rows[Math.floor(start / width)]! += 1 / width;
    columns[start % width]! += 1 / height;
    if (seen[start]) continue;
    const found = [start];
    seen[start] = 1;
    let whole = true;
    let [sx, sy, sq] = [0, 0, 0];
    for (let k = 0; k < found.length; k++) {
      const i = found[k]!;
      const x = i % width;
      const y = (i - x) / width;
      sx += x;
      sy += y;
      sq += x * x + y * y;
      if (x === 0 || y === 0 || x === width - 1 || y === height - 1) whole = false;
      for (let way = 0; way < 4; way++) {
        const j = way === 0 ? i - 1 : way === 1 ? i + 1 : way === 2 ? i - width : i + width;
        const beyond = way === 0 ? x === 0 : way === 1 ? x === width - 1 : j < 0 || j >= labels.length;
        if (beyond || seen[j] || labels[j] === ground) continue;
        seen[j] = 1;
        found.push(j);
      }
    }
    const area = found.length;
    if (area < 6) continue;
    // Second moment about the middle, each pixel a square of its own; of a disc it is area² / 2π.
    const moment = sq - (sx * sx + sy * sy) / area + area / 6;
    list.push({ area, x: sx / area, y: sy / area, roundness: area ** 2 / (2 * Math.PI * moment), whole });
  }
  return { list, width, height, rows, columns };
}

export function shapesOf({ list, width, height, rows, columns }: Bodies): Shapes {
  const whole = list.filter((body) => body.whole);
  const sizes = whole.map(({ area }) => area).sort((p, q) => p - q);
  // By area, so that strewn specks do not hide the dots between them.
  const all = sizes.reduce((sum, v) => sum + v, 0);
  let [half, middle] = [0, 0];
  for (const size of sizes) {
    half += size;
    middle = size;
    if (half >= all / 2) break;
  }
  const round = whole
    .filter(({ area, roundness }) => roundness > 0.97 && area > 0.5 * middle && area < 2 * middle)
    .reduce((sum, { area }) => sum + area, 0);
  const [r, c] = [spread(rows), spread(columns)];
  return {
    count: whole.length,
    round: all > 0 ? round / all : 0,
    median: (sizes[sizes.length >> 1] ?? 0) / (width * height),
    largest: list.reduce((most, { area }) => Math.max(most, area), 0) / (width * height),
    inLines: Math.max(r, c) / (Math.min(r, c) + 1e-6),
  };
}

/** Variance, the ends left out. */
function spread(values: Float64Array): number {
  const inner = values.subarray(2, -2);
  const mean = inner.reduce((sum, v) => sum + v, 0) / inner.length;
  return inner.reduce((sum, v) => sum + (v - mean) ** 2, 0) / inner.length;
}
