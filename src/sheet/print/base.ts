import type { Lab } from '../../colour/model.ts';
import { chromaAb, hueAbDeg } from '../../colour/spaces.ts';
import type { LabelCounts } from '../inks/label-counts.ts';
import { nothing } from '../inks/label-counts.ts';
import type { BaseKind } from '../model.ts';

/** Regions of the kinds of base in CIELAB D65. Common practice of the trade, no source; borders are our choice. */
export const baseRegions = {
  /** White: light, and hardly coloured. */
  white: { l: 88, c: 5.5 },
  /** Cream: light and yellowish. */
  cream: { l: 80, c: [5.5, 30], h: [62, 112] },
  /** Kraft: mid brown. */
  kraft: { l: [45, 80], c: [13, 45], h: [52, 88] },
  /** Dark: below this lightness. */
  dark: { l: 42 },
} as const;

/** What kind of paper a base colour is. */
export function baseKind(lab: Lab): BaseKind {
  const c = chromaAb(lab);
  const h = hueAbDeg(lab);
  const { white, cream, kraft, dark } = baseRegions;
  if (lab.l >= white.l && c <= white.c) return 'white';
  if (lab.l >= cream.l && c >= cream.c[0] && c <= cream.c[1] && h >= cream.h[0] && h <= cream.h[1])
    return 'cream';
  if (
    lab.l >= kraft.l[0] &&
    lab.l <= kraft.l[1] &&
    c >= kraft.c[0] &&
    c <= kraft.c[1] &&
    h >= kraft.h[0] &&
    h <= kraft.h[1]
  )
    return 'kraft';
  return lab.l < dark.l ? 'dark' : 'tinted';
}

/**
 * Number of the label that lies behind the others: much area, joined up, out to the border; among rivals the lighter.
 * `lightness` is OKLab L of each label.
 */
export function groundOf(
  labels: Uint8Array,
  width: number,
  height: number,
  counts: LabelCounts,
  lightness: readonly number[],
): number {
  const joined = largestJoined(labels, width, height, counts.area.length);
  const total = counts.area.reduce((s, n) => s + n, 0) || 1;
  const edge = counts.border.reduce((s, n) => s + n, 0) || 1;
  let best = 0;
  let most = -1;
  for (let k = 0; k < lightness.length; k++) {
    const share = counts.area[k]! / total;
    const whole = counts.area[k]! ? joined[k]! / counts.area[k]! : 0;
    const score =
      (share + 0.5 * (counts.border[k]! / edge)) * (0.6 + 0.4 * whole) * (0.55 + 0.6 * lightness[k]!);
    if (score > most) {
      most = score;
      best = k;
    }
  }
  return best;
}

/** Area of the largest joined-up place of each label (four neighbours). */
function largestJoined(labels: Uint8Array, width: number, height: number, n: number): Float64Array {
  // A coarse map is enough to tell a ground from strewn motifs.
  const step = Math.max(1, Math.floor(Math.max(width, height) / 180));
  const w = Math.floor(width / step);
  const h = Math.floor(height / step);
  const parent = new Int32Array(w * h).map((_, i) => i);
  const find = (i: number): number => {
    while (parent[i] !== i) {
      parent[i] = parent[parent[i]!]!;
      i = parent[i]!;
    }
    return i;
  };
  const at = (x: number, y: number): number => labels[y * step * width + x * step]!;
  for (let y = 0; y < h; y++)
    for (let x = 0; x < w; x++) {
      const k = at(x, y);
      if (k === nothing) continue;
      const i = y * w + x;
      if (x && at(x - 1, y) === k) parent[find(i)] = find(i - 1);
      if (y && at(x, y - 1) === k) parent[find(i)] = find(i - w);
    }
  const sizes = new Float64Array(w * h);
  const largest = new Float64Array(n);
  for (let y = 0; y < h; y++)
    for (let x = 0; x < w; x++) {
      const k = at(x, y);
      if (k === nothing) continue;
      const size = ++sizes[find(y * w + x)]!;
      if (size * step * step > largest[k]!) largest[k] = size * step * step;
    }
  return largest;
}

/**
 * Whether the ground is ink rather than bare paper: false where it looks like bare paper, true where it is a strong
 * colour and paper of another colour shows too, null where that can't be told.
 */
export function groundPrinted(
  kind: BaseKind,
  lab: Lab,
  others: readonly { readonly lab: Lab; readonly share: number }[],
): boolean | null {
  if (kind === 'white' || kind === 'kraft') return false;
  if (kind === 'cream') return chromaAb(lab) < 22 ? false : null;
  const bare = others.some((o) => o.share >= 0.01 && ['white', 'cream', 'kraft'].includes(baseKind(o.lab)));
  const strong = kind === 'dark' || chromaAb(lab) >= 20 || lab.l < 75;
  return strong && bare ? true : null;
}
