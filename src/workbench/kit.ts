import { type CutList, cutListOf, type Stock, type Wanted } from '../cutting/cut-list.ts';
import { partById, plainById, sheetById } from '../drawer/by-id.ts';
import { nameOfHeld, sideOfHeld } from '../drawer/held.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { kitOf } from '../harmony/kit/kit.ts';
import type { Kit, KitMember } from '../harmony/model.ts';
import type { KitLeaf, KitPiece } from '../notebook/model.ts';
import type { SizeMm } from '../sheet/model.ts';
import { takenToBeSquareSays } from './words/leaf-words.ts';

/** A kit leaf with what was found of it. Pieces that have left the drawer are left out of all. */
export interface KitFound {
  /** Those that are in the drawer, each with its index among the leaf's pieces; in the order of the kit's members. */
  readonly there: readonly { readonly piece: KitPiece; readonly index: number }[];
  /** Null while there is no piece. */
  readonly kit: Kit | null;
  /** Null while no piece has a size; pieces without one are then named as left out. */
  readonly cuts: CutList | null;
}

/** Judges the kit and works out what to cut from what. */
export function findKit(drawer: Drawer, leaf: KitLeaf): KitFound {
  const there = leaf.pieces.flatMap((piece, index) => {
    const side = sideOfHeld(drawer, piece.held);
    return side === null ? [] : [{ piece, index, side }];
  });
  const names = namesApart(
    drawer,
    there.map(({ piece }) => piece.held),
  );
  const members = there.map(
    ({ piece, side }, at): KitMember => ({
      name: names[at]!,
      side,
      role: piece.role ?? (piece.held.kind === 'plain' ? 'plain' : 'paper'),
      areaMm2: piece.areaMm2,
    }),
  );
  const wanted = there.flatMap(({ piece }, at) => wantedOf(drawer, piece, names[at]!));
  return {
    there: there.map(({ piece, index }) => ({ piece, index })),
    kit: members.length > 0 ? kitOf(members) : null,
    cuts: wanted.some(({ sizeMm }) => sizeMm !== null) ? cutsOf(drawer, wanted) : null,
  };
}

/** What cardstock and other plains without a size are taken to measure: a 12 inch square, as most are sold. */
const plainSheetMm: SizeMm = { width: 304.8, height: 304.8 };

/** Nobody has said how large a plain is, so the list says what it was taken for. */
function cutsOf(drawer: Drawer, wanted: readonly Wanted[]): CutList {
  const cuts = cutListOf(stockOf(drawer, wanted), wanted);
  const names = new Set(
    cuts.sheets.flatMap(({ stock }) => (plainById(drawer, stock.id) ? [stock.name] : [])),
  );
  if (names.size === 0) return cuts;
  const assumed = takenToBeSquareSays(names);
  return { ...cuts, says: [assumed, ...cuts.says] };
}

function wantedOf(drawer: Drawer, piece: KitPiece, name: string): Wanted[] {
  const { held, role, count = 1, mat } = piece;
  const part = held.kind === 'part' ? partById(drawer, held.id) : undefined;
  const sizeMm = piece.sizeMm ?? part?.sizeMm ?? null;
  // A photograph is cut from no sheet of the drawer; a part is cut from the sheet it lies on.
  const from = role === 'photo' ? photoStock(held.id) : part ? part.sheetId : held.id;
  const isThere = mat && plainById(drawer, mat.plainId) !== undefined;
  return [
    { name, from, sizeMm, count, ...(isThere ? { mat: { from: mat.plainId, borderMm: mat.borderMm } } : {}) },
  ];
}

function stockOf(drawer: Drawer, wanted: readonly Wanted[]): Stock[] {
  const ids = new Set(wanted.flatMap(({ from, mat }) => (mat ? [from, mat.from] : [from])));
  const sheets = drawer.sheets
    .filter(({ id }) => ids.has(id))
    .map(
      ({ id, name, sizeMm, count, weight }): Stock => ({ id, name, sizeMm, count, gsm: weight?.gsm ?? null }),
    );
  const plains = drawer.plains
    .filter(({ id }) => ids.has(id))
    .map(({ id, name, weight }): Stock => ({ id, name, sizeMm: plainSheetMm, gsm: weight?.gsm ?? null }));
  // A photograph is its own sheet, as large as it is.
  const photos = wanted
    .filter(({ from }) => from.startsWith(photoStock('')))
    .flatMap(({ from, name, sizeMm, count = 1 }): Stock[] =>
      sizeMm === null ? [] : [{ id: from, name, sizeMm, count, gsm: null }],
    );
  return [...sheets, ...plains, ...photos];
}

const photoStock = (id: string) => `photo ${id}`;

/** Bare names; the side where both sides of a sheet are in the kit; a number where the same paper is in it twice. */
function namesApart(drawer: Drawer, held: readonly Held[]): string[] {
  const seen = new Map<string, number>();
  return held.map((one) => {
    const both =
      one.kind === 'sheet' &&
      held.some((other) => other.kind === 'sheet' && other.id === one.id && other.side !== one.side);
    const bare = one.kind === 'sheet' ? sheetById(drawer, one.id)?.name : undefined;
    const name = both || bare === undefined ? nameOfHeld(drawer, one) : bare;
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return times === 1 ? name : `${name} (${times})`;
  });
}
