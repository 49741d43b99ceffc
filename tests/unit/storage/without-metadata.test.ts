import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { pictureHeader } from '../../../src/files/picture-file.ts';
import { pngWithDensity } from '../../../src/storage/png-density.ts';
import { withoutMetadata } from '../../../src/storage/without-metadata.ts';
import { StorageTrouble } from '../../../src/storage/words/trouble.ts';
import { joinedBytes, pngChunk, smallPng } from './small-pictures.ts';

const secret = 'Taken at 51.5 N 0.1 W by somebody';
const kinds = ['png', 'jpeg'] as const;

/** Made by sharp (libvips), with a camera's Exif block, an XMP packet and an ICC profile. */
async function photograph(kind: (typeof kinds)[number]): Promise<Uint8Array> {
  const noise = { create: { width: 40, height: 30, channels: 3, background: '#c23b4e' } } as const;
  const picture = sharp(noise)
    .withExif({ IFD0: { ImageDescription: secret, Copyright: secret } })
    .withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/"><note>${secret}</note></x:xmpmeta>`)
    .withIccProfile('p3');
  return new Uint8Array(await picture.toFormat(kind, { quality: 90 }).toBuffer());
}

describe.each(kinds)('a %s picture', (kind) => {
  it('keeps its pixels and nothing else', async () => {
    const before = await photograph(kind);
    expect(textOf(before)).toContain('51.5 N');
    const after = withoutMetadata(
      joinedBytes([before, new TextEncoder().encode('PK hidden tail')]),
      `image/${kind}`,
    );
    expect(textOf(after)).not.toMatch(/51\.5 N|hidden tail|xmpmeta/);
    const meta = await sharp(after).metadata();
    expect([meta.width, meta.height, meta.exif, meta.icc, meta.xmp]).toEqual([
      40,
      30,
      undefined,
      undefined,
      undefined,
    ]);
    const raw = (bytes: Uint8Array) => sharp(bytes).removeAlpha().raw({ depth: 'uchar' }).toBuffer();
    // The profile is gone, so the raw values are compared as they stand in the file.
    const untagged = await sharp(before, { ignoreIcc: true }).removeAlpha().raw().toBuffer();
    expect(Buffer.compare(await raw(after), untagged)).toBe(0);
  });

  it('is the same when stripped again', async () => {
    const once = withoutMetadata(await photograph(kind), `image/${kind}`);
    expect(withoutMetadata(once, `image/${kind}`)).toEqual(once);
  });

  it('that breaks off is told, wherever it does', async () => {
    const whole = withoutMetadata(await photograph(kind), `image/${kind}`);
    for (const part of [0, 1, 3, 8, 20, whole.length >> 1, whole.length - 1]) {
      expect(() => withoutMetadata(whole.slice(0, part), `image/${kind}`), `${part} bytes`).toThrow(
        StorageTrouble,
      );
    }
  });

  it('tells its kind and size before it is decoded', async () => {
    expect(pictureHeader(await photograph(kind))).toEqual({
      kind,
      mime: `image/${kind}`,
      width: 40,
      height: 30,
    });
  });
});

it('what is no picture has no header, whatever it is called', () => {
  for (const text of [
    '',
    'Dear all, this is a letter.',
    '<svg xmlns="http://www.w3.org/2000/svg"/>',
    '%PDF-1.7',
    'GIF8',
  ]) {
    expect(pictureHeader(new TextEncoder().encode(text))).toBeNull();
  }
});

it('a photograph taken sideways tells its upright size', async () => {
  const turned = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#888' } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
  expect(pictureHeader(turned)).toMatchObject({ width: 30, height: 40 });
});

it('an AVIF tells its size', async () => {
  const avif = await sharp({ create: { width: 64, height: 48, channels: 3, background: '#888' } })
    .avif()
    .toBuffer();
  expect(pictureHeader(avif)).toEqual({ kind: 'avif', mime: 'image/avif', width: 64, height: 48 });
});

it('a WebP tells its size, packed either way; it is never kept as such', async () => {
  for (const lossless of [true, false]) {
    const plain = sharp({ create: { width: 40, height: 30, channels: 4, background: '#88888880' } });
    const webp = await plain.webp({ lossless }).toBuffer();
    expect(pictureHeader(webp)).toEqual({ kind: 'webp', mime: 'image/webp', width: 40, height: 30 });
    expect(() => withoutMetadata(webp, 'image/webp')).toThrow(StorageTrouble);
  }
});

it('a PNG drops chunks that are not pixels', () => {
  const words = pngChunk('tEXt', new TextEncoder().encode(`Comment\0${secret}`));
  const after = withoutMetadata(smallPng(3, 2, [words]), 'image/png');
  expect(after).toEqual(smallPng(3, 2));
});

it('a JPEG drops its comments, wherever they stand before the picture', async () => {
  const whole = withoutMetadata(await photograph('jpeg'), 'image/jpeg');
  const words = new TextEncoder().encode(secret);
  // Source: ITU-T T.81 §B.2.4.5: marker FFFE, then a length that counts itself.
  const comment = new Uint8Array([0xff, 0xfe, 0, words.length + 2, ...words]);
  const lastSegment = Buffer.from(whole).indexOf(Buffer.from([0xff, 0xda]));
  for (const at of [2, lastSegment]) {
    const told = joinedBytes([whole.subarray(0, at), comment, whole.subarray(at)]);
    expect(textOf(told)).toContain(secret);
    expect(withoutMetadata(told, 'image/jpeg')).toEqual(whole);
  }
});

it('a PNG with a density says so to an independent reader', async () => {
  const { density, width } = await sharp(pngWithDensity(smallPng(5, 4), 300)).metadata();
  expect([density, width]).toEqual([300, 5]);
});

function textOf(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('latin1');
}
