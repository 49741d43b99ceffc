import type { Picture } from '../../storage/database.ts';
import type { SmallAnswer, SmallRequest } from '../../workers/messages.ts';

/** Decodes pictures in a worker, as many at once as are asked for. */
export interface SmallPictures {
  /** A picture made small, as the drawer shows it. Rejects where it can't be decoded. */
  small(picture: Blob): Promise<Picture['thumb']>;
  /** Whether this browser's decoder opens it. Where there is no decoder, nothing speaks against it. */
  isDecodable(picture: Blob): Promise<boolean>;
  close(): void;
}

export function startSmallPictures(): SmallPictures {
  if (typeof Worker === 'undefined') {
    return {
      small: () => Promise.reject(new Error('there is no decoder')),
      isDecodable: () => Promise.resolve(true),
      close: () => {},
    };
  }
  const worker = new Worker(new URL('../../workers/small-worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, { resolve(answer: SmallAnswer): void; reject(error: Error): void }>();
  let count = 0;
  worker.onmessage = ({ data }: MessageEvent<SmallAnswer>) => {
    waiting.get(data.id)?.resolve(data);
    waiting.delete(data.id);
  };
  const fail = (why: Error) => {
    for (const { reject } of waiting.values()) reject(why);
    waiting.clear();
  };
  worker.onerror = () => fail(new Error('the worker could not be started, or ended'));
  const ask = (picture: Blob, wantsSmall: boolean) =>
    new Promise<SmallAnswer>((resolve, reject) => {
      const id = ++count;
      waiting.set(id, { resolve, reject });
      worker.postMessage({ id, picture, wantsSmall } satisfies SmallRequest);
    });
  return {
    async small(picture) {
      const { isSound, thumb } = await ask(picture, true);
      if (!isSound) throw new Error('the picture could not be decoded');
      return thumb;
    },
    isDecodable: async (picture) => (await ask(picture, false)).isSound,
    close() {
      worker.terminate();
      fail(new Error('it was closed'));
    },
  };
}
