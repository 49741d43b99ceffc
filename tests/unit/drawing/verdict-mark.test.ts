import { expect, test } from 'vitest';
import { verdictMark, verdictMarkBox } from '../../../src/drawing/verdict-mark.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';

const all = [...verdictOrder, null];
const shape = (verdict: (typeof all)[number]) =>
  verdictMark(verdict).map((node) => [node.type === 'path' ? node.d : '', 'dash' in node]);

test('the mark of each verdict, and of none, is told apart by form alone', () => {
  expect(new Set(all.map((verdict) => JSON.stringify(shape(verdict)))).size).toBe(4);
  for (const verdict of all) {
    const paints = verdictMark(verdict, 'currentColor').map((node) =>
      node.type === 'path' ? `${node.stroke} ${node.fill}` : '',
    );
    expect(new Set(paints)).toEqual(new Set(['currentColor none']));
  }
});

test('a mark stays inside its box with the width of its line', () => {
  for (const verdict of all) {
    for (const node of verdictMark(verdict)) {
      const [start, ...rest] = node.type === 'path' ? node.d.split(/(?=[MHVLZ])/) : [];
      const points = [start!, ...rest].flatMap((part) => part.slice(1).split(' ').map(Number));
      for (const v of points) expect(v).toBeGreaterThanOrEqual(0);
      expect(Math.max(...points)).toBeLessThanOrEqual(verdictMarkBox.width - 1.3);
    }
  }
});

test('a bridge is dotted, and a paper that no verdict was said of is dashed', () => {
  const dashes = (verdict: (typeof all)[number]) =>
    verdictMark(verdict).filter((node) => node.type === 'path' && node.dash).length;
  expect(all.map(dashes)).toEqual([0, 1, 0, 1]);
});
