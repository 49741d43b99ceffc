import { describe, expect, it } from 'vitest';
import type { PixelImage } from '../../../src/sheet/model.ts';
import { LineTransform } from '../../../src/sheet/screen/fourier.ts';
import { screenPeriod } from '../../../src/sheet/screen/screen.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { printed } from '../../support/sheets/kinds.ts';
import { noise } from '../../support/sheets/spoil.ts';
import { texturedPlain } from '../../support/sheets/texture.ts';

describe('a printing screen', () => {
  // Each of these is missed by the strongest lattice of each channel alone: one ink rules both, or edges drown the dots.
  it.each([
    ['one ink rules', 'dots', 91700, 65, 300],
    ['dots on letters', 'text', 91705, 100, 600],
    ['dots half as wide as a motif', 'confetti', 91707, 65, 600],
  ])('of coarse dots is found: %s', (_, pattern, seed, lpi, ppi) => {
    const { image, truth } = printed(seed, lpi, ppi, 560);
    expect(truth.pattern).toBe(pattern);
    const period = screenPeriod(image, whole(image))!;
    expect(Math.abs(period / (ppi / lpi) - 1)).toBeLessThan(0.04);
  });

  // Each of these shows what is not its screen: multiples, rosettes, one ink alone, or dots finer than the pixels.
  it.each([
    ['its multiple is stronger', 95140, 120, 600, 5],
    ['only multiples of two inks show', 95129, 65, 600, 9.23],
    ['only multiples show in small tiles', 120135, 85, 600, 7.06],
    ['one ink alone', 95099, 65, 400, 6.15],
    ['its rosette is seen in one channel', 95126, 200, 400, 2],
    ['finer than the pixels', 95059, 175, 200, 2.5],
    ['finer than the pixels, and faint', 95057, 175, 200, 2.5],
  ])('of which something else shows is found: %s', (_, seed, lpi, ppi, expected) => {
    const { image } = printed(seed, lpi, ppi, 900);
    const period = screenPeriod(image, whole(image))!;
    expect(Math.abs(period / expected - 1)).toBeLessThan(0.04);
  });

  it.each([
    ['scallops, which mirror themselves', toImage(drawSheet(96118, { width: 434 }))],
    ['a grid of few pixels', toImage(drawSheet(96063, { width: 219 }))],
    ['a square print whose multiples lie askew', squares()],
    ['a grid', noise(toImage(drawSheet(93213, { width: 200 })), 2, 13)],
    ['a chevron', noise(toImage(drawSheet(93348, { width: 340 })), 2, 148)],
    ['linen', noise(toImage(texturedPlain(93001, [250, 248, 240], 'linen', 400)), 2, 1)],
  ])('is not seen in %s', (_, image) => {
    expect(screenPeriod(image, whole(image))).toBeNull();
  });
});

describe('the transform of a square', () => {
  it('is the sum over all its numbers, each turned', () => {
    const n = 8;
    const re = Float64Array.from({ length: n * n }, (_, i) => ((i * 37) % 19) - 9);
    const im = Float64Array.from({ length: n * n }, (_, i) => ((i * 23) % 17) - 8);
    const [r, i] = [re.slice(), im.slice()];
    new LineTransform(n).runSquare(r, i);
    let off = 0;
    for (let fy = 0; fy < n; fy++)
      for (let fx = 0; fx < n; fx++) {
        let [sr, si] = [0, 0];
        for (let y = 0; y < n; y++)
          for (let x = 0; x < n; x++) {
            const t = (-2 * Math.PI * (fx * x + fy * y)) / n;
            const k = y * n + x;
            sr += re[k]! * Math.cos(t) - im[k]! * Math.sin(t);
            si += re[k]! * Math.sin(t) + im[k]! * Math.cos(t);
          }
        off = Math.max(off, Math.hypot(r[fy * n + fx]! - sr, i[fy * n + fx]! - si));
      }
    expect(off).toBeLessThan(1e-9);
  });
});

/** Dots 16 pixels apart, a check of 7 and rings 14 apart, with hard edges: full of multiples that lie on square lattices. */
function squares(): PixelImage {
  const side = 300;
  const data = new Uint8ClampedArray(side * side * 4);
  const dots = (x: number, y: number, step: number): number =>
    Math.hypot((x % step) - step / 2, (y % step) - step / 2);
  for (let y = 0, i = 0; y < side; y++)
    for (let x = 0; x < side; x++, i += 4) {
      const check = (Math.floor(x / 7) + Math.floor(y / 7)) % 2;
      const ring = dots(x, y, 14) > 3 && dots(x, y, 14) < 5;
      let colour = ring ? [155, 197, 61] : [92, 61, 46];
      if (y < 140) colour = dots(x, y, 16) < 5 ? [244, 211, 94] : [58, 110, 165];
      else if (x < 170) colour = check ? [226, 111, 87] : [243, 232, 206];
      data.set([...colour, 255], i);
    }
  return { data, width: side, height: side };
}

function whole({ width, height }: PixelImage) {
  return { x: 0, y: 0, width, height };
}
