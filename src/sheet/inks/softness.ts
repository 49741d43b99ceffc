import type { Planes } from '../planes.ts';
import { Edge } from './mixtures.ts';
import type { Mode } from './modes.ts';

/** How soft a picture's edges are: standard deviations in pixels, of lightness and of colour (which a JPEG blurs more). */
export interface Softness {
  readonly light: number;
  readonly colour: number;
}

/** How far an edge is followed to each side, in pixels. */
const reach = 5;

/**
 * Measured on straight stretches of edge between two broad inks: for a soft step that runs from 0 to 1, the integral of t (1 − t)
 * across it is σ/√π (where noise carries t beyond both ends, it does so either way). The middle of all measured; null where there are too few.
 */
export function softnessOf(planes: Planes, colours: readonly Mode[], labels: Uint8Array): Softness | null {
  const { width, height } = planes;
  const light: number[] = [];
  const colour: number[] = [];
  const edges = new Map<number, Edge>();
  const every = Math.max(1, Math.floor(Math.min(width, height) / 150));
  const look = (i: number, step: number, side: number): void => {
    const p = labels[i]!;
    const q = labels[i + step]!;
    if (p === q || p >= colours.length || q >= colours.length) return;
    for (let k = 1; k < reach; k++)
      if (labels[i - k * step] !== p || labels[i + (k + 1) * step] !== q) return;
    const key = p * 256 + q;
    let edge = edges.get(key);
    if (!edge) edges.set(key, (edge = new Edge(colours[p]!, colours[q]!)));
    const found = across(planes, edge, colours[p]!, colours[q]!, i, step, side);
    if (!found) return;
    light.push(found.light);
    if (found.colour !== null) colour.push(found.colour);
  };
  for (let y = reach; y < height - reach - 1; y += every)
    for (let x = reach; x < width - reach - 1; x++) look(y * width + x, 1, width);
  for (let x = reach; x < width - reach - 1; x += every)
    for (let y = reach; y < height - reach - 1; y++) look(y * width + x, width, 1);
  if (light.length < 40) return null;
  const sigma = middle(light);
  return { light: sigma, colour: colour.length < 40 ? sigma : Math.max(sigma, middle(colour)) };
}

function across(
  { l, a, b }: Planes,
  edge: Edge,
  p: Mode,
  q: Mode,
  i: number,
  step: number,
  side: number,
): { light: number; colour: number | null } | null {
  const at = (j: number): number => edge.position(l[j]!, a[j]!, b[j]!);
  // An edge that runs askew is crossed on a longer way.
  const along = (at(i + side) + at(i + step + side) - at(i - side) - at(i + step - side)) / 4;
  const through = (at(i + 2 * step) + at(i + step) - at(i) - at(i - step)) / 4;
  const cos = Math.abs(through) / Math.hypot(through, along);
  if (!(cos > 0.6)) return null;
  const da = q.a - p.a;
  const db = q.b - p.b;
  const chroma2 = da * da + db * db;
  let sum = 0;
  let sumC = 0;
  for (let k = 1 - reach; k <= reach; k++) {
    const j = i + k * step;
    const t = at(j);
    const c = ((a[j]! - p.a) * da + (b[j]! - p.b) * db) / chroma2;
    // Where an end is not yet plain ink, something else lies near.
    if (k <= 2 - reach && Math.abs(t) > 0.12) return null;
    if (k >= reach - 1 && Math.abs(1 - t) > 0.12) return null;
    sum += t * (1 - t);
    sumC += c * (1 - c);
  }
  const scale = Math.sqrt(Math.PI) * cos;
  return { light: sum * scale, colour: chroma2 > 0.02 ? sumC * scale : null };
}

function middle(values: number[]): number {
  values.sort((p, q) => p - q);
  return values[values.length >> 1]!;
}
