import type { LabelCanvas } from './label-canvas.ts';

/** How broad the features of each label are, in pixels: twice the depth that nine tenths of its places stay under. About the width of a line, two thirds of a disc. */
export function featureSizes({ width, height, labels }: LabelCanvas, samples: number): number[] {
  const depth = new Uint16Array(labels.length).fill(9999);
  const at = (i: number, j: number): number => (labels[i] === labels[j] ? depth[j]! + 1 : 1);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (x) depth[i] = Math.min(depth[i]!, at(i, i - 1));
      if (y) depth[i] = Math.min(depth[i]!, at(i, i - width));
    }
  for (let y = height - 1; y >= 0; y--)
    for (let x = width - 1; x >= 0; x--) {
      const i = y * width + x;
      if (x < width - 1) depth[i] = Math.min(depth[i]!, at(i, i + 1));
      if (y < height - 1) depth[i] = Math.min(depth[i]!, at(i, i + width));
    }
  const most = 256;
  const counts: Float64Array[] = [];
  for (let i = 0; i < labels.length; i++) {
    const k = labels[i]!;
    (counts[k] ??= new Float64Array(most))[Math.min(most - 1, depth[i]!)]!++;
  }
  return Array.from(counts, (of) => {
    if (!of) return 0;
    const goal = 0.9 * of.reduce((s, n) => s + n, 0);
    let sum = 0;
    let d = 0;
    while (d < most - 1 && sum + of[d]! < goal) sum += of[d++]!;
    return (2 * d) / samples;
  });
}
