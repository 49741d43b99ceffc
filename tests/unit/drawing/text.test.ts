import { readFileSync } from 'node:fs';
import fontkit from '@pdf-lib/fontkit';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ladder, letterOn } from '../../../src/drawing/ladders.ts';
import { fitText, textWidth, wrapText } from '../../../src/drawing/text.ts';
import { textRuns } from '../../../src/drawing/text-runs.ts';

const file = (family: string, weight: number, style: string) =>
  readFileSync(`node_modules/@fontsource/${family}/files/${family}-latin-${weight}-${style}.woff`);

test.each([
  ['literata', 400, 'normal', { face: 'serif', weight: 400 }],
  ['literata', 500, 'normal', { face: 'serif', weight: 500 }],
  ['literata', 600, 'normal', { face: 'serif', weight: 600 }],
  ['literata', 400, 'italic', { face: 'serif', italic: true }],
  ['atkinson-hyperlegible-next', 400, 'normal', { face: 'sans', weight: 400 }],
  ['atkinson-hyperlegible-next', 600, 'normal', { face: 'sans', weight: 600 }],
] as const)(
  'a line in %s %i %s is never wider than we say, and at most 4 %% narrower',
  (family, weight, style, set) => {
    const text =
      'Does the old bunting hold with the new ledger? Coral & raspberry: 17.9 – “close, not the same”.';
    // fontkit lays out the bundled font itself, kerning and all.
    const font = fontkit.create(file(family, weight, style));
    const real = (font.layout(text).advanceWidth / font.unitsPerEm) * 16;
    const ours = textWidth(text, { size: 16, ...set });
    expect(ours).toBeGreaterThanOrEqual(real * 0.999);
    expect(ours).toBeLessThanOrEqual(real * 1.04);
  },
);

test('wrapped lines fit their width and lose no word', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), fc.integer({ min: 60, max: 500 }), (text, width) => {
      const style = { size: 16, face: 'serif' } as const;
      const lines = wrapText(text, width, style);
      for (const line of lines) expect(textWidth(line, style)).toBeLessThanOrEqual(width);
      expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
    }),
  );
});

test('a text with more lines than there is room for ends in an ellipsis', () => {
  const lines = wrapText('one two three four five six seven eight', 60, { size: 16, face: 'serif' }, 2);
  expect(lines).toHaveLength(2);
  expect(lines[1]).toMatch(/…$/);
  expect(fitText('a very long name for a paper', 80, { size: 16, face: 'sans' })).toMatch(/…$/);
});

test('subscript digits, which the fonts lack, become small ordinary ones', () => {
  expect(textRuns('ΔE₀₀ 2.7')).toEqual([
    { text: 'ΔE', sub: false },
    { text: '00', sub: true },
    { text: ' 2.7', sub: false },
  ]);
});

test('a letter on an ink reaches a contrast of at least 4.5 for every grey', () => {
  for (let v = 0; v < 256; v += 1) {
    const hex = `#${v.toString(16).padStart(2, '0').repeat(3)}`;
    const luminance = (h: string) => {
      const c = Number.parseInt(h.slice(1, 3), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    };
    const [a, b] = [luminance(hex), luminance(letterOn(hex))].sort((x, y) => y - x) as [number, number];
    // WCAG 2.2, 1.4.3: 4.5 for text.
    expect((a + 0.05) / (b + 0.05)).toBeGreaterThanOrEqual(4.5);
  }
});

test('a ladder of tints begins with the colour and grows lighter, of shades darker', () => {
  const tints = ladder('#1f3a5f', 'tints', 4);
  expect(tints[0]).toBe('#1f3a5f');
  expect(new Set(tints).size).toBe(4);
  expect(Number.parseInt(tints[3]!.slice(1, 3), 16)).toBeGreaterThan(
    Number.parseInt(tints[1]!.slice(1, 3), 16),
  );
  expect(Number.parseInt(ladder('#1f3a5f', 'shades', 4)[3]!.slice(1, 3), 16)).toBeLessThan(0x1f);
});
