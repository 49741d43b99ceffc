import type { MotifFamily, MotifGuess, PixelImage } from '../model.ts';
import { reduced } from '../outline/table-map.ts';
import type { Planes } from '../planes.ts';
import { tilesOf } from './mosaic.ts';
import { bodiesOf, shapesOf } from './motif-bodies.ts';
import { directionsOf } from './motif-directions.ts';

/** Longer side of the picture that is looked at. */
const longest = 256;

/**
 * What a pattern looks like at a first glance, and how sure that is, 0–1; the user corrects it. By which way its edges
 * run, and by what its bodies are like. The borders between
 * the families are ours, set on drawn papers.
 */
export function guessMotif(image: PixelImage): MotifGuess {
  return motifOf(reduced(image, longest));
}

/** The same of a picture that is already turned to OKLab. */
export function motifOf(picture: Planes): MotifGuess {
  const planes = smaller(picture);
  const way = directionsOf(planes);
  if (way.edges < 0.004) return guess('plain', 1 - way.edges / 0.008);
  if (way.one >= 0.7) return guess('stripe', 0.5 + (way.one - 0.7) / 0.5);
  const bodies = shapesOf(bodiesOf(tilesOf(planes)));
  if (bodies.count >= 8 && bodies.round >= 0.5 && way.two < 0.35)
    return guess('dots', 0.3 + 0.7 * bodies.round * (1 - way.two));
  if (way.zigzag >= 0.55) return guess('chevron', 0.2 + way.zigzag * 0.75);
  const lines = bodies.inLines >= 3 && bodies.count >= 24 && bodies.median < 0.012 && bodies.largest < 0.12;
  if (lines && (way.two >= 0.2 || bodies.inLines >= 8))
    return guess('text', 0.4 + Math.min(0.4, (bodies.inLines - 3) / 8));
  if (way.two >= 0.5) return guess('grid', 0.4 + (way.two - 0.5));
  return guess('organic', 0.5 + 0.4 * (1 - Math.max(way.one, way.two, bodies.round)));
}

/** Means of square blocks, so that the longer side is 256 at most; what is not part of the sheet takes the colour around it. */
function smaller(planes: Planes): Planes {
  const block = Math.ceil(Math.max(planes.width, planes.height) / longest);
  if (block <= 1) return planes;
  const width = Math.max(1, Math.floor(planes.width / block));
  const height = Math.max(1, Math.floor(planes.height / block));
  const size = width * height;
  const sum = new Float64Array(width);
  const n = new Float64Array(width);
  const mean = (from: Float32Array): Float32Array => {
    const to = new Float32Array(size);
    for (let y = 0; y < height; y++) {
      sum.fill(0);
      n.fill(0);
      // Every other row tells as much.
      for (let dy = 0; dy < block; dy += 2)
        addBlocks(from, planes.on, (y * block + dy) * planes.width, block, sum, n);
      for (let x = 0, at = y * width; x < width; x++, at++)
        to[at] = n[x] ? sum[x]! / n[x]! : x ? to[at - 1]! : y ? to[at - width]! : 0;
    }
    return to;
  };
  return {
    width,
    height,
    l: mean(planes.l),
    a: mean(planes.a),
    b: mean(planes.b),
    on: new Uint8Array(size).fill(1),
    count: size,
    block: planes.block * block,
  };
}

function addBlocks(
  from: Float32Array,
  on: Uint8Array,
  start: number,
  block: number,
  sum: Float64Array,
  n: Float64Array,
): void {
  for (let x = 0, i = start; x < sum.length; x++) {
    let s = 0;
    let k = 0;
    for (const end = i + block; i < end; i++) {
      if (!on[i]) continue;
      s += from[i]!;
      k++;
    }
    sum[x]! += s;
    n[x]! += k;
  }
}

function guess(family: MotifFamily, sure: number): MotifGuess {
  return { family, sure: Math.round(100 * Math.max(0.1, Math.min(0.95, sure))) / 100 };
}
