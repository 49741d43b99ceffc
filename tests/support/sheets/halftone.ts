import type { DrawnSheet, Truth } from './draw-sheet.ts';
import { apartBy, linearOf, type Rgb3 } from './truth-colour.ts';

/**
 * Linear reflectance of a solid of each process ink over white, by channel. Our own round figures for a four-colour
 * set; what matters is only that the truth is computed with the same ones.
 */
const inksOn: readonly Rgb3[] = [
  [0.02, 0.36, 0.74],
  [0.74, 0.03, 0.22],
  [0.94, 0.82, 0.03],
  [0.02, 0.02, 0.02],
];
const angles = [15, 75, 0, 45].map((deg) => (deg * Math.PI) / 180);

export interface Screen {
  readonly lpi: number;
  readonly ppi: number;
}

/**
 * The drawing printed with four screens of dots on its paper, and what the eye sees of it from afar: the truth is the
 * mean of the dots in linear light, as they were drawn.
 */
export function halftone(drawn: DrawnSheet, { lpi, ppi }: Screen): { linear: Float32Array; truth: Truth } {
  // A dark ground is printed on white paper; any other is the paper itself.
  const allOver = drawn.truth.baseKind === 'dark';
  const paper = linearOf(allOver ? [252, 252, 250] : drawn.colours[0]!);
  const plates = drawn.colours.map((rgb, n) =>
    n === 0 && !allOver ? [0, 0, 0, 0] : coverages(linearOf(rgb), paper),
  );
  const levels = plates.map((plate) => plate.map(thresholdOf));
  const { samples } = drawn;
  const period = (ppi / lpi) * samples;
  const { width: cw, height: ch, labels } = drawn.canvas;
  const width = cw / samples;
  const linear = new Float32Array(width * (ch / samples) * 3);
  const turn = angles.map(
    (t) => [(2 * Math.PI * Math.cos(t)) / period, (2 * Math.PI * Math.sin(t)) / period] as const,
  );
  const sums = drawn.colours.map(() => [0, 0, 0, 0]);
  const k = 1 / (samples * samples);
  for (let y = 0; y < ch; y++)
    for (let x = 0; x < cw; x++) {
      const level = levels[labels[y * cw + x]!]!;
      let r = paper[0];
      let g = paper[1];
      let b = paper[2];
      for (let p = 0; p < 4; p++) {
        const top = level[p]!;
        if (top <= -1) continue;
        const c = turn[p]![0];
        const s = turn[p]![1];
        // No wave rises above 1: a full plate prints everywhere.
        if (top < 1 && (Math.cos(x * c + y * s) + Math.cos(-x * s + y * c)) / 2 > top) continue;
        r *= inksOn[p]![0];
        g *= inksOn[p]![1];
        b *= inksOn[p]![2];
      }
      const label = labels[y * cw + x]!;
      const mean = sums[label]!;
      mean[0]! += r;
      mean[1]! += g;
      mean[2]! += b;
      mean[3]!++;
      const at = (Math.floor(y / samples) * width + Math.floor(x / samples)) * 3;
      linear[at]! += r * k;
      linear[at + 1]! += g * k;
      linear[at + 2]! += b * k;
    }
  const seen = sums.map(([r, g, b, n]) => encoded([r! / n!, g! / n!, b! / n!]));
  const inks = drawn.truth.inks.map((ink) => ({ ...ink, rgb: seen[ink.label]! }));
  return { linear, truth: { ...drawn.truth, inks } };
}

/** Whether four inks on this paper can show the colour, near enough. */
export function printable(rgb: Rgb3, base: Rgb3): boolean {
  const paper = linearOf(Math.max(...base) < 110 ? [252, 252, 250] : base);
  const seen = meanOf(coverages(linearOf(rgb), paper), paper);
  return apartBy(encoded(seen), rgb) < 5;
}

function meanOf(plate: readonly number[], paper: Rgb3): Rgb3 {
  return [0, 1, 2].map((c) =>
    plate.reduce((v, a, p) => v * (1 - a * (1 - inksOn[p]![c]!)), paper[c]!),
  ) as unknown as Rgb3;
}

/** Coverages of cyan, magenta, yellow and black whose mean comes nearest to a colour: a third of the grey goes to black. */
function coverages(goal: Rgb3, paper: Rgb3): number[] {
  const plate = [0.2, 0.2, 0.2, 0];
  for (let turn = 0; turn < 3; turn++) {
    for (let step = 0; step < 60; step++)
      for (let p = 0; p < 3; p++) {
        // Each ink mostly rules one channel (cyan red, magenta green, yellow blue): solve that channel for it.
        const rest = plate.reduce((v, a, q) => (q === p ? v : v * (1 - a * (1 - inksOn[q]![p]!))), paper[p]!);
        plate[p] = Math.min(1, Math.max(0, (1 - goal[p]! / rest) / (1 - inksOn[p]![p]!)));
      }
    if (turn === 0) plate[3] = Math.min(plate[0]!, plate[1]!, plate[2]!) * 0.33;
  }
  return plate;
}

/** The level under which the screen's wave lies on this share of the area; −1 for none, 1 for all. */
function thresholdOf(share: number): number {
  if (share <= 0.002) return -1;
  if (share >= 0.998) return 1;
  return waves[Math.min(waves.length - 1, Math.floor(share * waves.length))]!;
}

const waves: Float64Array = (() => {
  const n = 256;
  const all = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      all[i * n + j] =
        (Math.cos((2 * Math.PI * (i + 0.5)) / n) + Math.cos((2 * Math.PI * (j + 0.5)) / n)) / 2;
  return all.sort();
})();

function encoded(linear: Rgb3): Rgb3 {
  return linear.map(
    (v) => 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055),
  ) as unknown as Rgb3;
}
