/** What a bundle may hold. A notebook of 500 sheets with both sides pictured stays well below. */
export const bundleLimits = {
  /** Bytes of the file itself. */
  file: 1_000_000_000,
  /** Bytes of notebook.json, unpacked. */
  notebook: 60_000_000,
  /** Bytes of one picture. */
  picture: 25_000_000,
  /** Bytes of all that is in it, unpacked. */
  all: 1_200_000_000,
  /** Files in it. */
  entries: 20_000,
  /** Longer side of a picture, in pixels. Quirewise itself stores up to 1600. */
  pictureSide: 8_192,
} as const;

/** The one file that a bundle must hold. */
export const notebookEntry = 'notebook.json';
