import type { Leaf, Notebook, NoteLeaf } from '../../src/notebook/model.ts';
import type { Sheet, Side } from '../../src/sheet/model.ts';
import { chanceOf } from './chance.ts';
import { handSide } from './sides.ts';

export interface LargeOptions {
  readonly id?: string;
  readonly sheets?: number;
  readonly leaves?: number;
  /** Gives each sheet a picture of its own, by this name. Default: none has one. */
  readonly pictureOf?: (sheet: number) => string;
  readonly seed?: number;
}

/**
 * A notebook with as many sheets and leaves as are wanted: sheets of three to seven inks, as readings have them, notes,
 * and one study of the first sheets where there are at least six. The same for the same options.
 */
export function notebookOf({
  id = 'large',
  sheets = 0,
  leaves = 0,
  pictureOf,
  seed = 1,
}: LargeOptions): Notebook {
  const random = chanceOf(seed);
  const all = Array.from({ length: sheets }, (_, at) => sheetOf(at, random, pictureOf?.(at) ?? null));
  const notes = Array.from({ length: leaves }, (_, at): Leaf => note(`note-${at}`, `What I wrote, ${at}`));
  const study = all.length < 6 || leaves === 0 ? [] : [studyOf(all)];
  return {
    id,
    title: 'A large notebook',
    leaves: [...notes, ...study],
    drawer: { sheets: all, plains: [], parts: [] },
  };
}

export function note(id: string, title: string, text = ''): NoteLeaf {
  return { kind: 'note', id, title, text };
}

function studyOf(sheets: readonly Sheet[]): Leaf {
  const [anchor, ...candidates] = sheets
    .slice(0, 6)
    .map(({ id }) => ({ kind: 'sheet', id, side: 'A' }) as const);
  return {
    kind: 'study',
    id: 'study',
    title: 'The first of them',
    text: '',
    anchor: anchor ?? null,
    candidates,
    shown: 0,
    distance: 'apart',
    wheel: 'eye',
    asksFirst: false,
    opinions: {},
  };
}

function sheetOf(at: number, random: () => number, pictureId: string | null): Sheet {
  return {
    id: `sheet-${at}`,
    name: `Paper ${at}`,
    sides: { A: { reading: sideOf(random), pictureId } },
    sizeMm: { width: 305, height: 305 },
    weight: null,
    count: 1,
    note: '',
  };
}

function sideOf(random: () => number): Side {
  const hex = () =>
    `#${Math.floor(random() * 0x1000000)
      .toString(16)
      .padStart(6, '0')}`;
  const inks = Array.from({ length: 3 + Math.floor(random() * 5) }, (): [string, number] => [
    hex(),
    0.02 + random() * 0.08,
  ]);
  return handSide({ base: 'cream', hex: '#f4e8cd', inks });
}
