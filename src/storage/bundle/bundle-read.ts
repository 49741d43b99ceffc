import * as v from 'valibot';
import { pictureHeader } from '../../files/picture-file.ts';
import type { Picture } from '../database.ts';
import { type Opened, openNotebookFile } from '../notebook-file.ts';
import { pictureIdsIn } from '../pictures-in.ts';
import { asideWithPictureIds, pictureIdsOf, withPictureIds } from '../pictures-of.ts';
import { idSchema } from '../schema/schema-ink.ts';
import { withoutMetadata } from '../without-metadata.ts';
import * as bundleWords from '../words/bundle-words.ts';
import { StorageTrouble } from '../words/trouble.ts';
import { bundleLimits, notebookEntry, portion } from './bundle-limits.ts';
import type { BundlePicture } from './bundle-write.ts';
import { type Sliced, unzipEntry, type ZipEntry, zipEntries } from './zip-directory.ts';

/** A picture out of a bundle, under a fresh id, so that nothing that is stored can be overwritten by it. */
export type BroughtPicture = Omit<Picture, 'addedAt'>;

/** What is done with a bundle as it is read. */
export interface BundleTaker {
  /** Gives a fresh id for the notebook and for each picture. */
  newId(kind: 'notebook' | 'picture'): string;
  /** Tries a picture's bytes in a real decoder and gives a small picture of it, or null for none. Rejects where they can't be decoded. */
  thumb(picture: Blob): Promise<Picture['thumb']>;
  /** Takes a portion of pictures; the next one is not fetched before it is done. */
  put(pictures: readonly BroughtPicture[]): Promise<void>;
}

/**
 * Opens a bundle, whoever made it, holding no more of it than a portion. Every name, size, checksum, field and picture is
 * checked; pictures are handed on as they are found sound, and whoever takes them must let go of them where this rejects.
 * @returns the notebook, and what of it could not be read; both name the fresh ids.
 * @throws StorageTrouble with one clear sentence, or what `put` throws.
 */
export async function readBundle(file: Sliced, taker: BundleTaker): Promise<Opened> {
  if (file.size === 0) throw new StorageTrouble('torn', bundleWords.emptyFile);
  if (file.size > bundleLimits.file) throw tooLarge();
  const entries = new Map<string, ZipEntry>();
  let all = 0;
  for (const entry of await zipEntries(file, bundleLimits)) {
    if (!isPlainName(entry.name) || entries.has(entry.name)) throw hostile();
    entries.set(entry.name, entry);
    all += entry.size;
  }
  if (all > bundleLimits.file) throw tooLarge();

  const told = await notebookFrom(file, entries);
  const { notebook, setAside } = openNotebookFile(told);
  const wanted = new Set([...pictureIdsOf(notebook), ...pictureIdsIn(setAside)]);
  const names = new Map<string, string>();
  let coming: Promise<BroughtPicture>[] = [];
  let bytes = 0;
  const handOn = async () => {
    const pictures = await Promise.all(coming);
    coming = [];
    bytes = 0;
    if (pictures.length > 0) await taker.put(pictures);
  };
  for (const picture of picturesListed(told)) {
    if (names.has(picture.id)) throw hostile();
    if (!wanted.has(picture.id)) continue;
    const sound = await checkedPicture(file, entries.get(picture.file), picture);
    const id = taker.newId('picture');
    names.set(picture.id, id);
    const one = decoded({ ...sound, id }, taker);
    // It is waited for with its portion; until then its failing must not count as unheard.
    one.catch(() => {});
    coming.push(one);
    bytes += sound.bytes.byteLength;
    if (coming.length >= portion.pictures || bytes >= portion.bytes) await handOn();
  }
  await handOn();
  return {
    notebook: { ...withPictureIds(notebook, names), id: taker.newId('notebook') },
    setAside: asideWithPictureIds(setAside, names),
  };
}

async function decoded(picture: Omit<BroughtPicture, 'thumb'>, taker: BundleTaker): Promise<BroughtPicture> {
  try {
    return { ...picture, thumb: await taker.thumb(new Blob([picture.bytes], { type: picture.type })) };
  } catch (error) {
    throw new StorageTrouble('torn', bundleWords.tornPicture, {
      cause: error,
    });
  }
}

async function notebookFrom(file: Sliced, entries: ReadonlyMap<string, ZipEntry>): Promise<unknown> {
  const entry = entries.get(notebookEntry);
  if (entry === undefined) {
    throw new StorageTrouble('torn', bundleWords.noNotebookInside);
  }
  if (entry.size > bundleLimits.notebook) throw tooLarge();
  const text = new TextDecoder('utf-8').decode(await unzipEntry(file, entry));
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new StorageTrouble('torn', bundleWords.tornNotebookInside, {
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
  throw new StorageTrouble('torn', bundleWords.tornPictureList);
}

async function checkedPicture(
  file: Sliced,
  entry: ZipEntry | undefined,
  listed: BundlePicture,
): Promise<Omit<BroughtPicture, 'id' | 'thumb'>> {
  if (entry === undefined) {
    throw new StorageTrouble('torn', bundleWords.missingPicture);
  }
  if (entry.size > bundleLimits.picture) throw tooLarge();
  const raw = await unzipEntry(file, entry);
  const header = pictureHeader(raw);
  const { type, width, height } = listed;
  if (header?.mime !== type || header.width !== width || header.height !== height) {
    throw new StorageTrouble('torn', bundleWords.otherPictureThanTold);
  }
  return { bytes: withoutMetadata(raw, type).buffer, type, width, height };
}

/** No way out of the folder, no absolute path, no odd characters. */
function isPlainName(name: string): boolean {
  return name.length <= 200 && !/(^|[\\/])\.\.([\\/]|$)|^[\\/]|[\\:\p{Cc}]/u.test(name);
}

function hostile(): StorageTrouble {
  return new StorageTrouble('torn', bundleWords.notLaidOutAsNotebook);
}

function tooLarge(): StorageTrouble {
  return new StorageTrouble('large', bundleWords.moreThanNotebookHolds);
}
