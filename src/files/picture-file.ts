import { jpegFrame } from './picture-file-jpeg.ts';

export type PictureKind = 'png' | 'jpeg' | 'webp' | 'gif' | 'avif' | 'heic' | 'tiff' | 'bmp';

/** What a picture file says of itself before it is decoded. */
export interface PictureHeader {
  readonly kind: PictureKind;
  readonly mime: string;
  /** Pixels as shown (turned where the file says so); null where the header does not tell. */
  readonly width: number | null;
  readonly height: number | null;
  /** True for a JPEG in four printing inks. */
  readonly separated?: boolean;
}

/**
 * The kind and size of a picture file, from its first bytes, whatever it is called; null where it is no picture that
 * is known here. Source: W3C PNG §11.2.2; ITU-T T.81 §B.2.2; RFC 9649 (WebP); ISO/IEC 14496-12 and 23008-12 (`ispe`).
 */
export function pictureHeader(bytes: Uint8Array): PictureHeader | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = (at: number, n: number) => String.fromCharCode(...bytes.subarray(at, at + n));
  if (bytes.length >= 24 && text(0, 8) === '\x89PNG\r\n\x1a\n') {
    return header('png', 'image/png', view.getUint32(16), view.getUint32(20));
  }
  if (bytes.length >= 4 && bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) {
    const frame = jpegFrame(view);
    const known = header('jpeg', 'image/jpeg', frame?.width ?? null, frame?.height ?? null);
    return frame?.channels === 4 ? { ...known, separated: true } : known;
  }
  if (bytes.length >= 30 && text(0, 4) === 'RIFF' && text(8, 4) === 'WEBP') return webp(view, text(12, 4));
  if (bytes.length >= 10 && /^GIF8[79]a$/.test(text(0, 6))) {
    return header('gif', 'image/gif', view.getUint16(6, true), view.getUint16(8, true));
  }
  if (bytes.length >= 26 && text(0, 2) === 'BM' && view.getUint32(14, true) >= 40) {
    return header('bmp', 'image/bmp', Math.abs(view.getInt32(18, true)), Math.abs(view.getInt32(22, true)));
  }
  if (bytes.length >= 8 && (text(0, 4) === 'II*\0' || text(0, 4) === 'MM\0*')) {
    return header('tiff', 'image/tiff', null, null);
  }
  if (bytes.length >= 16 && text(4, 4) === 'ftyp') return isoMedia(view, text);
  return null;
}

function header(kind: PictureKind, mime: string, width: number | null, height: number | null): PictureHeader {
  return { kind, mime, width, height };
}

function webp(view: DataView, chunk: string): PictureHeader {
  const u24 = (at: number) => view.getUint16(at, true) | (view.getUint8(at + 2) << 16);
  if (chunk === 'VP8X') return header('webp', 'image/webp', u24(24) + 1, u24(27) + 1);
  if (chunk === 'VP8L') {
    const bits = view.getUint32(21, true);
    return header('webp', 'image/webp', (bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1);
  }
  if (chunk === 'VP8 ') {
    return header('webp', 'image/webp', view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
  }
  return header('webp', 'image/webp', null, null);
}

/**
 * AVIF and HEIC: the largest `ispe` property near the start is the picture, smaller ones are its tiles and previews; an
 * `irot` of an odd number of quarters lays it on its side.
 */
function isoMedia(view: DataView, text: (at: number, n: number) => string): PictureHeader | null {
  const brands = text(8, Math.min(view.getUint32(0), 64) - 8);
  const kind = /avi[fs]/.test(brands) ? 'avif' : /hei[cxms]|mif1|msf1/.test(brands) ? 'heic' : null;
  if (kind === null) return null;
  let width = 0;
  let height = 0;
  const end = Math.min(view.byteLength, 65_536) - 16;
  let onSide = false;
  for (let at = 16; at < end; at++) {
    // A box of nine bytes of that name: nothing else near the start looks so.
    if (view.getUint32(at) === 0x69726f74 && view.getUint32(at - 4) === 9)
      onSide = view.getUint8(at + 4) % 2 === 1;
    if (view.getUint32(at) !== 0x69737065) continue;
    const w = view.getUint32(at + 8);
    const h = view.getUint32(at + 12);
    if (w * h > width * height) [width, height] = [w, h];
  }
  if (onSide) [width, height] = [height, width];
  return header(kind, `image/${kind}`, width || null, height || null);
}
