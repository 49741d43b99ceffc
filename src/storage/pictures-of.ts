import type { Notebook } from '../notebook/model.ts';
import type { KeptSide } from '../sheet/model.ts';

/** Ids of all pictures that a notebook's sheets point at. */
export function pictureIdsOf(notebook: Notebook): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const { sides } of notebook.drawer.sheets) {
    if (sides.A.pictureId !== null) ids.add(sides.A.pictureId);
    if (sides.B !== undefined && sides.B.pictureId !== null) ids.add(sides.B.pictureId);
  }
  return ids;
}

/** The notebook with every picture's id changed; ids that `to` does not know become null: a sheet without a picture. */
export function withPictureIds(notebook: Notebook, to: ReadonlyMap<string, string>): Notebook {
  const renamed = (kept: KeptSide): KeptSide => ({
    ...kept,
    pictureId: kept.pictureId === null ? null : (to.get(kept.pictureId) ?? null),
  });
  const sheets = notebook.drawer.sheets.map((sheet) => ({
    ...sheet,
    sides:
      sheet.sides.B === undefined
        ? { A: renamed(sheet.sides.A) }
        : { A: renamed(sheet.sides.A), B: renamed(sheet.sides.B) },
  }));
  return { ...notebook, drawer: { ...notebook.drawer, sheets } };
}
