import { kitLimits, pageLimits } from '../harmony/thresholds.ts';
import * as sentences from '../harmony/words/cut-sentences.ts';
import { bladeCaution } from '../harmony/words/remedy-sentences.ts';
import type { SizeMm } from '../sheet/model.ts';
import { type Arrangement, arrange, finished, type Layout, type Rect } from './packing.ts';

/** A sheet or a plain to cut from. */
export interface Stock {
  readonly id: string;
  readonly name: string;
  readonly sizeMm: SizeMm;
  /** How many there are; default 1. */
  readonly count?: number;
  /** Grammage, g/m², or null where it is not known. */
  readonly gsm?: number | null;
}

/** A piece wanted on the page. */
export interface Wanted {
  readonly name: string;
  /** Which stock it is cut from. */
  readonly from: string;
  /** Null where it is not known: the piece is left out, and the list says so. */
  readonly sizeMm: SizeMm | null;
  /** How many; default 1. */
  readonly count?: number;
  /** A mat under it: from which stock, and how wide its border is, mm. */
  readonly mat?: { readonly from: string; readonly borderMm: number };
}

/** One sheet of stock, cut. */
export interface CutSheet {
  readonly stock: Stock;
  /** 1, 2 … where more than one is needed. */
  readonly number: number;
  readonly layout: Layout;
  /** What each placed piece is called, by its index. */
  readonly names: readonly string[];
}

/** What to cut, from what, and what is left. */
export interface CutList {
  readonly sheets: readonly CutSheet[];
  /** Pieces for which there is no room, or no stock, or none as large as they are. */
  readonly short: readonly string[];
  /** Names of stock thin enough to need mounting. */
  readonly mount: readonly string[];
  /** Plain sentences, in order; the caution about blades last. */
  readonly says: readonly string[];
}

/** Size of a mat: its border stands out on every side. 4 × 6 in with ⅛ in is 4¼ × 6¼. */
export function matFor({ width, height }: SizeMm, borderMm: number): SizeMm {
  return { width: width + 2 * borderMm, height: height + 2 * borderMm };
}

/** Works out which pieces, mats and strips come out of which sheet, largest first, sheet after sheet. */
export function cutListOf(stock: readonly Stock[], wanted: readonly Wanted[]): CutList {
  const sheets: CutSheet[] = [];
  const short: string[] = [];
  const large: TooLarge[] = [];
  const many = wanted.reduce((sum, one) => sum + (one.sizeMm === null ? 0 : jobCount(one)), 0);
  if (many > kitLimits.piecesToCut) {
    const says = [sentences.tooMany(many, kitLimits.piecesToCut)];
    return { sheets: [], short: [], mount: [], says };
  }
  const jobs = wanted.flatMap(jobsOf);
  const unknown = jobs.filter((job) => !stock.some(({ id }) => id === job.from));
  short.push(...unknown.map(({ name }) => name));
  for (const one of stock) {
    const all = jobs
      .filter(({ from }) => from === one.id)
      .sort((a, b) => areaOf(b.sizeMm) - areaOf(a.sizeMm));
    const tooLarge = all.filter(({ sizeMm }) => arrange(one.sizeMm, [sizeMm]) === null);
    if (tooLarge.length > 0) large.push({ stock: one, names: tooLarge.map(({ name }) => name) });
    let rest = all.filter((job) => !tooLarge.includes(job));
    for (let number = 1; number <= (one.count ?? 1) && rest.length > 0; number++) {
      const { layout, kept } = fill(one.sizeMm, rest);
      if (kept.length === 0) break;
      sheets.push({ stock: one, number, layout, names: kept.map(({ name }) => name) });
      rest = rest.filter((job) => !kept.includes(job));
    }
    short.push(...rest.map(({ name }) => name));
  }
  const used = stock.filter(({ id }) => sheets.some((sheet) => sheet.stock.id === id));
  const mount = used
    .filter(({ gsm }) => gsm !== undefined && gsm !== null && gsm < pageLimits.thinGsm)
    .map(({ name }) => name);
  const unsized = wanted.flatMap(({ name, sizeMm }) => (sizeMm === null ? [name] : []));
  return {
    sheets,
    short: [...short, ...large.flatMap(({ names }) => names)],
    mount,
    says: said(sheets, { short, large, unsized }, mount),
  };
}

/** Pieces larger than the sheet that they should come from. */
interface TooLarge {
  readonly stock: Stock;
  readonly names: readonly string[];
}

/** What is not cut, and why. */
interface Uncut {
  readonly short: readonly string[];
  readonly large: readonly TooLarge[];
  readonly unsized: readonly string[];
}

interface Job {
  readonly name: string;
  readonly from: string;
  readonly sizeMm: SizeMm;
}

function jobCount({ count = 1, mat }: Wanted): number {
  return count * (mat ? 2 : 1);
}

function jobsOf({ name, from, sizeMm, count = 1, mat }: Wanted): Job[] {
  if (sizeMm === null) return [];
  return Array.from({ length: count }, (_, i) => {
    const called = count > 1 ? `${name} ${i + 1}` : name;
    const piece: Job = { name: called, from, sizeMm };
    return mat
      ? [piece, { name: sentences.matName(called), from: mat.from, sizeMm: matFor(sizeMm, mat.borderMm) }]
      : [piece];
  }).flat();
}

/** As many jobs as one sheet takes, in their order; what does not fit waits for the next. */
function fill(sheet: SizeMm, jobs: readonly Job[]): { layout: Layout; kept: Job[] } {
  let kept: Job[] = [];
  let layout: Arrangement = arrange(sheet, [])!;
  for (const job of jobs) {
    const next = arrange(
      sheet,
      [...kept, job].map(({ sizeMm }) => sizeMm),
    );
    if (!next) continue;
    layout = next;
    kept = [...kept, job];
  }
  return { layout: finished(sheet, layout), kept };
}

function said(
  sheets: readonly CutSheet[],
  { short, large, unsized }: Uncut,
  mount: readonly string[],
): string[] {
  const lines = sheets.map(({ stock, number, layout, names }) =>
    sentences.fromSheet({
      stock: (stock.count ?? 1) > 1 ? `${stock.name}, sheet ${number}` : stock.name,
      names,
      stopped: layout.style === 'stopped',
      left: largest(layout.left),
    }),
  );
  if (short.length > 0) lines.push(sentences.noRoom(short));
  lines.push(...large.map(({ stock, names }) => sentences.tooLarge(names, stock.name, stock.sizeMm)));
  if (unsized.length > 0) lines.push(sentences.leftOut(unsized));
  if (mount.length > 0) lines.push(sentences.mountThin(mount, pageLimits.thinGsm));
  if (sheets.length > 0) lines.push(bladeCaution);
  return lines;
}

function largest(left: readonly Rect[]): SizeMm | null {
  const [first] = left;
  return first ? { width: first.width, height: first.height } : null;
}

function areaOf({ width, height }: SizeMm): number {
  return width * height;
}
