import * as v from 'valibot';
import type { Notebook } from '../notebook/model.ts';
import { pictureHeader } from '../sheet/picture-file.ts';
import { bundleLimits, notebookEntry } from './bundle-limits.ts';
import type { BundlePicture } from './bundle-write.ts';
import type { Picture } from './database.ts';
import { openNotebookFile } from './notebook-file.ts';
import { asideWithPictureIds, pictureIdsIn, pictureIdsOf, withPictureIds } from './pictures-of.ts';
import type { SetAside } from './records.ts';
import { idSchema } from './schema-ink.ts';
import { strippedPicture } from './strip-picture.ts';
import { StorageTrouble } from './trouble.ts';
import { unzipEntry, type ZipEntry, zipEntries } from './zip-directory.ts';

/** What a sound bundle holds. All ids are fresh, so nothing that is stored can be overwritten by it. */
export interface Bundle {
  readonly notebook: Notebook;
  /** What of the notebook could not be read; the rest is in it. */
  readonly setAside: readonly SetAside[];
  readonly pictures: readonly Omit<Picture, 'thumb' | 'addedAt'>[];
}

/**
 * Opens a bundle, whoever made it. Every name, size, checksum, field and picture is checked before anything is given back.
 * @param newId - gives a fresh id for the notebook and for each picture.
 * @param isDecodable - tries a picture's bytes in a real decoder.
 * @throws StorageTrouble with one clear sentence; nothing has been changed then.
 */
export async function readBundle(
  bytes: Uint8Array,
  newId: (kind: 'notebook' | 'picture') => string,
  isDecodable: (picture: Blob) => Promise<boolean>,
): Promise<Bundle> {
  if (bytes.length === 0) throw new StorageTrouble('torn', 'This file is empty. Nothing was changed.');
  if (bytes.length > bundleLimits.file) throw tooLarge();
  const entries = new Map<string, ZipEntry>();
  for (const entry of zipEntries(bytes, bundleLimits.entries)) {
    if (!isPlainName(entry.name) || entries.has(entry.name)) throw hostile();
    entries.set(entry.name, entry);
  }
  const all = [...entries.values()].reduce((sum, entry) => sum + entry.size, 0);
  if (all > bundleLimits.all) throw tooLarge();

  const file = notebookFrom(bytes, entries);
  const { notebook, setAside } = openNotebookFile(file);
  const listed = picturesListed(file);
  const wanted = new Set([...pictureIdsOf(notebook), ...pictureIdsIn(setAside)]);
  const names = new Map<string, string>();
  const pictures: Bundle['pictures'][number][] = [];
  for (const picture of listed) {
    if (names.has(picture.id)) throw hostile();
    if (!wanted.has(picture.id)) continue;
    const checked = await checkedPicture(bytes, entries.get(picture.file), picture, isDecodable);
    const id = newId('picture');
    names.set(picture.id, id);
    pictures.push({ ...checked, id });
  }
  return {
    notebook: { ...withPictureIds(notebook, names), id: newId('notebook') },
    setAside: asideWithPictureIds(setAside, names),
    pictures,
  };
}

function notebookFrom(bytes: Uint8Array, entries: ReadonlyMap<string, ZipEntry>): unknown {
  const entry = entries.get(notebookEntry);
  if (entry === undefined) {
    throw new StorageTrouble(
      'torn',
      'This file holds no notebook. Choose a file that ends in .quire. Nothing was changed.',
    );
  }
  if (entry.size > bundleLimits.notebook) throw tooLarge();
  const text = new TextDecoder('utf-8').decode(unzipEntry(bytes, entry));
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new StorageTrouble('torn', 'The notebook in this file is torn. Nothing was changed.', {
      cause: error,
    });
  }
}

const pictureList = v.object({
  pictures: v.pipe(
    v.array(
      v.strictObject({
        id: idSchema,
        file: v.pipe(v.string(), v.regex(/^pictures\/[\w.-]{1,80}$/)),
        type: v.picklist(['image/png', 'image/jpeg']),
        width: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(bundleLimits.pictureSide)),
        height: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(bundleLimits.pictureSide)),
      }),
    ),
    v.maxLength(bundleLimits.entries),
  ),
});

function picturesListed(file: unknown): readonly BundlePicture[] {
  const parsed = v.safeParse(pictureList, file);
  if (parsed.success) return parsed.output.pictures;
  throw new StorageTrouble('torn', 'The list of pictures in this file is not whole. Nothing was changed.');
}

async function checkedPicture(
  bytes: Uint8Array,
  entry: ZipEntry | undefined,
  listed: BundlePicture,
  isDecodable: (picture: Blob) => Promise<boolean>,
): Promise<Omit<Bundle['pictures'][number], 'id'>> {
  if (entry === undefined) {
    throw new StorageTrouble('torn', 'A picture is missing in this file. Nothing was changed.');
  }
  if (entry.size > bundleLimits.picture) throw tooLarge();
  const raw = unzipEntry(bytes, entry);
  const header = pictureHeader(raw);
  const { type, width, height } = listed;
  if (header?.mime !== type || header.width !== width || header.height !== height) {
    throw new StorageTrouble(
      'torn',
      'A picture in this file is not what the file says it is. Nothing was changed.',
    );
  }
  const stripped = strippedPicture(raw, type);
  if (!(await isDecodable(new Blob([stripped], { type })))) {
    throw new StorageTrouble('torn', 'A picture in this file is torn. Nothing was changed.');
  }
  return { bytes: stripped.buffer, type, width, height };
}

/** No way out of the folder, no absolute path, no odd characters. */
function isPlainName(name: string): boolean {
  return name.length <= 200 && !/(^|[\\/])\.\.([\\/]|$)|^[\\/]|[\\:\p{Cc}]/u.test(name);
}

function hostile(): StorageTrouble {
  return new StorageTrouble(
    'torn',
    'This file is not laid out as a notebook file, and was not opened. Nothing was changed.',
  );
}

function tooLarge(): StorageTrouble {
  return new StorageTrouble(
    'large',
    'This file holds more than a notebook can, and was not opened. Nothing was changed.',
  );
}
