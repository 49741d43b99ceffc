import { adaptationMatrix } from '../../colour/adaptation.ts';
import { labEpsilon, labKappa } from '../../colour/cielab.ts';
import { cubeRoot } from '../../colour/cube-root.ts';
import { angleDeg } from '../../colour/hue.ts';
import { whites } from '../../colour/illuminants.ts';
import { coolChromaLimit, type NeutralKind, neutralKindAt } from '../../colour/neutral.ts';
import { rootsOfAb, xyzOfCones } from '../../colour/oklab-digits.ts';
import { noHueBelowChroma } from '../../colour/spaces.ts';
import { painterFromHue } from '../../colour/wheels.ts';
import {
  atA,
  atB,
  atChroma,
  atCounts,
  atEye,
  atHue,
  atL,
  atNeutral,
  atPainter,
  atSaturation,
  atValue,
} from './fade.ts';
import { coolCountsAt, hueCountsAt } from './hue-counts.ts';
import { lookUpHue, quickMunsellValue } from './quick-munsell.ts';

/** By the number that stands for it. */
export const neutralKinds: readonly (NeutralKind | null)[] = [
  null,
  'white',
  'grey',
  'black',
  'cream',
  'kraft',
];

/**
 * Measures an OKLCH colour (L 0–1, C, hue in degrees or null) into a line of numbers from `o` on.
 * CIELAB agrees with `labFromOklch` to 1e-9. Source of the matrices: Ottosson 2020 with the digits of CSS Color 4.
 */
export function measureInto(out: Float64Array, o: number, l: number, c: number, hue: number | null): void {
  giveInto(out, o, l, c, hue);
  measureLabInto(out, o);
  measureHuesInto(out, o);
}

/** Writes an OKLCH colour onto a line, to be measured there. */
export function giveInto(out: Float64Array, o: number, l: number, c: number, hue: number | null): void {
  out[o + atL] = l;
  out[o + atA] = c;
  // Libraries give greys a spurious hue: chroma decides.
  out[o + atB] = hue === null || c <= noHueBelowChroma ? Number.NaN : hue;
}

/**
 * Measures the colour that `giveInto` has written onto a line, all but hue and value, which nothing asks of a neutral.
 * Numbers go from line to line and not from hand to hand: those that are handed over are put into boxes, and clearing
 * the boxes away took a third of a ranking's time.
 */
export function measureLabInto(out: Float64Array, o: number): void {
  const l = out[o + atL]!;
  const c = out[o + atA]!;
  const h = out[o + atB]!;
  const hued = !Number.isNaN(h);
  let a = 0;
  let b = 0;
  if (hued) {
    // From the nearest whole degree, whose cosine and sine are known, by their series: a third of the time of both calls.
    const known = (keptDegrees ??= degreeTable());
    const turns = h / 360;
    const deg = (turns - Math.floor(turns)) * 360;
    const whole = (deg + 0.5) | 0;
    const turn = (deg - whole) * (Math.PI / 180);
    const square = turn * turn;
    const cos = 1 - (square / 2) * (1 - square / 12);
    const sin = turn * (1 - (square / 6) * (1 - square / 20));
    a = c * (known[2 * whole]! * cos - known[2 * whole + 1]! * sin);
    b = c * (known[2 * whole + 1]! * cos + known[2 * whole]! * sin);
  }
  const p = l + longA * a + longB * b;
  const q = l + middleA * a + middleB * b;
  const r = l + shortA * a + shortB * b;
  const long = p * p * p;
  const middle = q * q * q;
  const short = r * r * r;
  last[0] = xLong * long + xMiddle * middle + xShort * short;
  last[1] = yLong * long + yMiddle * middle + yShort * short;
  last[2] = zLong * long + zMiddle * middle + zShort * short;
  last[3] = h;
  roots[0] = last[0] / whiteX;
  roots[1] = last[1];
  roots[2] = last[2] / whiteZ;
  takeRoots();
  out[o + atL] = 116 * roots[1]! - 16;
  out[o + atA] = hued ? 500 * (roots[0]! - roots[1]!) : 0;
  out[o + atB] = hued ? 200 * (roots[1]! - roots[2]!) : 0;
  finish(out, o);
}

/** What the measure above leaves out, of the colour that it measured last. */
export function measureHuesInto(out: Float64Array, o: number): void {
  const h = last[3]!;
  out[o + atEye] = h;
  out[o + atPainter] = Number.isNaN(h) ? h : quickPainter(h);
  munsellInto(out, o);
}

/** XYZ and OKLCH hue of the colour measured last. */
const last = /* @__PURE__ */ new Float64Array(4);

/** Degrees on the painter's wheel of an OKLCH hue, looked up; within 0.01° of `painterFromHue`. */
export function quickPainter(h: number): number {
  const table = (keptPainter ??= painterTable());
  const turns = h / 360;
  const place = (turns - Math.floor(turns)) * painterPlaces;
  const low = Math.min(painterPlaces - 1, place | 0);
  const deg = table[low]! + (table[low + 1]! - table[low]!) * (place - low);
  return deg < 0 ? deg + 360 : deg;
}

