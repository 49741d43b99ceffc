import { UnreadableImage } from '../sheet/unreadable.ts';
import type { ColourNote } from './decode-profile.ts';
import { profileNote, type RawPicture } from './decode-raw.ts';
import { reducedPicture, rowsOfRgba } from './decode-rows.ts';
import { loadLibheif } from './libheif/load.ts';

/**
 * The main picture of a HEIC or HEIF file, turned as the file says. The decoder is fetched from our own origin the first
 * time that it is needed.
 * @throws UnreadableImage where the file can't be decoded.
 */
export async function heicPicture(
  bytes: Uint8Array,
  checkSize: (width: number, height: number) => void,
  mostPixels: number,
): Promise<RawPicture> {
  const { HeifDecoder } = await loadLibheif();
  const images = new HeifDecoder().decode(bytes);
  try {
    const image = images.find((one) => one.is_primary()) ?? images[0];
    if (image === undefined) throw new UnreadableImage(torn);
    const width = image.get_width();
    const height = image.get_height();
    checkSize(width, height);
    const data = new Uint8ClampedArray(width * height * 4);
    const shown = await new Promise((resolve) => image.display({ data, width, height }, resolve));
    if (shown === null) throw new UnreadableImage(torn);
    return {
      image: reducedPicture(width, height, rowsOfRgba(data, width), mostPixels),
      fullWidth: width,
      fullHeight: height,
      colours: heicColours(bytes),
      notes: [],
    };
  } finally {
    for (const one of images) one.free();
  }
}

const torn =
  'This HEIC picture can’t be opened to the end. Copy it again from where it came from, or save it as JPEG.';

/**
 * The colours that a HEIC file speaks of, from its `colr` boxes; null for sRGB or where it says nothing.
 * Source: ISO/IEC 14496-12, §12.1.5 (`nclx`, `prof`, `rICC`).
 */
export function heicColours(bytes: Uint8Array): ColourNote | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = Math.min(bytes.length, 262_144) - 19;
  let codes: ColourNote | null = null;
  for (let at = 4; at < end; at++) {
    if (view.getUint32(at) !== 0x636f6c72) continue;
    const size = view.getUint32(at - 4);
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (type === 'prof' || type === 'rICC') {
      const note = profileNote(bytes.slice(at + 8, at - 4 + size));
      if (note !== null) return note;
    } else if (type === 'nclx') {
      const primaries = view.getUint16(at + 8);
      const transfer = view.getUint16(at + 10);
      // 1 and 2 are sRGB's primaries and "not said".
      if (primaries > 2) codes ??= { primaries, transfer: transfer === 2 ? 13 : transfer };
    }
  }
  return codes;
}
