import { zlibSync } from 'fflate';
import { crc32 } from '../files/crc32.ts';
import type { ColourNote } from '../files/raw-picture.ts';
import type { PixelImage } from '../sheet/model.ts';

/**
 * A picture whose pixels are not sRGB, as the browser sees it after its own default conversion: the pixels go through a
 * PNG that carries the profile, and PNG is what every browser manages colours for.
 * Source: W3C PNG 3rd edition, §11.3.2.3 (`iCCP`) and §11.3.2.6 (`cICP`).
 */
export function bitmapThroughProfile(image: PixelImage, note: ColourNote): Promise<ImageBitmap> {
  const png = pngOf(image, note);
  return createImageBitmap(new Blob(png, { type: 'image/png' }));
}

/** An uncompressed PNG in pieces: what is read back at once need not be packed well. */
export function pngOf({ data, width, height }: PixelImage, note: ColourNote): Uint8Array<ArrayBuffer>[] {
  const head = new DataView(new ArrayBuffer(13));
  head.setUint32(0, width);
  head.setUint32(4, height);
  head.setUint8(8, 8);
  head.setUint8(9, 6);
  const rows = new Uint8Array((width * 4 + 1) * height);
  for (let y = 0; y < height; y++) {
    rows.set(data.subarray(y * width * 4, (y + 1) * width * 4), y * (width * 4 + 1) + 1);
  }
  return [
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    ...chunk('IHDR', new Uint8Array(head.buffer)),
    ...noteChunk(note),
    ...chunk('IDAT', zlibSync(rows, { level: 0 })),
    ...chunk('IEND', new Uint8Array(0)),
  ];
}

function noteChunk(note: ColourNote): Uint8Array<ArrayBuffer>[] {
  if (!('icc' in note)) return chunk('cICP', Uint8Array.of(note.primaries, note.transfer, 0, 1));
  const packed = zlibSync(note.icc);
  const body = new Uint8Array(3 + packed.length);
  // The name is a letter, a zero ends it, and a zero says that zlib packed it.
  body[0] = 0x70;
  body.set(packed, 3);
  return chunk('iCCP', body);
}

function chunk(name: string, body: Uint8Array): Uint8Array<ArrayBuffer>[] {
  const tagged = new Uint8Array(4 + body.length);
  for (let i = 0; i < 4; i++) tagged[i] = name.charCodeAt(i);
  tagged.set(body, 4);
  return [bigEndian(body.length), tagged, bigEndian(crc32(tagged))];
}

function bigEndian(value: number): Uint8Array<ArrayBuffer> {
  const view = new DataView(new ArrayBuffer(4));
  view.setUint32(0, value);
  return new Uint8Array(view.buffer);
}
