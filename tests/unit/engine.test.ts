import { describe, expect, it } from 'vitest';
import { drawDemoSheet } from '../../src/demo/sheets.ts';
import * as engine from '../../src/index.ts';
import { expectComparison, expectSide } from '../support/study-shape.ts';

const { boardOf, boardSvg, compare, deltaE2000, rank, readSide, readWithPlaces, relabel } = engine;
const papers = ['blossom-bough', 'pip-hearts', 'lantern-row', 'ladder-stripe', 'bee-dots'] as const;
const sides = papers.map((id) => readSide(drawDemoSheet(id, 'A', 300)));

describe('the engine as others import it', () => {
  it('gives each call its answer at once, and not a promise', () => {
    for (const value of [sides[0]!, compare(sides[0]!, sides[1]!), rank(sides[0]!, sides)]) {
      expect(value).not.toBeInstanceOf(Promise);
    }
  });

  it('gives sides of the documented shape, named A, B … and without a file', () => {
    for (const side of sides) {
      expectSide(side, 'A');
      expect(side).not.toHaveProperty('file');
    }
  });

  it('gives comparisons of the documented shape for every pair, at both distances', () => {
    for (const anchor of sides) {
      for (const candidate of sides) {
        for (const distance of ['touching', 'apart'] as const) {
          const comparison = compare(anchor, candidate, { distance });
          expect(comparison.distance).toBe(distance);
          expectSide(comparison.anchor, 'A');
          expectSide(comparison.candidate, 'a');
          expectComparison(comparison, comparison.anchor, comparison.candidate);
        }
      }
    }
  });

  it('judges papers as apart where nobody says how they lie', () => {
    expect(compare(sides[0]!, sides[1]!).distance).toBe('apart');
  });

  it('has, for a side whose light is unknown, a reason that says so', () => {
    expect(sides[0]!.light.known).toBe(false);
    expect(compare(sides[0]!, sides[1]!).reasons.map(({ kind }) => kind)).toContain('light unknown');
  });

  it('holds a paper together with itself', () => {
    for (const side of sides) expect(compare(side, side).verdict).toBe('holds-together');
  });

  it('ranks each candidate once, by its index, best verdict first, as compare judges it', () => {
    const ranked = rank(sides[0]!, sides);
    expect(ranked.map(({ index }) => index).sort()).toEqual([0, 1, 2, 3, 4]);
    const order = ['holds-together', 'needs-a-bridge', 'pulls-apart'];
    const places = ranked.map(({ verdict }) => order.indexOf(verdict));
    expect(places).toEqual([...places].sort());
    for (const { index, verdict, reasons } of ranked) {
      const alone = compare(sides[0]!, sides[index]!);
      expect([verdict, reasons]).toEqual([alone.verdict, alone.reasons]);
    }
    expect(rank(sides[0]!, [])).toEqual([]);
  });

  it('says the same of the same pixels every time', () => {
    const image = drawDemoSheet('pip-hearts', 'A', 200);
    expect(readSide(image)).toEqual(readSide(drawDemoSheet('pip-hearts', 'A', 200)));
    const [a, b] = [sides[0]!, sides[2]!];
    expect(JSON.stringify(compare(a, b))).toBe(JSON.stringify(compare(a, b)));
  });

  it('changes neither its pixels nor the sides that it is given', () => {
    const image = drawDemoSheet('bee-dots', 'A', 160);
    const before = image.data.slice();
    readSide(image);
    expect(image.data.every((v, i) => v === before[i])).toBe(true);
    const frozen = deepFreeze(structuredClone(sides[1]!));
    expect(() => boardSvg(boardOf(compare(frozen, frozen)))).not.toThrow();
  });

  it('reads only the crop, in pixels of the given image, and takes the scale from mmPerPixel', () => {
    const image = drawDemoSheet('ladder-stripe', 'A', 610);
    const stripe = readSide(image, { crop: { x: 3, y: 0, width: 20, height: 610 } });
    expect([stripe.base.hex, stripe.inks]).toEqual(['#6c9a4f', []]);
    // Two pixels to the millimetre: the repeat is an eighth of 305 mm.
    expect(readSide(image).print.repeatMm).toBeCloseTo(305 / 8, 0);
    expect(readSide(image, { mmPerPixel: 1 }).print.repeatMm).toBeCloseTo(305 / 4, 0);
    // What rests on a size that nobody gave is marked.
    expect(readSide(image).print.assumedSize).toBe(true);
    expect(readSide(image, { mmPerPixel: 1 }).print).not.toHaveProperty('assumedSize');
  });

  it('takes the lamp out of the colours where a card shows what it was', () => {
    // A sheet of cream with coral under a lamp that lacks blue, and a white card of 0.9 in its corner: linear gains.
    const lamp = [1, 0.82, 0.55] as const;
    const paint = ([r, g, b]: readonly [number, number, number]) =>
      [r, g, b].map((v, i) => encoded(linear(v) * lamp[i]!)) as [number, number, number];
    const [cream, coral, card] = [paint([243, 232, 206]), paint([226, 111, 87]), paint([243, 243, 243])];
    const size = 200;
    const data = new Uint8ClampedArray(size * size * 4);
    for (let y = 0; y < size; y += 1) {
      for (let x = 0; x < size; x += 1) {
        const ink = x < 40 && y < 40 ? card : (x >> 4) % 3 === 1 ? coral : cream;
        data.set([...ink, 255], (y * size + x) * 4);
      }
    }
    const image = { data, width: size, height: size };
    const frame = { x: 4, y: 4, width: 32, height: 32 };
    const corrected = readSide(image, { card: frame });
    expect(corrected.light.known).toBe(true);
    const away = (side: typeof corrected) =>
      deltaE2000(engine.labFromHex(side.base.hex), engine.labFromHex('#f3e8ce'));
    expect(away(readSide(image))).toBeGreaterThan(8);
    // The lamp was made by gains in linear sRGB and undone by an adaptation, so a small rest remains.
    expect(away(corrected)).toBeLessThan(5);
  });

  it('refuses what cannot be read with an error that says why', () => {
    const one = { data: new Uint8ClampedArray(4).fill(255), width: 1, height: 1 };
    const clear = { data: new Uint8ClampedArray(40 * 40 * 4), width: 40, height: 40 };
    for (const image of [one, clear, { data: new Uint8ClampedArray(0), width: 0, height: 0 }]) {
      expect(() => readSide(image)).toThrow(engine.UnreadableImage);
    }
  });

  it('has a place for every ink that was read', () => {
    const { side, places } = readWithPlaces(drawDemoSheet('pip-hearts', 'A', 300));
    const found = new Set(places.labels);
    [side.base, ...side.inks].forEach((_, i) => void expect(found).toContain(i));
    expect(places.labels.length).toBe(places.width * places.height);
  });

  it('names inks for either place, and boards for their papers', () => {
    expect(relabel(sides[0]!, 'candidate').inks[0]!.id).toBe('b');
    const comparison = compare(sides[0]!, sides[1]!);
    const board = boardOf(comparison, {
      names: { anchor: 'Bough & <leaf>', candidate: 'Hearts' },
      words: 'Mine',
    });
    expect(board.title).toContain('Hearts');
    const svg = boardSvg(board);
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg).toContain('Bough &amp; &lt;leaf&gt;');
    expect(svg).not.toContain('<leaf>');
  });

  it('measures ΔE₀₀ as Sharma, Wu & Dalal 2005 do, pair 17 of their table 1', () => {
    expect(deltaE2000({ l: 50, a: 2.5, b: 0 }, { l: 73, a: 25, b: -18 })).toBeCloseTo(27.1492, 4);
  });
});

function linear(byte: number): number {
  return engine.rgbFromHex(`#${byte.toString(16).padStart(2, '0').repeat(3)}`).r ** 2.2;
}

function encoded(light: number): number {
  return Math.round(light ** (1 / 2.2) * 255);
}

function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    Object.freeze(value);
    Object.values(value).forEach(deepFreeze);
  }
  return value;
}
