import type { Planes } from '../planes.ts';
import { numbers } from '../reading-limits.ts';
import { type Flatness, limitAt } from './flatness.ts';
import { nothing } from './label-counts.ts';
import type { Mode } from './modes.ts';
import { apart } from './settled-inks.ts';

/** Colours with each wash brought down to its ends and its middle. */
export interface Ramped {
  readonly colours: Mode[];
  /** Numbers of the colours of each wash, lightest first. */
  readonly ramps: readonly (readonly number[])[];
}

/** Finds inks that shade into each other without a border, and makes one ramp of each such chain; null where there is none. `flat` is how quiet the picture is. */
export function ramped(
  planes: Planes,
  colours: readonly Mode[],
  labels: Uint8Array,
  flat: Flatness,
): Ramped | null {
  const chains = chainsOf(planes, colours, labels, flat);
  if (!chains.length) return null;
  const out: Mode[] = [];
  const ramps: number[][] = [];
  const inChain = new Set(chains.flat());
  colours.forEach((c, k) => {
    if (!inChain.has(k)) out.push(c);
  });
  for (const chain of chains) {
    const steps = stepsOf(planes, colours, labels, chain);
    ramps.push(steps.map((_, n) => out.length + n));
    out.push(...steps);
  }
  return { colours: out, ramps };
}

/** Groups of labels that meet along soft borders and lie on a line: one colour that pales, and not many that flow together. */
function chainsOf(planes: Planes, colours: readonly Mode[], labels: Uint8Array, flat: Flatness): number[][] {
  const n = colours.length;
  const { soft, all } = borders(planes, colours, labels, flat);
  const least = numbers.rampBorder * Math.sqrt(planes.count);
  const meet = (p: number, q: number): boolean => {
    const met = all[p * n + q]! + all[q * n + p]!;
    return met >= least && (soft[p * n + q]! + soft[q * n + p]!) / met >= numbers.rampSoft;
  };
  const chains: number[][] = [];
  const look = (some: readonly number[]): void => {
    for (const chain of joined(some, meet)) {
      if (chain.length < 2) continue;
      const ends = endsOf(colours, chain);
      const on = chain.filter((k) => beside(colours[k]!, ends) <= numbers.rampAside * apart(...ends));
      if (on.length === chain.length) chains.push(chain);
      else {
        look(on);
        look(chain.filter((k) => !on.includes(k)));
      }
    }
  };
  look(colours.map((_, k) => k));
  return chains;
}

/** Those of some that meet, or that others join, in the order given. */
function joined(some: readonly number[], meet: (p: number, q: number) => boolean): number[][] {
  const left = new Set(some);
  const groups: number[][] = [];
  for (const first of some) {
    if (!left.delete(first)) continue;
    const group = [first];
    for (const p of group)
      for (const q of left)
        if (meet(p, q)) {
          left.delete(q);
          group.push(q);
        }
    groups.push(group.sort((p, q) => p - q));
  }
  return groups;
}

/** The two of a chain that lie farthest apart, the lighter first. */
function endsOf(colours: readonly Mode[], chain: readonly number[]): [Mode, Mode] {
  let ends: [Mode, Mode] = [colours[chain[0]!]!, colours[chain[1]!]!];
  for (const p of chain)
    for (const q of chain)
      if (apart(colours[p]!, colours[q]!) > apart(...ends)) ends = [colours[p]!, colours[q]!];
  return ends[0].l < ends[1].l ? [ends[1], ends[0]] : ends;
}

/** How far a colour lies beside the line through two others. */
function beside(c: Mode, [from, to]: readonly [Mode, Mode]): number {
  const along = { l: to.l - from.l, a: to.a - from.a, b: to.b - from.b };
  const off = { l: c.l - from.l, a: c.a - from.a, b: c.b - from.b };
  const length2 = along.l ** 2 + along.a ** 2 + along.b ** 2;
  const t = length2 > 0 ? (off.l * along.l + off.a * along.a + off.b * along.b) / length2 : 0;
  return Math.hypot(off.l - t * along.l, off.a - t * along.a, off.b - t * along.b);
}

