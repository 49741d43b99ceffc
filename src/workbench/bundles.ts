import type { Notebook } from '../notebook/model.ts';
import { fileName } from '../storage/file-names.ts';
import type { SetAside } from '../storage/records/records.ts';
import type { KeptSummary, Shelf } from '../storage/shelf.ts';
import { StorageTrouble, troubleFrom } from '../storage/words/trouble.ts';
import type { Book } from './book.ts';
import type { Pictures } from './pictures.ts';
import type { ReadyFile } from './session-types.ts';
import type { Settings } from './settings.ts';
import type { StateHolder } from './state-holder.ts';
import * as backupWords from './words/backup-words.ts';
import { stepNames } from './words/step-names.ts';

export interface Bundles {
  save(): Promise<ReadyFile | null>;
  open(file: File): Promise<boolean>;
  /** Other notebooks that are kept in this browser, newest first. */
  kept(): Promise<readonly KeptSummary[]>;
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
  /** What of a notebook that is opened next could not be read. */
  readonly brought: (id: string, setAside: readonly SetAside[]) => void;
}

export function startBundles({ holder, book, pictures, shelf, settings, take, brought }: Parts): Bundles {
  const replace = (notebook: Notebook, says: string) =>
    book.dispatchAll([{ do: 'replace notebook', notebook }], says);

  /** What the page's memory has not is asked of the shelf itself, which says so where it can't answer just now. */
  const picture = async (id: string) => (await pictures.get(id)) ?? shelf.picture(id);

  const save = async (): Promise<ReadyFile | null> => {
    const { notebook } = book;
    try {
      const { savedBundle } = await import('./save-bundle.ts');
      const { blob, left, unread } = await savedBundle(notebook, picture, holder.state.setAside);
      const now = new Date();
      if (left > 0) {
        holder.say('trouble', backupWords.leftOutSays(left));
      }
      if (unread > 0) {
        holder.say('trouble', backupWords.unreadInsideSays(unread));
      }
      if (left === 0 && unread === 0) {
        settings.setBackup(notebook.id, now.toISOString());
        if (book.notebook.id === notebook.id) holder.set({ lastBackup: now.toISOString() });
      }
      return { name: fileName(notebook.title, 'quire', now), blob };
    } catch (error) {
      const says = error instanceof StorageTrouble ? error.message : backupWords.notMadeSays;
      holder.say('trouble', says);
      return null;
    }
  };
  /** A file of many pictures takes its time; whoever asks again meanwhile gets the same one. */
  let saving: Promise<ReadyFile | null> | null = null;

  return {
    save() {
      saving ??= save().finally(() => {
        saving = null;
      });
      return saving;
    },
    async open(file) {
      try {
        const { openedBundle } = await import('./open-bundle.ts');
        const { notebook, setAside, unstored } = await openedBundle(file, shelf);
        if (unstored.length > 0) await pictures.add(unstored);
        brought(notebook.id, setAside);
        replace(notebook, stepNames.openBackup);
        holder.say('note', backupWords.openedSays(notebook.title));
        return true;
      } catch (error) {
        const says = error instanceof StorageTrouble ? error.message : backupWords.notOpenedSays;
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
