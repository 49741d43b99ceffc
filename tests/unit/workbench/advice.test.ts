import { describe, expect, it, vi } from 'vitest';
import type { Drawer } from '../../../src/drawer/model.ts';
import { emptyNotebook } from '../../../src/notebook/empty.ts';
import { startAdvice } from '../../../src/workbench/advice.ts';
import { startComparisons } from '../../../src/workbench/comparisons.ts';
import { largeDrawer } from '../../support/large-drawer.ts';

const held = (n: number) => ({ kind: 'sheet', id: `sheet-${n}`, side: 'A' }) as const;
const pairAt = (n: number) => ({ anchor: held(0), candidate: held(n), distance: 'apart' }) as const;
const noPlaces = () => Promise.resolve(null);

/** The first so many sheets of one large drawer, so that both sizes hold the same pair. */
function notebookOf(count: number) {
  const { drawer } = largeDrawer(400);
  const some: Drawer = { ...drawer, sheets: drawer.sheets.slice(0, count) };
  return { ...emptyNotebook('n'), drawer: some };
}

describe('what could mend a pair', () => {
  it('is told at once beside a small drawer, once it is known where inks lie', async () => {
    const arrived = vi.fn();
    const notebook = notebookOf(20);
    const pair = pairAt(1);
    const advice = startAdvice(startComparisons(), noPlaces, arrived);
    advice.now(notebook, pair);
    await vi.waitFor(() => expect(advice.now(notebook, pair)).not.toBeNull());
    const calls = arrived.mock.calls.length;
    expect(advice.now(notebook, pair)).toBe(advice.now(notebook, pair));
    expect(arrived).toHaveBeenCalledTimes(calls);
  });

  it('is worked out in a task of its own beside a large one, and said to be there', async () => {
    const arrived = vi.fn();
    const notebook = notebookOf(400);
    const advice = startAdvice(startComparisons(), noPlaces, arrived);
    let pair = pairAt(1);
    let whole = await advice.whenKnown(notebook, pair);
    for (let n = 2; whole.length < 2; n++) {
      pair = pairAt(n);
      whole = await advice.whenKnown(notebook, pair);
    }
    const fresh = startAdvice(startComparisons(), noPlaces, arrived);
    await vi.waitFor(() => expect(fresh.now(notebook, pair)).not.toBeNull());
    expect(arrived.mock.calls.length).toBeGreaterThan(0);
    expect(fresh.now(notebook, pair)).toEqual(whole);
    // Asked for once more before it is there, it is not worked out twice.
    const again = startAdvice(startComparisons(), noPlaces, arrived);
    await vi.waitFor(() => expect(again.now(notebook, pair)).not.toBeNull());
    expect(again.now(notebook, pair)).toBe(again.now(notebook, pair));
  });
});
