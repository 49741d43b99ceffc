import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { reducedPicture, rowsOfRgba } from '../../src/files/reduced-picture.ts';
import { pngOf } from '../../src/workers/decode-profile.ts';
import { tiffPicture } from '../../src/workers/decode-tiff.ts';
import { upright } from '../../src/workers/decode-turn.ts';

/** The oracle is sharp (libtiff, libvips): it writes the files, and says what is in them. */

const width = 70;
const height = 44;
const rgb = Buffer.from(
  Array.from({ length: width * height * 3 }, (_, i) => {
    const pixel = Math.floor(i / 3);
    const [x, y] = [pixel % width, Math.floor(pixel / width)];
    return [(x * 3 + y) & 255, (y * 5) & 255, ((x >> 3) ^ (y >> 3)) * 20][i % 3]!;
  }),
);
const drawn = () => sharp(rgb, { raw: { width, height, channels: 3 } });
const anySize = () => undefined;
const many = 12_000_000;

describe('a TIFF of a scanner', () => {
  it.each(['none', 'lzw', 'deflate'] as const)(
    'is read exactly from 8 bits packed by %s',
    async (compression) => {
      const file = await drawn().tiff({ compression, predictor: 'horizontal' }).toBuffer();
      const { image, notes } = await tiffPicture(bytesOf(file), anySize, many);
      expect([image.width, image.height]).toEqual([width, height]);
      expect(colours(image.data)).toEqual([...rgb]);
      expect(notes).toEqual([]);
    },
  );

  it('is read within 3 of 255 from 8 bits packed by JPEG at full quality', async () => {
    const file = await drawn().blur(2).tiff({ compression: 'jpeg', quality: 100 }).toBuffer();
    const { image } = await tiffPicture(bytesOf(file), anySize, many);
    const wanted = await sharp(file).removeAlpha().raw().toBuffer();
    const worst = Math.max(...colours(image.data).map((v, i) => Math.abs(v - wanted[i]!)));
    expect(worst).toBeLessThanOrEqual(3);
  });

  it.each(['none', 'lzw', 'deflate'] as const)('is read from 16 bits packed by %s', async (compression) => {
    const file = await drawn().toColourspace('rgb16').tiff({ compression }).toBuffer();
    expect((await sharp(file).metadata()).depth).toBe('ushort');
    const { image, notes } = await tiffPicture(bytesOf(file), anySize, many);
    const worst = Math.max(...colours(image.data).map((v, i) => Math.abs(v - rgb[i]!)));
    expect(worst).toBeLessThanOrEqual(1);
    expect(notes).toEqual(['Read from 16 bits a channel.']);
  });

  it('is read from 16 bits with the high byte first', async () => {
    const file = bigEndian16([
      [65535, 32768, 0],
      [257, 514, 51400],
    ]);
    const { image } = await tiffPicture(file, anySize, many);
    expect(colours(image.data)).toEqual([255, 128, 0, 1, 2, 200]);
  });

  it('is read from grey, and from grey of 16 bits', async () => {
    for (const space of ['b-w', 'grey16']) {
      const file = await drawn().toColourspace(space).tiff({ compression: 'none' }).toBuffer();
      const { image } = await tiffPicture(bytesOf(file), anySize, many);
      const wanted = await sharp(file).toColourspace('b-w').raw().toBuffer();
      const got = colours(image.data).filter((_, i) => i % 3 === 0);
      expect(Math.max(...got.map((v, i) => Math.abs(v - wanted[i]!)))).toBeLessThanOrEqual(1);
    }
  });

  it('keeps what is transparent', async () => {
    const file = await drawn().ensureAlpha(0.5).tiff({ compression: 'none' }).toBuffer();
    const { image } = await tiffPicture(bytesOf(file), anySize, many);
    expect(image.data[3]).toBeGreaterThan(126);
    expect(image.data[3]).toBeLessThan(129);
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('stands upright from orientation %i', async (orientation) => {
    const file = await drawn().withMetadata({ orientation }).tiff({ compression: 'none' }).toBuffer();
    const { image, fullWidth, fullHeight } = await tiffPicture(bytesOf(file), anySize, many);
    const wanted = await sharp(file).autoOrient().removeAlpha().raw().toBuffer({ resolveWithObject: true });
    expect([image.width, image.height]).toEqual([wanted.info.width, wanted.info.height]);
    expect([fullWidth, fullHeight]).toEqual([wanted.info.width, wanted.info.height]);
    expect(colours(image.data)).toEqual([...wanted.data]);
  });

  it('says which profile its colours have', async () => {
    const file = await drawn().withIccProfile('p3').tiff({ compression: 'none' }).toBuffer();
    const { colours: note } = await tiffPicture(bytesOf(file), anySize, many);
    const icc = (await sharp(file).metadata()).icc!;
    expect(note !== null && 'icc' in note && [...note.icc]).toEqual([...icc]);
  });

  it('says in a sentence that one for a press, or a torn one, cannot be read', async () => {
    const press = await drawn().toColourspace('cmyk').tiff({ compression: 'none' }).toBuffer();
    await expect(tiffPicture(bytesOf(press), anySize, many)).rejects.toThrow('printing press');
    const whole = await drawn().tiff({ compression: 'lzw' }).toBuffer();
    await expect(tiffPicture(bytesOf(whole.subarray(0, 40)), anySize, many)).rejects.toThrow(
      'TIFF can’t be opened',
    );
  });

  it('is refused by its size before it is unpacked', async () => {
    const file = await drawn().tiff({ compression: 'none' }).toBuffer();
    const seen: number[] = [];
    const refuse = (w: number, h: number) => {
      seen.push(w, h);
      throw new RangeError('too large');
    };
    await expect(tiffPicture(bytesOf(file), refuse, many)).rejects.toThrow('too large');
    expect(seen).toEqual([width, height]);
  });
});

describe('a picture that is reduced as it is read', () => {
  it('comes back as it is where it is small enough, at every 8-bit value', () => {
    const data = Uint8ClampedArray.from({ length: 256 * 4 }, (_, i) => (i % 4 === 3 ? 255 : i >> 2));
    expect(reducedPicture(256, 1, rowsOfRgba(data, 256), 256).data).toEqual(data);
  });

  it('is the mean in linear light: black and white lines become the grey of half the light', () => {
    const data = new Uint8ClampedArray(40 * 40 * 4).fill(255);
    for (let i = 0; i < data.length; i += 4) if ((i >> 2) & 1) data.fill(0, i, i + 3);
    const { data: small, width: w } = reducedPicture(40, 40, rowsOfRgba(data, 40), 400);
    expect(w).toBe(20);
    // Half of the light is 188 in sRGB. Source: IEC 61966-2-1.
    expect(small[0]).toBe(188);
  });

  it('keeps the mean light at a reduction that divides nothing evenly', () => {
    const data = new Uint8ClampedArray(101 * 67 * 4).fill(255);
    for (let i = 0; i < data.length; i += 4) data.fill((i * 7919) % 256, i, i + 3);
    const small = reducedPicture(101, 67, rowsOfRgba(data, 101), 900);
    expect(small.width * small.height).toBeLessThanOrEqual(900);
    expect(Math.abs(meanLight(small.data) - meanLight(data))).toBeLessThan(0.005);
  });

  it('takes no colour from what is transparent', () => {
    const data = Uint8ClampedArray.of(200, 40, 40, 255, 0, 255, 0, 0);
    expect([...reducedPicture(2, 1, rowsOfRgba(data, 2), 1).data]).toEqual([200, 40, 40, 128]);
  });
});

describe('a picture that stands upright', () => {
  it('comes back to itself when it is turned and turned back', () => {
    const image = { data: Uint8ClampedArray.from({ length: 24 }, (_, i) => i), width: 3, height: 2 };
    expect(upright(upright(image, 6), 8)).toEqual(image);
    for (const own of [2, 3, 4, 5, 7]) expect(upright(upright(image, own), own)).toEqual(image);
    expect(upright(image, 99)).toBe(image);
  });
});

describe('pixels on their way through a profile', () => {
  it('are a PNG that other readers open to the same pixels and profile', async () => {
    const file = await drawn().withIccProfile('p3').png().toBuffer();
    const icc = (await sharp(file).metadata()).icc!;
    const data = new Uint8ClampedArray(await drawn().ensureAlpha().raw().toBuffer());
    const png = Buffer.concat(pngOf({ data, width, height }, { icc }));
    const meta = await sharp(png).metadata();
    expect([meta.width, meta.height, meta.channels]).toEqual([width, height, 4]);
    expect(meta.icc?.equals(icc)).toBe(true);
  });
});

function bytesOf(file: Buffer): ArrayBuffer {
  return new Uint8Array(file).buffer;
}

function colours(data: Uint8ClampedArray): number[] {
  return [...data].filter((_, i) => i % 4 !== 3);
}

function meanLight(data: Uint8ClampedArray): number {
  let sum = 0;
  for (let i = 0; i < data.length; i += 4) sum += ((data[i]! / 255 + 0.055) / 1.055) ** 2.4;
  return sum / (data.length / 4);
}

/** A row of RGB pixels as an uncompressed TIFF, high byte first. Source: TIFF 6.0, section 2. */
function bigEndian16(row: readonly (readonly [number, number, number])[]): ArrayBuffer {
  const tags: [tag: number, type: number, value: number][] = [
    [256, 3, row.length],
    [257, 3, 1],
    [258, 3, 16],
    [259, 3, 1],
    [262, 3, 2],
    [273, 4, 200],
    [277, 3, 3],
    [278, 3, 1],
    [279, 4, row.length * 6],
  ];
  const view = new DataView(new ArrayBuffer(200 + row.length * 6));
  view.setUint32(0, 0x4d4d002a);
  view.setUint32(4, 8);
  view.setUint16(8, tags.length);
  tags.forEach(([tag, type, value], i) => {
    const at = 10 + i * 12;
    view.setUint16(at, tag);
    view.setUint16(at + 2, type);
    view.setUint32(at + 4, 1);
    if (type === 3) view.setUint16(at + 8, value);
    else view.setUint32(at + 8, value);
  });
  row.flat().forEach((value, i) => {
    view.setUint16(200 + i * 2, value);
  });
  return view.buffer;
}
