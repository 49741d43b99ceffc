import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import type { Notebook } from '../notebook/model.ts';
import { notebookEntry } from './bundle-limits.ts';
import type { Picture } from './database.ts';
import { fileFromNotebook } from './notebook-file.ts';
import { pictureIdsOf } from './pictures-of.ts';
import { strippedPicture } from './strip-picture.ts';

/** What stands in a bundle's notebook.json beside the notebook. */
export interface BundlePicture {
  readonly id: string;
  /** Name of the file in the bundle. */
  readonly file: string;
  readonly type: Picture['type'];
  readonly width: number;
  readonly height: number;
}

/**
 * A notebook with its pictures as one zip file, in parts that a Blob takes as they are. Pictures that `picture` does
 * not find are left out; their sheets keep what was read. Between pictures the page gets a turn.
 */
export async function bundleOf(
  notebook: Notebook,
  picture: (id: string) => Promise<Picture | null>,
): Promise<Uint8Array<ArrayBuffer>[]> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let failed: Error | null = null;
  const zip = new Zip((error, chunk) => {
    if (error) failed = error;
    else parts.push(chunk.slice());
  });
  const listed: BundlePicture[] = [];
  for (const id of pictureIdsOf(notebook)) {
    const found = await picture(id);
    if (found === null) continue;
    const { type, width, height } = found;
    const file = `pictures/${listed.length + 1}.${type.slice('image/'.length)}`;
    listed.push({ id, file, type, width, height });
    // Pictures are packed already.
    const entry = new ZipPassThrough(file);
    zip.add(entry);
    entry.push(strippedPicture(new Uint8Array(found.bytes), type), true);
  }
  const text = JSON.stringify({ ...fileFromNotebook(notebook), pictures: listed });
  const entry = new ZipDeflate(notebookEntry, { level: 6 });
  zip.add(entry);
  entry.push(new TextEncoder().encode(text), true);
  zip.end();
  if (failed !== null) throw failed;
  return parts;
}