function munsellInto(out: Float64Array, o: number): void {
  const m = (keptToC ??= Float64Array.from(adaptationMatrix(whites.D65, whites.C)));
  const x = last[0]!;
  const y = last[1]!;
  const z = last[2]!;
  const yc = m[3]! * x + m[4]! * y + m[5]! * z;
  roots[0] = (m[0]! * x + m[1]! * y + m[2]! * z) / whiteXC;
  roots[1] = yc;
  roots[2] = (m[6]! * x + m[7]! * y + m[8]! * z) / whiteZC;
  takeRoots();
  const fy = roots[1]!;
  out[o + atValue] = quickMunsellValue(yc > epsilon ? fy : Math.cbrt(Math.max(0, yc)));
  if (Number.isNaN(last[3]!)) {
    out[o + atHue] = Number.NaN;
    return;
  }
  const hue = munsellHue;
  hue[0] = 500 * (roots[0]! - fy);
  hue[1] = 200 * (fy - roots[2]!);
  hue[2] = out[o + atValue]!;
  lookUpHue(hue);
  out[o + atHue] = hue[3]!;
}

/** CIELAB's root of three numbers at once. */
function takeRoots(): void {
  for (let k = 0; k < 3; k++) {
    const t = roots[k]!;
    roots[k] = t > epsilon ? cubeRoot(t) : (kappa * t + 16) / 116;
  }
}

const roots = /* @__PURE__ */ new Float64Array(3);
/** For `lookUpHue`. */
const munsellHue = /* @__PURE__ */ new Float64Array(4);

function finish(out: Float64Array, o: number): void {
  const l = out[o + atL]!;
  const a = out[o + atA]!;
  const b = out[o + atB]!;
  const chroma = Math.sqrt(a * a + b * b);
  out[o + atChroma] = chroma;
  out[o + atSaturation] = chroma / Math.sqrt(chroma * chroma + l * l + 1e-18);
  if (isFarFromNeutrals(a, b, chroma)) {
    out[o + atNeutral] = 0;
    out[o + atCounts] = 1;
    return;
  }
  if (chroma > 6 && isFarFromWarm(a, b) && chroma > coolChromaLimit(l)) {
    out[o + atNeutral] = 0;
    out[o + atCounts] = coolCountsAt(l, chroma);
    return;
  }
  // A grey as weak as this is one at any hue.
  const hue = chroma <= 6 ? 0 : angleDeg(a, b);
  const kind = neutralKindAt(l, chroma, hue);
  out[o + atNeutral] = kind === null ? 0 : neutralKinds.indexOf(kind);
  out[o + atCounts] = kind === null ? hueCountsAt(l, chroma, hue) : 0;
}

/**
 * True where no neutral's region is near enough to matter: the common case, told without an angle. A test holds it
 * against `neutralKind` and `hueCounts` all over CIELAB.
 */
function isFarFromNeutrals(a: number, b: number, chroma: number): boolean {
  if (chroma > 48) return true;
  if (chroma <= 20) return false;
  return b <= 0 || a < -0.9 * b || a > (chroma > 24 ? 1.2 : 1.85) * b;
}

/** True where no step of the farthest that counts, from C*ab 6 up, can turn a hue into 50–110°: outside 11–149°. */
function isFarFromWarm(a: number, b: number): boolean {
  return b <= 0 || a < -1.7 * b || a > 5.2 * b;
}

const whiteX = whites.D65.x;
const whiteZ = whites.D65.z;
const whiteXC = whites.C.x;
const whiteZC = whites.C.z;
const [longA, longB, middleA, middleB, shortA, shortB] = rootsOfAb;
const [xLong, xMiddle, xShort, yLong, yMiddle, yShort, zLong, zMiddle, zShort] = xyzOfCones;
const epsilon = labEpsilon;
const kappa = labKappa;
const painterPlaces = 1440;
let keptPainter: Float64Array | undefined;
let keptToC: Float64Array | undefined;
let keptDegrees: Float64Array | undefined;

/** Cosine and sine of 0–360 whole degrees. */
function degreeTable(): Float64Array {
  const out = new Float64Array(2 * 361);
  for (let deg = 0; deg <= 360; deg++) {
    out[2 * deg] = Math.cos((deg * Math.PI) / 180);
    out[2 * deg + 1] = Math.sin((deg * Math.PI) / 180);
  }
  return out;
}

/** The wheel runs against the hue circle; unrolled from its first place, so that it falls all the way. */
function painterTable(): Float64Array {
  const out = new Float64Array(painterPlaces + 1);
  let before = painterFromHue(0);
  for (let i = 0; i <= painterPlaces; i++) {
    let deg = painterFromHue((i / painterPlaces) * 360);
    while (deg > before + 1e-9) deg -= 360;
    out[i] = before = deg;
  }
  return out;
}
