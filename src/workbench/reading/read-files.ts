import { pictureLimits } from '../../files/picture-limits.ts';
import { UnreadableImage } from '../../sheet/unreadable.ts';
import type { ReadRequest } from '../../workers/messages.ts';
import type { StateHolder } from '../state-holder.ts';
import { movedSays, tooLargeSays, unreadSays } from '../words/picture-words.ts';
import { type ReadClient, ReadingCancelled, type ReadResult } from './read-client.ts';
import type { ReadingList } from './reading-list.ts';
import { digestOf } from './same-picture.ts';

/** What is wanted of a reading. */
export type Wanted = Omit<ReadRequest, 'id' | 'bytes' | 'look'>;

/** A file whose reading is shown as underway under `id`. */
export interface FileToRead {
  readonly id: string;
  readonly file: File;
}

export interface ReadFile {
  /** Null where none could be had. */
  readonly digest: string | null;
  /** Null where it was not read; unless it was cancelled or was left unread, it was told why. */
  readonly result: ReadResult | null;
  /** True where it was left unread: the same picture is in the drawer, or is read for a file before it. */
  readonly isSame: boolean;
}

export interface FileReading {
  /** Null where it was cancelled or could not be read; a message has said so. */
  read(id: string, name: string, file: Blob, wanted: Wanted): Promise<ReadResult | null>;
  /**
   * Reads several as new pictures, some at the same time: a promise for each, in the order of the files. One that
   * `isKnown` by its digest is left unread, and so is one with the content of a file before it; `isKnown` null reads all.
   * Why one could not be read is told to `onTrouble`.
   */
  readAll(
    files: readonly FileToRead[],
    isKnown: ((digest: string | null) => boolean) | null,
    onTrouble: (name: string, says: string) => void,
  ): readonly Promise<ReadFile>[];
}

/** Files whose bytes are in memory at a time: as many as are read at once, and one that is ready to be. Ours. */
const mostInMemory = 3;

export const newPicture: Wanted = { options: {}, withPicture: true, findsPaper: true };

export function startFileReading(holder: StateHolder, list: ReadingList, client: ReadClient): FileReading {
  const say = (name: string, why: string) =>
    holder.say('trouble', `“${name}”: ${why}`, { of: 'drop', about: name });

  async function orSay<T>(name: string, work: () => Promise<T>, tell = say): Promise<T | null> {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof ReadingCancelled)) {
        const says = error instanceof Error ? error.message : unreadSays;
        tell(name, says);
      }
      return null;
    }
  }

  const readBytes = async (id: string, bytes: ArrayBuffer, wanted: Wanted) =>
    list.has(id)
      ? client.read({ ...wanted, id, bytes }, ({ stage, fraction }) => list.show(id, { stage, fraction }))
      : null;

  return {
    read: (id, name, file, wanted) => orSay(name, async () => readBytes(id, await bytesOf(file), wanted)),
    readAll(files, isKnown, onTrouble) {
      const digests: Promise<string | null>[] = [];
      return fewAtOnce(files, mostInMemory, async ({ id, file }, index) => {
        let digest: string | null = null;
        let isSame = false;
        const bytes = bytesOf(file);
        digests[index] = bytes.then(digestOf, () => null);
        const result = await orSay(
          file.name,
          async () => {
            // Several are worked out at a time, and a later one may be done first: the files before it decide.
            const all = await Promise.all(digests.slice(0, index + 1));
            digest = all[index] ?? null;
            isSame = isKnown !== null && digest !== null && (all.indexOf(digest) < index || isKnown(digest));
            const there = await bytes;
            return isSame ? null : readBytes(id, there, newPicture);
          },
          onTrouble,
        );
        return { digest, result, isSame };
      });
    },
  };
}

async function bytesOf(file: Blob): Promise<ArrayBuffer> {
  if (file.size > pictureLimits.file) {
    throw new UnreadableImage(tooLargeSays);
  }
  try {
    return await file.arrayBuffer();
  } catch {
    throw new UnreadableImage(movedSays);
  }
}

/** Starts `work` on each in turn, on no more than `most` at a time. @returns what each gives, in the same order. */
function fewAtOnce<T, R>(
  all: readonly T[],
  most: number,
  work: (one: T, index: number) => Promise<R>,
): readonly Promise<R>[] {
  const started: Promise<R>[] = [];
  for (const [i, one] of all.entries()) {
    const before = started[i - most] ?? Promise.resolve();
    const start = () => work(one, i);
    started.push(before.then(start, start));
  }
  return started;
}
