import { encodedFromLinear, linearFromEncoded } from './spaces.ts';

/** Linear light, 0–1, of each of `levels` equal steps of encoded sRGB: 256 for 8 bits, 65 536 for 16. Source: IEC 61966-2-1. */
export function linearTable(levels: number): Float64Array {
  return Float64Array.from({ length: levels }, (_, i) => linearFromEncoded(i / (levels - 1)));
}

/** Linear light of each 8-bit sRGB value. */
export const linearOfByte: Float64Array = /* @__PURE__ */ linearTable(256);

let kept: Uint8Array | undefined;

/** 8-bit encoded sRGB of 65 536 steps of linear light; fine enough that every 8-bit value comes back as itself. */
export function encodedTable(): Uint8Array {
  kept ??= Uint8Array.from({ length: 65_536 }, (_, i) => Math.round(encodedFromLinear(i / 65_535) * 255));
  return kept;
}
