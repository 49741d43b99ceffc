import { steadyExp } from '../../colour/steady.ts';
import type { Planes } from '../planes.ts';
import { Edge } from './mixtures.ts';
import type { Mode } from './modes.ts';
import { apart, linearOf, oklabOf } from './settled-inks.ts';
import type { Softness } from './softness.ts';

/** Side of the square places that are looked at, and the rim of them that only lends its neighbours light. */
const side = 22;
const rim = 5;
const most = 60;
const turns = 5;

/**
 * The colour an ink of thin lines or small dots has where nothing blurs it: the one which, drawn where the ink lies and blurred as
 * the picture's edges are, looks like the picture. Colour is blurred on its own by as much as a JPEG does beyond the lens.
 * The colour as it was where the ink is too small for that to be told.
 */
export function unblurred(
  planes: Planes,
  colours: readonly Mode[],
  labels: Uint8Array,
  ink: number,
  softness: Softness,
): Mode {
  const places = placesOf(planes, labels, ink, colours.length);
  if (!places || places.corners.length < 3) return colours[ink]!;
  const ground = colours[places.ground]!;
  // A soft edge made steep again is as a pixel sees a hard one; what the pixel's own square blurs is then not blurred once more.
  const steep = Math.max(1, softness.light * Math.sqrt(2 * Math.PI));
  const light = kernel(Math.sqrt(Math.max(0, softness.light ** 2 - 1 / 12)));
  // A JPEG's blur of colour has less of a tail than a Gaussian of the same measure.
  const colour = kernel(0.7 * Math.sqrt(Math.max(0, softness.colour ** 2 - softness.light ** 2)));
  const start = colours[ink]!;
  let now = start;
  let best = start;
  let least = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < turns; turn++) {
    const next = improved(planes, places.corners, ground, now, steep, light, colour);
    if (!next) break;
    if (next.error < least) {
      least = next.error;
      best = now;
    } else break;
    const moved = apart(next.mode, now);
    now = next.mode;
    // Beyond this the picture holds too little of the ink to say.
    if (apart(now, ground) > 1.8 * apart(start, ground)) break;
    if (moved < 0.002) break;
  }
  return best;
}

/** Corners of squares in which the ink lies on one ground and hardly anything else does. */
function placesOf(
  { width, height }: Planes,
  labels: Uint8Array,
  ink: number,
  inks: number,
): { ground: number; corners: number[] } | null {
  const byGround = new Map<number, number[]>();
  let all = 0;
  for (let i = 0; i < labels.length; i++) if (labels[i] === ink) all++;
  const every = Math.max(1, Math.floor(all / 400));
  const counts = new Uint16Array(256);
  for (let i = 0, n = -1, next = every >> 1; i < labels.length; i++) {
    if (labels[i] !== ink || ++n < next) continue;
    next += every;
    const x = (i % width) - (side >> 1);
    const y = Math.floor(i / width) - (side >> 1);
    if (x < 0 || y < 0 || x + side > width || y + side > height) continue;
    counts.fill(0);
    for (let dy = 0; dy < side; dy++)
      for (let dx = 0; dx < side; dx++) counts[labels[(y + dy) * width + x + dx]!]!++;
    let ground = -1;
    for (let k = 0; k < inks; k++) if (k !== ink && (ground < 0 || counts[k]! > counts[ground]!)) ground = k;
    if (
      ground < 0 ||
      counts[ground]! + counts[ink]! < 0.94 * side * side ||
      counts[ground]! < 0.25 * side * side
    )
      continue;
    const list = byGround.get(ground);
    if (list) list.push(y * width + x);
    else byGround.set(ground, [y * width + x]);
  }
  let best: { ground: number; corners: number[] } | null = null;
  for (const [ground, corners] of byGround)
    if (!best || corners.length > best.corners.length) best = { ground, corners };
  if (best && best.corners.length > most) {
    const step = best.corners.length / most;
    best.corners = Array.from({ length: most }, (_, k) => best!.corners[Math.floor(k * step)]!);
  }
  return best;
}

