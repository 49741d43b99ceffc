import { describe, expect, it } from 'vitest';
import { heldKey } from '../../../src/drawer/held.ts';
import { filterChoices, matchesInDrawer } from '../../../src/drawer/look-through.ts';
import { DrawerMirror } from '../../../src/drawer/mirror.ts';
import type { Drawer } from '../../../src/drawer/model.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import { startDrawerClient } from '../../../src/workbench/drawer-client.ts';
import type { DrawerRequest } from '../../../src/workers/drawer-messages.ts';
import { sampleNotebook } from '../notebook/sample-notebook.ts';

const notebook = sampleNotebook();
const study = notebook.leaves.find((leaf): leaf is StudyLeaf => leaf.kind === 'study')!;

/** A worker in this very thread, that gets copies as a real one does. Stops when it is told to. */
function hereWorker() {
  const told: DrawerRequest[] = [];
  const made: Worker[] = [];
  const state = { stops: false };
  const make = () => {
    const mirror = new DrawerMirror();
    const worker = {
      onmessage: null as ((event: MessageEvent) => void) | null,
      onerror: null as (() => void) | null,
      terminate() {},
      postMessage(request: DrawerRequest) {
        const data = structuredClone(request);
        told.push(data);
        if (data.kind === 'things') mirror.take(data);
        if (data.kind === 'drawer') mirror.order(data);
        if (data.kind !== 'find') return;
        // One message after the other, as in a worker; the answer comes later.
        const { id, wish, filter, most } = data;
        const found = matchesInDrawer(mirror.drawer, data.study, wish, filter, most);
        const answer = structuredClone({ id, ...found, choices: filterChoices(mirror.drawer) });
        setTimeout(() => {
          if (state.stops) worker.onerror?.();
          else worker.onmessage?.({ data: answer } as MessageEvent);
        });
      },
    };
    made.push(worker as unknown as Worker);
    return worker as unknown as Worker;
  };
  return { make, told, made, state };
}

const handedOver = (told: readonly DrawerRequest[]) =>
  told.flatMap((one) =>
    one.kind === 'things'
      ? [...(one.sheets ?? []), ...(one.plains ?? []), ...(one.parts ?? [])].map(({ id }) => id)
      : [],
  );

describe('the drawer looked through off the page', () => {
  it('finds what looking through it here finds, whatever changed in between', async () => {
    const { make, told } = hereWorker();
    const client = startDrawerClient(make);
    const [first, second, third] = notebook.drawer.sheets;
    const many: Drawer = {
      ...notebook.drawer,
      sheets: [
        ...notebook.drawer.sheets,
        ...Array.from({ length: 250 }, (_, n) => ({ ...second!, id: `copy-${n}`, name: `Copy ${n}` })),
      ],
    };
    const renamed = { ...many, sheets: many.sheets.with(1, { ...second!, name: 'Another name' }) };
    const drawers: Drawer[] = [
      notebook.drawer,
      many,
      renamed,
      { ...renamed, sheets: renamed.sheets.filter((sheet) => sheet !== third) },
      { ...notebook.drawer, sheets: [third!, first!], parts: [] },
      notebook.drawer,
    ];
    for (const drawer of drawers) {
      for (const filter of [{}, { kinds: ['sheet'] as const }, { words: 'another' }, { leastCount: 2 }]) {
        const here = matchesInDrawer(drawer, study, { by: 'anchor' }, filter, 12);
        expect(await client.find(drawer, study, { by: 'anchor' }, filter, 12)).toEqual({
          ...structuredClone(here),
          choices: filterChoices(drawer),
        });
      }
    }
    // Only what is new is handed over, a hundred at most at a time.
    const counts = handedOver(told).reduce(
      (all, id) => all.set(id, (all.get(id) ?? 0) + 1),
      new Map<string, number>(),
    );
    expect(counts.get('copy-7')).toBe(1);
    expect(counts.get(first!.id)).toBe(1);
    for (const one of told)
      if (one.kind === 'things') expect(one.sheets?.length ?? 0).toBeLessThanOrEqual(100);
    client.close();
  });

  it('answers each who asks at the same time, by the drawer that was asked of', async () => {
    const { make } = hereWorker();
    const client = startDrawerClient(make);
    const few = { ...notebook.drawer, plains: [], parts: [] };
    const [all, some] = await Promise.all(
      [notebook.drawer, few].map((drawer) => client.find(drawer, study, { by: 'anchor' }, {}, 50)),
    );
    expect(all!.all).toBe(matchesInDrawer(notebook.drawer, study, { by: 'anchor' }, {}, 50).all);
    expect(some!.places.map(({ held }) => held.kind)).not.toContain('plain');
    expect(some!.all).toBeLessThan(all!.all);
    client.close();
  });

  it('says so where the worker stops, and starts a fresh one that knows nothing yet', async () => {
    const { make, made, state } = hereWorker();
    const client = startDrawerClient(make);
    state.stops = true;
    await expect(client.find(notebook.drawer, study, { by: 'anchor' }, {}, 5)).rejects.toThrow(/stopped/);
    state.stops = false;
    const found = await client.find(notebook.drawer, study, { by: 'anchor' }, {}, 5);
    expect(found.places.length).toBeGreaterThan(0);
    expect(made).toHaveLength(2);
    client.close();
  });

  it('hands over no picture and nothing of how a reading came to be', async () => {
    const { make, told } = hereWorker();
    const client = startDrawerClient(make);
    const sheets = notebook.drawer.sheets.map((sheet) => ({
      ...sheet,
      sides: { A: { ...sheet.sides.A, pictureId: 'p', asRead: sheet.sides.A.reading, hand: [] } },
    }));
    await client.find({ ...notebook.drawer, sheets }, study, { by: 'anchor' }, {}, 5);
    for (const one of told) {
      if (one.kind !== 'things') continue;
      for (const sheet of one.sheets ?? [])
        expect(Object.keys(sheet.sides.A).sort()).toEqual(['pictureId', 'reading']);
    }
    client.close();
  });
});

describe('a filter', () => {
  it('sifts what was found and leaves its order', () => {
    const all = matchesInDrawer(notebook.drawer, study, { by: 'anchor' }, {}, 50).places.map(
      ({ held }) => held,
    );
    const sheets = matchesInDrawer(notebook.drawer, study, { by: 'anchor' }, { kinds: ['sheet'] }, 50).places;
    expect(sheets.map(({ held }) => heldKey(held))).toEqual(
      all.filter(({ kind }) => kind === 'sheet').map(heldKey),
    );
  });
});
