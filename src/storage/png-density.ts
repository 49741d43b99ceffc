import { crc32 } from '../files/crc32.ts';

/** A PNG that says how many pixels there are to the inch, so that it prints at its size. Source: W3C PNG §11.3.4.3 (pHYs). */
export function pngWithDensity(png: Uint8Array, perInch: number): Uint8Array<ArrayBuffer> {
  /** Signature and IHDR. */
  const head = 8 + 25;
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  const perMetre = Math.round(perInch / 0.0254);
  view.setUint32(0, 9);
  chunk.set([0x70, 0x48, 0x59, 0x73], 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  chunk[16] = 1;
  view.setUint32(17, crc32(chunk.subarray(4, 17)));
  const out = new Uint8Array(png.length + chunk.length);
  out.set(png.subarray(0, head));
  out.set(chunk, head);
  out.set(png.subarray(head), head + chunk.length);
  return out;
}
