import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/difference.ts';
import { chartLabs } from '../../../src/colour/light.ts';
import {
  encodedFromLinear,
  labFromHex,
  labFromRgb,
  linearFromEncoded,
  rgbFromHex,
  rgbFromXyz,
  xyzFromLab,
} from '../../../src/colour/spaces.ts';
import { type Preparation, prepared, readPhotograph } from '../../../src/sheet/light/photograph.ts';
import type { Frame, PixelImage } from '../../../src/sheet/model.ts';
import { colourAtSpot, shareNear } from '../../../src/workers/spot-colour.ts';

type Triple = readonly [number, number, number];
const sizeMm = { width: 305, height: 305 };

/** A picture of which each pixel is a colour by its place, seen by a camera whose channels have these gains in linear light. */
function seen(
  width: number,
  height: number,
  at: (x: number, y: number) => Triple,
  gains: Triple,
): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const colour = at((x + 0.5) / width, (y + 0.5) / height);
      colour.forEach((v, k) => {
        data[(y * width + x) * 4 + k] = Math.round(encodedFromLinear(linearFromEncoded(v) * gains[k]!) * 255);
      });
      data[(y * width + x) * 4 + 3] = 255;
    }
  }
  return { data, width, height };
}

const triple = (hex: string): Triple => {
  const { r, g, b } = rgbFromHex(hex);
  return [r, g, b];
};
/** sRGB of 90 % of the light. */
const card: Triple = [encodedFromLinear(0.9), encodedFromLinear(0.9), encodedFromLinear(0.9)];
const within = ({ x, y, width, height }: Frame, px: number, py: number) =>
  px >= x && px < x + width && py >= y && py < y + height;
const off = (image: PixelImage, x: number, y: number, hex: string) =>
  deltaE2000(labFromHex(colourAtSpot(image, { x, y })), labFromHex(hex));

describe('a photograph with a card', () => {
  const frame = { x: 0.7, y: 0.1, width: 0.2, height: 0.2 };
  const papers = ['#e2725b', '#1f3a5f', '#f4e8cd'];
  const photograph = seen(
    300,
    200,
    (x, y) => (within(frame, x, y) ? card : triple(papers[Math.min(2, Math.floor(y * 3))]!)),
    [0.92, 0.8, 0.55],
  );

  it('has the light undone, all over and beside the card', () => {
    const { image, side } = readPhotograph(photograph, {
      sizeMm,
      light: { kind: 'white', frame, reflectance: 0.9 },
    });
    papers.forEach((hex, i) => {
      expect(off(photograph, 0.3, i / 3 + 0.16, hex)).toBeGreaterThan(4);
      // The lamp is gains on the camera's channels, which no adaptation undoes to the last.
      expect(off(image, 0.3, i / 3 + 0.16, hex)).toBeLessThan(6);
    });
    expect(off(image, 0.8, 0.2, '#f3f3f3')).toBeLessThan(0.7);
    expect(side.light).toMatchObject({
      known: true,
      note: 'Light corrected by the white card in the picture.',
    });
  });

  it('is straightened by its corners, though the card lies outside them', () => {
    const preparation: Preparation = {
      sizeMm: { width: 152, height: 152 },
      light: { kind: 'white', frame, reflectance: 0.9 },
      corners: [
        { x: 0.05, y: 0.05 },
        { x: 0.55, y: 0.05 },
        { x: 0.55, y: 0.8 },
        { x: 0.05, y: 0.8 },
      ],
    };
    const { mmPerPixel, light } = prepared(photograph, preparation);
    // 150 pixels of the photograph became 150 of the sheet: the card moved by its corner, 15 and 10 pixels.
    const { x, y, width, height } = light!.lies!;
    [x - 195, y - 10, width - 60, height - 40].forEach(
      (off) => void expect(Math.abs(off)).toBeLessThan(1e-6),
    );
    const { image } = readPhotograph(photograph, preparation);
    expect([image.width, image.height]).toEqual([150, 150]);
    expect(mmPerPixel).toBeCloseTo(152 / 150, 9);
    expect(off(image, 0.5, 0.2, papers[0]!)).toBeLessThan(6);
  });

  it('says so in a sentence where the card is black or the corners cross', () => {
    const black = seen(30, 30, () => [0, 0, 0], [1, 1, 1]);
    expect(() =>
      readPhotograph(black, { sizeMm, light: { kind: 'grey', frame, reflectance: 0.18 } }),
    ).toThrow('too dark');
    const corners = [
      { x: 0.1, y: 0.1 },
      { x: 0.9, y: 0.9 },
      { x: 0.9, y: 0.1 },
      { x: 0.1, y: 0.9 },
    ] as const;
    expect(() => readPhotograph(photograph, { sizeMm, corners })).toThrow('These corners make no sheet');
  });
});

