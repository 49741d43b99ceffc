import { encodeImage } from 'utif2';
import { describe, expect, it } from 'vitest';
import { bmpPicture } from '../../src/files/bmp-picture.ts';
import { pictureLimits } from '../../src/files/picture-limits.ts';
import { decodePicture } from '../../src/workers/decode.ts';
import { bitmapThroughProfile, pngOf } from '../../src/workers/decode-profile.ts';
import { encodedPicture } from '../../src/workers/encode.ts';
import type { ReadAnswer, ReadDone } from '../../src/workers/messages.ts';
import { bmpWays } from '../support/bmp.ts';
import quarters from '../support/pictures/quarters.heic?url';
import quartersP3 from '../support/pictures/quarters-p3.heic?url';
import turnedAvif from '../support/pictures/quarters-turned.avif?url';
import turnedHeic from '../support/pictures/quarters-turned.heic?url';

/** The colours of the drawing in tests/support/pictures/make.mjs, and where in it they lie. */
const drawn: readonly [x: number, y: number, rgb: readonly [number, number, number]][] = [
  [24, 16, [244, 232, 205]],
  [72, 16, [31, 58, 95]],
  [24, 48, [226, 114, 91]],
  [72, 48, [98, 191, 193]],
];

describe('a phone’s HEIC picture', () => {
  it('is read to the colours that were drawn', async () => {
    const { image, kind, notes } = await decodePicture(await bytesAt(quarters));
    expect([image.width, image.height, kind]).toEqual([96, 64, 'heic']);
    for (const [x, y, rgb] of drawn) expect(farFrom(image, x, y, rgb)).toBeLessThanOrEqual(2);
    expect(notes).toEqual([]);
  });

  it('of a wide gamut is converted to the same colours, which its bare numbers are not', async () => {
    const file = await bytesAt(quartersP3);
    const { image } = await decodePicture(file);
    for (const [x, y, rgb] of drawn) expect(farFrom(image, x, y, rgb)).toBeLessThanOrEqual(3);
    // Coral in Display P3 has a red of 214, not 226: so a decoder that drops the profile would be caught.
    const { heicPicture } = await import('../../src/workers/decode-heic.ts');
    const bare = await heicPicture(new Uint8Array(file), () => undefined, 1e6);
    expect(farFrom(bare.image, 24, 48, [226, 114, 91])).toBeGreaterThan(6);
  });

  it('is read by the worker as it runs in the page', async () => {
    const done = await readByWorker(await bytesAt(quarters));
    const inks = [done.side.base, ...done.side.inks];
    expect(inks.map((ink) => Math.round(ink.share * 100))).toEqual([25, 25, 25, 25]);
    expect(done.picture?.type).toMatch(/^image\//);
  });

  it.each([
    ['HEIC', turnedHeic],
    ['AVIF', turnedAvif],
  ])(
    'stands upright where its file says a quarter turn, at full size and reduced: %s',
    async (_, address) => {
      const file = await bytesAt(address);
      const { image, fullWidth, fullHeight } = await decodePicture(file.slice(0));
      expect([image.width, image.height, fullWidth, fullHeight]).toEqual([64, 96, 64, 96]);
      // A quarter against the clock brings the right half to the top.
      const top = [drawn[1]![2], drawn[3]![2]] as const;
      expect(farFrom(image, 16, 24, top[0])).toBeLessThanOrEqual(2);
      expect(farFrom(image, 48, 24, top[1])).toBeLessThanOrEqual(2);
      const small = await decodePicture(file, { maxPixels: 24 * 16 });
      expect([small.image.width, small.image.height]).toEqual([16, 24]);
      expect(farFrom(small.image, 4, 6, top[0])).toBeLessThanOrEqual(3);
    },
  );

  it('that is torn is told in a sentence', async () => {
    const torn = (await bytesAt(quarters)).slice(0, 420);
    await expect(decodePicture(torn)).rejects.toThrow('HEIC picture can’t be opened to the end');
  });
});

describe('a BMP', () => {
  it.each(bmpWays)(
    'of %s is opened by the browser to what the terminal’s decoder makes of it',
    async (_, file) => {
      const { image } = await decodePicture(Uint8Array.from(file).buffer);
      const own = bmpPicture(file);
      expect([image.width, image.height]).toEqual([own.width, own.height]);
      // Five and six bits are widened to eight by each in its own way: by repeating them, or to the nearest.
      const far = image.data.reduce((most, v, i) => Math.max(most, Math.abs(v - own.data[i]!)), 0);
      expect(far).toBeLessThanOrEqual(1);
    },
  );
});

describe('a JPEG in printing inks', () => {
  it('is refused, as it is in the terminal', async () => {
    const file = new Uint8Array(await jpeg(90, 60));
    // Only the head is looked at: four channels in the frame header (ITU-T T.81, B.2.2).
    const frame = file.findIndex((v, i) => v === 0xff && file[i + 1] === 0xc0);
    file[frame + 9] = 4;
    await expect(decodePicture(file.buffer)).rejects.toThrow(
      'This JPEG is separated for a printing press (CMYK), so its colours can’t be known.',
    );
  });
});

describe('a scanner’s TIFF', () => {
  it('is read by the worker as it runs in the page', async () => {
    const pixels = new Uint8Array(60 * 60 * 4).fill(255);
    for (let i = 0; i < pixels.length / 2; i += 4) pixels.set([31, 58, 95], i);
    const done = await readByWorker(encodeImage(pixels, 60, 60));
    expect(done.side.inks.length).toBe(1);
    expect([done.side.base.hex, done.side.inks[0]!.hex].sort()).toEqual(['#1f3a5f', '#ffffff']);
  });
});

describe('a photograph that its camera held sideways', () => {
  it('stands upright, at full size and reduced', async () => {
    const file = withOrientation(await jpeg(90, 60), 6);
    const full = await decodePicture(file);
    expect([full.image.width, full.image.height, full.fullWidth, full.fullHeight]).toEqual([60, 90, 60, 90]);
    // The drawing's left half is red; turned a quarter clockwise, that is the top.
    expect(farFrom(full.image, 30, 20, [200, 30, 30])).toBeLessThanOrEqual(6);
    expect(farFrom(full.image, 30, 70, [30, 30, 200])).toBeLessThanOrEqual(6);
    const small = await decodePicture(file, { maxPixels: 600 });
    expect([small.image.width, small.image.height]).toEqual([20, 30]);
    expect(farFrom(small.image, 10, 6, [200, 30, 30])).toBeLessThanOrEqual(8);
    expect(small.notes).toEqual(['Reduced from 0.0 to 0.0 megapixels as it was opened.']);
  });

  it('keeps nothing of what its file says besides the picture', async () => {
    const file = withOrientation(await jpeg(90, 60), 6, 'Taken at 51.5 N 0.1 W');
    expect(text(file)).toContain('51.5 N');
    const { canvas, opaque } = await decodePicture(file);
    for (const isDrawn of [true, false]) {
      const kept = await encodedPicture(canvas, 1600, opaque, isDrawn);
      expect(text(kept.bytes)).not.toMatch(/Exif|51\.5 N/);
    }
  });
});

describe('a large picture', () => {
  it('of 60 megapixels is read on a canvas that a phone can have', async () => {
    const { image, canvas, fullWidth, fullHeight, notes } = await decodePicture(await flatPng(9000, 6667));
    expect([fullWidth, fullHeight]).toEqual([9000, 6667]);
    expect(canvas.width * canvas.height).toBeLessThanOrEqual(16_700_000);
    expect(image.width * image.height).toBeLessThanOrEqual(pictureLimits.read * 1.001);
    expect(image.width / image.height).toBeCloseTo(9000 / 6667, 3);
    expect(notes).toEqual(['Reduced from 60.0 to 12.6 megapixels as it was opened.']);
  });

  it('of 200 megapixels is refused in a sentence, before it is unpacked', async () => {
    const png = await flatPng(20, 20);
    new DataView(png).setUint32(16, 20_000);
    new DataView(png).setUint32(20, 10_000);
    await expect(decodePicture(png)).rejects.toThrow('This picture has 200 megapixels');
  });
});

describe('colours that a file gives by code points', () => {
  it('are converted from Display P3', async () => {
    const image = { data: Uint8ClampedArray.of(214, 122, 98, 255), width: 1, height: 1 };
    const bitmap = await bitmapThroughProfile(image, { primaries: 12, transfer: 13 });
    const context = new OffscreenCanvas(1, 1).getContext('2d')!;
    context.drawImage(bitmap, 0, 0);
    const seen = context.getImageData(0, 0, 1, 1);
    // The same by CSS's own conversion, which the browser does elsewhere.
    context.fillStyle = `color(display-p3 ${214 / 255} ${122 / 255} ${98 / 255})`;
    context.fillRect(0, 0, 1, 1);
    const wanted = context.getImageData(0, 0, 1, 1).data;
    expect(farFrom(seen, 0, 0, [wanted[0]!, wanted[1]!, wanted[2]!])).toBeLessThanOrEqual(1);
    expect(wanted[0]).toBeGreaterThan(220);
  });
});

async function bytesAt(address: string): Promise<ArrayBuffer> {
  return (await fetch(address)).arrayBuffer();
}

function farFrom(
  { data, width }: { data: Uint8ClampedArray; width: number },
  x: number,
  y: number,
  rgb: readonly [number, number, number],
): number {
  return Math.max(...rgb.map((v, c) => Math.abs(v - data[(y * width + x) * 4 + c]!)));
}

function readByWorker(bytes: ArrayBuffer): Promise<ReadDone> {
  const worker = new Worker(new URL('../../src/workers/read-worker.ts', import.meta.url), { type: 'module' });
  return new Promise<ReadDone>((resolve, reject) => {
    worker.onerror = (event) => reject(new Error(event.message));
    worker.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
      if (data.kind === 'done') resolve(data);
      if (data.kind === 'failed') reject(new Error(data.says));
    };
    worker.postMessage({ id: 'one', bytes, options: {}, withPicture: true }, [bytes]);
  }).finally(() => worker.terminate());
}

