import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { emptyNotebook } from '../../src/notebook/empty.ts';
import type { Notebook } from '../../src/notebook/model.ts';
import { type SaveStatus, startAutosave } from '../../src/storage/autosave.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const titled = (title: string) => emptyNotebook('n', title);

/** A store in which saves take a while and fail when told to. */
function slowStore() {
  const stored: string[] = [];
  const statuses: SaveStatus[] = [];
  let failing: Error | null = null;
  let running = 0;
  const saver = startAutosave({
    save: async (notebook: Notebook) => {
      expect(++running, 'one save at a time').toBe(1);
      await new Promise((done) => setTimeout(done, 50));
      running--;
      if (failing !== null) throw failing;
      stored.push(notebook.title);
    },
    onStatus: (status) => statuses.push(status),
  });
  return { saver, stored, statuses, fail: (error: Error | null) => (failing = error) };
}

describe('saving as you go', () => {
  it('joins changes that come close together', async () => {
    const { saver, stored, statuses } = slowStore();
    for (const title of ['a', 'ab', 'abc']) saver.changed(titled(title));
    await vi.advanceTimersByTimeAsync(400);
    expect(stored).toEqual(['abc']);
    expect(statuses.at(-1)).toEqual({ status: 'saved' });
    expect(saver.pending()).toBeNull();
  });

  it('stores a change that came while another was being stored', async () => {
    const { saver, stored } = slowStore();
    saver.changed(titled('one'));
    await vi.advanceTimersByTimeAsync(310);
    saver.changed(titled('two'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(stored).toEqual(['one', 'two']);
  });

  it('keeps what could not be stored, says so, and tries again by itself', async () => {
    const { saver, stored, statuses, fail } = slowStore();
    fail(new DOMException('full', 'QuotaExceededError'));
    saver.changed(titled('work'));
    await vi.advanceTimersByTimeAsync(400);
    expect(statuses.at(-1)).toMatchObject({ status: 'failed', trouble: { kind: 'full' } });
    expect(saver.pending()?.title).toBe('work');
    await vi.advanceTimersByTimeAsync(30_000);
    expect(stored).toEqual([]);
    fail(null);
    await vi.advanceTimersByTimeAsync(61_000);
    expect(stored).toEqual(['work']);
    expect(statuses.at(-1)).toEqual({ status: 'saved' });
  });

  it('stores at once when told to, and before it is closed', async () => {
    const { saver, stored } = slowStore();
    saver.changed(titled('now'));
    const flushed = saver.flush();
    await vi.advanceTimersByTimeAsync(50);
    await flushed;
    expect(stored).toEqual(['now']);
    saver.changed(titled('last'));
    const closed = saver.close();
    await vi.advanceTimersByTimeAsync(50);
    await closed;
    expect(stored).toEqual(['now', 'last']);
  });
});
