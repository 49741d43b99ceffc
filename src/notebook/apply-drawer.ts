import { indexById, sheetById } from '../drawer/by-id.ts';
import type { Drawer } from '../drawer/model.ts';
import type { Sheet } from '../sheet/model.ts';
import type { DrawerEdit, SheetChange } from './edit-kinds.ts';
import { keptName, keptText, limits } from './limits.ts';
import type { Notebook } from './model.ts';
import { withoutHeld } from './without-held.ts';

/** The notebook after an edit of what is owned. What is taken out leaves studies, kits and boards as well. */
export function applyDrawerEdit(notebook: Notebook, edit: DrawerEdit): Notebook {
  const { drawer } = notebook;
  switch (edit.do) {
    case 'add sheet':
      return withDrawer(notebook, { sheets: added(drawer.sheets, edit.sheet, limits.sheets) });
    case 'add plain':
      return withDrawer(notebook, { plains: added(drawer.plains, edit.plain, limits.plains) });
    case 'add part':
      return sheetById(drawer, edit.part.sheetId) !== undefined
        ? withDrawer(notebook, { parts: added(drawer.parts, edit.part, limits.parts) })
        : notebook;
    case 'update sheet':
      return withDrawer(notebook, { sheets: changed(drawer.sheets, edit.sheetId, keptChange(edit.change)) });
    case 'update plain':
      return withDrawer(notebook, { plains: changed(drawer.plains, edit.plainId, keptChange(edit.change)) });
    case 'update part':
      return withDrawer(notebook, { parts: changed(drawer.parts, edit.partId, keptChange(edit.change)) });
    case 'set side':
      return setSide(notebook, edit);
    case 'remove sheet': {
      const gone = new Set(
        drawer.parts.filter((part) => part.sheetId === edit.sheetId).map((part) => part.id),
      );
      const after = withDrawer(notebook, {
        sheets: without(drawer.sheets, edit.sheetId),
        parts: gone.size === 0 ? drawer.parts : drawer.parts.filter((part) => !gone.has(part.id)),
      });
      return after === notebook
        ? notebook
        : withoutHeld(after, (held) =>
            held.kind === 'sheet' ? held.id === edit.sheetId : held.kind === 'part' && gone.has(held.id),
          );
    }
    case 'remove plain': {
      const after = withDrawer(notebook, { plains: without(drawer.plains, edit.plainId) });
      return after === notebook
        ? notebook
        : withoutHeld(after, (held) => held.kind === 'plain' && held.id === edit.plainId);
    }
    case 'remove part': {
      const after = withDrawer(notebook, { parts: without(drawer.parts, edit.partId) });
      return after === notebook
        ? notebook
        : withoutHeld(after, (held) => held.kind === 'part' && held.id === edit.partId);
    }
  }
}

function setSide(notebook: Notebook, edit: Extract<DrawerEdit, { do: 'set side' }>): Notebook {
  const { sheetId, side, kept } = edit;
  const sheet = sheetById(notebook.drawer, sheetId);
  // A sheet without a side A would be no sheet.
  if (sheet === undefined || (kept === null && (side === 'A' || sheet.sides.B === undefined)))
    return notebook;
  const sides: Sheet['sides'] =
    kept === null
      ? { A: sheet.sides.A }
      : side === 'A'
        ? { ...sheet.sides, A: kept }
        : { ...sheet.sides, B: kept };
  const after = withDrawer(notebook, { sheets: changed(notebook.drawer.sheets, sheetId, { sides }) });
  return kept === null
    ? withoutHeld(after, (held) => held.kind === 'sheet' && held.id === sheetId && held.side === 'B')
    : after;
}

function withDrawer(notebook: Notebook, change: Partial<Drawer>): Notebook {
  const { drawer } = notebook;
  const same = (Object.keys(change) as (keyof Drawer)[]).every((key) => change[key] === drawer[key]);
  return same ? notebook : { ...notebook, drawer: { ...drawer, ...change } };
}

interface Kept {
  readonly id: string;
}

function added<T extends Kept>(list: readonly T[], item: T, most: number): readonly T[] {
  return list.length >= most || indexById(list, item.id) >= 0 ? list : [...list, item];
}

function without<T extends Kept>(list: readonly T[], id: string): readonly T[] {
  const rest = list.filter((item) => item.id !== id);
  return rest.length === list.length ? list : rest;
}

function changed<T extends Kept>(list: readonly T[], id: string, change: Partial<NoInfer<T>>): readonly T[] {
  const at = indexById(list, id);
  const before = list[at];
  if (before === undefined) return list;
  const keys = Object.keys(change) as (keyof T)[];
  return keys.every((key) => before[key] === change[key]) ? list : list.with(at, { ...before, ...change });
}

function keptChange<T extends SheetChange | { readonly name?: string }>(change: T): T {
  return {
    ...change,
    ...(change.name === undefined ? {} : { name: keptName(change.name) }),
    ...('note' in change && change.note !== undefined ? { note: keptText(change.note, limits.text) } : {}),
  };
}
