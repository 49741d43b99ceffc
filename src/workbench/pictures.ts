import { partById, sheetById } from '../drawer/by-id.ts';
import type { Held } from '../drawer/model.ts';
import type { Notebook } from '../notebook/model.ts';
import type { KeptSide, Part } from '../sheet/model.ts';
import type { Picture } from '../storage/database.ts';
import { ownTurn } from '../storage/own-turn.ts';
import type { Shelf } from '../storage/shelf.ts';

/** Pictures in memory: those not stored yet, and addresses of those that are shown or were lately. */
export interface Pictures {
  /** Keeps a picture: on the shelf where that works, in memory until it does where not. */
  add(pictures: readonly Picture[]): Promise<void>;
  /** The same for a picture that was waited for: those who asked for its address in vain get it now. */
  arrived(picture: Picture): void;
  /** Stores what is not stored yet. @throws StorageTrouble; all of it is still in memory then. */
  storePending(): Promise<void>;
  get(id: string): Promise<Picture | null>;
  /** Remembers the file that a picture was read from, for as long as the page is open. */
  from(id: string, file: Blob): void;
  /** The file that a picture was read from, at its full size, or the stored picture where it is not at hand. */
  best(id: string): Promise<Blob | null>;
  /**
   * A blob: address, or null while it is being fetched; `onArrive` is called once for all that came in one turn of the
   * screen. What is not asked for any more is let go once there are many.
   */
  url(notebook: Notebook, held: Held, size: 'full' | 'thumb'): string | null;
  /** The same of a picture by its id. */
  urlOf(id: string): string | null;
  close(): void;
}

export interface PictureLimits {
  /** Addresses that are kept, at least. */
  readonly kept: number;
  /** None is let go that was asked for within this time, in ms. */
  readonly keptMs: number;
  /** Pictures that are fetched at the same time. */
  readonly atOnce: number;
  /** Pictures that wait to be fetched; of more, those asked for first are forgotten until they are asked for again. */
  readonly waiting: number;
  /** Wait in which further arrivals join the first, in ms. */
  readonly joinMs: number;
}

/** Ours. A screen of the drawer shows some thirty, a study up to eight at a time; 16 ms is a turn of the screen. */
const usual: PictureLimits = { kept: 300, keptMs: 20_000, atOnce: 6, waiting: 80, joinMs: 16 };

interface Address {
  /** Null while it is fetched and where there is none. */
  url: string | null;
  askedAt: number;
}

