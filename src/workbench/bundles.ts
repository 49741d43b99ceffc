import type { Notebook } from '../notebook/model.ts';
import { bundleLimits } from '../storage/bundle-limits.ts';
import type { Picture } from '../storage/database.ts';
import { fileName } from '../storage/file-names.ts';
import type { KeptLine, Shelf } from '../storage/shelf.ts';
import { StorageTrouble, troubleFrom } from '../storage/trouble.ts';
import type { Book } from './book.ts';
import { newId } from './new-id.ts';
import type { Pictures } from './pictures.ts';
import type { ReadyFile } from './session-types.ts';
import type { Settings } from './settings.ts';
import type { StateHolder } from './state-holder.ts';

export interface Bundles {
  save(): Promise<ReadyFile | null>;
  open(file: File): Promise<boolean>;
  /** Other notebooks that are kept in this browser, newest first. */
  kept(): Promise<readonly KeptLine[]>;
  openKept(id: string): Promise<boolean>;
  removeKept(id: string): Promise<void>;
}

interface Parts {
  readonly holder: StateHolder;
  readonly book: Book;
  readonly pictures: Pictures;
  readonly shelf: Shelf;
  readonly settings: Settings;
  /** Takes a notebook off the shelf so that it can be stored again later. */
  readonly take: (id: string) => Promise<Notebook | null>;
}

export function startBundles({ holder, book, pictures, shelf, settings, take }: Parts): Bundles {
  const replace = (notebook: Notebook, says: string) =>
    book.dispatchAll([{ do: 'replace notebook', notebook }], says);

  return {
    async save() {
      const { notebook } = book;
      try {
        const { bundleOf } = await import('../storage/bundle-write.ts');
        const parts = await bundleOf(notebook, pictures.get);
        const now = new Date();
        settings.setBackup(notebook.id, now.toISOString());
        if (book.notebook.id === notebook.id) holder.set({ lastBackup: now.toISOString() });
        const blob = new Blob(parts, { type: 'application/zip' });
        return { name: fileName(notebook.title, 'quire', now), blob };
      } catch (error) {
        const says =
          error instanceof StorageTrouble
            ? error.message
            : 'The backup file could not be made: there may be too little memory. Close other pages and try again.';
        holder.say('trouble', says);
        return null;
      }
    },
    async open(file) {
      try {
        if (file.size > bundleLimits.file) {
          throw new StorageTrouble(
            'large',
            'This file holds more than a notebook can, and was not opened. Nothing was changed.',
          );
        }
        const { readBundle } = await import('../storage/bundle-read.ts');
        const bytes = new Uint8Array(await file.arrayBuffer());
        const bundle = await readBundle(bytes, newId, isDecodable);
        const addedAt = new Date().toISOString();
        await pictures.add(bundle.pictures.map((picture): Picture => ({ ...picture, thumb: null, addedAt })));
        replace(bundle.notebook, 'open a backup file');
        holder.say(
          'note',
          `“${bundle.notebook.title}” is open. The notebook before it is still kept; Undo brings it back.`,
        );
        return true;
      } catch (error) {
        const says =
          error instanceof StorageTrouble
            ? error.message
            : 'This file could not be opened. Nothing was changed.';
        holder.say('trouble', `“${file.name.slice(0, 80)}”: ${says}`, { of: 'drop' });
        return false;
      }
    },
    async kept() {
      const lines = await shelf.notebooks().catch(() => []);
      return lines
        .filter((line) => line.id !== book.notebook.id)
        .sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1));
    },
    async openKept(id) {
      try {
        const notebook = await take(id);
        if (notebook === null) return false;
        replace(notebook, 'open another notebook');
        return true;
      } catch (error) {
        holder.say('trouble', troubleFrom(error).message);
        return false;
      }
    },
    async removeKept(id) {
      if (id === book.notebook.id) return;
      await shelf.remove(id).catch((error: unknown) => holder.say('trouble', troubleFrom(error).message));
    },
  };
}

async function isDecodable(picture: Blob): Promise<boolean> {
  try {
    (await createImageBitmap(picture)).close();
    return true;
  } catch {
    return false;
  }
}
