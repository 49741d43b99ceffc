/**
 * Roots, powers and angles that come out the same to the last bit wherever they are worked out: browsers and Node each have
 * their own Math.pow, Math.cbrt, Math.exp …, which differ in the last place, and a reading that hangs on a threshold then
 * differs with them. Only + − × ÷ √ are used, which are the same everywhere. Within three units in the last place; powers of numbers
 * under a thousandth within twenty.
 * Source: IEEE 754-2019, §5.4.1 (operations that are rounded rightly); ECMA-262, §21.3.2 (those that are not); the series of
 * Taylor, and Halley's method.
 */

/** Cube root; odd about zero. */
export function steadyRoot(v: number): number {
  const size = Math.abs(v);
  if (!(size > 0 && size < Number.POSITIVE_INFINITY)) return v;
  // Near the ends of what a number holds, its products would leave it.
  if (size < 2 ** -200) return steadyRoot(v * 2 ** 300) / 2 ** 100;
  if (size > 2 ** 600) return steadyRoot(v / 2 ** 600) * 2 ** 200;
  number[0] = size;
  // A third of the exponent, and of what follows it, is good to a twentieth.
  words[1] = Math.floor(words[1]! / 3) + 715_094_163;
  words[0] = 0;
  let root = number[0]!;
  for (let turn = 0; turn < 3; turn++) {
    const cube = root * root * root;
    root = (root * (cube + size + size)) / (cube + cube + size);
  }
  root -= (root - size / (root * root)) / 3;
  return v < 0 ? -root : root;
}

/** A number above nought, or nought, to a power above nought. */
export function steadyPower(v: number, power: number): number {
  return v === 0 ? 0 : steadyExp(power * steadyLog(v));
}

/** e to the power of `v`. */
export function steadyExp(v: number): number {
  if (Number.isNaN(v)) return v;
  if (v > 709.7) return Number.POSITIVE_INFINITY;
  if (v < -708) return 0;
  const doublings = Math.round(v / Math.LN2);
  const rest = v - doublings * ln2High - doublings * ln2Low;
  let sum = 1;
  for (let n = 14; n > 0; n--) sum = 1 + (sum * rest) / n;
  // Two halves, because the largest power of two alone is beyond what a number holds.
  const half = doublings >> 1;
  return sum * powerOfTwo(half) * powerOfTwo(doublings - half);
}

/** Natural logarithm. */
export function steadyLog(v: number): number {
  if (!(v > 0 && v < Number.POSITIVE_INFINITY))
    return v === 0 ? Number.NEGATIVE_INFINITY : v > 0 ? v : Number.NaN;
  if (v < leastNormal) return steadyLog(v * 2 ** 54) - 54 * Math.LN2;
  number[0] = v;
  let doublings = (words[1]! >>> 20) - 1023;
  words[1] = (words[1]! & 0xfffff) | (1023 << 20);
  let part = number[0]!;
  if (part > Math.SQRT2) {
    part /= 2;
    doublings++;
  }
  // ln x = 2 artanh((x − 1) / (x + 1))
  const t = (part - 1) / (part + 1);
  const square = t * t;
  let sum = 0;
  for (let n = 21; n > 1; n -= 2) sum = square * (1 / n + sum);
  return doublings * ln2High + (2 * t + 2 * t * sum + doublings * ln2Low);
}

/** Sine of an angle in radians, of at most some thousand turns. */
export function steadySin(angle: number): number {
  return wave(angle, 0);
}

/** Cosine, as `steadySin`. */
export function steadyCos(angle: number): number {
  return wave(angle, 1);
}

/** Angle of the point (x, y), −π to π; 0 for the origin. */
export function steadyAngle(y: number, x: number): number {
  const [across, up] = [Math.abs(x), Math.abs(y)];
  const longer = Math.max(across, up);
  if (longer === 0) return 0;
  const low = tangentsAngle(Math.min(across, up) / longer);
  const steep = up > across ? quarter - low + quarterLow : low;
  const turned = x < 0 ? Math.PI - steep + 2 * quarterLow : steep;
  return y < 0 ? -turned : turned;
}

/** Angle whose tangent is `t`, 0–1. */
function tangentsAngle(t: number): number {
  // Halved twice, so that the series is short.
  const once = t / (1 + Math.sqrt(1 + t * t));
  const twice = once / (1 + Math.sqrt(1 + once * once));
  const square = twice * twice;
  let sum = 0;
  for (let n = 25; n > 1; n -= 2) sum = -square * (1 / n + sum);
  return 4 * (twice + twice * sum);
}

/** Sine of an angle with so many quarter turns more. */
function wave(angle: number, more: number): number {
  const turns = Math.round(angle / quarter);
  const rest = angle - turns * quarterHigh - turns * quarterRest;
  const square = rest * rest;
  const place = (((turns + more) % 4) + 4) % 4;
  let sum = 1;
  const isCosine = place % 2 === 1;
  for (let n = isCosine ? 18 : 19; n > 1; n -= 2) sum = 1 - (sum * square) / (n * (n - 1));
  const value = isCosine ? sum : rest * sum;
  return place < 2 ? value : -value;
}

function powerOfTwo(power: number): number {
  words[1] = (power + 1023) << 20;
  words[0] = 0;
  return number[0]!;
}

const leastNormal = 2 ** -1022;

/** One number and its two halves, the lower first, as all machines that run this keep it. */
const number = new Float64Array(1);
const words = new Uint32Array(number.buffer);

/** ln 2 and π/2 in two parts: whole multiples of the first are exact, and the second says what is left of all their digits. */
const ln2High = /* @__PURE__ */ Math.fround(Math.LN2);
const ln2Low = Math.LN2 - ln2High + 2.319046813846299e-17;
const quarter = Math.PI / 2;
const quarterLow = 6.123233995736766e-17;
const quarterHigh = /* @__PURE__ */ Math.fround(quarter);
const quarterRest = quarter - quarterHigh + quarterLow;
