import { pictureHeader } from '../../files/picture-file.ts';
import { pictureLimits } from '../../files/picture-limits.ts';
import type { Places, Side } from '../../sheet/model.ts';
import { UnreadableImage } from '../../sheet/unreadable.ts';
import type {
  Look,
  Looked,
  ReadAnswer,
  ReadDone,
  ReadProgress,
  ReadRequest,
} from '../../workers/messages.ts';
import { readerStoppedSays } from '../words/picture-words.ts';

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
  /** Starts the workers before they are needed: starting one takes the page some milliseconds. */
  warm(): void;
  /** Stops a reading at once. Others go on. */
  cancel(id: string): void;
  close(): void;
}

interface Waiting {
  readonly request: ReadRequest;
  readonly isLarge: boolean;
  readonly onProgress: ((progress: ReadProgress) => void) | undefined;
  readonly resolve: (answer: ReadDone | Looked) => void;
  readonly reject: (error: Error) => void;
}

export type WorkerMaker = () => Worker;

const makeReadWorker: WorkerMaker = () =>
  new Worker(new URL('../../workers/read-worker.ts', import.meta.url), { type: 'module', name: 'read' });

/** One worker and what it is at. */
interface Lane {
  worker: Worker | null;
  busy: Waiting | null;
}

/** Workers at most, where the device has as many cores: more would take memory from the page for little. Ours. */
const mostLanes = 2;

/**
 * One picture at a time in each worker. A worker that is busy can't be told to stop, so cancelling ends it and a fresh
 * one takes the next; requests wait here and not in the worker for that reason. Of pictures so large that they are
 * reduced as they are decoded, one is open at a time: two would need twice the memory at once.
 */
export function startReadClient(make: WorkerMaker = makeReadWorker, lanesWanted = lanesHere()): ReadClient {
  const queue: Waiting[] = [];
  const lanes = Array.from({ length: lanesWanted }, (): Lane => ({ worker: null, busy: null }));

  function start(lane: Lane): Worker {
    const fresh = make();
    fresh.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
      if (fresh === lane.worker) hear(lane, data);
    };
    const crashed = () => {
      if (fresh !== lane.worker) return;
      end(lane);
      finish(lane, (one) => one.reject(new UnreadableImage(readerStoppedSays)));
    };
    fresh.onerror = crashed;
    fresh.onmessageerror = crashed;
    return fresh;
  }

  function end(lane: Lane): void {
    lane.worker?.terminate();
    lane.worker = null;
  }

  function next(): void {
    for (const lane of lanes) {
      if (lane.busy !== null) continue;
      const largeIsOpen = lanes.some(({ busy }) => busy?.isLarge);
      const at = queue.findIndex(({ isLarge }) => !(isLarge && largeIsOpen));
      const one = at < 0 ? undefined : queue.splice(at, 1)[0];
      if (one === undefined) return;
      lane.busy = one;
      lane.worker ??= start(lane);
      lane.worker.postMessage(one.request, [one.request.bytes]);
    }
  }

  function finish(lane: Lane, how: (one: Waiting) => void): void {
    const one = lane.busy;
    lane.busy = null;
    if (one !== null) how(one);
    next();
  }

  function hear(lane: Lane, answer: ReadAnswer): void {
    const { busy } = lane;
    if (busy === null || answer.id !== busy.request.id) return;
    if (answer.kind === 'progress') busy.onProgress?.(answer);
    else if (answer.kind === 'failed') finish(lane, (one) => one.reject(new UnreadableImage(answer.says)));
    else finish(lane, (one) => one.resolve(answer));
  }

  function ask(request: ReadRequest, onProgress?: Waiting['onProgress']): Promise<ReadDone | Looked> {
    return new Promise((resolve, reject) => {
      queue.push({ request, isLarge: isLarge(request.bytes), onProgress, resolve, reject });
      next();
    });
  }

  return {
    warm() {
      for (const lane of lanes) lane.worker ??= start(lane);
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
      const lane = lanes.find(({ busy }) => busy?.request.id === id);
      if (lane !== undefined) {
        end(lane);
        finish(lane, (one) => one.reject(new ReadingCancelled('cancelled')));
        return;
      }
      const at = queue.findIndex((one) => one.request.id === id);
      queue.splice(at < 0 ? queue.length : at, 1)[0]?.reject(new ReadingCancelled('cancelled'));
    },
    close() {
      const left = [...lanes.flatMap(({ busy }) => busy ?? []), ...queue.splice(0)];
      for (const lane of lanes) {
        end(lane);
        lane.busy = null;
      }
      for (const one of left) one.reject(new ReadingCancelled('closed'));
    },
  };
}

function lanesHere(): number {
  return Math.max(1, Math.min(mostLanes, globalThis.navigator?.hardwareConcurrency ?? 1));
}

/** True for what is reduced as it is decoded, and for what does not say how large it is. */
function isLarge(bytes: ArrayBuffer): boolean {
  const header = pictureHeader(new Uint8Array(bytes));
  return header !== null && (header.width ?? Infinity) * (header.height ?? 1) > pictureLimits.read;
}
