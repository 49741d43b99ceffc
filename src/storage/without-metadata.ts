import { tornOrOtherPicture } from './words/bundle-words.ts';
import { StorageTrouble } from './words/trouble.ts';

/** The picture's file without anything but what its pixels need: no place, date, camera, words, profile or hidden tail. */
export function withoutMetadata(bytes: Uint8Array, type: string): Uint8Array<ArrayBuffer> {
  const kept = type === 'image/png' ? png(bytes) : type === 'image/jpeg' ? jpeg(bytes) : null;
  if (kept === null) {
    throw new StorageTrouble('torn', tornOrOtherPicture);
  }
  return joined(kept);
}

/** Chunks that pixels need. Source: W3C PNG §11. */
const pngChunks = new Set(['IHDR', 'PLTE', 'IDAT', 'IEND', 'tRNS', 'gAMA', 'sRGB', 'cHRM', 'sBIT']);

function png(bytes: Uint8Array): readonly Uint8Array[] | null {
  const view = viewOf(bytes);
  if (bytes.length < 45 || view.getUint32(0) !== 0x89504e47 || view.getUint32(4) !== 0x0d0a1a0a) return null;
  const parts = [bytes.subarray(0, 8)];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 12 + view.getUint32(at);
    if (end > bytes.length) return null;
    const name = ascii(bytes, at + 4);
    if (pngChunks.has(name)) parts.push(bytes.subarray(at, end));
    if (name === 'IEND') return parts;
    at = end;
  }
  return null;
}

/** Segments before each scan that pixels do not need: APPn but APP0 (JFIF) and APP14 (colour transform), and comments. Source: ITU-T T.81 §B. */
function jpeg(bytes: Uint8Array): readonly Uint8Array[] | null {
  const view = viewOf(bytes);
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return null;
  const parts = [bytes.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === 0xd9) return [...parts, bytes.subarray(at, at + 2)];
    const end = at + 2 + view.getUint16(at + 2);
    if (end > bytes.length || end < at + 4) return null;
    const isApp = marker >= 0xe0 && marker <= 0xef && marker !== 0xe0 && marker !== 0xee;
    if (!isApp && marker !== 0xfe) parts.push(bytes.subarray(at, end));
    at = end;
    if (marker === 0xda) {
      const scan = endOfScan(bytes, at);
      parts.push(bytes.subarray(at, scan));
      at = scan;
    }
  }
  // A whole picture ends with its end marker; the last two bytes may be all that is left.
  return at + 2 === bytes.length && view.getUint16(at) === 0xffd9 ? [...parts, bytes.subarray(at)] : null;
}

function endOfScan(bytes: Uint8Array, from: number): number {
  for (
    let at = bytes.indexOf(0xff, from);
    at >= 0 && at + 1 < bytes.length;
    at = bytes.indexOf(0xff, at + 1)
  ) {
    const next = bytes[at + 1] ?? 0;
    // Stuffed bytes and restart markers belong to the scan.
    if (next !== 0 && !(next >= 0xd0 && next <= 0xd7) && next !== 0xff) return at;
  }
  return bytes.length;
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function ascii(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const out = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}
