import { at, hueCount, type MunsellTable, munsellTable, valueCount } from './munsell-table.ts';

/** A point in the CIELAB a-b plane under illuminant C: C*ab and angle in radians. */
export interface Polar {
  readonly radius: number;
  readonly angle: number;
}

/**
 * Where a Munsell hue (0–100), value (0–10) and chroma (≥ 0) lies under illuminant C.
 * Straight lines in polar CIELAB between neighbours of the renotation: along chroma, then hue, then value.
 * Beyond the last chroma of a row the radius grows in proportion, and below value 1 and above 9 radius and angle
 * stay as they are at 1 and 9 (both ours): the renotation has no real colours there.
 */
export function polarFromMunsell(hue: number, value: number, chroma: number): Polar {
  const table = munsellTable();
  if (value <= 1) return onValue(table, hue, 1, chroma);
  if (value >= valueCount) return onValue(table, hue, valueCount, chroma);
  const below = Math.floor(value);
  const low = onValue(table, hue, below, chroma);
  return value === below ? low : between(low, onValue(table, hue, below + 1, chroma), value - below);
}

/**
 * The hue (0–100) and chroma that lie at a point, for a value; the inverse of `polarFromMunsell`.
 * Newton's steps on the interpolated grid, shortened where they do not come nearer.
 */
export function munsellFromPolar(
  target: Polar,
  value: number,
): { readonly hue: number; readonly chroma: number } {
  let hue = wrap((target.angle * 50) / Math.PI);
  let chroma = Math.max(target.radius / 5.5, 1e-6);
  let error = miss(hue, value, chroma, target);
  let byHue = error;
  let byChroma = error;
  let stale = true;
  for (let round = 0; round < 60 && size(error) > 1e-10; round++) {
    // The slopes are good for as long as each step makes the error ten times smaller.
    if (stale) {
      byHue = gradient(miss(hue + small, value, chroma, target), error);
      byChroma = gradient(miss(hue, value, chroma + small, target), error);
    }
    const det = byHue.along * byChroma.across - byChroma.along * byHue.across;
    let dHue = clamp((error.along * byChroma.across - error.across * byChroma.along) / det, 6);
    let dChroma = (byHue.along * error.across - byHue.across * error.along) / det;
    if (!Number.isFinite(dHue) || !Number.isFinite(dChroma)) break;
    let next = error;
    for (let halving = 0; halving < 12; halving++) {
      next = miss(hue - dHue, value, Math.max(chroma - dChroma, chroma / 4), target);
      if (size(next) < size(error)) break;
      dHue /= 2;
      dChroma /= 2;
    }
    if (size(next) >= size(error)) {
      if (stale) break;
      stale = true;
      continue;
    }
    hue -= dHue;
    chroma = Math.max(chroma - dChroma, chroma / 4);
    stale = size(next) > size(error) / 10;
    error = next;
  }
  return { hue: wrap(hue), chroma };
}

const small = 1e-6;

/** How far a guess lies from the target: along its radius and across it, both in units of C*ab. */
interface Miss {
  readonly along: number;
  readonly across: number;
}

function miss(hue: number, value: number, chroma: number, target: Polar): Miss {
  const { radius, angle } = polarFromMunsell(wrap(hue), value, chroma);
  const turn = angle - target.angle;
  return { along: radius * Math.cos(turn) - target.radius, across: radius * Math.sin(turn) };
}

function gradient(moved: Miss, from: Miss): Miss {
  return { along: (moved.along - from.along) / small, across: (moved.across - from.across) / small };
}

function size({ along, across }: Miss): number {
  return Math.sqrt(along * along + across * across);
}

function onValue(table: MunsellTable, hue: number, value: number, chroma: number): Polar {
  const place = hue / 2.5;
  const left = Math.floor(place) % hueCount;
  const share = place - Math.floor(place);
  const first = onRow(table, left, value, chroma);
  return share === 0 ? first : between(first, onRow(table, (left + 1) % hueCount, value, chroma), share);
}

function onRow(table: MunsellTable, hue: number, value: number, chroma: number): Polar {
  const place = chroma / 2;
  const last = table.steps[hue * valueCount + value - 1]!;
  const step = Math.min(Math.floor(place), last);
  const i = at(hue, value, Math.max(step, 1));
  const radius = table.radius[i]!;
  const angle = table.angle[i]!;
  if (step < 1) return { radius: radius * place, angle };
  if (step >= last) return { radius: (radius * place) / last, angle };
  return between(
    { radius, angle },
    { radius: table.radius[i + 1]!, angle: table.angle[i + 1]! },
    place - step,
  );
}

function between(a: Polar, b: Polar, share: number): Polar {
  let turn = b.angle - a.angle;
  if (turn > Math.PI) turn -= 2 * Math.PI;
  else if (turn < -Math.PI) turn += 2 * Math.PI;
  return { radius: a.radius + share * (b.radius - a.radius), angle: a.angle + share * turn };
}

function wrap(hue: number): number {
  const turned = hue - 100 * Math.floor(hue / 100);
  return turned >= 100 ? 0 : turned;
}

function clamp(v: number, limit: number): number {
  return Math.min(limit, Math.max(-limit, v));
}
