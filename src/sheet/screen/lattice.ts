import { tile } from './spectrum.ts';

/** A square lattice of dots, by one of its two frequencies, in cycles a tile. */
export interface Lattice {
  readonly fx: number;
  readonly fy: number;
  readonly power: number;
  /** How many times its weaker peak stands above what is around it and as far out. */
  readonly clear: number;
  /** Power of each channel at its peaks. */
  readonly channels: readonly number[];
}

/** A peak counts where it stands this many times above what is around it. */
const peakOverGround = 12;
/** No peak under this counts at all. */
const leastPower = 3e-4;
/** … and this many times above the highest a little further off: the streak of an edge does not. */
const peakOverStreak = 3.5;
/** The power of a peak's partner, a quarter turn away, beside its own. */
const leastPartner = 0.12;
/** Where a second lattice bears it out, a peak may stand less high, … */
const clearEnough = 3.5;
/** … with a partner nearer to its own power, … */
const evenPartner = 0.6;
/** … but no coarser than this, in cycles a tile: there every picture has power. */
const leastFrequency = 5;
/** How far apart the frequencies of two screens that are as fine as each other may lie, in cycles a tile. */
export const evenlyFine = 0.6;
/** How far off, in cycles a tile, a multiple may lie. */
const wholeStep = 0.8;

const half = tile / 2;

/** Power at a frequency, which may be negative. */
const at = (power: Float64Array, fx: number, fy: number): number =>
  power[((fy + tile) % tile) * tile + ((fx + tile) % tile)]!;

/** The strongest lattice of a channel, if it stands high enough to be one by itself. */
export function strongestLattice(power: Float64Array): Lattice | null {
  let best: Lattice | null = null;
  let most = leastPower;
  for (let fy = 0; fy <= half; fy++)
    for (let fx = -half + 1; fx <= half; fx++) {
      if (fy === 0 && fx <= 0) continue;
      const here = at(power, fx, fy);
      if (here <= most || Math.hypot(fx, fy) < 2.5 || !isTop(power, fx, fy)) continue;
      if (here < peakOverStreak * streak(power, fx, fy, 1.5)) continue;
      const clear = here / groundOf(power, fx, fy);
      if (clear <= peakOverGround || partnerOf(power, fx, fy).power <= leastPartner * here) continue;
      most = here;
      best = { ...refined(power, fx, fy), power: here, clear, channels: [here] };
    }
  return best;
}

/** All lattices of all channels that stand above what is around them; each may be chance. */
export function lattices(channels: readonly Float64Array[]): Lattice[] {
  const found: Lattice[] = [];
  for (const power of channels) {
    const rings = ringMedians(power);
    const clearness = (fx: number, fy: number): number =>
      at(power, fx, fy) / Math.max(groundOf(power, fx, fy), rings[Math.round(Math.hypot(fx, fy))]!);
    for (let fy = 0; fy < half; fy++)
      for (let fx = 1; fx < half; fx++) {
        const here = at(power, fx, fy);
        const r = Math.hypot(fx, fy);
        if (here < leastPower || r < leastFrequency || here < clearEnough * rings[Math.round(r)]!) continue;
        if (!isTop(power, fx, fy)) continue;
        const partner = partnerOf(power, fx, fy);
        const even = Math.min(here, partner.power) / Math.max(here, partner.power);
        if (even < evenPartner || !isTop(power, partner.fx, partner.fy)) continue;
        if (here < streak(power, fx, fy, 0.6 * r)) continue;
        const clear = Math.min(clearness(fx, fy), clearness(partner.fx, partner.fy));
        if (clear < clearEnough) continue;
        const p = refined(power, fx, fy);
        const q = refined(power, partner.fx, partner.fy);
        found.push({
          fx: (p.fx + q.fy) / 2,
          fy: (p.fy - q.fx) / 2,
          power: here,
          clear,
          channels: channels.map((c) => Math.sqrt(at(c, fx, fy) * at(c, partner.fx, partner.fy))),
        });
      }
  }
  return found;
}

/** Whether two channels' lattices are one. */
export function sameLattice(p: Lattice, q: Lattice): boolean {
  const near = (ax: number, ay: number): boolean => Math.hypot(ax - q.fx, ay - q.fy) < 1.6;
  return near(p.fx, p.fy) || near(-p.fy, p.fx) || near(-p.fx, -p.fy) || near(p.fy, -p.fx);
}

