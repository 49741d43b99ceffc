import { resolveObjectURL } from 'node:buffer';
import { describe, expect, it, vi } from 'vitest';
import type { Picture } from '../../../src/storage/database.ts';
import type { Shelf } from '../../../src/storage/shelf.ts';
import { holdPictures, type PictureLimits } from '../../../src/workbench/pictures.ts';

const picture = (id: string): Picture => ({
  id,
  bytes: new ArrayBuffer(4),
  type: 'image/png',
  width: 1,
  height: 1,
  thumb: null,
  addedAt: '2026-01-01T00:00:00.000Z',
});

/** Pictures from a shelf that has all that is asked of it, and what happened. */
function held(change: Partial<PictureLimits> = {}) {
  const fetched: string[] = [];
  const clock = { now: 0 };
  let told = 0;
  const shelf = {
    picture: async (id: string) => {
      fetched.push(id);
      return picture(id);
    },
  } as unknown as Shelf;
  const limits = { kept: 3, keptMs: 1000, atOnce: 2, waiting: 100, joinMs: 5, ...change };
  const pictures = holdPictures(
    shelf,
    () => (told += 1),
    limits,
    () => clock.now,
  );
  return { pictures, fetched, clock, told: () => told };
}

const pause = (ms: number) => new Promise((go) => setTimeout(go, ms));

describe('pictures that are shown', () => {
  it('are told of once for all that arrive together', async () => {
    const { pictures, told } = held({ joinMs: 30, atOnce: 40 });
    const ids = Array.from({ length: 40 }, (_, n) => `p${n}`);
    for (const id of ids) expect(pictures.urlOf(id)).toBeNull();
    await pause(80);
    expect(told()).toBe(1);
    for (const id of ids) expect(pictures.urlOf(id)).toMatch(/^blob:/);
    pictures.close();
  });

  it('are fetched a few at a time, those asked for last first', async () => {
    const { pictures, fetched } = held();
    for (const id of ['a', 'b', 'c', 'd', 'e']) pictures.urlOf(id);
    expect(fetched).toEqual(['a', 'b']);
    await vi.waitFor(() => expect(fetched).toEqual(['a', 'b', 'e', 'd', 'c']));
    pictures.close();
  });

  it('are fetched no more than those few in one task, even where the shelf answers at once', async () => {
    const { pictures, fetched } = held();
    for (const id of ['a', 'b', 'c', 'd', 'e']) pictures.urlOf(id);
    for (let n = 0; n < 100; n++) await Promise.resolve();
    expect(fetched).toEqual(['a', 'b']);
    await pause(60);
    expect(fetched).toHaveLength(5);
    pictures.close();
  });

  it('are not fetched where they were scrolled past, and can be asked for again', async () => {
    const { pictures, fetched } = held({ waiting: 2 });
    for (const id of ['a', 'b', 'c', 'd', 'e']) pictures.urlOf(id);
    await pause(60);
    expect(fetched).toEqual(['a', 'b', 'e', 'd']);
    pictures.urlOf('c');
    await pause(60);
    expect(pictures.urlOf('c')).toMatch(/^blob:/);
    pictures.close();
  });

  it('are let go once there are many and they have not been asked for lately, and fetched again when they are', async () => {
    const { pictures, fetched, clock } = held();
    for (const id of ['a', 'b', 'c']) pictures.urlOf(id);
    await pause(60);
    const first = pictures.urlOf('a')!;
    for (const id of ['b', 'c']) pictures.urlOf(id);
    expect(resolveObjectURL(first)?.size).toBe(4);
    clock.now = 1500;
    const keptOn = pictures.urlOf('b');
    pictures.urlOf('d');
    await pause(60);
    // The oldest went; those that were asked for stayed.
    expect(resolveObjectURL(first)).toBeUndefined();
    expect(pictures.urlOf('b')).toBe(keptOn);
    expect(pictures.urlOf('a')).toBeNull();
    await pause(60);
    expect(pictures.urlOf('a')).toMatch(/^blob:/);
    expect(fetched.filter((id) => id === 'a')).toHaveLength(2);
    pictures.close();
  });

  it('stay, however many, where all of them are in use', async () => {
    const { pictures, told } = held();
    const ids = Array.from({ length: 12 }, (_, n) => `p${n}`);
    for (let turn = 0; turn < 8; turn++) {
      for (const id of ids) pictures.urlOf(id);
      await pause(8);
    }
    const before = told();
    for (const id of ids) expect(pictures.urlOf(id)).toMatch(/^blob:/);
    await pause(60);
    expect(told()).toBe(before);
    pictures.close();
  });

  it('come to those who asked in vain, once they arrive', async () => {
    const none = { picture: async () => null, putPictures: async () => {} } as unknown as Shelf;
    let told = 0;
    const pictures = holdPictures(none, () => (told += 1));
    expect(pictures.urlOf('late')).toBeNull();
    await pause(30);
    expect(told).toBe(0);
    pictures.arrived(picture('late'));
    pictures.urlOf('late');
    await pause(40);
    expect(told).toBeGreaterThan(0);
    pictures.close();
  });
});
