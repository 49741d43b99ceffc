import type { PixelImage } from '../sheet/model.ts';

/** What a file says of its colours: an ICC profile, or the code points of ISO/IEC 23091-2 (primaries, transfer). */
export type ColourNote =
  | { readonly icc: Uint8Array }
  | { readonly primaries: number; readonly transfer: number };

/** A picture that was decoded by our own means rather than by the browser: upright, reduced, its colours not yet sRGB. */
export interface RawPicture {
  readonly image: PixelImage;
  /** Pixels of the picture at full size, as shown. */
  readonly fullWidth: number;
  readonly fullHeight: number;
  /** What its colours are, where they are not plain sRGB. */
  readonly colours: ColourNote | null;
  readonly notes: readonly string[];
}

/** The profile as a note, where it is one for RGB. Source: ICC.1:2022, §7.2.6 (data colour space at byte 16). */
export function profileNote(icc: Uint8Array | null): ColourNote | null {
  if (icc === null || icc.length < 132) return null;
  const space = String.fromCharCode(...icc.subarray(16, 20));
  return space === 'RGB ' ? { icc } : null;
}
