import type { BaseKind, Finish, Motif, PrintScale, Side } from '../sheet/model.ts';
import { inkWord } from '../sheet/words/side-words.ts';
import { partById, sheetById } from './by-id.ts';
import { allHeld, nameOfHeld, sideOfHeld } from './held.ts';
import type { Drawer, Held } from './model.ts';

/** What is looked for in the drawer. All that is given must hold; within a list one is enough. */
export interface DrawerFilter {
  /** Every word must begin a word of the paper's name, note, inks, base or motifs. */
  readonly words?: string;
  readonly kinds?: readonly Held['kind'][];
  readonly bases?: readonly BaseKind[];
  readonly scales?: readonly PrintScale[];
  readonly motifs?: readonly Motif[];
  readonly finishes?: readonly Finish[];
  /** Sheets (and parts of sheets) of which there are at least so many; plains always fit. */
  readonly leastCount?: number;
}

/** All that can be held and fits the filter, in the drawer's order. */
export function filterHeld(drawer: Drawer, filter: DrawerFilter): readonly Held[] {
  const wanted = wordsOf(filter.words ?? '');
  return allHeld(drawer).filter((held) => {
    const side = sideOfHeld(drawer, held);
    if (side === null) return false;
    return (
      allows(filter.kinds, held.kind) &&
      allows(filter.bases, side.base.kind) &&
      allows(filter.scales, side.print.scale) &&
      allowsOne(filter.motifs, side.tags?.motifs) &&
      allowsOne(filter.finishes, side.tags?.finishes) &&
      countOf(drawer, held) >= (filter.leastCount ?? 0) &&
      (wanted.length === 0 || hasWords(textOf(drawer, held, side), wanted))
    );
  });
}

function allows<T>(list: readonly T[] | undefined, value: T | null): boolean {
  return list === undefined || list.length === 0 || (value !== null && list.includes(value));
}

function countOf(drawer: Drawer, held: Held): number {
  if (held.kind === 'plain') return Infinity;
  const part = held.kind === 'part' ? partById(drawer, held.id) : undefined;
  const sheetId = held.kind === 'part' ? part?.sheetId : held.id;
  return sheetById(drawer, sheetId ?? '')?.count ?? 0;
}

function allowsOne<T>(list: readonly T[] | undefined, values: readonly T[] | undefined): boolean {
  return list === undefined || list.length === 0 || list.some((one) => values?.includes(one) === true);
}

function textOf(drawer: Drawer, held: Held, side: Side): string {
  const note = held.kind === 'sheet' ? (sheetById(drawer, held.id)?.note ?? '') : '';
  const inks = [side.base, ...side.inks].flatMap((ink) => [inkWord(ink), ink.name]);
  const drawn = [...(side.tags?.motifs ?? []), ...(side.tags?.finishes ?? [])];
  return [nameOfHeld(drawer, held), note, side.base.kind, ...inks, ...drawn].join(' ');
}

function hasWords(text: string, wanted: readonly string[]): boolean {
  const there = wordsOf(text);
  return wanted.every((word) => there.some((one) => one.startsWith(word)));
}

function wordsOf(text: string): readonly string[] {
  // Accents are left out, so that "creme" finds "crème".
  const plain = text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
}
