import { describe, expect, test } from 'vitest';
import { cssFromRgb, parseCssColour } from '../../../src/colour/css.ts';
import * as emotion from '../../../src/colour/emotion.ts';
import { ouLuo } from '../../../src/colour/harmony-two.ts';
import { tradeWord, tradeWords } from '../../../src/colour/naming/trade-words.ts';
import { neutralKind, readsAsNeutral } from '../../../src/colour/neutral.ts';
import { sourceById, sources } from '../../../src/colour/sources.ts';
import { labFromHex, oklchFromHex, oklchFromRgb, rgbFromHex } from '../../../src/colour/spaces.ts';
import { differenceSeenBy, seenBy } from '../../../src/colour/vision.ts';

describe('neutrals', () => {
  // Common practice, no source: cream and kraft act as neutrals. The colours are typical papers, from memory.
  test.each([
    ['#ffffff', 'white'],
    ['#f7f7f4', 'white'],
    ['#eef1f5', 'white'],
    ['#f6ecd6', 'cream'],
    ['#f1e4c8', 'cream'],
    ['#fdf6e3', 'cream'],
    ['#b5915f', 'kraft'],
    ['#c4a26e', 'kraft'],
    ['#a67c52', 'kraft'],
    ['#808080', 'grey'],
    ['#cfd2d6', 'grey'],
    ['#8b7d6b', 'grey'],
    ['#3a3a3c', 'black'],
    ['#101014', 'black'],
  ] as const)('take %s for %s', (hex, kind) => {
    expect(neutralKind(labFromHex(hex))).toBe(kind);
    expect(readsAsNeutral(labFromHex(hex))).toBe(true);
  });

  test.each([
    '#1f2a52',
    '#d7263d',
    '#f4c9c4',
    '#9caf88',
    '#fff44f',
    '#5c3a24',
    '#d4a017',
    '#87ceeb',
    '#c96f4a',
  ])('do not take %s, which has a hue that counts', (hex) => expect(neutralKind(labFromHex(hex))).toBeNull());
});

