import type { Card, PixelImage } from './model.ts';
import { clampFrame, linearPlanes, type Matrix3, multiply } from './planes.ts';
import { UnreadableImage } from './unreadable.ts';

/** Share of light a white card reflects where nothing is said. Common practice, no source. */
const cardReflectance = 0.9;

/**
 * The matrix, on linear sRGB, that turns the card's measured colour to a neutral of its reflectance: Bradford from the
 * card's white to D65, exposure with it.
 * @throws UnreadableImage where the card is black or lies outside the picture.
 * Source: Lindbloom / ICC.1 Annex E for Bradford's matrix; IEC 61966-2-1 for sRGB's.
 */
export function lightFromCard(image: PixelImage, card: Card): { matrix: Matrix3; clipped: boolean } {
  const white = cardColour(image, card);
  if (Math.min(white.r, white.g, white.b) < 0.004)
    throw new UnreadableImage('The card in the picture is too dark to tell the light from.');
  const source = apply(xyzFromLinear, [white.r, white.g, white.b]);
  const from = apply(bradford, source);
  const to = apply(bradford, apply(xyzFromLinear, [1, 1, 1]));
  const reflectance = Math.min(1, Math.max(0.02, card.reflectance ?? cardReflectance));
  const scale = to.map((t, i) => (reflectance * t) / from[i]!);
  const diagonal = [scale[0]!, 0, 0, 0, scale[1]!, 0, 0, 0, scale[2]!];
  const inXyz = multiply(inverse(bradford), multiply(diagonal, bradford));
  return { matrix: multiply(inverse(xyzFromLinear), multiply(inXyz, xyzFromLinear)), clipped: white.clipped };
}

/** Middle colour of the card in linear light: its rim is left out, for it may be shadow or table. */
function cardColour(image: PixelImage, card: Card): { r: number; g: number; b: number; clipped: boolean } {
  const rim = 0.15;
  const frame = clampFrame(
    {
      x: card.x + card.width * rim,
      y: card.y + card.height * rim,
      width: Math.max(1, card.width * (1 - 2 * rim)),
      height: Math.max(1, card.height * (1 - 2 * rim)),
    },
    image,
  );
  const block = Math.max(1, Math.floor(Math.min(frame.width, frame.height) / 64));
  const planes = linearPlanes(image, frame, null, block);
  if (!planes.count) throw new UnreadableImage('The card lies on a transparent part of the picture.');
  const middle = (p: Float32Array): number => {
    const sorted = Float32Array.from(p.filter((_, i) => planes.on[i])).sort();
    const from = Math.floor(sorted.length * 0.25);
    const to = Math.max(from + 1, Math.ceil(sorted.length * 0.75));
    return sorted.subarray(from, to).reduce((s, v) => s + v, 0) / (to - from);
  };
  const [r, g, b] = [middle(planes.r), middle(planes.g), middle(planes.b)];
  return { r, g, b, clipped: Math.max(r, g, b) > 0.985 };
}

const xyzFromLinear: Matrix3 = [
  0.41239079926595934, 0.357584339383878, 0.1804807884018343, 0.21263900587151027, 0.715168678767756,
  0.07219231536073371, 0.01933081871559182, 0.11919477979462598, 0.9505321522496607,
];

const bradford: Matrix3 = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

function apply(m: Matrix3, [x, y, z]: readonly number[]): [number, number, number] {
  const row = (i: number): number => m[i]! * x! + m[i + 1]! * y! + m[i + 2]! * z!;
  return [row(0), row(3), row(6)];
}

function inverse(m: Matrix3): Matrix3 {
  const [a, b, c, d, e, f, g, h, i] = m as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const k = 1 / (a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g));
  return [
    (e * i - f * h) * k,
    (c * h - b * i) * k,
    (b * f - c * e) * k,
    (f * g - d * i) * k,
    (a * i - c * g) * k,
    (c * d - a * f) * k,
    (d * h - e * g) * k,
    (b * g - a * h) * k,
    (a * e - b * d) * k,
  ];
}
