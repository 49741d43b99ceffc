import type { OklchTuple } from '../colour/model.ts';

/** One piece of paper and what was read from it. Stored as it stands; versioned at the edge by storage. */

/** The two faces of a sheet. */
export const sheetSides = ['A', 'B'] as const;
export type SheetSide = (typeof sheetSides)[number];

/** Pixels in, from anywhere: RGBA, 8 bits a channel, sRGB, rows from the top. `data.length` = width × height × 4. */
export interface PixelImage {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** A rectangle in pixels of the image it is given with. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A white or grey card in the picture: where it lies, and the share of light it reflects (0–1, default 0.9, or 0.18 for a grey one). */
export interface Card extends Frame {
  /** Default: grey where it reflects less than half. */
  readonly kind?: 'white' | 'grey';
  readonly reflectance?: number;
}

/** What cannot be read from a picture and is typed or picked instead. */
export const specialFinishes = ['foil', 'glitter', 'fluorescent', 'pearl'] as const;
export type SpecialFinish = (typeof specialFinishes)[number];

/** One printed colour of a side. */
export interface Ink {
  /** Base first: A, B, C … on an anchor; a, b, c … on a candidate. */
  readonly id: string;
  /** `#rrggbb`, mapped into sRGB where the colour lies outside. */
  readonly hex: string;
  /** Unmapped colour, the one that is computed with. */
  readonly oklch: OklchTuple;
  /** ISCC-NBS name. */
  readonly name: string;
  /** Trade word (navy, coral, kraft …) where one fits. */
  readonly trade?: string | null;
  /** Fraction of the side's area, 0–1; base and inks together sum to 1. */
  readonly share: number;
  /** A small share (under 5 %) that still catches the eye. */
  readonly accent: boolean;
  /** How sure the reading is, 0–1. */
  readonly sure?: number;
  readonly special?: SpecialFinish;
  /** True where the user's hand set this ink. */
  readonly byHand?: boolean;
}

export const baseKinds = ['white', 'cream', 'kraft', 'tinted', 'dark'] as const;
export type BaseKind = (typeof baseKinds)[number];

/** What lies behind the motifs. */
export interface Base extends Ink {
  readonly kind: BaseKind;
  /** Whether the ground is ink rather than bare paper; null where it can't be told. */
  readonly printed: boolean | null;
}

export const printScales = ['small', 'medium', 'large'] as const;
export type PrintScale = (typeof printScales)[number];

export interface Print {
  /** How much of the side is edge, 0–1. */
  readonly busyness: number;
  /** Length of the motif's repeat in millimetres. */
  readonly repeatMm: number | null;
  readonly scale: PrintScale | null;
  /** True where nobody told how large the sheet is, and its longer side was taken for 12 in. */
  readonly assumedSize?: true;
}

export interface Light {
  /** True where a card or chart in the picture told what the light was. */
  readonly known: boolean;
  /** One plain sentence. */
  readonly note: string;
}

export const motifFamilies = ['plain', 'dots', 'stripe', 'grid', 'chevron', 'text', 'organic'] as const;
export type MotifFamily = (typeof motifFamilies)[number];

/** What the reader guesses of the pattern; the user corrects it. */
export interface MotifGuess {
  readonly family: MotifFamily;
  readonly sure: number;
}

/** A wash: inks (by id) that shade into each other. */
export interface Ramp {
  readonly inks: readonly string[];
}

/** What an eye sees of a side at arm's length. Lengths are on the sheet. */
export interface Seen {
  /** Contrast of lightness in patterns of 1.5 mm to 20 mm, as root mean square of L*; linen 1–2, bold checks 15. */
  readonly light: number;
  /** The same of colour, as root mean square in the plane of a* and b*. */
  readonly colour: number;
  /** Contrast, lightness and colour together, of what is larger than that: washes, ombres, big bodies. */
  readonly large: number;
  /** Part of the contrast in patterns up to 20 mm that is finer than 4 mm, 0–1. */
  readonly fine: number;
  /** How exactly the side comes back on itself within `repeatMm`, 0–1. */
  readonly regular: number;
  /** The shortest way, in mm, at which it comes back on itself best, both ways taken together; null where none is seen. */
  readonly repeatMm: number | null;
}

/** One face of a sheet, as read. */
export interface Side {
  /** The picture's file name, where there is one. */
  readonly file?: string;
  readonly base: Base;
  readonly inks: readonly Ink[];
  readonly print: Print;
  readonly light: Light;
  readonly motif?: MotifGuess;
  readonly ramps?: readonly Ramp[];
  /** What an eye sees of it at arm's length; none where its pixels were not looked at. */
  readonly seen?: Seen;
  /** What the user says is drawn, and how. */
  readonly tags?: Tags;
}

export const motifs = [
  'floral',
  'leaf',
  'dot',
  'stripe',
  'chevron',
  'grid',
  'text',
  'heart',
  'star',
  'wood grain',
  'patchwork',
  'bird',
  'fruit',
  'map',
  'abstract',
] as const;
export type Motif = (typeof motifs)[number];

export const finishes = ['hand-drawn', 'watercolour', 'flat', 'distressed', 'photographic'] as const;
export type Finish = (typeof finishes)[number];

export interface Tags {
  readonly motifs?: readonly Motif[];
  readonly finishes?: readonly Finish[];
  readonly weight?: PaperWeight | null;
}

/** Where each ink lies on the side: one label a cell. 0 is the base, 1… the inks in order, 255 nothing. */
export interface Places {
  readonly width: number;
  readonly height: number;
  readonly labels: Uint8Array;
}

/** A side with the places of its inks. `places` covers the crop (or the whole image) that was read. */
export interface Reading {
  readonly side: Side;
  readonly places: Places;
}

export interface ReadOptions {
  /** Millimetres per pixel of the given image. Default: the longer side is 305 mm (12 in). */
  readonly mmPerPixel?: number;
  /** The part that is the sheet; default the whole image. */
  readonly crop?: Frame;
  /** Corners of a shape within the crop, in fractions 0–1 of it: what lies outside is left out. Default: all of the crop. */
  readonly outline?: readonly Spot[];
  /** A white or grey card in the picture. Default: none, and the light is unknown. */
  readonly card?: Card;
  /** A chart of 24 patches in the picture, by their outer edges; where there is one, a card is not looked at. */
  readonly chart?: Frame;
}

export const weightGrades = ['cover', 'text', 'bond', 'index'] as const;
export type WeightGrade = (typeof weightGrades)[number];

/** Grammage in g/m²; where it was given in pounds, the grade that makes sense of them. */
export interface PaperWeight {
  readonly gsm: number;
  readonly lb?: number;
  readonly grade?: WeightGrade;
  readonly weighed?: boolean;
}

export interface SizeMm {
  readonly width: number;
  readonly height: number;
}

/** One side as it is kept: its reading, and which stored picture it came from. */
export interface KeptSide {
  readonly reading: Side;
  readonly pictureId: string | null;
  /** SHA-256 of the file it came from, as hex: the same picture is known again. */
  readonly digest?: string;
  /** How the picture was read, so that it can be read again the same way. In pixels of the stored picture. */
  readonly options?: ReadOptions;
  /** The photograph, where the picture that was read was made from it: straightened, or its light corrected. */
  readonly taken?: Taken;
  /** Where on its picture the paper may lie, while she has not said whether it does: until then all of the picture is read. */
  readonly asks?: Corners;
  /** The reading before the hand corrected it; only where it has. */
  readonly asRead?: Side;
  /** What the hand corrected, oldest first; made again when the side is read again. */
  readonly hand?: readonly HandMade[];
}

/** A photograph as it was taken, and what has been done to it. */
export interface Taken {
  readonly pictureId: string;
  /** The sheet's corners on it; none where it was not straightened. */
  readonly corners?: Corners;
  /** True where the corners were found and it was straightened by them unasked. */
  readonly unasked?: true;
  /** What on it tells the light; none where the light was left. */
  readonly light?: LightMark;
}

/** How it is settled where a paper lies on its photograph: within the corners, all of it is paper, or it is to be asked. */
export type PaperIs = 'cut out' | 'whole' | 'ask';

/** A card or a 24-patch chart on a photograph; `frame` in fractions 0–1 of it, `reflectance` 0–1. */
export type LightMark =
  | { readonly kind: 'white' | 'grey'; readonly frame: Frame; readonly reflectance: number }
  | { readonly kind: 'chart'; readonly frame: Frame };

/** A sheet of patterned paper in the drawer. */
export interface Sheet {
  readonly id: string;
  readonly name: string;
  readonly sides: { readonly A: KeptSide; readonly B?: KeptSide };
  readonly sizeMm: SizeMm;
  readonly weight: PaperWeight | null;
  /** How many of it there are; using side A of one spends its side B. */
  readonly count: number;
  readonly note: string;
}

export const plainKinds = ['cardstock', 'letters', 'ink pad', 'thread', 'tape', 'mist', 'tag'] as const;
export type PlainKind = (typeof plainKinds)[number];

/** A one-colour material. */
export interface Plain {
  readonly id: string;
  readonly name: string;
  readonly kind: PlainKind;
  readonly ink: Ink;
  /** True for what takes any colour: bare letters, a blank tag. */
  readonly takesColour?: boolean;
  readonly weight?: PaperWeight | null;
}

/** A piece cut, or to be cut, from a sheet; read again from its own pixels. */
export interface Part {
  readonly id: string;
  readonly name: string;
  readonly sheetId: string;
  readonly side: SheetSide;
  /** On the sheet's picture, as fractions 0–1. */
  readonly frame: Frame;
  /** Corners of its shape, as fractions 0–1 of the frame; default the whole frame. */
  readonly outline?: readonly Spot[];
  readonly sizeMm: SizeMm;
  readonly reading: Side;
  /** The picture that the frame lies on; default the one of the sheet's side. It stays when the side gets another. */
  readonly pictureId?: string;
  readonly asRead?: Side;
  readonly hand?: readonly HandMade[];
}

/** A place on a picture, as fractions 0–1 of its width and height. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The corners of a sheet on a picture, clockwise from the sheet's top left. */
export type Corners = readonly [Spot, Spot, Spot, Spot];

/** Why an ink is set aside. */
export const asideReasons = ['shadow', 'shine', 'table', 'dirt', 'not printed'] as const;
export type AsideReason = (typeof asideReasons)[number];

/**
 * One correction of a reading by the user's hand. Inks are named by the ids that they have when the correction is made;
 * spots lie on the sheet's picture.
 */
export type HandChange =
  | { readonly kind: 'rename'; readonly ink: string; readonly name: string }
  /** `from` becomes part of `into`, which keeps its colour. */
  | { readonly kind: 'merge'; readonly from: string; readonly into: string }
  /** One ink that is two: with a spot, the second has the colour that lies there. */
  | { readonly kind: 'split'; readonly ink: string; readonly spot?: Spot }
  /** Keeps an ink as it is, whatever a later reading says. */
  | { readonly kind: 'keep'; readonly ink: string }
  | { readonly kind: 'set-aside'; readonly ink: string; readonly reason: AsideReason }
  /** `share` 0–1 of the side. */
  | { readonly kind: 'set-share'; readonly ink: string; readonly share: number }
  /** An ink that was missed: read at a spot, or a colour that is told because no picture shows it. */
  | { readonly kind: 'add'; readonly spot: Spot }
  | { readonly kind: 'add'; readonly hex: string; readonly special?: SpecialFinish }
  /** The ink's colour is the one at this spot. */
  | { readonly kind: 'move-spot'; readonly ink: string; readonly spot: Spot };

/** A correction as it is kept: with the inks that it named, so that they are known again in another reading. */
export interface HandMade {
  readonly change: HandChange;
  /** Each ink that it names, as it was then, by its id. */
  readonly inks: Readonly<Record<string, Ink>>;
  /** The colour at its spot, `#rrggbb`. */
  readonly hex?: string;
  /** Share of the side that is near the colour at its spot, 0–1. */
  readonly share?: number;
}
