import type { Notebook } from '../notebook/model.ts';
import { type StorageTrouble, troubleFrom } from './trouble.ts';

export type SaveStatus =
  | { readonly status: 'saved' }
  | { readonly status: 'saving' }
  | { readonly status: 'failed'; readonly trouble: StorageTrouble };

export interface AutosaveOptions {
  /** Stores the notebook whole or rejects. Never called twice at once. */
  readonly save: (notebook: Notebook) => Promise<void>;
  readonly onStatus: (status: SaveStatus) => void;
  /** Called at once with every change, before anything is waited for: the write-ahead. */
  readonly noteAhead?: (notebook: Notebook) => void;
  /** Called once the newest change is stored. */
  readonly forgetAhead?: () => void;
  /** Wait after a change, in ms, in which further changes join it. Default 300. */
  readonly delayMs?: number;
  /** Waits between tries after a failure, in ms; the last goes on. Default 1, 4, 15, 60 seconds. */
  readonly retryMs?: readonly number[];
}

export interface Autosave {
  /** Tells of a change. What is in memory stays there until it is stored, however often storing fails. */
  changed(notebook: Notebook): void;
  /** Stores what is pending now. Resolves also where that failed: the status tells. */
  flush(): Promise<void>;
  /** What is not stored yet, or null. */
  pending(): Notebook | null;
  /** Stores what is pending and stops trying. */
  close(): Promise<void>;
}

/** Saves a little after the last change, one save at a time, and keeps trying where one fails. */
export function startAutosave(options: AutosaveOptions): Autosave {
  const { save, onStatus } = options;
  const delayMs = options.delayMs ?? 300;
  const retryMs = options.retryMs ?? [1_000, 4_000, 15_000, 60_000];
  let dirty: Notebook | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let running: Promise<void> | null = null;
  let failures = 0;
  let closed = false;

  const wait = (ms: number) => {
    if (timer !== null) clearTimeout(timer);
    timer = closed ? null : setTimeout(() => void flush(), ms);
  };

  async function once(): Promise<void> {
    while (dirty !== null) {
      const saving = dirty;
      onStatus({ status: 'saving' });
      try {
        await save(saving);
      } catch (error) {
        onStatus({ status: 'failed', trouble: troubleFrom(error) });
        wait(retryMs[Math.min(failures++, retryMs.length - 1)] ?? 60_000);
        return;
      }
      failures = 0;
      // A change that came while this one was being stored is stored next.
      if (dirty === saving) {
        dirty = null;
        options.forgetAhead?.();
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
    changed(notebook) {
      dirty = notebook;
      options.noteAhead?.(notebook);
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
