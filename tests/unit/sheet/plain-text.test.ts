import Color from 'colorjs.io';
import { describe, expect, it } from 'vitest';
import { labFromHex } from '../../../src/colour/spaces.ts';
import { parseColourText, whyNoColour } from '../../../src/sheet/typed-colour.ts';

describe('a colour that is typed', () => {
  it('is taken as hex, with or without its mark, short or long', () => {
    for (const text of ['#E2725B', 'e2725b', '  #e2725b ']) {
      expect(parseColourText(text)).toMatchObject({ hex: '#e2725b', notation: 'hex', mapped: false });
    }
    expect(parseColourText('e27')?.hex).toBe('#ee2277');
  });

  // Held against colorjs.io 0.7, which has CIELAB of both whites.
  it.each([
    ['Lab 60 42 33', 'lab-d65', 'CIELAB, D65'],
    ['L*a*b* 60, 42, 33', 'lab-d65', 'CIELAB, D65'],
    ['CIELAB D65 60; 42; 33', 'lab-d65', 'CIELAB, D65'],
    ['Lab D50 60 42 33', 'lab', 'CIELAB, D50'],
    ['lab(60 42 33)', 'lab', 'CIELAB, D50'],
    ['lab(60% 42 33)', 'lab', 'CIELAB, D50'],
  ])('is taken as CIELAB: %s', (text, space, notation) => {
    const wanted = new Color(space, [60, 42, 33]).to('srgb').toString({ format: 'hex' });
    expect(parseColourText(text)).toMatchObject({ hex: wanted, notation });
  });

  it.each(['oklch 0.67 0.15 35', 'oklch(67% 0.15 35deg)', 'OKLCH 0.67, 0.15, 395', 'oklch 67% .15 35°'])(
    'is taken as OKLCH: %s',
    (text) => {
      const wanted = new Color('oklch', [0.67, 0.15, 35]).to('srgb').toString({ format: 'hex' });
      expect(parseColourText(text)).toMatchObject({ hex: wanted, notation: 'OKLCH', mapped: false });
    },
  );

  it('is taken as Munsell', () => {
    const red = parseColourText('5R 5/10');
    expect(red?.notation).toBe('Munsell');
    // Value 5 reflects 19.77 % under the 1943 scale and its magnesium oxide of 102.57 %: L* 51.6. ASTM D1535, from memory.
    expect(labFromHex(red!.hex).l).toBeGreaterThan(50.5);
    expect(labFromHex(red!.hex).l).toBeLessThan(52.5);
    expect(parseColourText('N 5/')?.oklch[1]).toBeLessThan(0.003);
  });

  it('says where a screen can’t show it, and keeps what was meant', () => {
    const green = parseColourText('oklch 0.7 0.35 145');
    expect(green?.mapped).toBe(true);
    expect(green?.oklch).toEqual([0.7, 0.35, 145]);
  });

  it('is taken as CSS, by name too, but not where it is see-through', () => {
    expect(parseColourText('tomato')).toMatchObject({ hex: '#ff6347', notation: 'CSS' });
    expect(parseColourText('rgb(226, 114, 91)')?.hex).toBe('#e2725b');
    expect(parseColourText('rgba(226, 114, 91, 0.5)')).toBeUndefined();
  });

  it('is nothing where the text is none, or its numbers are out of range', () => {
    for (const text of [
      '',
      'reddish',
      '#12345',
      'Lab 160 0 0',
      'Lab 50 10',
      'oklch 7 0.1 20',
      '5R 11/4',
      'oklch 0.5 -0.1 20',
    ]) {
      expect(parseColourText(text)).toBeUndefined();
    }
  });
});

describe('a colour that there is not', () => {
  // Slips: /100 for /10; L*a*b* that no light makes (negative tristimulus values); chroma past that of any light.
  it.each(['5PB 4/100', 'Lab 1 160 160', 'Lab 0 -160 -160', 'oklch 0.6 0.9 20'])(
    '%s is none, and is told from a text that is no colour at all',
    (text) => {
      expect(parseColourText(text)).toBeUndefined();
      expect(whyNoColour(text)).toMatch(/^(No paper and no ink|There is no such colour).*\.$/);
    },
  );

  it('is none of those that are there: strong papers, inks, and all that a screen can show', () => {
    // The strongest chips of the Munsell book lie at /18 and under. From memory.
    for (const text of [
      '5PB 4/12',
      '5R 4/16',
      '5RP 4/14',
      '5G 5/10',
      'Lab 60 42 33',
      '#0000ff',
      '#00ff00',
      '#ff00ff',
      'black',
      'white',
    ])
      expect([text, whyNoColour(text), parseColourText(text)?.hex]).toEqual([
        text,
        undefined,
        expect.stringMatching(/^#/),
      ]);
    expect(whyNoColour('kittens')).toBeUndefined();
  });
});
