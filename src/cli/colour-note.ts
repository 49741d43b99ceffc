import { deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { crc32 } from '../files/crc32.ts';
import type { ColourNote } from '../files/raw-picture.ts';
import type { PixelImage } from '../sheet/model.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { unknownColours } from './words/refusals.ts';

/**
 * A picture whose pixels are not sRGB, brought to sRGB: the pixels go through a PNG that carries the profile, as on the
 * page. Source: W3C PNG 3rd edition, §11.3.2.3 (`iCCP`).
 * @throws UnreadableImage where its colours are told by code points that no profile is at hand for.
 */
export async function inSrgbByNote(image: PixelImage, note: ColourNote): Promise<PixelImage> {
  const icc = 'icc' in note ? note.icc : await profileOf(note.primaries);
  const { width, height, data } = image;
  const png = await sharp(data, { raw: { width, height, channels: 4 } })
    .png({ compressionLevel: 0 })
    .toBuffer();
  const body = Buffer.concat([Buffer.from('iCCPp\0\0', 'latin1'), deflateSync(icc)]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(body.length - 4, 0);
  frame.writeUInt32BE(crc32(body), 4);
  // The head is always the first chunk, 25 bytes after the signature's 8; a profile comes before the pixels.
  const parts = [png.subarray(0, 33), frame.subarray(0, 4), body, frame.subarray(4), png.subarray(33)];
  const found = await sharp(Buffer.concat(parts))
    .toColourspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer();
  return { data: new Uint8ClampedArray(found.buffer, found.byteOffset, found.byteLength), width, height };
}

/** Source: ISO/IEC 23091-2, table 2: 11 and 12 are the primaries of P3, 12 with the white of D65. */
async function profileOf(primaries: number): Promise<Uint8Array> {
  if (primaries !== 12) {
    throw new UnreadableImage(unknownColours);
  }
  const pixel = { create: { width: 1, height: 1, channels: 3, background: '#000000' } } as const;
  const { icc } = await sharp(await sharp(pixel).withIccProfile('p3').png().toBuffer()).metadata();
  return icc ?? new Uint8Array();
}
