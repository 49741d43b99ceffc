import { pictureHeader } from '../../files/picture-file.ts';
import type { Notebook } from '../../notebook/model.ts';
import type { Picture } from '../database.ts';
import { fileFromNotebook } from '../notebook-file.ts';
import { pictureIdsIn } from '../pictures-in.ts';
import { pictureIdsOf } from '../pictures-of.ts';
import type { RecordKind, SetAside } from '../records/records.ts';
import { withoutMetadata } from '../without-metadata.ts';
import { tooMuchForOneBackup } from '../words/bundle-words.ts';
import { StorageTrouble } from '../words/trouble.ts';
import { bundleLimits, notebookEntry } from './bundle-limits.ts';
import { type Write, zipWriter } from './zip-write.ts';

/** What stands in a bundle's notebook.json beside the notebook. */
export interface BundlePicture {
  readonly id: string;
  /** Name of the file in the bundle. */
  readonly file: string;
  readonly type: Picture['type'];
  readonly width: number;
  readonly height: number;
}

/** Where a bundle's pictures come from. */
export interface BundleSource {
  /** Null where there is none: its sheet keeps what was read. Rejects where it can't be had just now. */
  picture(id: string): Promise<Picture | null>;
  /** Tries a picture's bytes in a real decoder. */
  isDecodable(picture: Blob): Promise<boolean>;
  /** What could not be read when the notebook was opened goes with it as it was found. */
  readonly setAside?: readonly SetAside[];
}

export interface Written {
  /** Pictures in it. */
  readonly pictures: number;
  /** Pictures that are kept and could not be put in: not to be had, or such that no bundle with them would open. */
  readonly left: number;
}

/** Pictures that are fetched and tried before their turn comes. */
const mostInMemory = 4;

/**
 * Writes a notebook with its pictures as one zip file, a picture at a time; only what the reader of bundles takes goes in.
 * @throws StorageTrouble where the notebook itself is more than a bundle can hold, and whatever `write` throws.
 */
export async function writeBundle(notebook: Notebook, source: BundleSource, write: Write): Promise<Written> {
  const zip = zipWriter(write);
  const listed: BundlePicture[] = [];
  let left = 0;
  const { setAside = [] } = source;
  const ids = [...new Set([...pictureIdsOf(notebook), ...pictureIdsIn(setAside)])];
  const coming: Promise<Sound>[] = [];
  for (let at = 0; at < ids.length; at++) {
    while (coming.length < mostInMemory && at + coming.length < ids.length) {
      coming.push(soundPicture(ids[at + coming.length]!, source));
    }
    const sound = await coming.shift()!;
    if (sound === 'none') continue;
    if (sound === 'unsound') {
      left++;
      continue;
    }
    const { bytes, ...picture } = sound;
    const file = `pictures/${listed.length + 1}.${picture.type.slice('image/'.length)}`;
    listed.push({ ...picture, file });
    // Pictures are packed already.
    await zip.store(file, bytes);
  }
  const text = JSON.stringify({
    ...fileFromNotebook(notebook),
    notebook: withAside(notebook, setAside),
    pictures: listed,
  });
  const bytes = new TextEncoder().encode(text);
  if (bytes.length > bundleLimits.notebook) {
    throw new StorageTrouble('large', tooMuchForOneBackup);
  }
  await zip.pack(notebookEntry, bytes);
  await zip.end();
  return { pictures: listed.length, left };
}

/** Behind what is sound in each list, so that it is found and set aside again. */
function withAside(notebook: Notebook, setAside: readonly SetAside[]): unknown {
  if (setAside.length === 0) return notebook;
  const { leaves, drawer } = notebook;
  const of = (what: RecordKind) => setAside.filter((one) => one.what === what).map(({ value }) => value);
  return {
    ...notebook,
    leaves: [...leaves, ...of('leaf')],
    drawer: {
      sheets: [...drawer.sheets, ...of('sheet')],
      plains: [...drawer.plains, ...of('plain')],
      parts: [...drawer.parts, ...of('part')],
    },
  };
}

type Sound = (Omit<BundlePicture, 'file'> & { readonly bytes: Uint8Array<ArrayBuffer> }) | 'none' | 'unsound';

async function soundPicture(id: string, source: BundleSource): Promise<Sound> {
  try {
    const found = await source.picture(id);
    if (found === null) return 'none';
    const { type, width, height } = found;
    const bytes = withoutMetadata(new Uint8Array(found.bytes), type);
    const header = pictureHeader(bytes);
    const isAsTold = header?.mime === type && header.width === width && header.height === height;
    const fits = bytes.length <= bundleLimits.picture && Math.max(width, height) <= bundleLimits.pictureSide;
    if (!isAsTold || !fits || !(await source.isDecodable(new Blob([bytes], { type })))) return 'unsound';
    return { id, type, width, height, bytes };
  } catch {
    return 'unsound';
  }
}
