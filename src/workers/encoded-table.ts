import { encodedFromLinear } from '../colour/spaces.ts';

let kept: Uint8Array | undefined;

/** 8-bit encoded sRGB of 65 536 steps of linear light; fine enough that every 8-bit value comes back as itself. */
export function encodedTable(): Uint8Array {
  kept ??= Uint8Array.from({ length: 65_536 }, (_, i) => Math.round(encodedFromLinear(i / 65_535) * 255));
  return kept;
}
