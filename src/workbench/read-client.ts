import type { Places, Side } from '../sheet/model.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import type { Look, Looked, ReadAnswer, ReadDone, ReadProgress, ReadRequest } from '../workers/messages.ts';

export interface ReadResult {
  readonly side: Side;
  readonly places: Places;
  readonly done: ReadDone;
}

/** Thrown to whoever waits for a reading that was cancelled. */
export class ReadingCancelled extends Error {
  override readonly name = 'ReadingCancelled';
}

export interface ReadClient {
  /**
   * Reads a picture file off the page's thread.
   * @throws UnreadableImage with one clear sentence; ReadingCancelled after `cancel`.
   */
  read(
    request: Omit<ReadRequest, 'withPicture'> & { withPicture?: boolean },
    onProgress?: (progress: ReadProgress) => void,
  ): Promise<ReadResult>;
  /**
   * Looks for something on a picture off the page's thread.
   * @throws as `read`.
   */
  look(id: string, bytes: ArrayBuffer, look: Look): Promise<Looked>;
  /** Starts the worker before it is needed: starting one takes the page some milliseconds. */
  warm(): void;
  /** Stops a reading at once. Others go on. */
  cancel(id: string): void;
  close(): void;
}

interface Waiting {
  readonly request: ReadRequest;
  readonly onProgress: ((progress: ReadProgress) => void) | undefined;
  readonly resolve: (answer: ReadDone | Looked) => void;
  readonly reject: (error: Error) => void;
}

export type WorkerMaker = () => Worker;

const makeReadWorker: WorkerMaker = () =>
  new Worker(new URL('../workers/read-worker.ts', import.meta.url), { type: 'module', name: 'read' });

/**
 * One worker, one picture at a time. A worker that is busy can't be told to stop, so cancelling ends it and a fresh one
 * takes the next; requests wait here and not in the worker for that reason.
 */
export function startReadClient(make: WorkerMaker = makeReadWorker): ReadClient {
  const queue: Waiting[] = [];
  let busy: Waiting | null = null;
  let worker: Worker | null = null;

  function start(): Worker {
    const fresh = make();
    fresh.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
      if (fresh === worker) hear(data);
    };
    const crashed = () => {
      if (fresh !== worker) return;
      end();
      settle((one) =>
        one.reject(
          new UnreadableImage(
            'This picture could not be read: the reader stopped. Try again, or drop a smaller copy.',
          ),
        ),
      );
    };
    fresh.onerror = crashed;
    fresh.onmessageerror = crashed;
    return fresh;
  }

  function end(): void {
    worker?.terminate();
    worker = null;
  }

  function next(): void {
    if (busy !== null) return;
    busy = queue.shift() ?? null;
    if (busy === null) return;
    worker ??= start();
    worker.postMessage(busy.request, [busy.request.bytes]);
  }

  function settle(how: (one: Waiting) => void): void {
    const one = busy;
    busy = null;
    if (one !== null) how(one);
    next();
  }

  function hear(answer: ReadAnswer): void {
    if (busy === null || answer.id !== busy.request.id) return;
    if (answer.kind === 'progress') busy.onProgress?.(answer);
    else if (answer.kind === 'failed') settle((one) => one.reject(new UnreadableImage(answer.says)));
    else settle((one) => one.resolve(answer));
  }

  function ask(request: ReadRequest, onProgress?: Waiting['onProgress']): Promise<ReadDone | Looked> {
    return new Promise((resolve, reject) => {
      queue.push({ request, onProgress, resolve, reject });
      next();
    });
  }

  return {
    warm() {
      worker ??= start();
    },
    async read(request, onProgress) {
      const done = await ask({ ...request, withPicture: request.withPicture ?? true }, onProgress);
      if (done.kind !== 'done') throw new Error('The reader looked where it was to read.');
      return { side: done.side, places: done.places, done };
    },
    async look(id, bytes, look) {
      const found = await ask({ id, bytes, options: {}, withPicture: false, look });
      if (found.kind !== 'looked') throw new Error('The reader read where it was to look.');
      return found;
    },
    cancel(id) {
      if (busy?.request.id === id) {
        end();
        settle((one) => one.reject(new ReadingCancelled('cancelled')));
        return;
      }
      const at = queue.findIndex((one) => one.request.id === id);
      queue.splice(at < 0 ? queue.length : at, 1)[0]?.reject(new ReadingCancelled('cancelled'));
    },
    close() {
      end();
      for (const one of [...(busy === null ? [] : [busy]), ...queue.splice(0)]) {
        one.reject(new ReadingCancelled('closed'));
      }
      busy = null;
    },
  };
}
