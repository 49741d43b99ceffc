import { describe, expect, it } from 'vitest';
import { encodedFromLinear, linearFromEncoded } from '../../../src/colour/spaces.ts';
import { evenOut, lightSurface } from '../../../src/sheet/light/evenness.ts';
import { knownLightOf, markInPixels } from '../../../src/sheet/light/known-light.ts';
import { middleLight, wholeFrame, withoutRim } from '../../../src/sheet/light/middle-light.ts';
import { solveSymmetric } from '../../../src/sheet/light/solve.ts';
import { pictureUnderLight } from '../../../src/sheet/light/under-light.ts';
import type { PixelImage } from '../../../src/sheet/model.ts';
import type { Planes } from '../../../src/sheet/planes.ts';

type Place = (x: number, y: number) => number;

/** A sheet of one colour under a light whose logarithm is given, places −1…1; its chroma turns by `tint`. */
function litSheet(width: number, height: number, light: Place, tint: Place = () => 0.02): Planes {
  const of = (value: Place) =>
    Float32Array.from({ length: width * height }, (_, p) =>
      value((2 * (p % width)) / width - 1, (2 * Math.floor(p / width)) / height - 1),
    );
  const l = of((x, y) => 0.7 * Math.exp(light(x, y)));
  const a = of((x, y) => 0.7 * Math.exp(light(x, y)) * tint(x, y));
  const [b, on] = [new Float32Array(l.length), new Uint8Array(l.length).fill(1)];
  return { width, height, l, a, b, on, count: l.length, block: 1 };
}

/** A picture of grey bytes by place. */
function greys(width: number, height: number, at: Place, alpha: Place = () => 255): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let p = 0; p < width * height; p++) {
    const [x, y] = [p % width, Math.floor(p / width)];
    data.fill(at(x, y), p * 4, p * 4 + 3);
    data[p * 4 + 3] = alpha(x, y);
  }
  return { data, width, height };
}

const limit = new Float64Array(64).fill(0.05);

describe('uneven light', () => {
  // Held against the light that was put on the sheet.
  const lights: readonly (readonly [string, Place])[] = [
    ['a lamp on the right', (x) => 0.15 * x],
    ['a window below', (_, y) => -0.12 * y],
    ['a lens that darkens its corners', (x, y) => -0.14 * x * x - 0.1 * y * y],
    ['a lamp off a corner', (x, y) => 0.12 * x + 0.1 * x * y],
    ['a shadow that bends', (x, y) => 0.12 * x ** 3 + 0.08 * x * x * y - 0.1 * x * y * y + 0.09 * y ** 3],
  ];
  for (const [name, light] of lights) {
    it(`is told as it falls: ${name}`, () => {
      const surface = lightSurface(litSheet(330, 220, light), limit);
      expect(surface).not.toBeNull();
      // One hundredth of lightness: ours.
      for (const [x, y] of [
        [-0.8, -0.8],
        [0.8, -0.7],
        [-0.7, 0.8],
        [0.8, 0.8],
        [0.4, -0.2],
      ] as const)
        expect(Math.abs(surface!(x, y) - surface!(0, 0) - light(x, y) + light(0, 0))).toBeLessThan(0.01);
    });
  }

  it('is not told where there is none, or where the print shades in colour too', () => {
    expect(
      lightSurface(
        litSheet(330, 220, () => 0),
        limit,
      ),
    ).toBeNull();
    const shading = litSheet(
      330,
      220,
      (x) => 0.15 * x,
      (x) => 0.02 + 0.15 * x,
    );
    expect(lightSurface(shading, limit)).toBeNull();
  });

  it('is not told from a few places', () => {
    const blank = { ...litSheet(330, 220, (x) => 0.15 * x), l: new Float32Array(330 * 220).fill(0.1) };
    expect(lightSurface(blank, limit)).toBeNull();
  });

  it('is taken out all over, to what is right where the card lies', () => {
    const light: Place = (x, y) => 0.3 * x + 0.1 * y * y;
    const planes = litSheet(100, 75, light);
    evenOut(planes, light, { x: 0.5, y: -0.5 });
    // Straight lines over cells of 16 pixels stray from a square of 0.1 and a slope of 0.3 by up to 0.006 (by Taylor's remainder).
    const right = 0.7 * Math.exp(light(0.5, -0.5));
    for (let p = 0; p < planes.l.length; p++) {
      expect(Math.abs(planes.l[p]! / right - 1)).toBeLessThan(0.006);
      expect(Math.abs(planes.a[p]! / (0.02 * right) - 1)).toBeLessThan(0.006);
    }
  });

  it('is taken out to the brightest parts where no card lies', () => {
    const light: Place = (x) => 0.3 * x;
    const planes = litSheet(96, 64, light);
    evenOut(planes, light, null);
    expect(Math.log(planes.l[0]! / 0.7)).toBeCloseTo(0.3 * 0.9, 2);
  });
});

