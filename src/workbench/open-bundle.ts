import type { Notebook } from '../notebook/model.ts';
import type { Picture } from '../storage/database.ts';
import type { SetAside } from '../storage/records/records.ts';
import type { Shelf } from '../storage/shelf.ts';
import { StorageTrouble } from '../storage/words/trouble.ts';
import { newId } from './new-id.ts';
import { startSmallPictures } from './reading/small-picture.ts';
import { noRoomForPicturesSays } from './words/backup-words.ts';

/** Bytes of pictures that are held in memory where the browser stores nothing. Ours. */
const mostInMemory = 400_000_000;

export interface OpenedBundle {
  readonly notebook: Notebook;
  /** What of it could not be read. */
  readonly setAside: readonly SetAside[];
  /** Pictures that only the page's memory has, because the browser stores nothing. */
  readonly unstored: readonly Picture[];
}

/**
 * The notebook in a backup file, its pictures on the shelf, small ones beside them. Portion by portion: no more of the
 * file is in memory at once. Where anything fails, the pictures that were put there are taken off again.
 * @throws StorageTrouble with a sentence; nothing has changed then.
 */
export async function openedBundle(file: Blob, shelf: Shelf): Promise<OpenedBundle> {
  const { readBundle } = await import('../storage/bundle/bundle-read.ts');
  const addedAt = new Date().toISOString();
  const stored: string[] = [];
  const unstored: Picture[] = [];
  let held = 0;
  const decoder = startSmallPictures();
  try {
    const { notebook, setAside } = await readBundle(file, {
      newId,
      thumb: decoder.small,
      async put(portion) {
        const pictures = portion.map((picture): Picture => ({ ...picture, addedAt }));
        if (unstored.length === 0) {
          // What fails half way may be there in part.
          const ids = pictures.map(({ id }) => id);
          try {
            await shelf.putPictures(pictures);
            stored.push(...ids);
            return;
          } catch (error) {
            if (stored.length > 0 || !(error instanceof StorageTrouble) || error.kind !== 'closed')
              throw noRoom(error);
          }
        }
        held += pictures.reduce((sum, { bytes }) => sum + bytes.byteLength, 0);
        if (held > mostInMemory) throw noRoom();
        unstored.push(...pictures);
      },
    });
    return { notebook, setAside, unstored };
  } catch (error) {
    await shelf.removePictures(stored).catch(() => {});
    throw error;
  } finally {
    decoder.close();
  }
}

function noRoom(cause?: unknown): StorageTrouble {
  return new StorageTrouble('full', noRoomForPicturesSays, { cause });
}