/** For each pair of labels, how many places of their border were looked at, and at how many of them the colour hardly changes. */
function borders(
  { width, height, l, a, b }: Planes,
  colours: readonly Mode[],
  labels: Uint8Array,
  flat: Flatness,
): { soft: Float64Array; all: Float64Array } {
  const n = colours.length;
  const soft = new Float64Array(n * n);
  const all = new Float64Array(n * n);
  const reach = 3;
  const step = labels.length > 400000 ? 2 : 1;
  const change2 = (i: number, j: number): number =>
    (l[j]! - l[i]!) ** 2 + (a[j]! - a[i]!) ** 2 + (b[j]! - b[i]!) ** 2;
  const wholes = colours.map((p) => colours.map((q) => apart(p, q)));
  const look = (i: number, along: number): void => {
    const p = labels[i]!;
    const q = labels[i + along]!;
    if (p === q || p === nothing || q === nothing) return;
    const from = i - (reach - 1) * along;
    const to = i + reach * along;
    all[p * n + q]!++;
    const whole = wholes[p]![q]!;
    if (change2(from, to) >= (numbers.rampChange * whole) ** 2) return;
    // The ground before a hard line and the ground after it are alike: between them the line steps.
    const most = Math.max(numbers.rampStep * whole, numbers.rampStepTimesFlat * limitAt(flat, l[i]!));
    for (let at = from; at < to; at += along) if (change2(at, at + along) > most * most) return;
    soft[p * n + q]!++;
  };
  // Not in step with what is drawn on even rows.
  for (let y = reach, row = 0; y < height - reach; y += step + (step > 1 && row++ % 3 === 0 ? 1 : 0))
    for (let x = reach; x < width - reach; x++) {
      const i = y * width + x;
      look(i, 1);
      look(i, width);
    }
  return { soft, all };
}

/** The lightest, the middle and the darkest of a wash. */
function stepsOf(
  { l, a, b }: Planes,
  colours: readonly Mode[],
  labels: Uint8Array,
  chain: readonly number[],
): Mode[] {
  const bins = 256;
  const by = {
    n: new Float64Array(bins),
    l: new Float64Array(bins),
    a: new Float64Array(bins),
    b: new Float64Array(bins),
  };
  const [from, to] = endsOf(colours, chain);
  const along = { l: to.l - from.l, a: to.a - from.a, b: to.b - from.b };
  const length2 = along.l ** 2 + along.a ** 2 + along.b ** 2;
  const member = new Uint8Array(256);
  for (const k of chain) member[k] = 1;
  for (let i = 0; i < labels.length; i++) {
    if (!member[labels[i]!]) continue;
    const t =
      ((l[i]! - from.l) * along.l + (a[i]! - from.a) * along.a + (b[i]! - from.b) * along.b) / length2;
    // The modes lie inside the wash: leave half its length beyond each of them.
    const bin = Math.min(bins - 1, Math.max(0, Math.floor(((t + 0.5) / 2) * bins)));
    by.n[bin]!++;
    by.l[bin]! += l[i]!;
    by.a[bin]! += a[i]!;
    by.b[bin]! += b[i]!;
  }
  const total = by.n.reduce((s, v) => s + v, 0);
  const meanOf = (low: number, high: number): Mode => {
    const mode = { l: 0, a: 0, b: 0, votes: 0 };
    let sum = 0;
    for (let k = 0; k < bins; k++) {
      const start = sum / total;
      sum += by.n[k]!;
      if (sum / total <= low || start >= high) continue;
      mode.votes += by.n[k]!;
      mode.l += by.l[k]!;
      mode.a += by.a[k]!;
      mode.b += by.b[k]!;
    }
    return { l: mode.l / mode.votes, a: mode.a / mode.votes, b: mode.b / mode.votes, votes: mode.votes };
  };
  const end = numbers.rampEnd;
  const light = meanOf(0.01, 0.01 + end);
  const dark = meanOf(0.99 - end, 0.99);
  if (apart(light, dark) < numbers.rampLeast) return [meanOf(0.1, 0.9)];
  return [light, meanOf(0.5 - end, 0.5 + end), dark];
}
