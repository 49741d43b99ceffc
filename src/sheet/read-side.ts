import { findInks } from './inks/find-inks.ts';
import { flatness } from './inks/flatness.ts';
import { evenOut, lightSurface } from './light/evenness.ts';
import { type KnownLight, knownLightOf } from './light/known-light.ts';
import type { Frame, Light, PixelImage, Reading, ReadOptions, Side, Spot } from './model.ts';
import { oklabPlanes } from './oklab-planes.ts';
import { insideOf } from './outline/outline.ts';
import { clampFrame, type LinearPlanes } from './planes.ts';
import { readingOf } from './reading-of.ts';
import { withoutScreen } from './screen/descreen.ts';
import { withoutRosettes } from './screen/rosettes.ts';
import { seenOf } from './seen/seen.ts';
import { UnreadableImage } from './unreadable.ts';
import { lightWords } from './words/light-words.ts';
import { refusals } from './words/refusals.ts';

/** Longer side of a full sheet where no scale is given: 12 in. */
const sheetMm = 305;

/**
 * What one face of a sheet is printed with: base, inks with their shares, accents, print scale, and what is known of
 * the light. The same pixels give the same side.
 * @throws UnreadableImage where there is nothing to read.
 */
export function readSide(image: PixelImage, options: ReadOptions = {}): Side {
  return readWithPlaces(image, options).side;
}

/**
 * As `readSide`, with the places that each ink was read from.
 * @throws UnreadableImage where there is nothing to read.
 */
export function readWithPlaces(image: PixelImage, options: ReadOptions = {}): Reading {
  refuse(image);
  return readUnderLight(image, options, knownLightOf(image, options));
}

/**
 * The same where the light was told elsewhere: by a mark on the photograph that `image` was straightened from. `card` and
 * `chart` of the options are not looked at.
 * @throws UnreadableImage where there is nothing to read.
 */
export function readUnderLight(image: PixelImage, options: ReadOptions, light: KnownLight | null): Reading {
  refuse(image);
  const frame = clampFrame(options.crop, image);
  if (frame.width * frame.height < 2) throw new UnreadableImage(refusals.onePixel);
  const mmPerPixel = options.mmPerPixel ?? sheetMm / Math.max(frame.width, frame.height);
  const lies = light?.lies ?? null;
  const { linear: all, softness, rosettes } = withoutScreen(image, frame, lies);
  const linear = options.outline ? within(all, options.outline) : all;
  if (!linear.count) throw new UnreadableImage(refusals.transparent);
  const planes = oklabPlanes(linear, light?.matrix ?? null);
  if (rosettes > 0) withoutRosettes(planes, rosettes);
  const flat = flatness(planes);
  const surface = lightSurface(planes, flat.limit);
  if (surface) evenOut(planes, surface, lies && middleOn(lies, frame));
  // Before the inks are looked for: what is found there changes the planes.
  const seen = seenOf(planes, mmPerPixel * planes.block);
  const found = findInks(planes, flat, softness);
  const read = readingOf(planes, found, mmPerPixel, lightNote(light, surface !== null), seen);
  return options.mmPerPixel === undefined ? sizeAssumed(read) : read;
}

/** Leaves out what lies beyond an outline. */
function within(linear: LinearPlanes, outline: readonly Spot[]): LinearPlanes {
  const inside = insideOf(outline, linear.width, linear.height);
  const on = linear.on.map((v, i) => v & inside[i]!);
  return { ...linear, on, count: on.reduce((n, v) => n + v, 0) };
}

/** The lengths of a print that rest on a size nobody gave are marked so. */
function sizeAssumed({ side, places }: Reading): Reading {
  if (side.print.busyness === 0) return { side, places };
  return { side: { ...side, print: { ...side.print, assumedSize: true } }, places };
}

/** The middle of a card, on the sheet's −1…1; far beyond the sheet nothing is known of the light. */
function middleOn(card: Frame, sheet: Frame): { x: number; y: number } {
  const within = (v: number): number => Math.min(1.15, Math.max(-1.15, v));
  return {
    x: within((2 * (card.x + card.width / 2 - sheet.x)) / sheet.width - 1),
    y: within((2 * (card.y + card.height / 2 - sheet.y)) / sheet.height - 1),
  };
}

function refuse({ data, width, height }: PixelImage): void {
  if (!(width > 0 && height > 0) || data.length < width * height * 4)
    throw new UnreadableImage(refusals.empty);
  if (width * height < 2) throw new UnreadableImage(refusals.onePixel);
}

function lightNote(light: KnownLight | null, uneven: boolean): Light {
  const evenedOut = uneven ? ` ${lightWords.evenedOut}` : '';
  const { known, note } = light ?? unknown;
  return { known, note: note + evenedOut };
}

const unknown: Light = {
  known: false,
  note: lightWords.unknown,
};