describe('equations of a surface', () => {
  it('are solved, and not where they do not tell', () => {
    // By hand: 4·1 + 2·2 + 0·3 = 8, and so on.
    const three = Float64Array.from([4, 2, 0, 2, 5, 3, 0, 3, 6]);
    const solved = solveSymmetric(three, Float64Array.from([8, 21, 24]), 3)!;
    expect([...solved]).toEqual([1, 2, 3].map((v) => expect.closeTo(v, 9)));
    expect(solveSymmetric(Float64Array.from([1, 1, 1, 1]), Float64Array.from([1, 1]), 2)).toBeNull();
    // A ridge of 1 makes 1·x = 6 into 2·x = 6.
    expect([...solveSymmetric(Float64Array.from([1]), Float64Array.from([6]), 1, 1)!]).toEqual([
      expect.closeTo(3, 9),
    ]);
  });
});

describe('the middle of a frame', () => {
  it('stands in whole pixels whose edges meet', () => {
    expect(wholeFrame({ x: 1.4, y: 2.6, width: 3.2, height: 0.1 })).toEqual({
      x: 1,
      y: 3,
      width: 4,
      height: 1,
    });
  });

  it('leaves the rim out on each side', () => {
    const image = greys(200, 100, () => 9);
    expect(withoutRim({ x: 20, y: 10, width: 100, height: 60 }, image)).toEqual({
      x: 35,
      y: 19,
      width: 70,
      height: 42,
    });
    expect(withoutRim({ x: 20, y: 10, width: 100, height: 40 }, image, 0.25)).toEqual({
      x: 45,
      y: 20,
      width: 50,
      height: 20,
    });
  });

  it('is the mean of the middle half: a glint and a stroke do not count', () => {
    const image = greys(20, 20, (x) => (x < 4 ? 0 : x >= 16 ? 255 : x < 10 ? 100 : 120));
    const { r } = middleLight(image, { x: 0, y: 0, width: 20, height: 20 })!;
    expect(r).toBeCloseTo((linearFromEncoded(100 / 255) + linearFromEncoded(120 / 255)) / 2, 4);
    const none = greys(
      20,
      20,
      () => 100,
      () => 0,
    );
    expect(middleLight(none, { x: 0, y: 0, width: 20, height: 20 })).toBeNull();
  });
});

describe('the light of a card', () => {
  const byteOf = (linear: number) => Math.round(255 * encodedFromLinear(linear));
  const lightOf = (linear: number, reflectance?: number) =>
    knownLightOf(
      greys(80, 60, (x) => (x < 40 ? byteOf(linear) : byteOf(linear / 2))),
      { card: { x: 4, y: 4, width: 30, height: 40, ...(reflectance === undefined ? {} : { reflectance }) } },
    )!;
  // Each channel comes to what the card reflects; sums of a row tell it, since greys have three like channels.
  const gain = (linear: number, reflectance?: number) =>
    lightOf(linear, reflectance)
      .matrix.slice(0, 3)
      .reduce((sum, v) => sum + v, 0);

  it('makes a card as light as it is', () => {
    expect(gain(0.5, 0.9)).toBeCloseTo(1.8, 1);
    expect(gain(0.09, 0.18)).toBeCloseTo(2, 1);
    expect(lightOf(0.5, 0.9).lies).toEqual({ x: 4, y: 4, width: 30, height: 40 });
    expect(lightOf(0.5, 0.9).known).toBe(true);
  });

  it('says whether it was white or grey, and whether it was exposed too long', () => {
    expect(lightOf(0.3, 0.49).note).toMatch(/grey/);
    expect(lightOf(0.3, 0.5).note).toMatch(/white/);
    expect(lightOf(0.97, 0.9).note).not.toEqual(lightOf(1, 0.9).note);
    expect(() => lightOf(0.002, 0.9)).toThrow();
    expect(() => lightOf(0.006, 0.9)).not.toThrow();
  });

  it('is found at its fractions of a picture', () => {
    const frame = { x: 0.1, y: 0.2, width: 0.5, height: 0.25 };
    const size = { width: 400, height: 200 };
    const pixels = { x: 40, y: 40, width: 200, height: 50 };
    expect(markInPixels({ kind: 'chart', frame }, size)).toEqual({ chart: pixels });
    expect(markInPixels({ kind: 'grey', frame, reflectance: 0.2 } as never, size)).toEqual({
      card: { ...pixels, kind: 'grey', reflectance: 0.2 },
    });
  });
});

describe('a picture under its light', () => {
  it('has each channel mixed in linear light, and its edges as they were', () => {
    const image: PixelImage = { data: Uint8ClampedArray.from([40, 120, 200, 77]), width: 1, height: 1 };
    const m = [1.1, 0.1, -0.05, 0.05, 0.9, 0.1, -0.1, 0.2, 0.8] as const;
    const [r, g, b] = [40, 120, 200].map((v) => linearFromEncoded(v / 255)) as [number, number, number];
    const row = (n: number) => Math.round(255 * encodedFromLinear(m[n]! * r + m[n + 1]! * g + m[n + 2]! * b));
    const { data } = pictureUnderLight(image, m as never);
    expect([...data]).toEqual([row(0), row(3), row(6), 77]);
  });

  it('cuts off what is brighter than white and darker than black', () => {
    const image: PixelImage = { data: Uint8ClampedArray.from([200, 200, 200, 255]), width: 1, height: 1 };
    const { data } = pictureUnderLight(image, [3, 0, 0, 0, -1, 0, 0, 0, 1] as never);
    expect([...data]).toEqual([255, 0, 200, 255]);
  });
});
