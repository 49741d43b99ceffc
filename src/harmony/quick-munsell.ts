import { at, hueCount, munsellTable, stepCount, valueCount } from '../colour/munsell-table.ts';
import { munsellValue } from '../colour/munsell-value.ts';

/**
 * Munsell hue and value, looked up: for ranking thousands of inks. The renotation is turned inside out once, value by
 * value, into a grid of hue over radius and angle in CIELAB under illuminant C; between its points runs a straight line.
 * Agrees with `munsellFromLab` within a few hundredths of a hue step where the renotation has real colours.
 * Source: Newhall, Nickerson, Judd, JOSA 33(7):385–418 (1943); the grid is ours.
 */

/** Munsell hue, 0–100, at an angle (radians) and radius (C*ab under C) for a Munsell value. */
export function quickMunsellHue(angle: number, radius: number, value: number): number {
  const v = Math.min(valueCount, Math.max(1, value));
  const low = Math.min(valueCount - 1, Math.floor(v));
  const turns = angle / (2 * Math.PI);
  const place = (turns - Math.floor(turns)) * angles;
  const ring = Math.min(radius / ringStep, rings - 1.000001);
  const below = offsetAt(gridFor(low), place, ring);
  const above = offsetAt(gridFor(low + 1), place, ring);
  const hue = (place * 100) / angles + below + (above - below) * (v - low);
  return hue - 100 * Math.floor(hue / 100);
}

/** Munsell value, 0–10, of the cube root of a luminance (Y under C, 0–1). */
export function quickMunsellValue(rootOfLuminance: number): number {
  const place = Math.min(Math.max(rootOfLuminance, 0), 1) * valuePlaces;
  const low = Math.min(valuePlaces - 1, Math.floor(place));
  const table = (keptValues ??= Float64Array.from({ length: valuePlaces + 1 }, (_, i) =>
    munsellValue((i / valuePlaces) ** 3),
  ));
  return table[low]! + (table[low + 1]! - table[low]!) * (place - low);
}

const angles = 240;
const ringStep = 4;
const rings = 40;
const valuePlaces = 2048;

let keptValues: Float64Array | undefined;
/** By value: at ring × (angles + 1) + angle, the hue less what the angle alone would give, −50…50. */
const kept: (Float32Array | undefined)[] = [];

function offsetAt(grid: Float32Array, place: number, ring: number): number {
  const a = place | 0;
  const r = ring | 0;
  const i = r * (angles + 1) + a;
  const j = i + angles + 1;
  const alongAngle = place - a;
  const inner = grid[i]! + (grid[i + 1]! - grid[i]!) * alongAngle;
  const outer = grid[j]! + (grid[j + 1]! - grid[j]!) * alongAngle;
  return inner + (outer - inner) * (ring - r);
}

function gridFor(value: number): Float32Array {
  return (kept[value] ??= build(value));
}

function build(value: number): Float32Array {
  const grid = new Float32Array(rings * (angles + 1));
  for (let ring = 0; ring < rings; ring++) {
    const turns = anglesOnRing(value, ring * ringStep);
    // Both run upwards, so one walk around the ring meets them all.
    const start = Math.ceil((forward(turns[0]!) / (2 * Math.PI)) * angles);
    let hue = 0;
    for (let n = 0; n < angles; n++) {
      const a = (start + n) % angles;
      const place = turns[0]! + forward((a / angles) * 2 * Math.PI - turns[0]!);
      while (hue < hueCount - 1 && turns[hue + 1]! <= place) hue++;
      const span = turns[hue + 1]! - turns[hue]!;
      const found = (hue + (span > 0 ? (place - turns[hue]!) / span : 0)) * (100 / hueCount);
      const offset = found - (a * 100) / angles;
      grid[ring * (angles + 1) + a] = offset - 100 * Math.round(offset / 100);
    }
    grid[ring * (angles + 1) + angles] = grid[ring * (angles + 1)]!;
  }
  return grid;
}

/** Where the forty hues cross a ring, radians, rising from the first by less than one turn. */
function anglesOnRing(value: number, radius: number): Float64Array {
  const out = new Float64Array(hueCount + 1);
  for (let hue = 0; hue < hueCount; hue++) {
    const angle = angleOfHue(hue, value, radius);
    if (hue === 0) out[0] = angle;
    else out[hue] = out[hue - 1]! + forward(angle - out[hue - 1]!);
  }
  out[hueCount] = out[0]! + 2 * Math.PI;
  return out;
}

/** The angle at which a hue's row of the renotation has this radius; beyond its ends, the angle of its end. */
function angleOfHue(hue: number, value: number, radius: number): number {
  const table = munsellTable();
  const last = table.steps[hue * valueCount + value - 1]!;
  const first = at(hue, value, 1);
  let step = 1;
  while (step < last && step < stepCount && table.radius[first + step]! < radius) step++;
  const i = at(hue, value, Math.min(step, last));
  if (step >= last || radius <= table.radius[first]!)
    return table.angle[radius <= table.radius[first]! ? first : i]!;
  const along = (radius - table.radius[i]!) / (table.radius[i + 1]! - table.radius[i]!);
  return table.angle[i]! + forwardOrBack(table.angle[i + 1]! - table.angle[i]!) * along;
}

/** The same turn in [0, 2π). */
function forward(turn: number): number {
  return turn - 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
}

/** The same turn in [−π, π). */
function forwardOrBack(turn: number): number {
  return forward(turn + Math.PI) - Math.PI;
}
