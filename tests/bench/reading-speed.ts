import { join } from 'node:path';
import sharp from 'sharp';
import type { PixelImage } from '../../src/sheet/model.ts';
import { readSide } from '../../src/sheet/read-side.ts';
import { judgedFolder } from '../support/judging/judged.ts';
import { drawSheet, toImage } from '../support/sheets/draw-sheet.ts';
import { printed } from '../support/sheets/kinds.ts';
import { noise } from '../support/sheets/spoil.ts';

/** Turns to warm up, in which the machine's own translator is still at work, and turns that count. */
const warmUp = 4;
const turns = 9;

/**
 * Flat sheets, dots and photographs of twelve megapixels, and papers with a surface at 512 px, on one core: reading, beside one pass that sums the same bytes and the memory it takes. The page's
 * readers are warmed up before a picture comes (`src/workers/read-worker.ts`), so that is what counts; what the first
 * reading of a process takes stands beside it.
 */
export async function speedRows(print: (line: string) => void): Promise<void> {
  const flat = noise(toImage(drawSheet(40_999, { width: 3464, samples: 1 })), 2, 1);
  measure('12 megapixels, flat print', flat, print);
  const dots = printed(40_998, 150.7, 600, 3464).image;
  measure('12 megapixels, halftone', dots, print);
  for (const [name, file] of photographs)
    measure(
      `12 megapixels, photograph (${name})`,
      noise(await resized(file, 3464), 3, 1),
      print,
      (sum) => 10 * sum + 60,
    );
  for (const [name, file] of textures) measure(`512 px, ${name}`, await resized(file, 512), print, () => 90);
}

/** Real pictures of tests/judged-papers, where each has its source: photographs, and papers with a surface. */
const photographs = [
  ['deep field', 'p29-photo-deep-field.jpg'],
  ['grass', 'p30-photo-grass.jpg'],
] as const;
const textures = [
  ['kraft card', 'p20-kraft-card.jpg'],
  ['linen', 'p22-mustard-linen.jpg'],
  ['flecked', 'p23-robin-egg-flecked.jpg'],
  ['distressed', 'p26-distressed-teal-rust.jpg'],
  ['woodgrain', 'p27-woodgrain-driftwood.jpg'],
  ['grass', 'p30-photo-grass.jpg'],
] as const;

async function resized(file: string, side: number): Promise<PixelImage> {
  const { data, info } = await sharp(join(judgedFolder, 'pictures', file))
    .resize(side, side)
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data: new Uint8ClampedArray(data) };
}

/** `bar` is what the reading may take, in ms, given the time of one summing pass; the flat sheets' is what they took before. */
function measure(
  name: string,
  image: PixelImage,
  print: (line: string) => void,
  bar?: (sum: number) => number,
): void {
  const sum: number[] = [];
  const read: number[] = [];
  let memory = 0;
  let kept = 0;
  for (let turn = 0; turn < warmUp + turns; turn++) {
    let start = performance.now();
    kept += summed(image.data);
    sum.push(performance.now() - start);
    const before = process.memoryUsage().arrayBuffers;
    start = performance.now();
    kept += readSide(image).inks.length;
    read.push(performance.now() - start);
    // Nothing is given back within one reading unless the collector comes by: an upper bound of what is held at once.
    memory = Math.max(memory, process.memoryUsage().arrayBuffers - before);
  }
  const [first] = read;
  const passes = (middle(read.slice(warmUp)) - 40) / middle(sum);
  if (bar) {
    print(
      `${name.padEnd(42)} reading ${middle(read.slice(warmUp)).toFixed(0).padStart(4)} ms, bar ${bar(middle(sum)).toFixed(0)} ms (one summing pass ${middle(sum).toFixed(1)} ms)`,
    );
    return;
  }
  print(
    `${name}: one summing pass ${middle(sum).toFixed(0)} ms, reading ${middle(read.slice(warmUp)).toFixed(0)} ms = 40 ms + ${passes.toFixed(1)} passes (${first!.toFixed(0)} ms the first time); ` +
      `memory beyond the buffer ${(memory / 1e6).toFixed(0)} MB of ${(image.data.length / 1e6).toFixed(0)}${kept < 0 ? ' ' : ''}`,
  );
}

function summed(data: Uint8ClampedArray): number {
  let sum = 0;
  for (let i = 0; i < data.length; i++) sum += data[i]!;
  return sum;
}

function middle(values: number[]): number {
  return values.sort((p, q) => p - q)[values.length >> 1]!;
}