async function jpeg(width: number, height: number): Promise<ArrayBuffer> {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d')!;
  context.fillStyle = 'rgb(200 30 30)';
  context.fillRect(0, 0, width / 2, height);
  context.fillStyle = 'rgb(30 30 200)';
  context.fillRect(width / 2, 0, width, height);
  return (await canvas.convertToBlob({ type: 'image/jpeg', quality: 1 })).arrayBuffer();
}

/** The JPEG with an Exif block after its first marker: an orientation and a description. Source: Exif 2.3, §4.5. */
function withOrientation(file: ArrayBuffer, orientation: number, words = ''): ArrayBuffer {
  const size = 2 + 6 + 8 + 2 + 12 + 4 + words.length;
  const exif = new DataView(new ArrayBuffer(2 + size));
  exif.setUint16(0, 0xffe1);
  exif.setUint16(2, size);
  exif.setUint32(4, 0x45786966);
  exif.setUint32(10, 0x4d4d002a);
  exif.setUint32(14, 8);
  exif.setUint16(18, 1);
  exif.setUint16(20, 274);
  exif.setUint16(22, 3);
  exif.setUint32(24, 1);
  exif.setUint16(28, orientation);
  new Uint8Array(exif.buffer).set(new TextEncoder().encode(words), 36);
  const bytes = new Uint8Array(file);
  return new Uint8Array([...bytes.subarray(0, 2), ...new Uint8Array(exif.buffer), ...bytes.subarray(2)])
    .buffer;
}

