import { type StorageTrouble, troubleFrom } from './words/trouble.ts';

export type SaveStatus =
  | { readonly status: 'saved' }
  | { readonly status: 'saving' }
  | { readonly status: 'failed'; readonly trouble: StorageTrouble };

export interface AutosaveOptions<T> {
  /** Stores the state whole or rejects. Never called twice at once. */
  readonly save: (state: T) => Promise<void>;
  readonly onStatus: (status: SaveStatus) => void;
  /** Called once a state is stored, whether or not a newer one waits. */
  readonly onStored?: (state: T) => void;
  /** Longest wait after a change, in ms, in which further changes join it. Default 300. */
  readonly delayMs?: number;
  /** Waits between tries after a failure, in ms; the last goes on. Default 1, 4, 15, 60 seconds. */
  readonly retryMs?: readonly number[];
}

export interface Autosave<T> {
  /** Tells of a change. What is in memory stays there until it is stored, however often storing fails. */
  changed(state: T): void;
  /** Stores what is pending now. Resolves also where that failed: the status tells. */
  flush(): Promise<void>;
  /** What is not stored yet, or null. */
  pending(): T | null;
  /** Stores what is pending and stops trying. */
  close(): Promise<void>;
}

/** Wait after a change before it is stored, in ms. */
export const usualDelayMs = 300;

/**
 * Saves a little after the first of several changes, never only after the last, so that going on writing puts nothing
 * off; one save at a time, and again where one fails.
 */
export function startAutosave<T extends object>(options: AutosaveOptions<T>): Autosave<T> {
  const { save, onStatus } = options;
  const delayMs = options.delayMs ?? usualDelayMs;
  const retryMs = options.retryMs ?? [1_000, 4_000, 15_000, 60_000];
  let dirty: T | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let running: Promise<void> | null = null;
  let failures = 0;
  let closed = false;

  let due = 0;

  /** What is due sooner stays so. */
  const wait = (ms: number) => {
    const at = Date.now() + ms;
    if (closed || (timer !== null && due <= at)) return;
    if (timer !== null) clearTimeout(timer);
    due = at;
    timer = setTimeout(() => void flush(), ms);
  };

  async function once(): Promise<void> {
    while (dirty !== null) {
      const saving: T = dirty;
      onStatus({ status: 'saving' });
      try {
        await save(saving);
      } catch (error) {
        onStatus({ status: 'failed', trouble: troubleFrom(error) });
        wait(retryMs[Math.min(failures++, retryMs.length - 1)] ?? 60_000);
        return;
      }
      failures = 0;
      options.onStored?.(saving);
      // A change that came while this one was being stored is stored next.
      if (dirty === saving) {
        dirty = null;
        onStatus({ status: 'saved' });
      }
    }
  }

  function flush(): Promise<void> {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    running ??= once().finally(() => {
      running = null;
    });
    return running;
  }

  return {
    changed(state) {
      dirty = state;
      if (failures === 0) onStatus({ status: 'saving' });
      wait(delayMs);
    },
    flush,
    pending: () => dirty,
    async close() {
      closed = true;
      await flush();
    },
  };
}
