import type { Notebook } from '../notebook/model.ts';
import type { Picture } from '../storage/database.ts';
import type { SetAside } from '../storage/records/records.ts';
import { StorageTrouble } from '../storage/words/trouble.ts';
import { startSmallPictures } from './reading/small-picture.ts';
import { notReadBackSays } from './words/backup-words.ts';

export interface SavedBundle {
  readonly blob: Blob;
  /** Pictures that are kept but could not be put in. */
  readonly left: number;
  /** Leaves, sheets, plains and parts that are in it and can't be read as they are: they will be set aside when it is opened. */
  readonly unread: number;
}

/**
 * A notebook, what was set aside of it, and its pictures as one file that was read back and found whole: it opens again.
 * @param picture - null where there is none; rejects where it can't be had just now.
 * @throws StorageTrouble with a sentence where no such file could be made.
 */
export async function savedBundle(
  notebook: Notebook,
  picture: (id: string) => Promise<Picture | null>,
  setAside: readonly SetAside[] = [],
): Promise<SavedBundle> {
  const [{ writeBundle }, { blobGatherer }, { readBundle }] = await Promise.all([
    import('../storage/bundle/bundle-write.ts'),
    import('../storage/bundle/bundle-blob.ts'),
    import('../storage/bundle/bundle-read.ts'),
  ]);
  const gatherer = blobGatherer('application/zip');
  const decoder = startSmallPictures();
  const source = { picture, isDecodable: decoder.isDecodable, setAside };
  const { pictures, left } = await writeBundle(notebook, source, gatherer.write).finally(decoder.close);
  const blob = gatherer.blob();
  let count = 0;
  let found = 0;
  let unread = 0;
  try {
    const { notebook: back, setAside: aside } = await readBundle(blob, {
      newId: (kind) => `${kind}-${++count}`,
      // Each was decoded before it went in, and its checksum tells that it is the same.
      thumb: () => Promise.resolve(null),
      put: (portion) => {
        found += portion.length;
        return Promise.resolve();
      },
    });
    unread = aside.length - setAside.length;
    // Every field was checked as it was read back; this tells that nothing was left out.
    if (found !== pictures || lengthOf(back) + aside.length !== lengthOf(notebook) + setAside.length)
      throw new Error('less came back than went in');
  } catch (error) {
    throw new StorageTrouble('torn', notReadBackSays, { cause: error });
  }
  return { blob, left, unread };
}

const lengthOf = ({ leaves, drawer }: Notebook): number =>
  leaves.length + drawer.sheets.length + drawer.plains.length + drawer.parts.length;
