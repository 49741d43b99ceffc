import { oklabFromBytes } from '../../colour/batch.ts';
import { deltaEOk } from '../../colour/difference.ts';
import { linearOfByte } from '../../colour/light-tables.ts';
import type { OkLab, Rgb } from '../../colour/model.ts';
import { oklabFromRgb, rgbFromLinear } from '../../colour/spaces.ts';
import type { Frame, PixelImage, Places, Spot } from '../model.ts';

/** A window of so much of the picture's longer side is looked at around a spot, to either hand. */
const windowPart = 0.004;

/** What differs from the middle of the window by more than this (OKLab) is another ink and is left out. */
const another = 0.08;

/** The colour at a spot: the mean in linear light of what lies around it, without what is plainly another ink. */
export function colourAtSpot(image: PixelImage, spot: Spot): OkLab {
  const reach = Math.max(2, Math.round(windowPart * Math.max(image.width, image.height)));
  const cx = Math.floor(Math.min(Math.max(spot.x, 0), 1) * (image.width - 1));
  const cy = Math.floor(Math.min(Math.max(spot.y, 0), 1) * (image.height - 1));
  const lights: Rgb[] = [];
  for (let y = Math.max(0, cy - reach); y <= Math.min(image.height - 1, cy + reach); y++)
    for (let x = Math.max(0, cx - reach); x <= Math.min(image.width - 1, cx + reach); x++)
      lights.push(lightAt(image, x, y));
  const middle = okOfLight({
    r: median(lights.map(({ r }) => r)),
    g: median(lights.map(({ g }) => g)),
    b: median(lights.map(({ b }) => b)),
  });
  const near = lights.filter((light) => deltaEOk(okOfLight(light), middle) <= another);
  return near.length > 0 ? okOfLight(meanLight(near)) : middle;
}

/** The picture's colour at the middle of each place, in linear light and in OKLab. */
export interface PlaceColours {
  light(place: number): Rgb;
  ok(place: number): OkLab;
}

/** The colours at all places; the places lie on `crop`, or on the whole picture. */
export function coloursOfPlaces(image: PixelImage, places: Places, crop?: Frame): PlaceColours {
  const { x, y, width, height } = crop ?? { x: 0, y: 0, width: image.width, height: image.height };
  const within = (v: number, most: number): number => Math.min(most - 1, Math.max(0, Math.floor(v)));
  const small = { data: new Uint8ClampedArray(places.labels.length * 4), width: places.width };
  for (let at = 0; at < places.labels.length; at++) {
    const px = within(x + (((at % places.width) + 0.5) * width) / places.width, image.width);
    const py = within(y + ((Math.floor(at / places.width) + 0.5) * height) / places.height, image.height);
    const p = (py * image.width + px) * 4;
    for (let c = 0; c < 4; c++) small.data[at * 4 + c] = image.data[p + c]!;
  }
  const oks = oklabFromBytes(small.data);
  return {
    light: (at) => lightAt(small, at % places.width, Math.floor(at / places.width)),
    ok: (at) => ({ l: oks[at * 3]!, a: oks[at * 3 + 1]!, b: oks[at * 3 + 2]! }),
  };
}

/**
 * Parts colours in two by where they lie in OKLab: 1 for the second. With a second colour given, each goes
 * to the nearer of it and the first; else by two means, started at the ends of the longest axis. Always the same.
 */
export function partedInTwo(colours: readonly OkLab[], first: OkLab, second?: OkLab): Uint8Array {
  let [p, q] = second ? [first, second] : endsOf(colours);
  const out = new Uint8Array(colours.length);
  for (let round = 0; round < (second ? 1 : 12); round++) {
    colours.forEach((c, i) => {
      out[i] = deltaEOk(c, q) < deltaEOk(c, p) ? 1 : 0;
    });
    if (second) break;
    p = meanOk(colours.filter((_, i) => out[i] === 0)) ?? p;
    q = meanOk(colours.filter((_, i) => out[i] === 1)) ?? q;
  }
  return out;
}

/** Mean of linear light, as OKLab; the share of each may weigh it. */
export function mixedLight(lights: readonly Rgb[], weights?: readonly number[]): OkLab {
  return okOfLight(meanLight(lights, weights));
}

function okOfLight(light: Rgb): OkLab {
  return oklabFromRgb(rgbFromLinear(light));
}

function lightAt({ data, width }: Pick<PixelImage, 'data' | 'width'>, x: number, y: number): Rgb {
  const p = (y * width + x) * 4;
  return { r: linearOfByte[data[p]!]!, g: linearOfByte[data[p + 1]!]!, b: linearOfByte[data[p + 2]!]! };
}

function meanLight(lights: readonly Rgb[], weights?: readonly number[]): Rgb {
  let [r, g, b, sum] = [0, 0, 0, 0];
  lights.forEach((light, i) => {
    const w = weights?.[i] ?? 1;
    r += w * light.r;
    g += w * light.g;
    b += w * light.b;
    sum += w;
  });
  return sum > 0 ? { r: r / sum, g: g / sum, b: b / sum } : { r: 0, g: 0, b: 0 };
}

function meanOk(colours: readonly OkLab[]): OkLab | null {
  if (colours.length === 0) return null;
  const n = colours.length;
  const mean = (of: (c: OkLab) => number): number => colours.reduce((sum, c) => sum + of(c), 0) / n;
  return { l: mean((c) => c.l), a: mean((c) => c.a), b: mean((c) => c.b) };
}

/** The colour farthest from the mean, and the one farthest from that. */
function endsOf(colours: readonly OkLab[]): [OkLab, OkLab] {
  const none = { l: 0, a: 0, b: 0 };
  const farthest = (from: OkLab): OkLab =>
    colours.reduce((best, c) => (deltaEOk(c, from) > deltaEOk(best, from) ? c : best), colours[0] ?? none);
  const first = farthest(meanOk(colours) ?? none);
  return [first, farthest(first)];
}

function median(list: readonly number[]): number {
  return [...list].sort((p, q) => p - q)[list.length >> 1] ?? 0;
}