/** Whether a lattice only repeats a coarser and stronger one: it lies whole steps of that one away from the middle. */
export function isMultiple(p: Lattice, of: Lattice): boolean {
  const square = of.fx ** 2 + of.fy ** 2;
  if (of.power <= p.power || square > 0.6 * (p.fx ** 2 + p.fy ** 2)) return false;
  const along = (p.fx * of.fx + p.fy * of.fy) / square;
  const across = (p.fy * of.fx - p.fx * of.fy) / square;
  return Math.hypot(along - Math.round(along), across - Math.round(across)) * Math.sqrt(square) < wholeStep;
}

/** In cycles a tile. */
export function frequencyOf({ fx, fy }: Lattice): number {
  return Math.hypot(fx, fy);
}

/** Whether a lattice lies along the picture's rows, as a drawn grid does. */
export function alongRows({ fx, fy }: Lattice): boolean {
  return Math.min(Math.abs(fx), Math.abs(fy)) < 0.06 * Math.hypot(fx, fy);
}

/** Whether it lies along the diagonals. */
export function alongDiagonals({ fx, fy }: Lattice): boolean {
  return Math.abs(Math.abs(fx) - Math.abs(fy)) < 0.085 * Math.hypot(fx, fy);
}

/** Whether nothing is higher within two steps. */
function isTop(power: Float64Array, fx: number, fy: number): boolean {
  const here = at(power, fx, fy);
  for (let dy = -2; dy <= 2; dy++)
    for (let dx = -2; dx <= 2; dx++) if (at(power, fx + dx, fy + dy) > here) return false;
  return true;
}

/** Power around a peak, the middle of it. */
function groundOf(power: Float64Array, fx: number, fy: number): number {
  const around: number[] = [];
  for (let dy = -5; dy <= 5; dy++)
    for (let dx = -5; dx <= 5; dx++)
      // Towards the middle of the spectrum every picture has power: the ground is what lies as far out.
      if (Math.max(Math.abs(dx), Math.abs(dy)) >= 4 && Math.hypot(fx + dx, fy + dy) > 1.5)
        around.push(at(power, fx + dx, fy + dy));
  return middle(around);
}

/** The highest a little nearer to the middle of the spectrum, though not nearer than `from`, and a little further. */
function streak(power: Float64Array, fx: number, fy: number, from: number): number {
  const r = Math.hypot(fx, fy);
  let most = 0;
  for (const step of [-4, -3, -2, 2, 3, 4]) {
    if (r + step < from) continue;
    const k = 1 + step / r;
    most = Math.max(most, at(power, Math.round(fx * k), Math.round(fy * k)));
  }
  return most;
}

/** The highest about a quarter turn away. */
function partnerOf(power: Float64Array, fx: number, fy: number): { fx: number; fy: number; power: number } {
  let best = { fx: -fy, fy: fx, power: 0 };
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) {
      const here = at(power, -fy + dx, fx + dy);
      if (here > best.power) best = { fx: -fy + dx, fy: fx + dy, power: here };
    }
  return best;
}

/** The middle of the power at each distance from the middle of the spectrum. */
function ringMedians(power: Float64Array): number[] {
  const rings: number[][] = Array.from({ length: Math.ceil(half * Math.SQRT2) + 2 }, () => []);
  for (let fy = 0; fy < half; fy++)
    for (let fx = 1 - half; fx < half; fx++) rings[Math.round(Math.hypot(fx, fy))]!.push(at(power, fx, fy));
  return rings.map(middle);
}

/** The peak's middle between bins, by the weight of its neighbours. */
function refined(power: Float64Array, fx: number, fy: number): { fx: number; fy: number } {
  let [sx, sy, sum] = [0, 0, 0];
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) {
      const w = at(power, fx + dx, fy + dy);
      sx += w * dx;
      sy += w * dy;
      sum += w;
    }
  return { fx: fx + sx / sum, fy: fy + sy / sum };
}

function middle(values: number[]): number {
  return Float64Array.from(values).sort()[values.length >> 1] ?? 0;
}
