import { sideOfHeld } from '../../drawer/held.ts';
import type { Held } from '../../drawer/model.ts';
import { placesForKept } from '../../drawer/places.ts';
import type { Notebook } from '../../notebook/model.ts';
import type { Part, Places, ReadOptions } from '../../sheet/model.ts';
import type { Picture } from '../../storage/database.ts';
import { newId } from '../new-id.ts';
import { type Pictures, sourceOf } from '../pictures.ts';
import { cropOf } from './crop-of.ts';
import type { ReadClient, ReadResult } from './read-client.ts';

/** Where inks lie, known from reading or worked out again from the stored picture. */
export interface PlaceFinder {
  known(pictureId: string, result: ReadResult): void;
  of(notebook: Notebook, held: Held): Promise<Places | null>;
  /** The same as it was read, before any correction by hand: inks with their places. */
  asRead(notebook: Notebook, held: Held): Promise<ReadResult | null>;
}

/** Maps of places that are remembered; each takes up to a quarter of a megabyte. */
const most = 60;

export function startPlaceFinder(pictures: Pictures, client: ReadClient): PlaceFinder {
  const found = new Map<string, Promise<ReadResult | null>>();
  const remember = (key: string, result: Promise<ReadResult | null>) => {
    found.set(key, result);
    const oldest = found.keys().next();
    if (found.size > most && !oldest.done) found.delete(oldest.value);
  };

  async function readAgain(picture: Picture, options: ReadOptions): Promise<ReadResult | null> {
    // The stored bytes are handed over to the worker, so it gets a copy.
    const request = { id: newId('places'), bytes: picture.bytes.slice(0), options, withPicture: false };
    return client.read(request).catch(() => null);
  }

  return {
    known: (pictureId, result) => remember(keyOf(pictureId, {}, null), Promise.resolve(result)),
    asRead,
    async of(notebook, held) {
      const side = sideOfHeld(notebook.drawer, held);
      const result = side === null ? null : await asRead(notebook, held);
      return result === null || side === null ? null : placesForKept(result.places, result.side, side);
    },
  };

  async function asRead(notebook: Notebook, held: Held): Promise<ReadResult | null> {
    const source = sourceOf(notebook, held);
    const id = source?.pictureId ?? null;
    if (source === null || id === null) return null;
    const options = source.kept.options ?? {};
    const { part } = source;
    const key = keyOf(id, options, part);
    if (!found.has(key)) {
      const result = pictures
        .get(id)
        .then((picture) =>
          picture === null
            ? null
            : readAgain(picture, part === null ? options : { ...options, ...cropOf(part, picture) }),
        );
      remember(key, result);
      // What failed may work the next time.
      void result.then((got) => got === null && found.get(key) === result && found.delete(key));
    }
    return (await found.get(key)) ?? null;
  }
}

function keyOf(pictureId: string, options: ReadOptions, part: Part | null): string {
  return JSON.stringify([pictureId, options, part?.frame ?? null, part?.outline ?? null]);
}
