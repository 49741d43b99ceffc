import type { Notebook } from '../../../src/notebook/model.ts';
import { type BroughtPicture, readBundle } from '../../../src/storage/bundle/bundle-read.ts';
import { writeBundle } from '../../../src/storage/bundle/bundle-write.ts';
import type { Sliced } from '../../../src/storage/bundle/zip-directory.ts';
import type { Picture } from '../../../src/storage/database.ts';
import { joinedBytes } from './small-pictures.ts';

/** The bytes of a bundle; every picture counts as one that a decoder opens. */
export async function bundleBytes(
  notebook: Notebook,
  picture: (id: string) => Promise<Picture | null>,
  isDecodable = true,
): Promise<Uint8Array<ArrayBuffer>> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const source = { picture, isDecodable: () => Promise.resolve(isDecodable) };
  await writeBundle(notebook, source, (part) => void parts.push(part));
  return joinedBytes(parts);
}

let count = 0;

/** What comes out of a bundle, and in which portions. */
export async function opened(file: Uint8Array | Sliced, isDecodable = true) {
  const portions: (readonly BroughtPicture[])[] = [];
  const { notebook, setAside } = await readBundle(
    file instanceof Uint8Array ? new Blob([file.slice()]) : file,
    {
      newId: (kind) => `${kind}-${++count}`,
      thumb: () => (isDecodable ? Promise.resolve(null) : Promise.reject(new Error('no picture'))),
      put: async (portion) => void portions.push(portion),
    },
  );
  return { notebook, setAside, portions, pictures: portions.flat() };
}
