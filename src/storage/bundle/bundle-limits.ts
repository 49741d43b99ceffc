/**
 * What a bundle may hold. Ours: far above a full drawer, since what can be saved must open again; a file is read by
 * pieces, so that none of these is ever in memory at once but the notebook and some pictures.
 */
export const bundleLimits = {
  /** Bytes of the file itself, and of all pictures in it. 10,000 sheets with both sides pictured are 20–50 GB at the very most. */
  file: 200_000_000_000,
  /** Bytes of notebook.json, unpacked. 10,000 sheets with all that is read of them take 17 million. */
  notebook: 250_000_000,
  /** Bytes of one picture. */
  picture: 25_000_000,
  /** Files in it. */
  entries: 200_000,
  /** Bytes of the list of files in it. */
  directory: 60_000_000,
  /** Longer side of a picture, in pixels. Quirewise itself stores up to 1600. */
  pictureSide: 8_192,
} as const;

/** Pictures are taken out of a file and handed on in portions of at most this many, or bytes: so much is in memory at once. */
export const portion = { pictures: 16, bytes: 16_000_000 } as const;

/** The one file that a bundle must hold. */
export const notebookEntry = 'notebook.json';
