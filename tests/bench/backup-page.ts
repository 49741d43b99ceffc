import { emptyNotebook } from '../../src/notebook/empty.ts';
import type { Notebook } from '../../src/notebook/model.ts';
import type { Sheet } from '../../src/sheet/model.ts';
import { openShelf } from '../../src/storage/shelf.ts';
import { withoutMetadata } from '../../src/storage/without-metadata.ts';
import { openedBundle } from '../../src/workbench/open-bundle.ts';
import { savedBundle } from '../../src/workbench/save-bundle.ts';
import { handSide } from '../support/sides.ts';

/** What the bench calls in a real page: a shelf is filled, a backup made of it, and opened on another shelf. */

const from = openShelf({ name: 'long-from' });
const to = openShelf({ name: 'long-to' });
let notebook: Notebook = emptyNotebook('notebook-long');
let file: Blob | null = null;
let opened: Notebook | null = null;

/** Noise packs badly, so few pictures are many bytes. All are decoded as they are. */
async function fill(sheets: number, side: number, type: 'image/png' | 'image/jpeg'): Promise<number> {
  const reading = handSide({ base: 'cream', hex: '#f4e8cd', inks: [['#1f3a5f', 0.2]] });
  const kinds = await Promise.all(Array.from({ length: 8 }, () => noise(side, type)));
  let bytes = 0;
  const list: Sheet[] = [];
  for (let i = 0; i < sheets; i++) {
    const ids = [`p${i}-a`, `p${i}-b`] as const;
    const pictures = ids.map((id, at) => {
      const one = kinds[(i * 2 + at) % kinds.length]!;
      bytes += one.byteLength;
      const addedAt = new Date().toISOString();
      return { id, bytes: one, type, width: side, height: side, thumb: null, addedAt };
    });
    await from.putPictures(pictures);
    list.push({
      id: `s${i}`,
      name: `Sheet ${i}`,
      note: '',
      count: 1,
      sizeMm: { width: 305, height: 305 },
      weight: null,
      sides: {
        A: { reading, pictureId: ids[0] },
        B: { reading, pictureId: ids[1] },
      },
    });
  }
  notebook = { ...notebook, title: 'Long', drawer: { sheets: list, plains: [], parts: [] } };
  return bytes;
}

async function noise(side: number, type: string): Promise<ArrayBuffer> {
  const image = new ImageData(side, side);
  for (let at = 0; at < image.data.length; at += 65_536)
    crypto.getRandomValues(image.data.subarray(at, at + 65_536));
  for (let at = 3; at < image.data.length; at += 4) image.data[at] = 255;
  const canvas = new OffscreenCanvas(side, side);
  canvas.getContext('2d')?.putImageData(image, 0, 0);
  return (await canvas.convertToBlob({ type, quality: 0.92 })).arrayBuffer();
}

async function save() {
  const watch = watchTasks();
  const made = await savedBundle(notebook, from.picture);
  file = made.blob;
  return { bytes: file.size, left: made.left, ...watch() };
}

async function open() {
  const watch = watchTasks();
  const got = await openedBundle(file!, to);
  opened = got.notebook;
  return { unstored: got.unstored.length, setAside: got.setAside.length, ...watch() };
}

/** Some pictures of the opened notebook against those that went in, byte for byte, and whether they have small ones. */
async function compared(): Promise<{ same: number; small: number; of: number }> {
  let [same, small, of] = [0, 0, 0];
  for (const [i, sheet] of opened!.drawer.sheets.entries()) {
    if (i % 7 !== 0) continue;
    of++;
    const back = await to.picture(sheet.sides.A.pictureId ?? '');
    const gone = await from.picture(notebook.drawer.sheets[i]!.sides.A.pictureId ?? '');
    // What pixels do not need is left out on the way: the encoder's colour profile.
    const pixels = gone === null ? null : withoutMetadata(new Uint8Array(gone.bytes), gone.type).buffer;
    if (back !== null && pixels !== null && equal(back.bytes, pixels)) same++;
    if (back?.thumb != null) small++;
  }
  return { same, small, of };
}

function equal(one: ArrayBuffer, other: ArrayBuffer): boolean {
  const [a, b] = [new Uint8Array(one), new Uint8Array(other)];
  return a.length === b.length && a.every((value, i) => value === b[i]);
}

/** The longest task since, and how long it took, in ms. */
function watchTasks() {
  const begun = performance.now();
  let longest = 0;
  const observer = new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) longest = Math.max(longest, duration);
  });
  observer.observe({ type: 'longtask' });
  return () => {
    observer.disconnect();
    return { ms: performance.now() - begun, longest };
  };
}

Object.assign(window, { bench: { fill, save, open, compared } });
