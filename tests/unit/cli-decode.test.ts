import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { decode } from '../../src/cli/decode.ts';
import { readPicture } from '../../src/cli/read-picture.ts';
import { Refusal } from '../../src/cli/refusal.ts';
import { pictureLimits } from '../../src/files/picture-limits.ts';
import { checkedHeader } from '../../src/files/words/picture-refusals.ts';
import { tiffPicture } from '../../src/workers/decode-tiff.ts';
import { bmpWays, coral, navy } from '../support/bmp.ts';
import { root } from '../support/source-tree.ts';

const folder = mkdtempSync(join(tmpdir(), 'quirewise-decode-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const pictures = join(root, 'tests', 'support', 'pictures');

function bufferOf(bytes: Uint8Array): ArrayBuffer {
  return Uint8Array.from(bytes).buffer;
}

/** Left half coral, right half navy, 40 × 24. */
function halves(): Sharp {
  const data = Buffer.alloc(40 * 24 * 3);
  for (let i = 0; i < 40 * 24; i += 1) data.set(i % 40 < 20 ? [226, 111, 87] : [34, 53, 90], i * 3);
  return sharp(data, { raw: { width: 40, height: 24, channels: 3 } });
}

function put(name: string, bytes: Uint8Array | string): string {
  writeFileSync(join(folder, name), bytes);
  return name;
}

function at({ image }: Awaited<ReturnType<typeof decode>>, x: number, y: number): number[] {
  return [...image.data.slice((y * image.width + x) * 4, (y * image.width + x) * 4 + 4)];
}

function near(found: number[], wanted: number[], within: number): void {
  wanted.forEach(
    (value, i) =>
      void expect(Math.abs(found[i]! - value), `${found} is not ${wanted}`).toBeLessThanOrEqual(within),
  );
}

describe('opening a picture in the terminal', () => {
  it.each([
    ['png', () => halves().png(), 0],
    ['jpg', () => halves().jpeg({ quality: 95, chromaSubsampling: '4:4:4' }), 3],
    ['webp', () => halves().webp({ lossless: true }), 1],
    ['tif', () => halves().tiff({ compression: 'lzw' }), 0],
    ['16.tif', () => halves().toColourspace('rgb16').tiff({ compression: 'lzw' }), 1],
    ['16.png', () => halves().toColourspace('rgb16').png(), 1],
    ['avif', () => halves().avif({ quality: 95, chromaSubsampling: '4:4:4' }), 3],
    ['gif', () => halves().gif(), 2],
  ] as const)('opens a .%s as the colours that were drawn', async (ending, made, within) => {
    const picture = await decode(put(`halves.${ending}`, await made().toBuffer()), folder);
    expect([picture.image.width, picture.image.height, picture.scale]).toEqual([40, 24, 1]);
    near(at(picture, 5, 12), [226, 111, 87, 255], within);
    near(at(picture, 34, 12), [34, 53, 90, 255], within);
  });

  it('turns a picture upright, as its orientation says', async () => {
    // EXIF orientation 6: the top of what was photographed is on the right (CIPA DC-008, tag 274).
    const bytes = await halves().withMetadata({ orientation: 6 }).jpeg({ quality: 95 }).toBuffer();
    const picture = await decode(put('turned.jpg', bytes), folder);
    expect([picture.image.width, picture.image.height]).toEqual([24, 40]);
    near(at(picture, 12, 5), [226, 111, 87, 255], 4);
    near(at(picture, 12, 34), [34, 53, 90, 255], 4);
  });

  it('brings a wide-gamut picture to sRGB', async () => {
    const p3 = await halves().withIccProfile('p3').png().toBuffer();
    // The bytes differ, because Display P3 numbers are smaller for the same colour; what is seen does not.
    const stored = await sharp(p3, { ignoreIcc: true }).raw().toBuffer();
    expect(Math.abs(stored[1]! - 111)).toBeGreaterThan(5);
    near(at(await decode(put('p3.png', p3), folder), 5, 12), [226, 111, 87, 255], 2);
  });

  it.each([
    ['16 bits with a profile', 40, 'png', true],
    ['a large picture with a profile', 4500, 'png', false],
    ['a large photograph with a profile, lying on its side', 4500, 'jpeg', false],
  ] as const)('brings %s to sRGB', async (what, width, format, deep) => {
    let picture = halves()
      .resize(width, (width * 3) / 5, { kernel: 'nearest' })
      .withIccProfile('p3');
    if (deep) picture = picture.toColourspace('rgb16');
    if (format === 'jpeg') picture = picture.withMetadata({ orientation: 3, icc: 'p3' });
    const bytes = await picture
      .toFormat(format, format === 'png' ? { compressionLevel: 1 } : { quality: 95 })
      .toBuffer();
    const opened = await decode(put(`${what.replaceAll(/\W+/g, '-')}.${format}`, bytes), folder);
    const { width: across, height: down } = opened.image;
    const [coral, navy] = [
      at(opened, Math.floor(across / 8), down >> 1),
      at(opened, across - Math.floor(across / 8), down >> 1),
    ];
    near(format === 'jpeg' ? navy : coral, [226, 111, 87, 255], 3);
    near(format === 'jpeg' ? coral : navy, [34, 53, 90, 255], 3);
  });

  it.each([
    ['jpeg', 'inks.jpg', 'JPEG'],
    ['tiff', 'inks.tif', 'TIFF'],
  ] as const)('refuses a %s in printing inks as the page does', async (format, name, says) => {
    const bytes = await halves().toColourspace('cmyk').toFormat(format).toBuffer();
    await expect(decode(put(name, bytes), folder)).rejects.toThrow(
      `${name}: this ${says} is separated for a printing press (CMYK), so its colours can’t be known.`,
    );
    // What the page asks before it decodes says it in the same words; the page's TIFF decoder asks in its turn.
    if (format === 'jpeg')
      expect(() => checkedHeader(bytes)).toThrow('This JPEG is separated for a printing press');
    else
      await expect(tiffPicture(bufferOf(bytes), () => undefined, 1e6)).rejects.toThrow(
        'This TIFF is separated',
      );
  });

  it.each(bmpWays)('opens a BMP of %s as the colours that were drawn', async (way, bytes, within) => {
    const picture = await decode(put(`${way.replaceAll(/\W+/g, '-')}.bmp`, bytes), folder);
    expect([picture.image.width, picture.image.height, picture.scale]).toEqual([18, 10, 1]);
    near(at(picture, 2, 5), [...coral, 255], within);
    near(at(picture, 12, 9), [...navy, 255], within);
    near(at(picture, 2, 0), [...navy, 255], within);
    near(at(picture, 8, 1), [...coral, 255], within);
    near(at(picture, 9, 1), [...navy, 255], within);
  });

  it('refuses a BMP that is cut short, wherever it breaks off', async () => {
    for (const [way, bytes] of bmpWays) {
      const file = put('torn.bmp', bytes.subarray(0, bytes.length - 12));
      await expect(decode(file, folder), way).rejects.toThrow('torn.bmp: this picture is damaged');
    }
  });

  it.each([
    ['quarters.heic', 2],
    ['quarters-p3.heic', 3],
  ] as const)('opens %s as the colours that were drawn', async (name, within) => {
    const picture = await decode(join(pictures, name), folder);
    expect([picture.image.width, picture.image.height, picture.scale]).toEqual([96, 64, 1]);
    near(at(picture, 24, 16), [244, 232, 205, 255], within);
    near(at(picture, 72, 16), [31, 58, 95, 255], within);
    near(at(picture, 24, 48), [226, 114, 91, 255], within);
    near(at(picture, 72, 48), [98, 191, 193, 255], within);
  });

  it('opens a HEIC upright, where it lies on its side in the file', async () => {
    const picture = await decode(join(pictures, 'quarters-turned.heic'), folder);
    expect([picture.image.width, picture.image.height]).toEqual([64, 96]);
    near(at(picture, 16, 24), [31, 58, 95, 255], 2);
  });

  it('refuses a HEIC that is cut short, and prints nothing of its decoder', async () => {
    const printed = vi.spyOn(console, 'log');
    const file = put('torn.heic', readFileSync(join(pictures, 'quarters.heic')).subarray(0, 420));
    await expect(decode(file, folder)).rejects.toThrow(
      'torn.heic: this HEIC picture can’t be opened to the end',
    );
    expect(printed).not.toHaveBeenCalled();
    printed.mockRestore();
  });

  it('opens the first picture of a GIF that moves', async () => {
    const frames = await Promise.all(
      [coral, navy].map(([r, g, b]) =>
        sharp({ create: { width: 20, height: 20, channels: 3, background: { r, g, b } } })
          .png()
          .toBuffer(),
      ),
    );
    const gif = await sharp(frames, { join: { animated: true } })
      .gif()
      .toBuffer();
    const picture = await decode(put('moves.gif', gif), folder);
    expect([picture.image.width, picture.image.height]).toEqual([20, 20]);
    near(at(picture, 10, 10), [...coral, 255], 2);
  });

  it('keeps what shows through', async () => {
    const half = await sharp({
      create: { width: 8, height: 8, channels: 4, background: { r: 200, g: 40, b: 40, alpha: 0.5 } },
    })
      .png()
      .toBuffer();
    near(at(await decode(put('clear.png', half), folder), 3, 3), [200, 40, 40, 128], 1);
  });

  it('opens a grey picture', async () => {
    const grey = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#777777' } })
      .toColourspace('b-w')
      .png()
      .toBuffer();
    near(at(await decode(put('grey.png', grey), folder), 3, 3), [119, 119, 119, 255], 0);
  });

  it('reduces a large picture in linear light, and says by how much', async () => {
    // One-pixel checks of black and white: half the light of white is 188 in sRGB (IEC 61966-2-1).
    const [width, height] = [4400, 3000];
    const data = Buffer.alloc(width * height);
    for (let y = 0; y < height; y += 1)
      for (let x = 0; x < width; x += 1) data[y * width + x] = (x + y) % 2 ? 255 : 0;
    const bytes = await sharp(data, { raw: { width, height, channels: 1 } })
      .png({ compressionLevel: 1 })
      .toBuffer();
    const picture = await decode(put('large.png', bytes), folder);
    const { image, scale } = picture;
    expect(image.width * image.height).toBeLessThanOrEqual(pictureLimits.read * 1.001);
    expect(scale).toBeCloseTo(Math.sqrt(pictureLimits.read / (width * height)), 3);
    let sum = 0;
    for (let i = 0; i < image.data.length; i += 4) sum += image.data[i]!;
    // The mean of the encoded values scatters about 188 where a reduced pixel is not quite half covered.
    expect(sum / (image.data.length / 4)).toBeGreaterThan(178);
  });

  it.each([
    ['that is missing', () => 'missing.png', /no file missing\.png/],
    ['that is empty', () => put('empty.png', ''), /empty/],
    ['of text', () => put('text.png', 'These are words, and no picture.'), /not a picture/],
    [
      'of a kind that is not opened',
      () => put('a.svg', '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
      /not a picture/,
    ],
    ['that is a folder', () => '.', /folder/],
  ])('refuses a file %s in one sentence', async (_, file, says) => {
    const trouble = await decode(file(), folder).catch((error: unknown) => error);
    expect(trouble).toBeInstanceOf(Refusal);
    expect((trouble as Refusal).message).toMatch(says);
    expect((trouble as Refusal).message).toMatch(/^[^\n]+\.$/);
  });

  it.each(['png', 'jpeg', 'webp', 'tiff', 'avif', 'gif'] as const)(
    'refuses a %s that is cut short',
    async (format) => {
      const noise = Buffer.from(Uint8Array.from({ length: 120 * 120 * 3 }, (_, i) => (i * 7919) % 251));
      const whole = await sharp(noise, { raw: { width: 120, height: 120, channels: 3 } })
        .toFormat(format)
        .toBuffer();
      const file = put(`torn.${format}`, whole.subarray(0, Math.floor(whole.length * 0.6)));
      await expect(decode(file, folder)).rejects.toThrow(Refusal);
      await expect(decode(file, folder)).rejects.toThrow(/^[^\n]+\.$/);
    },
  );

  it('refuses more megapixels than the page opens, before it opens them', async () => {
    const header = await sharp({ create: { width: 20, height: 20, channels: 3, background: 'red' } })
      .png()
      .toBuffer();
    // Width and height stand in the IHDR chunk (PNG, third edition, 11.2.1), and its checksum after them.
    header.writeUInt32BE(20000, 16);
    header.writeUInt32BE(20000, 20);
    header.writeUInt32BE(crc32(header.subarray(12, 29)), 29);
    await expect(decode(put('huge.png', header), folder)).rejects.toThrow(/400 megapixels.*Save a copy/);
  });
});

describe('reading a picture in the terminal', () => {
  it.each([
    ['of one pixel', 1, '#cc3344ff', /too small/],
    ['that is fully transparent', 60, '#cc334400', /transparent/],
  ])('refuses one %s in one sentence that names the file', async (what, size, background, says) => {
    const bytes = await sharp({ create: { width: size, height: size, channels: 4, background } })
      .png()
      .toBuffer();
    const file = put(`${what.replaceAll(' ', '-')}.png`, bytes);
    await expect(readPicture({ file }, folder)).rejects.toThrow(says);
    await expect(readPicture({ file }, folder)).rejects.toThrow(file);
    await expect(readPicture({ file }, folder)).rejects.toThrow(/^[^\n]+\.$/);
  });

  it('reads only the crop, and refuses one that reaches outside', async () => {
    const file = put('cropped.png', await halves().resize(400, 240, { kernel: 'nearest' }).png().toBuffer());
    const { side } = await readPicture({ file, crop: { x: 0, y: 0, width: 190, height: 240 } }, folder);
    expect(side.inks).toEqual([]);
    expect(side.base.hex).toBe('#e26f57');
    await expect(
      readPicture({ file, crop: { x: 300, y: 0, width: 101, height: 10 } }, folder),
    ).rejects.toThrow(/outside/);
    await expect(
      readPicture({ file, card: { x: 0, y: 200, width: 10, height: 50 } }, folder),
    ).rejects.toThrow(/card/);
  });
});

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let k = 0; k < 8; k += 1) crc = crc & 1 ? 0xedb88320 ^ (crc >>> 1) : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
