import type { Notebook } from '../../../src/notebook/model.ts';
import { readBundle } from '../../../src/storage/bundle-read.ts';
import { bundleOf } from '../../../src/storage/bundle-write.ts';
import type { Picture } from '../../../src/storage/database.ts';
import { joinedBytes } from './small-pictures.ts';

/** The bytes of a bundle. */
export async function bundleBytes(
  notebook: Notebook,
  picture: (id: string) => Promise<Picture | null>,
): Promise<Uint8Array<ArrayBuffer>> {
  return joinedBytes(await bundleOf(notebook, picture));
}

let count = 0;

/** What comes out of a bundle; every picture counts as one that a decoder opens. */
export async function opened(file: Uint8Array<ArrayBuffer>) {
  return readBundle(
    file,
    (kind) => `${kind}-${++count}`,
    () => Promise.resolve(true),
  );
}
