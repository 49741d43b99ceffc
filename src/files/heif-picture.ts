import { type ColourNote, profileNote, type RawPicture } from './raw-picture.ts';
import { reducedPicture, rowsOfRgba } from './reduced-picture.ts';
import { torn } from './words/picture-refusals.ts';

/** What is used of a HEIF decoder here. */
export interface Libheif {
  readonly HeifDecoder: new () => { decode(bytes: Uint8Array): HeifPicture[] };
}

export interface HeifPicture {
  get_width(): number;
  get_height(): number;
  is_primary(): boolean;
  /** Fills `data` with RGBA and answers with it, or with null where that fails. */
  display(
    into: { data: Uint8ClampedArray; width: number; height: number },
    answer: (shown: unknown) => void,
  ): void;
  free(): void;
}

/**
 * The main picture of a HEIC or HEIF file, turned as the file says, reduced to at most `mostPixels`.
 * @throws UnreadableImage where the file can't be decoded.
 */
export async function heifPicture(
  { HeifDecoder }: Libheif,
  bytes: Uint8Array,
  checkSize: (width: number, height: number) => void,
  mostPixels: number,
): Promise<RawPicture> {
  const images = new HeifDecoder().decode(bytes);
  try {
    const image = images.find((one) => one.is_primary()) ?? images[0];
    if (image === undefined) throw torn('heic');
    const width = image.get_width();
    const height = image.get_height();
    checkSize(width, height);
    const data = new Uint8ClampedArray(width * height * 4);
    const shown = await new Promise((resolve) => image.display({ data, width, height }, resolve));
    if (shown === null) throw torn('heic');
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
