import { afterAll, describe, expect, it } from 'vitest';
import { pictureLimits } from '../../src/files/picture-limits.ts';
import { ReadingCancelled, startReadClient } from '../../src/workbench/reading/read-client.ts';
import type { ReadProgress } from '../../src/workers/messages.ts';

/** The reading worker as the page uses it, in a real browser. */

const client = startReadClient();
afterAll(() => client.close());

let count = 0;
const read = (bytes: ArrayBuffer, onProgress?: (progress: ReadProgress) => void) =>
  client.read({ id: `r${++count}`, bytes, options: {} }, onProgress);

const cream = '#f4e8cd';
const navy = '#1f3a5f';
const coral = '#e2725b';

describe('a picture of a paper', () => {
  it('gives its inks, their places, and a picture and a small one to keep', async () => {
    const stages: string[] = [];
    const { side, places, done } = await read(await dots(600, 400, 'image/png'), ({ stage }) =>
      stages.push(stage),
    );
    expect([side.base, ...side.inks].map((ink) => ink.hex).sort()).toEqual([navy, coral, cream].sort());
    expect(side.base.hex).toBe(cream);
    expect(places.labels.length).toBe(places.width * places.height);
    expect(new Set(places.labels).has(1)).toBe(true);
    expect(stages).toEqual(['opening', 'reading', 'keeping']);
    expect(done).toMatchObject({
      fullWidth: 600,
      fullHeight: 400,
      picture: { width: 600, type: 'image/png' },
      thumb: { width: 240 },
    });
    const again = await createImageBitmap(new Blob([done.picture!.bytes]));
    expect([again.width, again.height]).toEqual([600, 400]);
  });

  it('reads the same twice', async () => {
    const one = await read(await dots(300, 300, 'image/png'));
    const other = await read(await dots(300, 300, 'image/png'));
    expect(other.side).toEqual(one.side);
    expect(other.places).toEqual(one.places);
  });

  it('is read again from what was kept to the same inks', async () => {
    const first = await read(await dots(600, 600, 'image/jpeg'));
    const second = await read(first.done.picture!.bytes);
    expect(second.side.inks.length).toBe(first.side.inks.length);
  });
});

describe('what can’t be read gets a clear sentence', () => {
  const text = (words: string) => new TextEncoder().encode(words).buffer as ArrayBuffer;
  it.each([
    ['an empty file', () => new ArrayBuffer(0), 'This file is empty'],
    [
      'text renamed to .png',
      () => text('Dear all, this is a letter.'),
      'not a picture, whatever its name says',
    ],
    ['a picture of one pixel', () => dots(1, 1, 'image/png'), 'only 1 × 1 pixels: too small'],
    ['a fully transparent picture', () => clear(40, 40), 'fully transparent'],
    ['a torn PNG', async () => (await dots(200, 200, 'image/png')).slice(0, 900), 'is damaged'],
    ['a head without a body', () => Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16).buffer, 'is damaged'],
  ])('%s', async (_, make, says) => {
    await expect(read(await make())).rejects.toThrow(says);
    // And the reader goes on.
    expect((await read(await dots(120, 120, 'image/png'))).side.base.hex).toBe(cream);
  });

  it('a picture with 200 megapixels, before it is decoded', async () => {
    const bytes = await dots(64, 64, 'image/png');
    const view = new DataView(bytes);
    view.setUint32(16, 20_000);
    view.setUint32(20, 10_000);
    await expect(read(bytes)).rejects.toThrow(/200 megapixels.*Save a copy/);
  });
});

