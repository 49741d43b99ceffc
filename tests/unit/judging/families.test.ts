import { describe, expect, it } from 'vitest';
import { familiesOf } from '../../../src/sheet/families/families.ts';
import type { Seen } from '../../../src/sheet/model.ts';
import { handMade } from '../../support/judging/families.ts';

/** What belongs to one family, and what is named apart, is ours: set by looking at the judged papers. */
const words = (colours: readonly (readonly [string, number])[], seen: Seen | null = null): string[] =>
  familiesOf(handMade(colours), seen).map((family) => family.inks.join(''));

describe('families of inks', () => {
  it('gathers one hue at its depths, and keeps another hue apart', () => {
    expect(
      words([
        ['#fffaf0', 0.6],
        ['#54894b', 0.2],
        ['#1b5636', 0.1],
        ['#ec652d', 0.1],
      ]),
    ).toEqual(['A', 'BC', 'D']);
  });

  it('keeps a small accent of its own hue', () => {
    const families = familiesOf(
      handMade([
        ['#a9c0cb', 0.97],
        ['#728f9c', 0.02],
        ['#ca171a', 0.01],
      ]),
    );
    expect(families.at(-1)?.inks).toEqual(['C']);
  });

  it('tells gold from kraft, brown from orange, tan from cream, black from white', () => {
    const apart = [
      ['#c8a57a', '#f4bd26'],
      ['#ec652d', '#694b0a'],
      ['#f1e7d8', '#d6b38f'],
      ['#ffffff', '#101010'],
    ] as const;
    for (const [one, other] of apart)
      expect(
        words([
          [one, 0.6],
          [other, 0.4],
        ]),
      ).toHaveLength(2);
  });

  it('puts the base first, then the largest; ids follow, and shares sum to 1', () => {
    const families = familiesOf(
      handMade([
        ['#fffaf0', 0.3],
        ['#2040a0', 0.5],
        ['#c02020', 0.2],
      ]),
      null,
      'a',
    );
    expect(families.map(({ id, base }) => [id, base])).toEqual([
      ['a', true],
      ['b', false],
      ['c', false],
    ]);
    expect(families.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('gives names that differ', () => {
    const names = familiesOf(
      handMade([
        ['#ffffff', 0.4],
        ['#f7b7c4', 0.3],
        ['#e0708a', 0.3],
        ['#8a1538', 0.2],
      ]),
    ).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('is the same when all shares are scaled', () => {
    const colours = [
      ['#fffaf0', 0.5],
      ['#54894b', 0.3],
      ['#ec652d', 0.2],
    ] as const;
    const scaled = colours.map(([hex, share]) => [hex, share / 4] as const);
    expect(familiesOf(handMade(scaled))).toEqual(familiesOf(handMade(colours)));
  });

  it('has eight at most of a photograph, seven at most of a print', () => {
    const wheel = (n: number): [string, number][] =>
      Array.from({ length: n }, (_, i) => [hueHex((i * 360) / n), 1 / n]);
    expect(words(wheel(28)).length).toBeLessThanOrEqual(8);
    expect(words(wheel(12)).length).toBeLessThanOrEqual(7);
  });

  it('takes a texture for one colour, but not an ombre in which an eye sees as little pattern', () => {
    const still: Seen = { light: 2, colour: 1, large: 0.3, fine: 0.5, regular: 0, repeatMm: null };
    expect(
      words(
        [
          ['#b7926a', 0.64],
          ['#c8a47d', 0.21],
          ['#9f784e', 0.15],
        ],
        still,
      ),
    ).toEqual(['ABC']);
    expect(
      words(
        [
          ['#fbeabf', 0.4],
          ['#e2705b', 0.6],
        ],
        still,
      ),
    ).toHaveLength(2);
  });

  it('spans the lightness and chroma of its inks', () => {
    const [, green] = familiesOf(
      handMade([
        ['#fffaf0', 0.6],
        ['#54894b', 0.2],
        ['#1b5636', 0.2],
      ]),
    );
    expect(green!.lightness[0]).toBeLessThan(green!.lab.l);
    expect(green!.lightness[1]).toBeGreaterThan(green!.lab.l);
    expect(green!.chroma[0]).toBeLessThanOrEqual(green!.chroma[1]);
  });
});

function hueHex(degrees: number): string {
  const f = (n: number): string => {
    const k = (n + degrees / 30) % 12;
    const v = 0.5 - 0.45 * Math.max(-1, Math.min(k - 3, 9 - k, 1));
    return Math.round(255 * v)
      .toString(16)
      .padStart(2, '0');
  };
  return `#${f(0)}${f(8)}${f(4)}`;
}
