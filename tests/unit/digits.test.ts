import { describe, expect, it } from 'vitest';
import { inverse, type Matrix, product, times } from '../../src/colour/matrix.ts';
import { conesOfRgb, labOfRoots, rgbOfCones, rootsOfAb, xyzOfCones } from '../../src/colour/oklab-digits.ts';
import { xyzOfRgb } from '../../src/colour/srgb-digits.ts';
import { filesUnder } from '../support/source-tree.ts';

/** That each number and each small helper stands once is our own rule: two that should agree come to differ. */
const files = [...filesUnder('src'), ...filesUnder('components')];

/** Numbers of seven digits and more, wherever they stand in code; a DOI is no number. */
function longNumbers(text: string): string[] {
  const code = text
    .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, '')
    .replace(/(['"`])(?:\\.|(?!\1)[^\\])*\1/g, '""');
  return [...code.matchAll(/(?<![\w.#])(?:\d+\.\d+|\.\d+)(?![\w.])/g)]
    .map(([number]) => number)
    .filter((number) => number.replace('.', '').replace(/^0+/, '').length >= 6);
}

/** The same to eleven digits, so that a number that differs in its last places only counts as the same. */
function rounded(number: string): string {
  return Math.abs(Number(number)).toPrecision(11);
}

describe('every number has one place', () => {
  it('finds numbers in code, and none in words', () => {
    expect(
      longNumbers("const a = -0.412221469470763 * r + .5; // 1.2345678\nconst b = '9.8765432';"),
    ).toEqual(['0.412221469470763']);
    expect(rounded('4.0767416360759583')).toBe(rounded('4.0767416360759574'));
  });

  it('lets no long number stand twice', () => {
    const places = new Map<string, string[]>();
    for (const { path, text } of files)
      for (const number of longNumbers(text))
        places.set(rounded(number), [...(places.get(rounded(number)) ?? []), `${path}: ${number}`]);
    expect([...places.values()].filter((found) => found.length > 1)).toEqual([]);
    expect(places.size).toBeGreaterThan(50);
  });

  // Source of the digits: IEC 61966-2-1 (sRGB's curve), CIE 015:2018 (CIELAB's ends of the root; D65).
  it.each([
    ['0.04045', 'src/colour/spaces.ts'],
    ['0.0031308', 'src/colour/spaces.ts'],
    ['12.92', 'src/colour/spaces.ts'],
    ['24389', 'src/colour/cielab.ts'],
    ['0.3127', 'src/colour/illuminants.ts'],
  ])('has %s in %s alone', (digits, place) => {
    const whole = new RegExp(`(?<![\\w.])${digits.replace('.', '\\.')}(?![\\w.])`);
    expect(files.filter(({ text }) => whole.test(text)).map(({ path }) => path)).toEqual([place]);
  });

  it.each(['encodedTable', 'linearTable', 'ownTurn', 'sheetKey', 'labResponse', 'knownLightOf'])(
    'has %s made in one file',
    (name) => {
      const made = new RegExp(`\\b(function|const|let) ${name}\\b`);
      expect(files.filter(({ text }) => made.test(text)).length).toBe(1);
    },
  );

  it('has the label of what is no ink in one file', () => {
    expect(files.filter(({ text }) => /\bconst nothing = 255\b/.test(text)).map(({ path }) => path)).toEqual([
      'src/sheet/inks/label-counts.ts',
    ]);
    const labels = /label\w*\b[^\n]*(===|\?\?) 255|k === 255/;
    const src = files.filter(({ path }) => path.startsWith('src/'));
    expect(src.filter(({ text }) => labels.test(text)).map(({ path }) => path)).toEqual([]);
  });
});

/** CSS Color 4's own matrices are products of each other; these are held to that. */
describe('the numbers of OKLab', () => {
  const near = (found: readonly number[], wanted: readonly number[]) => {
    found.forEach((v, i) => void expect(Math.abs(v - wanted[i]!)).toBeLessThan(1e-13));
  };
  const [pa, pb, qa, qb, ra, rb] = rootsOfAb;

  it('undo each other', () => {
    const one = [1, 0, 0, 0, 1, 0, 0, 0, 1];
    near(product(rgbOfCones, conesOfRgb), one);
    const rootsOfLab: Matrix = [1, pa, pb, 1, qa, qb, 1, ra, rb];
    near(product(rootsOfLab, labOfRoots), one);
  });

  it('lead to XYZ by way of sRGB and straight', () => {
    near(product(xyzOfRgb, rgbOfCones), xyzOfCones);
    near(product(inverse(xyzOfCones), xyzOfRgb), conesOfRgb);
  });

  it('make white of white', () => {
    near(times(conesOfRgb, [1, 1, 1]), [1, 1, 1]);
    near(times(labOfRoots, [1, 1, 1]), [1, 0, 0]);
  });
});
