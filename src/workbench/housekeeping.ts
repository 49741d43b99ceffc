import type { Notebook } from '../notebook/model.ts';
import { pictureIdsOf } from '../storage/pictures-of.ts';
import type { Shelf } from '../storage/shelf.ts';
import { isDemo } from './demo-client.ts';

/** Wait before tidying, in ms, so that it is out of the way of opening. */
const waitMs = 8_000;
/** Pictures younger than this stay whatever happens: another tab may be about to name them. In ms. */
const youngMs = 3_600_000;

/**
 * Once after opening, takes off the shelf what nothing needs: empty notebooks and demos that are not open, and pictures
 * that no notebook names. Does nothing beside another tab, or where a notebook can't be read and so can't say what it needs.
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
    if (line.id !== current().id && (await isIdle(shelf, line.id))) idle.push(line.id);
    else for (const id of await shelf.picturesNamed(line.id)) needed.add(id);
  }
  for (const id of idle) await shelf.remove(id);
  // Undo may still bring back a demo that was just cleared; its pictures are young then.
  const old = await shelf.picturesBefore(new Date(now - youngMs).toISOString());
  for (const id of pictureIdsOf(current())) needed.add(id);
  const stray = old.filter((id) => !needed.has(id));
  await shelf.removePictures(stray);
  return { notebooks: idle.length, pictures: stray.length };
}

/** Only what may be a demo is read for it. */
async function isIdle(shelf: Shelf, id: string): Promise<boolean> {
  if (await shelf.isEmpty(id)) return true;
  if (!id.startsWith('demo-')) return false;
  const kept = await shelf.notebook(id);
  return kept !== null && kept.setAside.length === 0 && isDemo(kept.notebook);
}
