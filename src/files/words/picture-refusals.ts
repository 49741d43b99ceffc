import { UnreadableImage } from '../../sheet/unreadable.ts';
import { type PictureHeader, type PictureKind, pictureHeader } from '../picture-file.ts';
import { pictureLimits } from '../picture-limits.ts';

/** What is said of files that can't be opened: the same on the page and in the terminal, whatever decodes them. */

/**
 * What a picture file says of itself, where it is one that can be opened.
 * @throws UnreadableImage with what is wrong: empty, too large, no picture, too small, or separated for a press.
 */
export function checkedHeader(bytes: Uint8Array): PictureHeader {
  if (bytes.length === 0) throw new UnreadableImage('This file is empty: there is no picture in it.');
  if (bytes.length > pictureLimits.file) {
    throw new UnreadableImage(
      `This file is too large to open (over ${pictureLimits.file / 1e6} megabytes). Save a smaller copy and use that.`,
    );
  }
  const header = pictureHeader(bytes);
  if (header === null) {
    throw new UnreadableImage(
      'This file is not a picture, whatever its name says. JPEG, PNG, HEIC, TIFF, WebP, AVIF, GIF and BMP can be read.',
    );
  }
  if (header.separated) throw separated(header.kind);
  if (header.width !== null && header.height !== null) checkSize(header.width, header.height);
  return header;
}

/** @throws UnreadableImage where a picture has too few or too many pixels. */
export function checkSize(width: number, height: number): void {
  if (Math.min(width, height) < pictureLimits.leastSide) {
    throw new UnreadableImage(
      `This picture is only ${width} × ${height} pixels: too small to read a paper from.`,
    );
  }
  if (width * height > pictureLimits.decode) {
    const millions = Math.round((width * height) / 1e6);
    throw new UnreadableImage(
      `This picture has ${millions} megapixels, more than can be opened safely (${pictureLimits.decode / 1e6}). Save a copy of 12 to 50 megapixels and use that; a 12-inch sheet needs no more.`,
    );
  }
}

/**
 * A picture in printing inks: what they look like is the press's to say, decoders guess it differently, and two guesses
 * would make two palettes of one sheet.
 */
export function separated(kind: PictureKind): UnreadableImage {
  return new UnreadableImage(
    `This ${kind.toUpperCase()} is separated for a printing press (CMYK), so its colours can’t be known. Save it as RGB and use that.`,
  );
}

/** A picture that begins as one and breaks off, or is none inside. */
export function torn(kind: PictureKind, cause?: unknown): UnreadableImage {
  return new UnreadableImage(tornWords[kind] ?? anyTorn, { cause });
}

const anyTorn =
  'This picture is damaged: it begins as one, but can’t be opened to the end. Copy it again from where it came from.';

const tornWords: Partial<Record<PictureKind, string>> = {
  heic: 'This HEIC picture can’t be opened to the end. Copy it again from where it came from, or save it as JPEG.',
  tiff: 'This TIFF can’t be opened to the end. Scan or copy it again, or save it as PNG.',
};
