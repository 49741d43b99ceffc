import type { Owned } from '../harmony/model.ts';
import type { Plain, Sheet, Side } from '../sheet/model.ts';
import { sideOfPlain } from '../sheet/plain.ts';
import { partById, plainById, sheetById } from './by-id.ts';
import type { Drawer, Held } from './model.ts';
import { gone } from './words/gone.ts';

/** A key that tells held things apart: "sheet:rose-vine:A", "plain:kraft", "part:3". */
export function heldKey(held: Held): string {
  return held.kind === 'sheet' ? `sheet:${held.id}:${held.side}` : `${held.kind}:${held.id}`;
}

/** The thing of the drawer that a key names, or null where it is not there (any more). */
export function heldOfKey(drawer: Drawer, key: string): Held | null {
  const [, kind, rest = ''] = /^(sheet|plain|part):(.*)$/su.exec(key) ?? [];
  const face = kind === 'sheet' ? rest.slice(-2) : '';
  const held: Held | null =
    kind === 'plain' || kind === 'part'
      ? { kind, id: rest }
      : face === ':A' || face === ':B'
        ? { kind: 'sheet', id: rest.slice(0, -2), side: face === ':A' ? 'A' : 'B' }
        : null;
  return held !== null && isHeld(drawer, held) ? held : null;
}

function isHeld(drawer: Drawer, held: Held): boolean {
  if (held.kind === 'sheet') return sheetById(drawer, held.id)?.sides[held.side] !== undefined;
  return (held.kind === 'plain' ? plainById : partById)(drawer, held.id) !== undefined;
}

/** The same for both sides of a sheet: which piece of paper it is. */
export function sheetKey(held: Held): string {
  return held.kind === 'sheet' ? `sheet:${held.id}` : heldKey(held);
}

/** The side that is held, or null where it is no longer in the drawer. A plain gives a side of one colour. */
export function sideOfHeld(drawer: Drawer, held: Held): Side | null {
  switch (held.kind) {
    case 'sheet':
      return sheetById(drawer, held.id)?.sides[held.side]?.reading ?? null;
    case 'plain': {
      const plain = plainById(drawer, held.id);
      return plain === undefined ? null : plainSide(plain);
    }
    case 'part':
      return partById(drawer, held.id)?.reading ?? null;
  }
}

/** Made once a plain, so that what is worked out from a side can be kept with it. */
function plainSide(plain: Plain): Side {
  const before = plainSides.get(plain);
  if (before !== undefined) return before;
  const side = sideOfPlain(plain);
  plainSides.set(plain, side);
  return side;
}

const plainSides = new WeakMap<Plain, Side>();

/** The name to show; a sheet with two sides says which. */
export function nameOfHeld(drawer: Drawer, held: Held): string {
  if (held.kind === 'plain') return plainById(drawer, held.id)?.name ?? gone;
  if (held.kind === 'part') return partById(drawer, held.id)?.name ?? gone;
  const sheet = sheetById(drawer, held.id);
  if (sheet === undefined) return gone;
  return sheet.sides.B === undefined ? sheet.name : `${sheet.name}, side ${held.side}`;
}

/**
 * What two held papers are called in a sentence: a sheet by its bare name, unless that would leave the reader in doubt
 * which of the two is meant.
 */
export function pairNames(
  drawer: Drawer,
  anchor: Held,
  candidate: Held,
): { readonly anchor: string; readonly candidate: string } {
  const bare = (held: Held) =>
    (held.kind === 'sheet' ? sheetById(drawer, held.id)?.name : undefined) ?? nameOfHeld(drawer, held);
  const names = { anchor: bare(anchor), candidate: bare(candidate) };
  return names.anchor !== names.candidate
    ? names
    : { anchor: nameOfHeld(drawer, anchor), candidate: nameOfHeld(drawer, candidate) };
}

/** The other side of a held sheet, or null. */
export function otherSideOfHeld(drawer: Drawer, held: Held): Side | null {
  if (held.kind !== 'sheet') return null;
  return sideOfHeld(drawer, { ...held, side: held.side === 'A' ? 'B' : 'A' });
}

/** What there is to mend with: all plains and all sheets. `except`: ids of sheets that are already in play. */
export function ownedFrom(drawer: Drawer, except: readonly string[] = []): Owned {
  return {
    plains: drawer.plains,
    sheets: drawer.sheets.filter((sheet) => !except.includes(sheet.id)).map(ownedSheet),
  };
}

function ownedSheet(sheet: Sheet): OwnedSheet {
  const before = ownedSheets.get(sheet);
  if (before !== undefined) return before;
  const { id, name, sides } = sheet;
  const owned = {
    id,
    name,
    sides: sides.B === undefined ? [sides.A.reading] : [sides.A.reading, sides.B.reading],
  };
  ownedSheets.set(sheet, owned);
  return owned;
}

type OwnedSheet = Owned['sheets'][number];
const ownedSheets = new WeakMap<Sheet, OwnedSheet>();

/** Everything that can be held, sheets first, each side by itself. The same list for the same drawer. */
export function allHeld(drawer: Drawer): readonly Held[] {
  const before = allOf.get(drawer);
  if (before !== undefined) return before;
  const all: Held[] = [];
  for (const { id, sides } of drawer.sheets) {
    all.push({ kind: 'sheet', id, side: 'A' });
    if (sides.B !== undefined) all.push({ kind: 'sheet', id, side: 'B' });
  }
  for (const { id } of drawer.plains) all.push({ kind: 'plain', id });
  for (const { id } of drawer.parts) all.push({ kind: 'part', id });
  allOf.set(drawer, all);
  return all;
}

const allOf = new WeakMap<Drawer, readonly Held[]>();
