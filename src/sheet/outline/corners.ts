import type { Corners, PixelImage } from '../model.ts';
import type { Planes } from '../planes.ts';
import { type EdgeFit, onEdges } from './edge-fit.ts';
import { fromTopLeft, isConvex, type Quad, twiceArea } from './quad.ts';
import { fitQuad, RowSums, refitQuad } from './quad-fit.ts';
import { firstGuess, guessFrom, reduced, speaksForSheet } from './table-map.ts';

/** Where a sheet's corners lie on a picture, and how sure that is, 0–1: from about 0.6 they need no look. */
export interface FoundCorners {
  readonly corners: Corners;
  readonly sure: number;
}

/** Longer side of the picture that is looked at. Ours: a sheet's edge is still met to a part of a pixel. */
const longest = 400;

/**
 * A sheet's four corners against the table in a photograph, as fractions 0–1 of it, clockwise from the corner nearest
 * the picture's top left. What lies along the picture's border is taken for the table; the four-sided place that differs
 * from it is the sheet, its sides laid through the edges to a part of a pixel. A picture that is all sheet, as a scan
 * is, gives its own corners; so does a bare table, which can't be told from one. Null where nothing in it looks like a sheet on something else; `sure` is under 0.4 where
 * the sheet leaves the picture. The method and its numbers are ours, set on drawn photographs.
 */
export function findCorners(image: PixelImage): FoundCorners | null {
  if (!(image.width >= 16 && image.height >= 16) || image.data.length < image.width * image.height * 4)
    return null;
  const planes = reduced(image, longest);
  const { width, height } = planes;
  let says = speaksForSheet(planes, firstGuess(planes));
  const apart = spread(says, firstGuess(planes));
  let quad = fitQuad(says, width, height);
  if (!quad) return allSheet(apart);
  for (let round = 0; round < 3; round++) {
    says = speaksForSheet(planes, guessFrom(quad, planes));
    quad = refitQuad(says, width, height, quad);
  }
  const rough = onEdges(planes, says, quad);
  const fit = onEdges(planes, says, rough.quad);
  const sure = sureOf(planes, says, fit);
  if (touching(fit.quad, planes).sides >= 3) return allSheet(apart);
  if (sure < 0.12) return apart < 0.35 ? allSheet(apart) : null;
  const scale = { x: planes.block / image.width, y: planes.block / image.height };
  const corners = fromTopLeft(fit.quad).map(({ x, y }) => ({ x: x * scale.x, y: y * scale.y }));
  return { corners: corners as unknown as Corners, sure };
}

function sureOf(planes: Planes, says: Float32Array, { quad, support }: EdgeFit): number {
  const { width, height } = planes;
  const area = twiceArea(quad) / 2;
  if (!isConvex(quad) || area < 0.05 * width * height) return 0;
  const sums = new RowSums(says, width, height);
  const inside = sums.within(quad) / area;
  const whole = sums.within([
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ]);
  const outside = (whole - sums.within(quad)) / Math.max(1, width * height - area);
  const parted = ramp(Math.min(inside, -outside), 0, 1.1);
  const weakest = Math.min(...support);
  const mean = support.reduce((sum, v) => sum + v, 0) / 4;
  const edges = ramp(0.5 * weakest + 0.5 * mean, 0.15, 0.75);
  const out = touching(quad, planes).any ? 0.35 : 1;
  return Math.round(100 * Math.sqrt(parted * edges) * out * 0.97) / 100;
}

/** How many sides lie along the picture's border or beyond it, and whether any corner does. */
function touching(quad: Quad, { width, height }: Planes): { sides: number; any: boolean } {
  const near = 0.012 * Math.max(width, height);
  const beyond = quad.map(({ x, y }) => [x < near, y < near, x > width - near, y > height - near]);
  const along = beyond.filter((here, i) => here.some((is, k) => is && beyond[(i + 1) % 4]![k]));
  return { sides: along.length, any: beyond.some((here) => here.includes(true)) };
}

/** How far the colours along the border differ from those in the middle, 0–1. */
function spread(says: Float32Array, guess: Uint8Array): number {
  let [inside, ins, outside, outs] = [0, 0, 0, 0];
  for (let i = 0; i < says.length; i++)
    if (guess[i] === 0) {
      inside += says[i]!;
      ins++;
    } else if (guess[i] === 1) {
      outside += says[i]!;
      outs++;
    }
  return ramp(inside / (ins || 1) - outside / (outs || 1), 0, 3);
}

function allSheet(apart: number): FoundCorners {
  return {
    corners: [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ],
    // A sheet on a table of its own colours looks much like this too, so it is never held for certain.
    sure: Math.round(100 * Math.max(0.1, 0.75 * (1 - 2 * apart))) / 100,
  };
}

function ramp(v: number, from: number, to: number): number {
  return Math.max(0, Math.min(1, (v - from) / (to - from)));
}
