import type { Corners, HandMade, LightMark, Sheet, Side, SizeMm, Spot } from '../../src/sheet/model.ts';
import type { KnownColour } from './known-colour.ts';
import type { PartOffer } from './qw-part.ts';

/** A side of a sheet as its tools work on it. */
export interface SheetView {
  readonly sheet: Sheet;
  readonly face: 'A' | 'B';
  /** As it is shown: with the ids that are on screen. */
  readonly side: Side;
  /** Address of the picture that is read. */
  readonly picture: string | null;
  /** Address of the photograph as it was taken. */
  readonly taken: string | null;
  /** The corners that it was straightened by, or those that were found; null where nothing is known. */
  readonly corners: Corners | null;
  /** The size that it is straightened to unless another is chosen. */
  readonly straightSize: SizeMm;
  /** One sentence on how the corners were come by. */
  readonly cornersSay: string;
  readonly straightened: boolean;
  readonly light: LightMark | null;
  readonly hand: readonly HandMade[];
  readonly spots: Readonly<Record<string, Spot>>;
  readonly blocks: readonly PartOffer[];
  readonly parts: readonly { readonly key: string; readonly name: string; readonly size: string }[];
  readonly spotReads: KnownColour | null;
  readonly weightSays: string;
}