export function holdPictures(
  shelf: Shelf,
  onArrive: () => void,
  limits: PictureLimits = usual,
  now = () => performance.now(),
): Pictures {
  const pending = new Map<string, Picture>();
  /** Handles of files, which the browser keeps on its disk. */
  const files = new Map<string, Blob>();
  /** Those asked for last stand last. */
  const urls = new Map<string, Address>();
  /** What is still to be fetched: the newest is fetched first, for it is what is in view now. */
  const wanted: { readonly key: string; readonly make: () => Promise<Blob | null> }[] = [];
  let underway = 0;
  let telling: ReturnType<typeof setTimeout> | null = null;

  const get = async (id: string): Promise<Picture | null> =>
    pending.get(id) ?? (await shelf.picture(id).catch(() => null));

  const tell = () => {
    telling ??= setTimeout(() => {
      telling = null;
      letGo();
      onArrive();
    }, limits.joinMs);
  };

  const letGo = () => {
    for (const [key, { url, askedAt }] of urls) {
      if (urls.size <= limits.kept || askedAt > now() - limits.keptMs) return;
      if (url !== null) URL.revokeObjectURL(url);
      urls.delete(key);
    }
  };

  const address = (key: string, make: () => Promise<Blob | null>): string | null => {
    const known = urls.get(key);
    const entry: Address = known ?? { url: null, askedAt: 0 };
    entry.askedAt = now();
    urls.delete(key);
    urls.set(key, entry);
    if (known === undefined) {
      wanted.push({ key, make });
      // Scrolled past before its turn came.
      if (wanted.length > limits.waiting) urls.delete(wanted.shift()!.key);
      fetchNext();
    }
    return entry.url;
  };

  const fetchNext = () => {
    while (underway < limits.atOnce) {
      const next = wanted.pop();
      if (next === undefined) return;
      const entry = urls.get(next.key);
      // It may have been let go while it waited.
      if (entry === undefined) continue;
      underway++;
      // The next in a task of its own: answers that are there at once would all be taken in one, a screenful long.
      void fetch(next.key, entry, next.make)
        .then(ownTurn)
        .finally(() => {
          underway--;
          fetchNext();
        });
    }
  };

  const fetch = async (key: string, entry: Address, make: () => Promise<Blob | null>) => {
    const blob = await make().catch(() => null);
    // It may have been let go, or found by another, meanwhile.
    if (blob === null || urls.get(key) !== entry || entry.url !== null) return;
    entry.url = URL.createObjectURL(blob);
    tell();
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
      for (const [key, { url }] of urls) if (url === null && key.includes(picture.id)) urls.delete(key);
      void this.add([picture]);
      tell();
    },
    storePending,
    get,
    from: (id, file) => void files.set(id, file),
    async best(id) {
      const file = files.get(id);
      // A file may have been moved since; the stored picture is always there.
      const there = await file
        ?.slice(0, 1)
        .arrayBuffer()
        .then(
          () => true,
          () => false,
        );
      if (file !== undefined && there === true) return file;
      const picture = await get(id);
      return picture === null ? null : new Blob([picture.bytes], { type: picture.type });
    },
    urlOf(id) {
      return address(`full ${id}`, async () => {
        const picture = await get(id);
        return picture === null ? null : new Blob([picture.bytes], { type: picture.type });
      });
    },
    url(notebook, held, size) {
      const source = sourceOf(notebook, held);
      const id = source?.pictureId ?? null;
      if (source === null || id === null) return null;
      const { part } = source;
      const key =
        part === null ? `${size} ${id}` : `part ${id} ${JSON.stringify([part.frame, part.outline ?? null])}`;
      return address(key, async () => {
        const picture = await get(id);
        if (picture === null) return null;
        if (part !== null) return cut(picture, part);
        const { bytes, type } = size === 'thumb' ? (picture.thumb ?? picture) : picture;
        return new Blob([bytes], { type });
      });
    },
    close() {
      if (telling !== null) clearTimeout(telling);
      for (const { url } of urls.values()) if (url !== null) URL.revokeObjectURL(url);
      urls.clear();
      wanted.length = 0;
    },
  };
}

/** Where a held paper's picture comes from. */
export interface PictureSource {
  readonly kept: KeptSide;
  readonly part: Part | null;
  readonly pictureId: string | null;
}

/** The kept side and picture of a held paper; null for plains and for what is gone. */
export function sourceOf(notebook: Notebook, held: Held): PictureSource | null {
  const { drawer } = notebook;
  if (held.kind === 'plain') return null;
  const part = held.kind === 'part' ? (partById(drawer, held.id) ?? null) : null;
  const at = held.kind === 'sheet' ? held : part === null ? null : { id: part.sheetId, side: part.side };
  const kept = at === null ? undefined : sheetById(drawer, at.id)?.sides[at.side];
  return kept === undefined ? null : { kept, part, pictureId: part?.pictureId ?? kept.pictureId };
}

async function cut(picture: Picture, part: Part): Promise<Blob> {
  const bitmap = await createImageBitmap(new Blob([picture.bytes], { type: picture.type }));
  const { x, y, width, height } = part.frame;
  const w = Math.max(1, Math.round(width * bitmap.width));
  const h = Math.max(1, Math.round(height * bitmap.height));
  const canvas = new OffscreenCanvas(w, h);
  const context = canvas.getContext('2d');
  if (part.outline !== undefined && context !== null) {
    context.beginPath();
    for (const corner of part.outline) context.lineTo(corner.x * w, corner.y * h);
    context.clip();
  }
  context?.drawImage(bitmap, -Math.round(x * bitmap.width), -Math.round(y * bitmap.height));
  bitmap.close();
  // Beyond its outline a part is see-through, which a JPEG can't be.
  return canvas.convertToBlob({ type: part.outline === undefined ? picture.type : 'image/png' });
}
