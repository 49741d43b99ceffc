import { at, hueCount, munsellTable, stepCount, valueCount } from '../../colour/munsell/munsell-table.ts';
import { munsellValue } from '../../colour/munsell/munsell-value.ts';

/**
 * Munsell hue and value, looked up: for ranking thousands of inks. The renotation is turned inside out once, value by
 * value, into a grid of hue over radius and angle in CIELAB under illuminant C; between its points runs a straight line.
 * Agrees with `munsellFromLab` within a few hundredths of a hue step where the renotation has real colours.
 * Source: Newhall, Nickerson, Judd, JOSA 33(7):385–418 (1943); the grid is ours.
 */

/** Munsell hue, 0–100, of a* and b* under illuminant C for a Munsell value. */
export function quickMunsellHue(a: number, b: number, value: number): number {
  const at = Float64Array.of(a, b, value, 0);
  lookUpHue(at);
  return at[3]!;
}

/** The same from numbers side by side: a*, b* and value are given, the hue is written behind them. */
export function lookUpHue(at: Float64Array): void {
  const a = at[0]!;
  const b = at[1]!;
  const v = Math.min(valueCount, Math.max(1, at[2]!));
  const low = Math.min(valueCount - 1, v | 0);
  if (built[low] === 0) build(low);
  if (built[low + 1] === 0) build(low + 1);
  const place = quickAngle(a, b) * (angles / 4);
  const ring = Math.min(Math.sqrt(a * a + b * b) / ringStep, rings - 1.000001);
  const whole = place | 0;
  const alongAngle = place - whole;
  const alongValue = v - low;
  const alongRing = ring - (ring | 0);
  // Eight places, two by two side by side; written out, for a function of its own would hand over numbers in boxes.
  const i = ((ring | 0) * (angles + 1) + whole) * valueCount + low - 1;
  const j = i + valueCount;
  const k = i + (angles + 1) * valueCount;
  const m = k + valueCount;
  const inner = grid[i]! + (grid[j]! - grid[i]!) * alongAngle;
  const innerAbove = grid[i + 1]! + (grid[j + 1]! - grid[i + 1]!) * alongAngle;
  const outer = grid[k]! + (grid[m]! - grid[k]!) * alongAngle;
  const outerAbove = grid[k + 1]! + (grid[m + 1]! - grid[k + 1]!) * alongAngle;
  const below = inner + (outer - inner) * alongRing;
  const above = innerAbove + (outerAbove - innerAbove) * alongRing;
  const hue = (place * 100) / angles + below + (above - below) * alongValue;
  at[3] = hue - 100 * Math.floor(hue / 100);
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
/** At (ring × (angles + 1) + angle) × values + value − 1, the hue less what the angle alone would give, −50…50. */
const grid = /* @__PURE__ */ new Float32Array(rings * (angles + 1) * valueCount);
/** By value: whether its places of the grid are filled. */
const built = /* @__PURE__ */ new Uint8Array(valueCount + 1);

/** An angle of a* and b* that grows as the true one does, from 0 to below 4, without an arc tangent. */
function quickAngle(a: number, b: number): number {
  const sum = Math.abs(a) + Math.abs(b);
  if (sum === 0) return 0;
  if (b >= 0) return a >= 0 ? b / sum : 1 - a / sum;
  const angle = a < 0 ? 2 - b / sum : 3 + a / sum;
  return angle < 4 ? angle : 0;
}

/** The true angle, radians, of such a one. */
function angleOfQuick(quick: number): number {
  const along = quick - Math.floor(quick);
  return (Math.floor(quick) * Math.PI) / 2 + Math.atan2(along, 1 - along);
}

function build(value: number): void {
  built[value] = 1;
  for (let ring = 0; ring < rings; ring++) {
    const turns = anglesOnRing(value, ring * ringStep);
    const at = (a: number) => (ring * (angles + 1) + a) * valueCount + value - 1;
    const placeOf = (a: number) => turns[0]! + forward(angleOfQuick((a * 4) / angles) - turns[0]!);
    // Both run upwards, so one walk around the ring meets them all.
    let start = 0;
    for (let a = 1; a < angles; a++) if (placeOf(a) < placeOf(start)) start = a;
    let hue = 0;
    for (let n = 0; n < angles; n++) {
      const a = (start + n) % angles;
      const place = placeOf(a);
      while (hue < hueCount - 1 && turns[hue + 1]! <= place) hue++;
      const span = turns[hue + 1]! - turns[hue]!;
      const found = (hue + (span > 0 ? (place - turns[hue]!) / span : 0)) * (100 / hueCount);
      const offset = found - (a * 100) / angles;
      grid[at(a)] = offset - 100 * Math.round(offset / 100);
    }
    grid[at(angles)] = grid[at(0)]!;
  }
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
