/**
 * The engine: what the outside may import. Everything here is synchronous and pure, and runs the same in Node and
 * in a browser without a page. Colours are sRGB and CIELAB under D65.
 *
 * `readSide(image)` → a side; `compare(anchor, candidate)` → a comparison; `rank(anchor, candidates)` → comparisons,
 * best first; `boardOf(comparison)` → a board; `boardSvg(board)` → a picture of it.
 */
export { boardOf } from './board/compose.ts';
export { boardKinds } from './board/kinds.ts';
export type { Board, BoardKind, BoardOptions, BoardSize, Scene } from './board/model.ts';
export { boardSvg, sceneSvg } from './board/svg.ts';
export { deltaE76, deltaE2000, deltaEOk } from './colour/difference.ts';
export { hexFromOklch, mapToSrgb } from './colour/gamut.ts';
export { ouLuo } from './colour/harmony-two.ts';
export type { Lab, Munsell, OkLab, Oklch, OklchTuple, Rgb, Wheel, Xyz } from './colour/model.ts';
export { formatMunsell, labFromMunsell, munsellFromLab, parseMunsell } from './colour/munsell/munsell.ts';
export { isccName } from './colour/naming/names.ts';
export { tradeWord } from './colour/naming/trade-words.ts';
export type { Source } from './colour/sources.ts';
export { sourceById, sources } from './colour/sources.ts';
export {
  hexFromRgb,
  labFromHex,
  labFromOklch,
  labFromRgb,
  oklchFromHex,
  oklchFromLab,
  oklchFromTuple,
  parseHex,
  rgbFromHex,
  rgbFromLab,
} from './colour/spaces.ts';
export { advise as compare, adviseAll as rank } from './harmony/advise.ts';
export type {
  Advised,
  CompareOptions,
  Comparison,
  Decision,
  Distance,
  FamilySide,
  Link,
  LinkKind,
  MendOptions,
  Owned,
  OwnedSheet,
  Ranked,
  Reason,
  ReasonKind,
  Remedy,
  RemedyKind,
  SideFamily,
  Verdict,
} from './harmony/model.ts';
export { remediesFor } from './harmony/remedies/remedies.ts';
export type { Block } from './sheet/blocks/parts.ts';
export { findBlocks, readPart } from './sheet/blocks/parts.ts';
export type { HandOptions } from './sheet/hand/hand.ts';
export { NoColourAtSpot, UnknownInk, withHand } from './sheet/hand/hand.ts';
export type {
  Base,
  BaseKind,
  Card,
  Corners,
  Frame,
  HandChange,
  HandMade,
  Ink,
  Light,
  MotifFamily,
  MotifGuess,
  PixelImage,
  Places,
  Plain,
  PlainKind,
  Print,
  PrintScale,
  Reading,
  ReadOptions,
  Side,
  SizeMm,
  Spot,
} from './sheet/model.ts';
export type { FoundCorners } from './sheet/outline/corners.ts';
export { findCorners } from './sheet/outline/corners.ts';
export type { PaperOnTable } from './sheet/outline/find-paper.ts';
export { findPaper } from './sheet/outline/find-paper.ts';
export type { Homography } from './sheet/outline/homography.ts';
export { homographyOf, movedBy } from './sheet/outline/homography.ts';
export type { Straightened, StraightenOptions } from './sheet/outline/straighten.ts';
export { straighten } from './sheet/outline/straighten.ts';
export { inkFromHex, plainOf, sideOfPlain } from './sheet/plain.ts';
export { guessMotif } from './sheet/print/motif.ts';
export { readSide, readWithPlaces } from './sheet/read-side.ts';
export { relabel } from './sheet/relabel.ts';
export { UnreadableImage } from './sheet/unreadable.ts';
export { inkWord } from './sheet/words/side-words.ts';
