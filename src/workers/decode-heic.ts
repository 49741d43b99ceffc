import { heifPicture } from '../files/heif-picture.ts';
import type { RawPicture } from '../files/raw-picture.ts';
import { loadLibheif } from './libheif/load.ts';

/**
 * The main picture of a HEIC or HEIF file. The decoder is fetched from our own origin the first time that it is needed.
 * @throws UnreadableImage where the file can't be decoded.
 */
export async function heicPicture(
  bytes: Uint8Array,
  checkSize: (width: number, height: number) => void,
  mostPixels: number,
): Promise<RawPicture> {
  return heifPicture(await loadLibheif(), bytes, checkSize, mostPixels);
}
