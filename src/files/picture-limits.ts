/** How large a picture may be, and at which size it is read and kept. Ours; measured in tests/browser. */
export const pictureLimits = {
  /** Pixels that are read; larger pictures are reduced as they are decoded. A 12-inch sheet at 300 ppi has 13 million. */
  read: 12_600_000,
  /** Pixels of the largest picture that is decoded at all. A decoder needs four bytes for each. */
  decode: 120_000_000,
  /** Pixels of the largest canvas that is ever made: phones refuse larger ones. */
  canvas: 16_700_000,
  /** Longer side of the picture that is kept, in pixels. */
  keptSide: 1600,
  /** Longer side of the small picture, in pixels. */
  thumbSide: 240,
  /** Bytes of the largest picture file that is opened. */
  file: 400_000_000,
  /** Shorter side of the smallest picture that a paper can be read from, in pixels. */
  leastSide: 8,
  /** A flat drawing packs well without loss; above this many bytes a kept PNG becomes a JPEG. */
  pngBytes: 2_500_000,
} as const;

/** Factor, at most 1, that brings width × height down to `most` pixels. */
export function reduction(width: number, height: number, most: number): number {
  return Math.min(1, Math.sqrt(most / (width * height)));
}