describe('trade words', () => {
  // Trade usage, no source: colours that the words are commonly used for, from memory.
  test.each([
    ['#fffff0', 'ivory'],
    ['#f6ecd6', 'cream'],
    ['#b5915f', 'kraft'],
    ['#d2b48c', 'tan'],
    ['#3b3f42', 'charcoal'],
    ['#333333', 'charcoal'],
    ['#1f2a52', 'navy'],
    ['#5ec6c9', 'aqua'],
    ['#008080', 'teal'],
    ['#b5e4cb', 'mint'],
    ['#9caf88', 'sage'],
    ['#808000', 'olive'],
    ['#d4a017', 'mustard'],
    ['#ee6c5b', 'coral'],
    ['#b3295a', 'raspberry'],
    ['#7a3560', 'plum'],
    ['#c9b8e0', 'lavender'],
    ['#ffcba4', 'peach'],
    ['#b7410e', 'rust'],
    ['#5c3a24', 'chocolate'],
    ['#f4c9c4', 'blush'],
    ['#f0308c', 'hot pink'],
    ['#d7263d', 'crimson'],
    ['#40e0d0', 'turquoise'],
  ] as const)('call %s %s', (hex, word) => expect(tradeWord(oklchFromHex(hex))).toBe(word));

  // The commonest printed colours; from memory, no source.
  test.each([
    ['#b8262b', 'red'],
    ['#d2452a', 'tomato'],
    ['#a8402f', 'brick'],
    ['#f58a32', 'orange'],
    ['#fbb982', 'apricot'],
    ['#f6d33c', 'yellow'],
    ['#cc7722', 'ochre'],
    ['#a4d233', 'lime'],
    ['#4f8a3c', 'leaf green'],
    ['#4caf50', 'grass green'],
    ['#24553a', 'forest green'],
    ['#8a9a5b', 'moss'],
    ['#86b9e0', 'sky blue'],
    ['#5a7ca0', 'denim'],
    ['#4169e1', 'royal blue'],
    ['#8f99fb', 'periwinkle'],
    ['#c8a2c8', 'lilac'],
    ['#7b3f9d', 'purple'],
    ['#6a2c9a', 'violet'],
    ['#3d1f3a', 'aubergine'],
    ['#c2187b', 'magenta'],
    ['#f28cb0', 'pink'],
    ['#e8708a', 'rose'],
    ['#6e1f2e', 'burgundy'],
    ['#800000', 'maroon'],
    ['#5a4632', 'dark brown'],
    ['#7b4a2b', 'brown'],
    ['#8b7d6b', 'taupe'],
    ['#c9a878', 'kraft'],
  ] as const)('call %s %s, in plain words', (hex, word) => expect(tradeWord(oklchFromHex(hex))).toBe(word));

  test.each(['#ffffff', '#808080', '#000000'])('say nothing of %s', (hex) => {
    expect(tradeWord(oklchFromHex(hex))).toBeNull();
  });

  test('each name the middle of every region of theirs', () => {
    for (const { word, l, c, h } of tradeWords) {
      const middle = { l: (l[0] + l[1]) / 2, c: (c[0] + c[1]) / 2, h: (h[0] + h[1]) / 2 };
      expect(tradeWord(middle), `${word} at ${JSON.stringify(middle)}`).toBe(word);
      expect(l[0] < l[1] && c[0] < c[1] && h[0] < h[1], word).toBe(true);
    }
  });

  test('have regions of which no two overlap', () => {
    const meet = (one: readonly [number, number], other: readonly [number, number]) =>
      one[0] < other[1] && other[0] < one[1];
    tradeWords.forEach((one, i) => {
      for (const other of tradeWords.slice(i + 1))
        expect(
          meet(one.l, other.l) && meet(one.c, other.c) && meet(one.h, other.h),
          `${one.word} and ${other.word}`,
        ).toBe(false);
    });
  });

  test('leave no colour of the screen without a word whose chroma is 0.05 or more', () => {
    const without: string[] = [];
    const steps = [0, 17, 34, 51, 68, 85, 102, 119, 136, 153, 170, 187, 204, 221, 238, 255];
    for (const r of steps)
      for (const g of steps)
        for (const b of steps) {
          const oklch = oklchFromRgb({ r: r / 255, g: g / 255, b: b / 255 });
          if (oklch.c >= 0.05 && tradeWord(oklch) === null) without.push(`${r} ${g} ${b}`);
        }
    expect(without).toEqual([]);
  });
});

describe('feeling, centred', () => {
  test('puts every neutral at the middle between warm and cool', () => {
    for (const hex of ['#000000', '#777777', '#ffffff'])
      expect(emotion.warmCoolCentred(labFromHex(hex))).toBeCloseTo(0, 12);
    expect(emotion.warmCoolCentred(labFromHex('#c0392b'))).toBeGreaterThan(1);
    expect(emotion.warmCoolCentred(labFromHex('#2e86c1'))).toBeLessThan(-0.5);
  });

  test('puts middle grey at the middle of heavy and light, and of active and passive', () => {
    const grey = { l: 50, a: 0, b: 0 };
    expect(emotion.heavyLightCentred(grey)).toBeCloseTo(0, 12);
    expect(emotion.activePassiveCentred(grey)).toBeCloseTo(0, 12);
    expect(emotion.heavyLightCentred({ l: 20, a: 0, b: 0 })).toBeGreaterThan(1);
  });

  test('does not jump for a grey with a trace of a hue', () => {
    const one = emotion.heavyLightCentred({ l: 50, a: 0.01, b: 0 });
    const other = emotion.heavyLightCentred({ l: 50, a: -0.01, b: 0 });
    expect(Math.abs(one - other)).toBeLessThan(0.001);
  });
});

test('the two-colour model is the same both ways', () => {
  const [a, b] = [labFromHex('#d7263d'), labFromHex('#1aa7a8')];
  expect(ouLuo(a, b).ch).toBeCloseTo(ouLuo(b, a).ch, 12);
});