/** The 24 patches of McCamy, Marcus and Davidson (1976), drawn as sRGB. */
describe('a photograph with a chart of 24 patches', () => {
  const frame = { x: 0.1, y: 0.1, width: 0.6, height: 0.4 };
  const upright = { x: 0.1, y: 0.1, width: 0.4, height: 0.6 };
  const patches = chartLabs().map(({ lab }): Triple => {
    const { r, g, b } = rgbFromXyz(xyzFromLab(lab));
    return [r, g, b].map((v) => Math.min(1, Math.max(0, v))) as unknown as Triple;
  });
  const gains: Triple = [0.9, 0.75, 0.6];
  const lying = (
    index: (column: number, row: number) => number,
    at: Frame,
    [columns, rows]: [number, number],
  ) =>
    seen(
      400,
      400,
      (x, y) => {
        if (!within(at, x, y)) return triple('#f4e8cd');
        const column = Math.floor(((x - at.x) / at.width) * columns);
        const row = Math.floor(((y - at.y) / at.height) * rows);
        return patches[index(column, row)]!;
      },
      gains,
    );

  it.each([
    ['upright', lying((c, r) => r * 6 + c, frame, [6, 4]), frame],
    ['on its head', lying((c, r) => 23 - (r * 6 + c), frame, [6, 4]), frame],
    ['on its left side', lying((c, r) => c * 6 + (5 - r), upright, [4, 6]), upright],
    ['on its right side', lying((c, r) => (3 - c) * 6 + r, upright, [4, 6]), upright],
  ] as const)('has its light undone by the chart lying %s', (_way, picture, at) => {
    const { image, side } = readPhotograph(picture, { sizeMm, light: { kind: 'chart', frame: at } });
    expect(off(picture, 0.9, 0.9, '#f4e8cd')).toBeGreaterThan(6);
    expect(off(image, 0.9, 0.9, '#f4e8cd')).toBeLessThan(3);
    expect(side.light.note).toMatch(/^Light corrected by the chart: ΔE₀₀ [0-2]\.\d is left/);
  });

  it('says so where the frame lies on something else', () => {
    const plain = seen(100, 100, (x) => [x, 1 - x, 0.5], [1, 1, 1]);
    expect(() => readPhotograph(plain, { sizeMm, light: { kind: 'chart', frame } })).toThrow(
      'does not lie on',
    );
  });
});

describe('a spot on a picture', () => {
  const picture = seen(200, 100, (x) => triple(x < 0.25 ? '#1f3a5f' : '#f4e8cd'), [1, 1, 1]);

  it('gives the colour that lies there, right beside another', () => {
    expect(colourAtSpot(picture, { x: 0.2, y: 0.5 })).toBe('#1f3a5f');
    expect(colourAtSpot(picture, { x: 0.3, y: 0.5 })).toBe('#f4e8cd');
    expect(colourAtSpot(picture, { x: 1, y: 1 })).toBe('#f4e8cd');
  });

  it('tells how much of the picture is near that colour', () => {
    expect(shareNear(picture, rgbFromHex('#1f3a5f'))).toBeCloseTo(0.25, 2);
    expect(labFromRgb(rgbFromHex('#1f3a5f')).l).toBeLessThan(30);
  });
});
