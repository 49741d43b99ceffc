import { nearestOk, oklabFromBytes } from '../../colour/batch.ts';
import { linearFromOklab } from '../../colour/oklab-linear.ts';
import { encodedFromLinear, oklabFromOklch, oklchFromTuple, rgbFromHex } from '../../colour/spaces.ts';
import type { Change } from '../../harmony/model.ts';
import { nothing } from '../../sheet/inks/label-counts.ts';
import type { Ink, PixelImage, Places, Side } from '../../sheet/model.ts';

/** What is done to one paper. */
export type PaperChange = Extract<Change, { kind: 'cover' | 'trim' | 'recolour' | 'add' }>;

/** A paper's picture with what is needed to change it: where its colours lie, and the inks that were read of each. */
export interface PaperToChange {
  readonly image: PixelImage;
  /** By the order of `side`'s base and inks. */
  readonly places: Places;
  readonly side: Side;
  /** The inks of each colour, by its id; a colour that is not named here is one ink. */
  readonly inside: ReadonlyMap<string, readonly Ink[]>;
}

/** OKLab distance up to which a pixel that was counted elsewhere still shows the colour: its rims. Ours. */
const rimWithin = 0.06;

/**
 * The picture of a paper after some changes: a covered colour is the covering one, flat, as a piece of card would be; what is
 * cut away is see-through; a recoloured one keeps its light and dark. Pieces that are laid on are no part of it (`piecesOn`).
 */
export function changedPaper(paper: PaperToChange, changes: readonly PaperChange[]): PixelImage {
  const { image } = paper;
  const data = new Uint8ClampedArray(image.data);
  const marks = placesOfColours(paper);
  for (const change of changes) {
    if (change.kind === 'add') continue;
    const at = [paper.side.base, ...paper.side.inks].findIndex(({ id }) => id === change.ink);
    if (at < 0) continue;
    if (change.kind === 'cover') fill(data, marks, at, change.with.hex);
    else if (change.kind === 'recolour') recolour(data, marks, at, paper, change.to);
    else cutAway(data, marks, at, image.width, change.toShare ?? 0);
  }
  return { data, width: image.width, height: image.height };
}

/** A piece that lies on a paper: its middle and its radius, as fractions of the paper's width. */
export interface Piece {
  readonly hex: string;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Where three pieces lie: a triangle, in fractions of width and height. That three places make a colour look meant is common practice, no source. */
const triangle = [
  [0.26, 0.24],
  [0.78, 0.4],
  [0.4, 0.78],
] as const;

/** The pieces that are laid on a paper `aspect` times as high as it is wide: three for each colour, which share its area. */
export function piecesOn(changes: readonly PaperChange[], aspect: number): readonly Piece[] {
  const laid = changes.filter((change) => change.kind === 'add');
  return laid.flatMap(({ ink, share }, nth) => {
    const radius = Math.sqrt((share * aspect) / (3 * Math.PI));
    return triangle.map(([x, y]) => ({
      hex: ink.hex,
      x: (x + nth * 0.17) % 0.86,
      y: y * aspect,
      radius,
    }));
  });
}

/** By pixel, the place in the side's colours of the one that lies there, with its rims; 255 where that is not known. */
function placesOfColours({ image, places, side, inside }: PaperToChange): Uint8Array {
  const { width, height, data } = image;
  const colours = [side.base, ...side.inks];
  const inks = colours.flatMap((colour, at) =>
    (inside.get(colour.id) ?? [colour]).map((ink) => ({ ink, at })),
  );
  const labs = new Float64Array(inks.flatMap(({ ink }) => labOf(ink)));
  const pixels = oklabFromBytes(data);
  const marks = new Uint8Array(width * height);
  const [across, down] = [places.width / width, places.height / height];
  const reach = Math.ceil(1 / Math.min(across, down)) + 1;
  for (let y = 0, i = 0; y < height; y += 1) {
    const row = Math.floor(y * down) * places.width;
    for (let x = 0; x < width; x += 1, i += 1)
      marks[i] = places.labels[row + Math.floor(x * across)] ?? nothing;
  }
  const read = marks.slice();
  for (let y = 0, i = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, i += 1) {
      const [l, a, b] = [pixels[i * 3]!, pixels[i * 3 + 1]!, pixels[i * 3 + 2]!];
      const near = nearestOk(l, a, b, labs);
      const far = Math.hypot(l - labs[near * 3]!, a - labs[near * 3 + 1]!, b - labs[near * 3 + 2]!);
      const { at } = inks[near]!;
      // A pixel that looks like an ink is that ink's; one that looks like none stays where it was read.
      if (at !== read[i] && (far < rimWithin || isBeside(read, width, height, x, y, reach, at)))
        marks[i] = at;
    }
  }
  return marks;
}

/** Whether a colour was read within so many pixels: then what looks like it is its rim. */
function isBeside(
  read: Uint8Array,
  width: number,
  height: number,
  x: number,
  y: number,
  reach: number,
  at: number,
): boolean {
  for (let dy = -reach; dy <= reach; dy += reach) {
    for (let dx = -reach; dx <= reach; dx += reach) {
      const [px, py] = [x + dx, y + dy];
      if (px >= 0 && py >= 0 && px < width && py < height && read[py * width + px] === at) return true;
    }
  }
  return false;
}

function fill(data: Uint8ClampedArray, marks: Uint8Array, at: number, hex: string): void {
  const { r, g, b } = rgbFromHex(hex);
  for (let i = 0; i < marks.length; i += 1) {
    if (marks[i] !== at) continue;
    data[i * 4] = r * 255;
    data[i * 4 + 1] = g * 255;
    data[i * 4 + 2] = b * 255;
    data[i * 4 + 3] = 255;
  }
}

function recolour(
  data: Uint8ClampedArray,
  marks: Uint8Array,
  at: number,
  paper: PaperToChange,
  to: Ink,
): void {
  const from = labOf([paper.side.base, ...paper.side.inks][at]!);
  const aim = labOf(to);
  const pixels = oklabFromBytes(paper.image.data);
  for (let i = 0; i < marks.length; i += 1) {
    if (marks[i] !== at) continue;
    const rgb = linearFromOklab(
      aim[0] + pixels[i * 3]! - from[0],
      aim[1] + (pixels[i * 3 + 1]! - from[1]) / 2,
      aim[2] + (pixels[i * 3 + 2]! - from[2]) / 2,
    );
    for (let channel = 0; channel < 3; channel += 1) {
      data[i * 4 + channel] = encodedFromLinear(Math.max(0, rgb[channel]!)) * 255;
    }
  }
}

/** All of a colour, or, where some of it stays, what lies furthest to the right: a sheet is cut from its edge. */
function cutAway(
  data: Uint8ClampedArray,
  marks: Uint8Array,
  at: number,
  width: number,
  toShare: number,
): void {
  const columns = new Uint32Array(width);
  for (let i = 0; i < marks.length; i += 1) if (marks[i] === at) columns[i % width]! += 1;
  let stays = toShare * marks.length;
  let until = 0;
  while (until < width && stays >= columns[until]! && toShare > 0) stays -= columns[until++]!;
  for (let i = 0; i < marks.length; i += 1) {
    if (marks[i] === at && i % width >= until) data[i * 4 + 3] = 0;
  }
}

function labOf({ oklch }: Ink): [number, number, number] {
  const { l, a, b } = oklabFromOklch(oklchFromTuple(oklch));
  return [l, a, b];
}