describe('other eyes', () => {
  const kinds = ['protan', 'deutan', 'tritan'] as const;

  test('see greys as they are, and everything as it is at severity 0', () => {
    for (const kind of kinds) {
      for (const v of [0, 0.2, 0.5, 1]) {
        const { r, g, b } = seenBy({ r: v, g: v, b: v }, kind, 1);
        for (const seen of [r, g, b]) expect(Math.abs(seen - v)).toBeLessThan(0.005);
      }
      const red = rgbFromHex('#d7263d');
      const same = seenBy(red, kind, 0);
      expect(Math.hypot(same.r - red.r, same.g - red.g, same.b - red.b)).toBeLessThan(1e-9);
    }
  });

  test('see less difference between red and green the more severe it is', () => {
    const [red, green] = [rgbFromHex('#b5543c'), rgbFromHex('#6f7d2a')];
    for (const kind of ['protan', 'deutan'] as const) {
      const left = [0, 0.25, 0.55, 1].map((s) => differenceSeenBy(red, green, kind, s));
      expect(left).toEqual([...left].sort((a, b) => b - a));
    }
  });

  test('bring two inks together for one eye and not for another', () => {
    const [rust, olive] = [rgbFromHex('#a0643c'), rgbFromHex('#66803a')];
    expect(differenceSeenBy(rust, olive, 'deutan')).toBeLessThanOrEqual(5);
    expect(differenceSeenBy(rust, olive, 'deutan', 0.5)).toBeGreaterThan(5);
    expect(differenceSeenBy(rust, olive, 'tritan')).toBeGreaterThan(5);
    const [blue, green] = [rgbFromHex('#5a8fc0'), rgbFromHex('#4a9a86')];
    expect(differenceSeenBy(blue, green, 'tritan')).toBeLessThanOrEqual(5);
    expect(differenceSeenBy(blue, green, 'deutan')).toBeGreaterThan(5);
  });

  test('stay on the screen for any severity asked', () => {
    for (const kind of kinds)
      for (const severity of [-1, 0.33, 2])
        for (const v of Object.values(seenBy({ r: 0, g: 1, b: 0.1 }, kind, severity))) {
          expect(v).toBeGreaterThanOrEqual(0);
          expect(v).toBeLessThanOrEqual(1);
        }
  });
});

describe('CSS colours at the edge', () => {
  test('are read in every common form, and written plainly', () => {
    const red = parseCssColour('#ff0000');
    for (const text of ['red', 'rgb(255, 0, 0)', 'hsl(0, 100%, 50%)', ' #f00 '])
      expect(parseCssColour(text)).toEqual(red);
    expect(parseCssColour('not a colour')).toBeUndefined();
    expect(parseCssColour('rgba(0, 0, 0, 0.5)')).toBeUndefined();
    expect(cssFromRgb({ r: 1, g: 0.5, b: -1 })).toBe('rgb(255, 128, 0)');
    expect(cssFromRgb({ r: 1, g: 0, b: 0 }, 0.5)).toBe('rgba(255, 0, 0, 0.5)');
  });
});

describe('the list of sources', () => {
  test('has each id once, a citation to stand beside a sentence, and a sentence of what it is for', () => {
    expect(new Set(sources.map(({ id }) => id)).size).toBe(sources.length);
    for (const { id, short, full, what, doi } of sources) {
      expect(id).toMatch(/^[a-z0-9-]+$/);
      expect(short.length).toBeGreaterThan(3);
      expect(full.length).toBeGreaterThan(10);
      expect(what).toMatch(/\.$/);
      if (doi) expect(doi).toMatch(/^10\.\d{4,}\//);
    }
  });

  test('finds an entry by its id', () => {
    expect(sourceById('ciede2000')?.doi).toBe('10.1002/col.20070');
    expect(sourceById('common-practice')?.kind).toBe('trade');
    expect(sourceById('nothing')).toBeUndefined();
  });
});