describe('a sheet on a table', () => {
  const paperOf = async (bytes: ArrayBuffer) => {
    const { done } = await client.read({ id: 'paper', bytes, options: {}, findsPaper: true });
    return done;
  };

  it('is asked about where it lies as straight and as much in the middle as a print lies on its paper', async () => {
    const done = await paperOf(await dots(900, 700, 'image/jpeg', 130));
    expect(done.paper).toMatchObject({ taken: null });
    expect([done.width, done.height]).toEqual([900, 700]);
  });

  it('is cut out before it is read where it lies as a hand lays it, and the photograph comes with it', async () => {
    const done = await paperOf(await dots(900, 700, 'image/jpeg', 130, 0.08));
    expect(done.paper?.taken).toMatchObject({ width: 900, height: 700 });
    // Of 640 × 440, in the proportion of the sold size that is nearest.
    expect(done.width / done.height).toBeCloseTo(297 / 210, 1);
    expect(Math.abs(done.width - 640)).toBeLessThan(20);
    // A JPEG's cream, to a step.
    expect(done.side.base.hex).toMatch(/^#f4e[89]cd$/);
  });

  it('is told from a picture that is all sheet, and looked for only where that is asked', async () => {
    expect(await paperOf(await dots(900, 700, 'image/jpeg'))).not.toHaveProperty('paper');
    const { done } = await read(await dots(900, 700, 'image/jpeg', 130));
    expect(done).not.toHaveProperty('paper');
  });
});

describe('cancelling', () => {
  it('stops a reading at once, and the others go on', async () => {
    const slow = client.read({ id: 'slow', bytes: await dots(3000, 3000, 'image/jpeg'), options: {} });
    const next = read(await dots(120, 120, 'image/png'));
    const last = client.read({ id: 'last', bytes: await dots(120, 120, 'image/png'), options: {} });
    client.cancel('slow');
    client.cancel('last');
    await expect(slow).rejects.toBeInstanceOf(ReadingCancelled);
    await expect(last).rejects.toBeInstanceOf(ReadingCancelled);
    expect((await next).side.base.hex).toBe(cream);
  });
});

describe('a large photograph', () => {
  it('of 24 megapixels is reduced as it is decoded', async () => {
    const { done } = await read(await dots(6000, 4000, 'image/jpeg'));
    expect(done).toMatchObject({ fullWidth: 6000, fullHeight: 4000 });
    expect(done.width * done.height).toBeLessThanOrEqual(pictureLimits.read * 1.01);
    expect(done.picture).toMatchObject({ width: 1600, type: 'image/jpeg' });
  });

  it('leaves the page free while it is read', async () => {
    const bytes = await dots(4000, 3000, 'image/jpeg');
    const long: number[] = [];
    const watch = new PerformanceObserver((list) =>
      long.push(...list.getEntries().map((entry) => entry.duration)),
    );
    watch.observe({ entryTypes: ['longtask'] });
    let turns = 0;
    const timer = setInterval(() => turns++, 10);
    await read(bytes);
    clearInterval(timer);
    watch.disconnect();
    // How long it takes and how long the longest task was is measured by the bench; here the page must have had its turns.
    expect(turns).toBeGreaterThan(3);
  });
});

/** Dots on cream; with a `margin`, on a sheet that lies on a dark table, that far from the picture's edge. */
async function dots(width: number, height: number, type: string, margin = 0, turn = 0): Promise<ArrayBuffer> {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d')!;
  context.fillStyle = '#4a3526';
  context.fillRect(0, 0, width, height);
  context.translate(width / 2, height / 2);
  context.rotate(turn);
  context.translate(-width / 2, -height / 2);
  context.beginPath();
  context.rect(margin, margin, width - 2 * margin, height - 2 * margin);
  context.clip();
  context.fillStyle = cream;
  context.fillRect(0, 0, width, height);
  const step = Math.max(30, width / 40);
  for (let y = step / 2, row = 0; y < height; y += step, row++) {
    for (let x = step / 2, column = 0; x < width; x += step, column++) {
      context.fillStyle = (row + column) % 2 === 0 ? navy : coral;
      context.beginPath();
      context.arc(x, y, step * 0.3, 0, 7);
      context.fill();
    }
  }
  return (await canvas.convertToBlob({ type, quality: 0.95 })).arrayBuffer();
}

async function clear(width: number, height: number): Promise<ArrayBuffer> {
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext('2d');
  return (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer();
}
