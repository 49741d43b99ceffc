import type { Owned } from '../harmony/model.ts';
import type { Side } from '../sheet/model.ts';
import { sideOfPlain } from '../sheet/plain.ts';
import type { Drawer, Held } from './model.ts';

/** A key that tells held things apart: "sheet:rose-vine:A", "plain:kraft", "part:3". */
export function heldKey(held: Held): string {
  return held.kind === 'sheet' ? `sheet:${held.id}:${held.side}` : `${held.kind}:${held.id}`;
}

/** The same for both sides of a sheet: which piece of paper it is. */
export function sheetKey(held: Held): string {
  return held.kind === 'sheet' ? `sheet:${held.id}` : heldKey(held);
}

/** The side that is held, or null where it is no longer in the drawer. A plain gives a side of one colour. */
export function sideOfHeld(drawer: Drawer, held: Held): Side | null {
  switch (held.kind) {
    case 'sheet':
      return drawer.sheets.find((sheet) => sheet.id === held.id)?.sides[held.side]?.reading ?? null;
    case 'plain': {
      const plain = drawer.plains.find((one) => one.id === held.id);
      return plain === undefined ? null : sideOfPlain(plain);
    }
    case 'part':
      return drawer.parts.find((part) => part.id === held.id)?.reading ?? null;
  }
}

/** The name to show; a sheet with two sides says which. */
export function nameOfHeld(drawer: Drawer, held: Held): string {
  const gone = 'a paper that is no longer in the drawer';
  if (held.kind !== 'sheet') {
    const list: readonly { id: string; name: string }[] =
      held.kind === 'plain' ? drawer.plains : drawer.parts;
    return list.find((one) => one.id === held.id)?.name ?? gone;
  }
  const sheet = drawer.sheets.find((one) => one.id === held.id);
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
    (held.kind === 'sheet' ? drawer.sheets.find((sheet) => sheet.id === held.id)?.name : undefined) ??
    nameOfHeld(drawer, held);
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
    sheets: drawer.sheets
      .filter((sheet) => !except.includes(sheet.id))
      .map((sheet) => ({
        id: sheet.id,
        name: sheet.name,
        sides:
          sheet.sides.B === undefined
            ? [sheet.sides.A.reading]
            : [sheet.sides.A.reading, sheet.sides.B.reading],
      })),
  };
}

/** Everything that can be held, sheets first, each side by itself. */
export function allHeld(drawer: Drawer): readonly Held[] {
  const sheets = drawer.sheets.flatMap((sheet): readonly Held[] => {
    const front = { kind: 'sheet', id: sheet.id, side: 'A' } as const;
    return sheet.sides.B === undefined ? [front] : [front, { ...front, side: 'B' }];
  });
  const plains = drawer.plains.map((plain): Held => ({ kind: 'plain', id: plain.id }));
  const parts = drawer.parts.map((part): Held => ({ kind: 'part', id: part.id }));
  return [...sheets, ...plains, ...parts];
}
