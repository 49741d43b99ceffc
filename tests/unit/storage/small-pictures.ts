import { deflateSync } from 'node:zlib';
import { crc32 } from '../../../src/files/crc32.ts';

/** A real PNG of one colour, made by hand; `extra` chunks stand before its pixels. */
export function smallPng(width = 3, height = 2, extra: readonly Uint8Array[] = []): Uint8Array<ArrayBuffer> {
  const head = new Uint8Array(13);
  const view = new DataView(head.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  head.set([8, 2], 8);
  const rows = new Uint8Array(height * (1 + width * 3)).fill(120);
  for (let y = 0; y < height; y++) rows[y * (1 + width * 3)] = 0;
  const signature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
  const parts = [
    signature,
    pngChunk('IHDR', head),
    ...extra,
    pngChunk('IDAT', new Uint8Array(deflateSync(rows))),
    pngChunk('IEND', new Uint8Array()),
  ];
  return joinedBytes(parts);
}

export function pngChunk(name: string, data: Uint8Array): Uint8Array {
  const out = new Uint8Array(12 + data.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, data.length);
  out.set(new TextEncoder().encode(name), 4);
  out.set(data, 8);
  view.setUint32(8 + data.length, crc32(out.subarray(4, 8 + data.length)));
  return out;
}

export function joinedBytes(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const out = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}
