import { labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import { lightFromCard } from './card.ts';
import { evenOut, lightSurface } from './evenness.ts';
import { type Found, findInks } from './find-inks.ts';
import { flatness } from './flatness.ts';
import { baseKind, groundOf, groundPrinted } from './ground.ts';
import { idAt, inkOf } from './ink.ts';
import { countLabels } from './label-counts.ts';
import type { Base, Frame, Ink, Light, PixelImage, Reading, ReadOptions, Side } from './model.ts';
import { numbers } from './numbers.ts';
import { placesOf } from './places.ts';
import { blockFor, clampFrame, linearPlanes, oklabPlanes, type Planes, soften } from './planes.ts';
import { printOf } from './print.ts';
import { screenPeriod } from './screen.ts';
import { apart } from './settle.ts';
import type { Softness } from './softness.ts';
import { UnreadableImage } from './unreadable.ts';

/** How many softenings make dots of this period vanish, on top of averaging in blocks. */
function softenings(period: number, block: number): number {
  let variance = block ** 2 / 12;
  let times = 0;
  while (Math.sqrt(variance) < numbers.screenSigma * period) {
    variance += block ** 2 / 2;
    times++;
  }
  return times;
}

/** How soft edges are after that, in blocks: the averaging, the softenings, and what a scanner's own lens adds. */
function softenedBy(times: number, block: number): Softness {
  const lens = 0.5;
  const sigma = Math.sqrt(1 / 12 + times / 2 + (lens / block) ** 2);
  return { light: sigma, colour: sigma };
}

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
  const frame = clampFrame(options.crop, image);
  if (frame.width * frame.height < 2)
    throw new UnreadableImage('The picture is too small to read: one pixel.');
  const mmPerPixel = options.mmPerPixel ?? sheetMm / Math.max(frame.width, frame.height);
  const card = options.card ? lightFromCard(image, options.card) : null;
  const period = screenPeriod(image, frame);
  const block = Math.max(blockFor(frame.width * frame.height), period ? Math.round(period / 2) : 1);
  const linear = linearPlanes(image, frame, options.card ?? null, block);
  const times = period ? softenings(period, block) : 0;
  if (period) soften(linear, times);
  if (!linear.count) throw new UnreadableImage('The picture is fully transparent: there is nothing to read.');
  const planes = oklabPlanes(linear, card?.matrix ?? null);
  const flat = flatness(planes);
  const surface = lightSurface(planes, flat.limit);
  if (surface) evenOut(planes, surface, options.card ? middleOn(options.card, frame) : null);
  const found = findInks(planes, flat, period ? softenedBy(times, block) : null);
  const read = settled(planes, found, mmPerPixel, lightNote(card));
  return options.mmPerPixel === undefined ? sizeAssumed(read) : read;
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
    throw new UnreadableImage('The picture is empty.');
  if (width * height < 2) throw new UnreadableImage('The picture is too small to read: one pixel.');
}

function lightNote(card: { clipped: boolean } | null): Light {
  if (!card)
    return {
      known: false,
      note: 'No card in the picture: the light is unknown, so whites and creams are as the camera gave them.',
    };
  return {
    known: true,
    note: card.clipped
      ? 'Light corrected by the card, which is overexposed: trust light colours less.'
      : 'Light corrected by the card in the picture.',
  };
}

function settled(
  planes: Planes,
  { colours, labels, amounts, ramps }: Found,
  mmPerPixel: number,
  light: Light,
): Reading {
  const counts = countLabels(labels, planes.width, planes.height, colours.length);
  const ground = groundOf(
    labels,
    planes.width,
    planes.height,
    counts,
    colours.map((c) => c.l),
  );
  const order = colours
    .map((_, k) => k)
    .filter((k) => k !== ground)
    .sort((p, q) => amounts[q]! - amounts[p]! || p - q);
  order.unshift(ground);
  const shares = sharesOf(order.map((k) => amounts[k]!));
  const inks = order.map((k, n): Ink => {
    const { l, a, b } = colours[k]!;
    const share = shares[n]!;
    const accent =
      n > 0 && share < numbers.accentShare && apart(colours[k]!, colours[ground]!) >= numbers.accentDistance;
    return inkOf({ l, a: a / 2, b: b / 2 }, idAt(n), share, accent);
  });
  const name: number[] = [];
  order.forEach((k, n) => {
    name[k] = n;
  });
  const places = placesOf(labels, planes.width, planes.height, name);
  const lightness = order.map((k) => colours[k]!.l);
  const mmPerPlace = (mmPerPixel * planes.block * planes.width) / places.width;
  const [first, ...rest] = inks;
  const print = printOf(places, lightness, mmPerPlace);
  const washes = ramps
    .filter((ramp) => ramp.length > 1)
    .map((ramp) => ({ inks: ramp.map((k) => idAt(name[k]!)) }));
  return {
    side: {
      base: baseOf(first!, rest),
      inks: rest,
      print,
      light,
      ...(washes.length ? { ramps: washes } : {}),
    },
    places,
  };
}

function baseOf(ink: Ink, rest: readonly Ink[]): Base {
  const lab = labOf(ink);
  const kind = baseKind(lab);
  const others = rest.map((other) => ({ lab: labOf(other), share: other.share }));
  return { ...ink, kind, printed: groundPrinted(kind, lab, others) };
}

function labOf(ink: Ink): { l: number; a: number; b: number } {
  return labFromOklch(oklchFromTuple(ink.oklch));
}

/** Shares in steps of 1/8192, which sum to exactly 1 in floating point too: the first takes what rounding leaves. */
function sharesOf(areas: readonly number[]): number[] {
  const total = areas.reduce((s, n) => s + n, 0);
  const shares = areas.map((n) => Math.round((n / total) * 8192) / 8192);
  shares[0] = 1 - shares.slice(1).reduce((s, n) => s + n, 0);
  return shares;
}
