import chroma from 'chroma-js';
import Color from 'colorjs.io';
import { clampChroma, converter, differenceCiede2000 } from 'culori';
import { lab as d3Lab, rgb as d3Rgb } from 'd3-color';
import { deltaE2000Pairs, labFromBytes, oklabFromBytes } from '../../src/colour/batch.ts';
import { mapToSrgb } from '../../src/colour/gamut.ts';
import { isccName } from '../../src/colour/naming/names.ts';

const many = 100_000;
const few = 10_000;

/** Batch forms beside calls of four libraries on the same colours, best of several rounds each. */
export async function bench(print: (line: string) => void): Promise<void> {
  const first = bytes(1);
  const second = bytes(2);
  const rgbs = Array.from({ length: many }, (_, i) => ({
    mode: 'rgb' as const,
    r: first[4 * i]! / 255,
    g: first[4 * i + 1]! / 255,
    b: first[4 * i + 2]! / 255,
  }));

  const toOklab = converter('oklab');
  const chromas = rgbs.slice(0, few).map(({ r, g, b }) => chroma(r * 255, g * 255, b * 255));
  const colours = rgbs.slice(0, few).map(({ r, g, b }) => new Color('srgb', [r, g, b]));
  const out = new Float64Array(3 * many);
  race(print, 'sRGB to OKLab', () => oklabFromBytes(first, 4, out), {
    culori: [many, () => rgbs.forEach((c) => void toOklab(c))],
    'chroma-js': [few, () => chromas.forEach((c) => void c.oklab())],
    'colorjs.io': [few, () => colours.forEach((c) => void c.to('oklab'))],
  });

  const toLab = converter('lab65');
  const d3s = rgbs.slice(0, few).map(({ r, g, b }) => d3Rgb(r * 255, g * 255, b * 255));
  race(print, 'sRGB to CIELAB', () => labFromBytes(first, 4, out), {
    culori: [many, () => rgbs.forEach((c) => void toLab(c))],
    'chroma-js (D50)': [few, () => chromas.forEach((c) => void c.lab())],
    'colorjs.io': [few, () => colours.forEach((c) => void c.to('lab-d65'))],
    'd3-color (D50)': [few, () => d3s.forEach((c) => void d3Lab(c))],
  });

  const labsA = labFromBytes(first);
  const labsB = labFromBytes(second);
  const a = objects(labsA);
  const b = objects(labsB);
  const measure = differenceCiede2000();
  const differences = new Float64Array(many);
  const colourLabs = [a, b].map((list) =>
    list.slice(0, few).map((c) => new Color('lab-d65', [c.l, c.a, c.b])),
  );
  const chromaLabs = [a, b].map((list) => list.slice(0, few).map((c) => chroma.lab(c.l, c.a, c.b)));
  race(print, 'ΔE₀₀ of pairs', () => deltaE2000Pairs(labsA, labsB, differences), {
    culori: [many, () => a.forEach((c, i) => void measure(c, b[i]!))],
    'chroma-js (with conversion)': [
      few,
      () => chromaLabs[0]!.forEach((c, i) => void chroma.deltaE(c, chromaLabs[1]![i]!)),
    ],
    'colorjs.io (with conversion)': [
      few,
      () => colourLabs[0]!.forEach((c, i) => void c.deltaE2000(colourLabs[1]![i]!)),
    ],
  });

  const ring = Array.from({ length: few }, (_, i) => ({ l: 0.7, c: 0.3, h: (i * 360) / few }));
  const [ours, theirs] = shortest([
    () => ring.forEach((c) => void mapToSrgb(c)),
    () => ring.forEach((c) => void clampChroma({ mode: 'oklch', ...c }, 'oklch', 'rgb')),
  ]).map((ms) => ms / few) as [number, number];
  print(`mapping into sRGB: ${micros(ours)} a colour, ${(theirs / ours).toFixed(1)} times as fast as culori`);

  const inks = a.slice(0, few);
  const [naming] = shortest([() => inks.forEach((c) => void isccName(c))]);
  print(`ISCC-NBS names of 10,000 inks: ${naming!.toFixed(0)} ms`);
}

/** Prints how long one of ours takes, and how many times as long one of each other takes. */
function race(
  print: (line: string) => void,
  name: string,
  ours: () => void,
  others: Readonly<Record<string, readonly [count: number, work: () => void]>>,
): void {
  const entries = Object.entries(others);
  const [own, ...rest] = shortest([ours, ...entries.map(([, [, work]]) => work)]);
  const each = own! / many;
  const ratios = entries.map(([other, [count]], i) => `${(rest[i]! / count / each).toFixed(1)} × ${other}`);
  print(`${name}: ${micros(each)} in batches, ${ratios.join(', ')}`);
}

/** The shortest of fifteen rounds for each work, milliseconds; they take turns, so that a busy moment hits all alike. */
function shortest(works: readonly (() => void)[]): number[] {
  const best = works.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < 15; round++)
    works.forEach((work, i) => {
      const from = performance.now();
      work();
      best[i] = Math.min(best[i]!, performance.now() - from);
    });
  return best;
}

function micros(ms: number): string {
  return `${(ms * 1000).toFixed(3)} µs`;
}

/** Seeded random RGBA. */
function bytes(seed: number): Uint8ClampedArray {
  let state = seed;
  return Uint8ClampedArray.from({ length: 4 * many }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state >>> 24;
  });
}

function objects(labs: Float32Array | Float64Array) {
  return Array.from({ length: many }, (_, i) => ({
    mode: 'lab65' as const,
    l: labs[3 * i]!,
    a: labs[3 * i + 1]!,
    b: labs[3 * i + 2]!,
  }));
}
