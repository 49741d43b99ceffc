import { type SaveStatus, startAutosave } from '../../storage/autosave.ts';
import type { Unsaved } from '../../storage/records/recover.ts';
import type { WriteAhead } from '../../storage/write-ahead.ts';
import type { Written } from '../../storage/written.ts';
import type { Pictures } from '../pictures.ts';
import { type CatchUpTools, catchUpOpen } from './catch-up-open.ts';
import { type Pending, type PutTools, putOnShelf } from './put-on-shelf.ts';

/** Stores what is open a little after it changes, and what was open before it. */
export interface NotebookWriter {
  /** Takes up a state of the open notebook: noted at once, stored soon. */
  take(written: Written): void;
  /** Takes up a state that is stored soon, and not noted: to lose it costs the reader nothing. */
  begin(written: Written): void;
  /** What the shelf could not take is tried again; what a closed tab noted of it stays until it is stored. */
  resume(unsaved: Unsaved): void;
  hasPending(): boolean;
  flush(): Promise<void>;
  close(): Promise<void>;
}

export interface WriterTools extends CatchUpTools, PutTools {
  readonly pictures: Pictures;
  readonly writeAhead: WriteAhead;
  /** `isNoted`: what is not stored yet would be found again all the same. */
  readonly onStatus: (status: SaveStatus, isNoted: boolean) => void;
  readonly delayMs?: number;
  readonly retryMs?: readonly number[];
}

export function startWriter(tools: WriterTools): NotebookWriter {
  const { known, writeAhead } = tools;
  /** Notebooks that were replaced before their last change was stored. */
  const parting = new Map<string, Pending>();
  const noted: Unsaved[] = [];
  let isNoted = true;

  const saver = startAutosave<Pending>({
    save: store,
    onStatus(status) {
      if (status.status === 'saved') isNoted = true;
      tools.onStatus(status, isNoted);
    },
    onStored({ notebook, count }) {
      writeAhead.forget(notebook.id, count);
      for (const { left } of noted.splice(0)) left.remove();
    },
    ...(tools.delayMs === undefined ? {} : { delayMs: tools.delayMs }),
    ...(tools.retryMs === undefined ? {} : { retryMs: tools.retryMs }),
  });

  async function store(pending: Pending): Promise<void> {
    await tools.pictures.storePending();
    for (const [id, old] of [...parting]) {
      await put(old, false);
      if (parting.get(id) === old) parting.delete(id);
      writeAhead.forget(id, old.count);
    }
    await put(pending, true);
  }

  const put = (pending: Pending, isOpen: boolean) =>
    putOnShelf(tools, pending, isOpen, (id) => catchUpOpen(tools, id, take));

  function take(written: Written): void {
    const { id } = written.notebook;
    const { revision, written: before } = known.of(id);
    const isWhole = writeAhead.note(revision === 0 && !known.has(id) ? null : before, written, revision);
    isNoted &&= isWhole;
    known.change(id, { written });
    const pending = saver.pending();
    if (pending !== null && pending.notebook.id !== id) parting.set(pending.notebook.id, pending);
    parting.delete(id);
    saver.changed({ ...written, count: writeAhead.count });
    // What is nowhere but in memory is stored without waiting for more.
    if (!isWhole) void saver.flush();
    if (known.shownId !== id) known.show(id);
  }

  return {
    take,
    begin(written) {
      known.change(written.notebook.id, { written });
      saver.changed({ ...written, count: writeAhead.count });
      known.show(written.notebook.id);
    },
    resume(unsaved) {
      const { written } = unsaved;
      noted.push(unsaved);
      saver.changed({ ...written, count: writeAhead.count });
      void saver.flush();
    },
    hasPending: () => saver.pending() !== null,
    flush: () => saver.flush(),
    close: () => saver.close(),
  };
}
