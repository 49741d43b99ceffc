/** A paper of the drawer as it is shown there. */
export interface DrawerPaper {
  /** Names it in events; the one that is dragged. */
  readonly key: string;
  readonly name: string;
  /** What it is: "sheet, side A", "plain cardstock". */
  readonly about: string;
  /**
   * Address of its picture, or null: then its inks are drawn as bands by share. May be worked out when it is read, so it is
   * read only of what is drawn.
   */
  readonly picture: string | null;
  readonly bands: readonly Band[];
  /** Titles of the leaves that it lies on: putting it out takes it off them. */
  readonly liesOn?: readonly string[];
}

export interface Band {
  readonly hex: string;
  /** 0–1. */
  readonly share: number;
}

/** A CSS background that stands for a paper without a picture: bands of its inks by share, or one flat colour. */
export function bandsOf(bands: readonly Band[]): string {
  if (bands.length === 0) return 'none';
  let from = 0;
  const stops = bands.map(({ hex, share }) => {
    const to = from + share * 100;
    const stop = `${hex} ${from.toFixed(1)}% ${to.toFixed(1)}%`;
    from = to;
    return stop;
  });
  return `linear-gradient(to right, ${stops.join(', ')})`;
}
