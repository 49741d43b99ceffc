import type { Held } from '../drawer/model.ts';
import type { Notebook } from '../notebook/model.ts';
import type { KeptSide, Part } from '../sheet/model.ts';
import type { Picture } from '../storage/database.ts';
import type { Shelf } from '../storage/shelf.ts';

/** Pictures in memory: those not stored yet, and addresses of those that are shown. */
export interface Pictures {
  /** Keeps a picture: on the shelf where that works, in memory until it does where not. */
  add(pictures: readonly Picture[]): Promise<void>;
  /** The same for a picture that was waited for: those who asked for its address in vain get it now. */
  arrived(picture: Picture): void;
  /** Stores what is not stored yet. @throws StorageTrouble; all of it is still in memory then. */
  storePending(): Promise<void>;
  get(id: string): Promise<Picture | null>;
  /** A blob: address, or null while it is being fetched; `onArrive` is called when it is there. */
  url(notebook: Notebook, held: Held, size: 'full' | 'thumb'): string | null;
  close(): void;
}

export function holdPictures(shelf: Shelf, onArrive: () => void): Pictures {
  const pending = new Map<string, Picture>();
  /** Address, or null while fetched and where there is none. */
  const urls = new Map<string, string | null>();

  const get = async (id: string): Promise<Picture | null> =>
    pending.get(id) ?? (await shelf.picture(id).catch(() => null));

  const fetch = async (key: string, make: () => Promise<Blob | null>) => {
    urls.set(key, null);
    const blob = await make().catch(() => null);
    // It may have been let go, or found by another, meanwhile.
    if (blob === null || urls.get(key) !== null) return;
    urls.set(key, URL.createObjectURL(blob));
    onArrive();
  };

  const storePending = async () => {
    const waiting = [...pending.values()];
    if (waiting.length === 0) return;
    await shelf.putPictures(waiting);
    for (const picture of waiting) {
      if (pending.get(picture.id) === picture) pending.delete(picture.id);
    }
  };

  return {
    async add(pictures) {
      for (const picture of pictures) pending.set(picture.id, picture);
      // Where storing fails, saving the notebook tries again and tells.
      await storePending().catch(() => {});
    },
    arrived(picture) {
      for (const [key, url] of urls) if (url === null && key.includes(picture.id)) urls.delete(key);
      void this.add([picture]);
    },
    storePending,
    get,
    url(notebook, held, size) {
      const source = sourceOf(notebook, held);
      const id = source?.kept.pictureId ?? null;
      if (source === null || id === null) return null;
      const { part } = source;
      const key = part === null ? `${size} ${id}` : `part ${id} ${JSON.stringify(part.frame)}`;
      if (!urls.has(key)) {
        void fetch(key, async () => {
          const picture = await get(id);
          if (picture === null) return null;
          if (part !== null) return cut(picture, part);
          const { bytes, type } = size === 'thumb' ? (picture.thumb ?? picture) : picture;
          return new Blob([bytes], { type });
        });
      }
      return urls.get(key) ?? null;
    },
    close() {
      for (const url of urls.values()) if (url !== null) URL.revokeObjectURL(url);
      urls.clear();
    },
  };
}

/** The kept side that a held paper's picture comes from; null for plains and for what is gone. */
export function sourceOf(
  notebook: Notebook,
  held: Held,
): { readonly kept: KeptSide; readonly part: Part | null } | null {
  const { sheets, parts } = notebook.drawer;
  if (held.kind === 'plain') return null;
  const part = held.kind === 'part' ? (parts.find((one) => one.id === held.id) ?? null) : null;
  const at = held.kind === 'sheet' ? held : part === null ? null : { id: part.sheetId, side: part.side };
  const kept = at === null ? undefined : sheets.find((sheet) => sheet.id === at.id)?.sides[at.side];
  return kept === undefined ? null : { kept, part };
}

async function cut(picture: Picture, part: Part): Promise<Blob> {
  const bitmap = await createImageBitmap(new Blob([picture.bytes], { type: picture.type }));
  const { x, y, width, height } = part.frame;
  const w = Math.max(1, Math.round(width * bitmap.width));
  const h = Math.max(1, Math.round(height * bitmap.height));
  const canvas = new OffscreenCanvas(w, h);
  canvas.getContext('2d')?.drawImage(bitmap, -Math.round(x * bitmap.width), -Math.round(y * bitmap.height));
  bitmap.close();
  return canvas.convertToBlob({ type: picture.type });
}