/** A grey PNG of one bit a pixel: small as a file, and as large as any when it is opened. */
async function flatPng(width: number, height: number): Promise<ArrayBuffer> {
  const rows = new Blob([new Uint8Array((Math.ceil(width / 8) + 1) * height)]);
  const packed = await new Response(
    rows.stream().pipeThrough(new CompressionStream('deflate')),
  ).arrayBuffer();
  const tiny = new Uint8Array(
    await new Blob(
      pngOf({ data: new Uint8ClampedArray(4), width: 1, height: 1 }, { primaries: 1, transfer: 13 }),
    ).arrayBuffer(),
  );
  const head = new Uint8Array(tiny.slice(0, 33));
  const view = new DataView(head.buffer);
  view.setUint32(16, width);
  view.setUint32(20, height);
  head[24] = 1;
  head[25] = 0;
  const end = tiny.slice(-12);
  const data = new Uint8Array(8 + packed.byteLength);
  new DataView(data.buffer).setUint32(0, packed.byteLength);
  data.set([0x49, 0x44, 0x41, 0x54], 4);
  data.set(new Uint8Array(packed), 8);
  view.setUint32(29, crc(head.subarray(12, 29)));
  const sum = new DataView(new ArrayBuffer(4));
  sum.setUint32(0, crc(data.subarray(4)));
  return new Blob([head, data, new Uint8Array(sum.buffer), end]).arrayBuffer();
}

function crc(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let k = 0; k < 8; k++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  }
  return (value ^ 0xffffffff) >>> 0;
}

function text(bytes: ArrayBuffer): string {
  return new TextDecoder('latin1').decode(bytes);
}
