import { dice } from './dice.ts';
import type { DrawnSheet } from './draw-sheet.ts';
import { LabelCanvas } from './label-canvas.ts';
import { linearOf, type Rgb3 } from './truth-colour.ts';

/** How a wash shades: over the whole sheet from one colour to another, or in pools that dry thin in the middle. */
export type WashKind = 'sheet' | 'pools';

/**
 * A watercolour wash: pigment of uneven density on paper, each density letting through its power of the full colour's light
 * (Beer and Lambert). What is true of it: the paper (if it shows), and a ramp from its thinnest to its fullest.
 */
export function wash(
  seed: number,
  paper: Rgb3,
  full: Rgb3,
  kind: WashKind,
  width = 800,
): DrawnSheet & { readonly thin: Rgb3 } {
  const roll = dice(seed * 7727 + 1);
  const height = width;
  const base = linearOf(paper);
  const ink = linearOf(full);
  const least = 0.18;
  const cloud = clouds(width, height, seed);
  const linear = new Float32Array(width * height * 3);
  const labels = new Uint8Array(width * height);
  const pools = Array.from({ length: 14 }, () => ({
    x: roll.between(0, width),
    y: roll.between(0, height),
    r: width * roll.between(0.07, 0.15),
  }));
  let covered = 0;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      let density = 0;
      if (kind === 'sheet')
        density = least + (1 - least) * Math.min(1, Math.max(0, y / height + 0.1 * cloud[i]!));
      else
        for (const pool of pools) {
          const d = Math.hypot(x - pool.x, y - pool.y) / pool.r;
          if (d < 1)
            density = Math.max(
              density,
              least + (1 - least) * Math.min(1, Math.max(0, d * d + 0.25 * cloud[i]!)),
            );
        }
      if (density > 0) {
        covered++;
        labels[i] = 1;
      }
      for (let c = 0; c < 3; c++) linear[i * 3 + c] = base[c]! * (ink[c]! / base[c]!) ** density;
    }
  const share = covered / (width * height);
  const thin = [0, 1, 2].map((c) => encoded(base[c]! * (ink[c]! / base[c]!) ** least)) as unknown as Rgb3;
  return {
    width,
    height,
    linear,
    labels,
    thin,
    repaint: () => linear,
    canvas: new LabelCanvas(width, height),
    samples: 1,
    colours: [paper, full],
    truth: {
      pattern: `wash ${kind}`,
      baseKind: 'white',
      inks: [
        ...(share < 1 ? [{ rgb: paper, share: 1 - share, accent: false, label: 0 }] : []),
        { rgb: full, share, accent: false, label: 1 },
      ],
    },
  };
}

/** Smooth noise, about −1…1: a few octaves of blended values on a grid. */
function clouds(width: number, height: number, seed: number): Float32Array {
  const roll = dice(seed + 4242);
  const out = new Float32Array(width * height);
  for (const [cells, weight] of [
    [4, 0.6],
    [9, 0.3],
    [21, 0.15],
  ] as const) {
    const grid = Float32Array.from({ length: (cells + 2) ** 2 }, () => roll.between(-1, 1));
    const ease = (t: number): number => t * t * (3 - 2 * t);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) {
        const gx = (x / width) * cells;
        const gy = (y / height) * cells;
        const i = Math.floor(gx);
        const j = Math.floor(gy);
        const at = (u: number, v: number): number => grid[(j + v) * (cells + 2) + i + u]!;
        const tx = ease(gx - i);
        const top = at(0, 0) + tx * (at(1, 0) - at(0, 0));
        const bottom = at(0, 1) + tx * (at(1, 1) - at(0, 1));
        out[y * width + x]! += weight * (top + ease(gy - j) * (bottom - top));
      }
  }
  return out;
}

function encoded(v: number): number {
  return Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055));
}