function improved(
  { width, l, a, b }: Planes,
  corners: readonly number[],
  ground: Mode,
  ink: Mode,
  steep: number,
  light: Float64Array,
  colour: Float64Array,
): { mode: Mode; error: number } | null {
  const edge = new Edge(ground, ink);
  const strong = Math.abs(ink.l - ground.l) > 0.08;
  const groundY = ground.l * ground.l * ground.l;
  const inkY = ink.l * ink.l * ink.l;
  const mixed = mixtures(ground, ink);
  const cover = new Float64Array(side * side);
  const pl = new Float64Array(side * side);
  const pa = new Float64Array(side * side);
  const pb = new Float64Array(side * side);
  const spare = new Float64Array(side * side);
  let [ll, lo, re, im, dd, core, lift, error] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (const corner of corners) {
    for (let y = 0; y < side; y++)
      for (let x = 0; x < side; x++) {
        const i = corner + y * width + x;
        // Where lightness tells them apart it says where the ink lies: a JPEG leaves it sharper than colour.
        const t = strong
          ? (l[i]! * l[i]! * l[i]! - groundY) / (inkY - groundY)
          : edge.share(l[i]!, a[i]!, b[i]!);
        cover[y * side + x] = Math.min(1, Math.max(0, 0.5 + steep * (t - 0.5)));
      }
    blur(cover, light, spare);
    for (let k = 0; k < cover.length; k++) {
      const at = 3 * Math.round(cover[k]! * mixtureSteps);
      pl[k] = mixed[at]!;
      pa[k] = mixed[at + 1]!;
      pb[k] = mixed[at + 2]!;
    }
    blur(pa, colour, spare);
    blur(pb, colour, spare);
    for (let y = rim; y < side - rim; y++)
      for (let x = rim; x < side - rim; x++) {
        const k = y * side + x;
        const i = corner + y * width + x;
        error += (l[i]! - pl[k]!) ** 2 + (a[i]! - pa[k]!) ** 2 + (b[i]! - pb[k]!) ** 2;
        if (cover[k]! < 0.3) continue;
        const dl = pl[k]! - ground.l;
        ll += dl * dl;
        lo += dl * (l[i]! - ground.l);
        lift += l[i]! - pl[k]!;
        core++;
        const da = pa[k]! - ground.a;
        const db = pb[k]! - ground.b;
        const oa = a[i]! - ground.a;
        const ob = b[i]! - ground.b;
        // Observed over predicted as complex numbers: how much more chroma the ink must have, and how far its hue must turn.
        re += oa * da + ob * db;
        im += ob * da - oa * db;
        dd += da * da + db * db;
      }
  }
  if (core < 20) return null;
  const da = ink.a - ground.a;
  const db = ink.b - ground.b;
  const turnable = dd / core > 1e-4;
  const mode = {
    l: strong && ll > 0 ? ground.l + (ink.l - ground.l) * (lo / ll) : ink.l + lift / core,
    a: turnable ? ground.a + (da * re - db * im) / dd : ink.a,
    b: turnable ? ground.b + (db * re + da * im) / dd : ink.b,
    votes: ink.votes,
  };
  return { mode, error };
}

function kernel(sigma: number): Float64Array {
  const reach = Math.min(rim, Math.ceil(2.5 * sigma));
  const out = Float64Array.from({ length: 2 * reach + 1 }, (_, i) =>
    steadyExp(-((i - reach) ** 2) / (2 * Math.max(sigma, 0.2) ** 2)),
  );
  const sum = out.reduce((s, v) => s + v, 0);
  return out.map((v) => v / sum);
}

/** A cube root a pixel is dear: mixtures are told in this many steps. */
const mixtureSteps = 1024;

/** OKLab (a and b doubled) of the mixtures of two colours in linear light, one after the other. */
function mixtures(from: Mode, to: Mode): Float64Array {
  const [r0, g0, b0] = linearOf(from);
  const [r1, g1, b1] = linearOf(to);
  const out = new Float64Array(3 * (mixtureSteps + 1));
  for (let i = 0; i <= mixtureSteps; i++) {
    const t = i / mixtureSteps;
    const { l, a, b } = oklabOf(r0 + t * (r1 - r0), g0 + t * (g1 - g0), b0 + t * (b1 - b0));
    out[3 * i] = l;
    out[3 * i + 1] = a;
    out[3 * i + 2] = b;
  }
  return out;
}

/** Blurs a square in place, edges held. */
function blur(values: Float64Array, by: Float64Array, spare: Float64Array): void {
  if (by.length < 2) return;
  blurLines(values, spare, 1, side, by);
  blurLines(spare, values, side, 1, by);
}

const padded = new Float64Array(side + 2 * rim);

function blurLines(
  from: Float64Array,
  to: Float64Array,
  step: number,
  other: number,
  by: Float64Array,
): void {
  const reach = by.length >> 1;
  for (let line = 0; line < side; line++) {
    const start = line * other;
    for (let at = 0; at < side; at++) padded[reach + at] = from[start + at * step]!;
    padded.fill(padded[reach]!, 0, reach);
    padded.fill(padded[reach + side - 1]!, reach + side, side + 2 * reach);
    for (let at = 0; at < side; at++) {
      let sum = 0;
      for (let k = 0; k < by.length; k++) sum += by[k]! * padded[at + k]!;
      to[start + at * step] = sum;
    }
  }
}
