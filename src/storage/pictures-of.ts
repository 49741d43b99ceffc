import type { Leaf, Notebook } from '../notebook/model.ts';
import type { KeptSide, Part } from '../sheet/model.ts';
import type { SetAside } from './records/records.ts';

/** Ids of all pictures that a notebook's sheets, parts and notes point at. */
export function pictureIdsOf(notebook: Notebook): ReadonlySet<string> {
  const ids = new Set<string>();
  const { sheets, parts } = notebook.drawer;
  for (const { sides } of sheets) {
    for (const kept of [sides.A, sides.B]) {
      if (kept === undefined) continue;
      if (kept.pictureId !== null) ids.add(kept.pictureId);
      if (kept.taken !== undefined) ids.add(kept.taken.pictureId);
    }
  }
  for (const { pictureId } of parts) if (pictureId !== undefined) ids.add(pictureId);
  for (const leaf of notebook.leaves) {
    if (leaf.kind === 'note' && leaf.picture !== undefined) ids.add(leaf.picture.pictureId);
  }
  return ids;
}

/** What was set aside with its pictures' ids changed; one that `to` does not know stays as it is. */
export function asideWithPictureIds(
  aside: readonly SetAside[],
  to: ReadonlyMap<string, string>,
): readonly SetAside[] {
  return aside.map((one) => ({ ...one, value: withIds(one.value, (id) => to.get(id) ?? id) }));
}

function withIds(value: unknown, change: (id: string) => string): unknown {
  if (Array.isArray(value)) return value.map((one) => withIds(one, change));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [
      key,
      key === 'pictureId' && typeof one === 'string' ? change(one) : withIds(one, change),
    ]),
  );
}

/** The notebook with every picture's id changed; ids that `to` does not know become null: a sheet, or a note, without a picture. */
export function withPictureIds(notebook: Notebook, to: ReadonlyMap<string, string>): Notebook {
  const renamed = ({ taken, ...kept }: KeptSide): KeptSide => {
    const photograph = taken === undefined ? undefined : to.get(taken.pictureId);
    return {
      ...kept,
      pictureId: kept.pictureId === null ? null : (to.get(kept.pictureId) ?? null),
      ...(taken === undefined || photograph === undefined
        ? {}
        : { taken: { ...taken, pictureId: photograph } }),
    };
  };
  const cut = ({ pictureId, ...part }: Part): Part => {
    const picture = pictureId === undefined ? undefined : to.get(pictureId);
    return picture === undefined ? part : { ...part, pictureId: picture };
  };
  const noted = (leaf: Leaf): Leaf => {
    if (leaf.kind !== 'note' || leaf.picture === undefined) return leaf;
    const { picture, ...note } = leaf;
    const pictureId = to.get(picture.pictureId);
    return pictureId === undefined ? note : { ...note, picture: { ...picture, pictureId } };
  };
  const { sheets, parts } = notebook.drawer;
  return {
    ...notebook,
    leaves: notebook.leaves.map(noted),
    drawer: {
      ...notebook.drawer,
      sheets: sheets.map((sheet) => ({
        ...sheet,
        sides:
          sheet.sides.B === undefined
            ? { A: renamed(sheet.sides.A) }
            : { A: renamed(sheet.sides.A), B: renamed(sheet.sides.B) },
      })),
      parts: parts.map(cut),
    },
  };
}
