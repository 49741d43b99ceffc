import { emptyNotebook, isEmptyNotebook } from '../notebook/empty.ts';
import type { Notebook } from '../notebook/model.ts';
import { pictureIdsOf } from '../storage/pictures-of.ts';
import type { Shelf } from '../storage/shelf.ts';
import { isUntouchedDemo } from './untouched-demo.ts';

/** Wait before tidying, in ms, so that it is out of the way of opening. */
const waitMs = 8_000;
/** Pictures younger than this stay whatever happens: another tab may be about to name them. In ms. */
const youngMs = 3_600_000;

/**
 * Once after opening, takes off the shelf what is nobody's: notebooks in which nothing is, not even a title, and demos as
 * they were drawn, where they are not open; and pictures that no notebook names. Does nothing beside another tab, or where a notebook can't be read and so can't say what it needs.
 */
export function startHousekeeping(
  shelf: Shelf,
  current: () => Notebook,
  hasOthers: () => Promise<boolean>,
): { stop(): void } {
  const timer = setTimeout(() => void tidy(shelf, current, hasOthers).catch(() => {}), waitMs);
  return { stop: () => clearTimeout(timer) };
}

/** @returns how many notebooks and pictures were taken off. */
export async function tidy(
  shelf: Shelf,
  current: () => Notebook,
  hasOthers: () => Promise<boolean>,
  now = Date.now(),
): Promise<{ readonly notebooks: number; readonly pictures: number }> {
  const nothing = { notebooks: 0, pictures: 0 };
  if (await hasOthers()) return nothing;
  const needed = new Set(pictureIdsOf(current()));
  const idle: string[] = [];
  for (const line of await shelf.notebooks()) {
    if (line.title === null) return nothing;
    const { id } = line;
    if (id !== current().id && (await isIdle(shelf, id))) idle.push(id);
    else for (const picture of await shelf.picturesNamed(id)) needed.add(picture);
  }
  let removed = 0;
  for (const id of idle) {
    // It may have been opened meanwhile.
    if (id === current().id) continue;
    await shelf.remove(id);
    removed++;
  }
  // Undo may still bring back a demo that was just cleared; its pictures are young then.
  const old = await shelf.picturesBefore(new Date(now - youngMs).toISOString());
  for (const id of pictureIdsOf(current())) needed.add(id);
  const stray = old.filter((id) => !needed.has(id));
  await shelf.removePictures(stray);
  return { notebooks: removed, pictures: stray.length };
}

/** True for what nobody wrote in: an empty notebook under its first title, a demo as it was drawn. */
async function isIdle(shelf: Shelf, id: string): Promise<boolean> {
  const mayBe = id.startsWith('demo-') || (await shelf.isEmpty(id));
  const kept = mayBe ? await shelf.notebook(id) : null;
  if (kept === null || kept.setAside.length > 0) return false;
  const { notebook } = kept;
  const { title } = emptyNotebook('');
  return (isEmptyNotebook(notebook) && notebook.title === title) || (await isUntouchedDemo(notebook));
}
