import { describe, expect, it } from 'vitest';
import { readSide } from '../../../src/sheet/read-side.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { score, swatchesOf } from '../../support/sheets/score.ts';
import { jpeg, noise } from '../../support/sheets/spoil.ts';
import { reliefOf } from '../../support/sheets/texture.ts';
import { apartBy, linearOf, type Rgb3 } from '../../support/sheets/truth-colour.ts';
import { wash } from '../../support/sheets/wash.ts';

const cream: Rgb3 = [246, 234, 210];

describe('a wash', () => {
  it.each(['sheet', 'pools'] as const)('is its two ends and its middle, not ten inks: %s', async (kind) => {
    const drawn = wash(731, cream, [40, 90, 150], kind, 600);
    const side = readSide(await jpeg(noise(toImage(drawn), 2, 1), 88));
    const [ramp, ...more] = side.ramps ?? [];
    expect(more).toEqual([]);
    expect(ramp?.inks.length).toBe(3);
    expect(side.inks.length).toBeLessThanOrEqual(3);
    const steps = ramp!.inks.map((id) => [side.base, ...side.inks].find((ink) => ink.id === id)!.oklch[0]);
    expect(steps).toEqual([...steps].sort((p, q) => q - p));
  });

  it.each(['linen', 'felt'] as const)(
    'is not seen in a print on paper with a surface: %s',
    async (texture) => {
      const drawn = drawSheet(6002, { width: 600 });
      const relief = reliefOf(texture, drawn.width, drawn.height, 2);
      const linear = drawn.linear.map((v, i) => v * relief[Math.floor(i / 3)]!);
      const side = readSide(await jpeg(noise(toImage({ ...drawn, linear }), 2, 1), 88));
      const found = score(drawn.truth, swatchesOf(side), 5);
      expect(side.ramps ?? []).toEqual([]);
      expect(found.missed).toEqual([]);
      expect(found.extra).toEqual([]);
    },
  );

  it('is not one with another that begins where it has paled: the paper between them is not lost', async () => {
    const [width, height] = [600, 400];
    const [paper, crimson, blue] = ([cream, [186, 30, 70], [40, 90, 150]] as const).map(linearOf);
    const linear = new Float32Array(width * height * 3);
    for (let i = 0; i < width * height; i++) {
      const x = (i % width) / width;
      const [red, cool] = [Math.max(0, 1 - x / 0.4), Math.max(0, (x - 0.6) / 0.4)];
      for (let c = 0; c < 3; c++)
        linear[3 * i + c] =
          paper![c]! * (crimson![c]! / paper![c]!) ** red * (blue![c]! / paper![c]!) ** cool;
    }
    const side = readSide(await jpeg(noise(toImage({ width, height, linear }), 2, 1), 88));
    const swatches = swatchesOf(side);
    for (const rgb of [cream, [186, 30, 70], [40, 90, 150]] as const)
      expect(Math.min(...swatches.map((one) => apartBy(one.rgb, rgb)))).toBeLessThan(8);
    expect(side.ramps).toHaveLength(2);
    expect(swatches.length).toBeLessThanOrEqual(7);
  });
});
