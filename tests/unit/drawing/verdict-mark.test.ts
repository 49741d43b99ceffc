import { expect, test } from 'vitest';
import type { SceneNode } from '../../../src/drawing/model.ts';
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
    expect(paints).toContain('currentColor none');
    // The strip that bridges is laid on solid; nothing else has a colour of its own.
    expect(paints.filter((paint) => paint !== 'currentColor none')).toEqual(
      verdict === 'needs-a-bridge' ? ['currentColor currentColor'] : [],
    );
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

/** Left and right ends of a path of straight lines. */
function reach(node: SceneNode): [number, number] {
  const xs =
    node.type === 'path' ? [...node.d.matchAll(/[ML]([\d.]+) /g)].map((found) => Number(found[1])) : [];
  return [Math.min(...xs), Math.max(...xs)];
}

test('stitches cross the seam where two papers meet', () => {
  const [left, right, ...stitches] = verdictMark('holds-together').map(reach);
  expect(left![1]).toBe(right![0]);
  expect(stitches.length).toBeGreaterThan(1);
  for (const [from, to] of stitches) {
    expect(from).toBeLessThan(left![1]);
    expect(to).toBeGreaterThan(right![0]);
  }
});

test('a bridge lies on both papers and over the gap between them', () => {
  const [left, right, strip] = verdictMark('needs-a-bridge').map(reach);
  expect(left![1]).toBeLessThan(right![0]);
  expect(strip![0]).toBeLessThan(left![1]);
  expect(strip![1]).toBeGreaterThan(right![0]);
});

test('papers that pull apart touch nowhere, and nothing lies between', () => {
  const papers = verdictMark('pulls-apart').map(reach);
  expect(papers).toHaveLength(2);
  expect(papers[0]![1]).toBeLessThan(papers[1]![0]);
});

test('a paper that no verdict was said of is dashed', () => {
  const dashes = (verdict: (typeof all)[number]) =>
    verdictMark(verdict).filter((node) => node.type === 'path' && node.dash).length;
  expect(all.map(dashes)).toEqual([0, 0, 0, 1]);
});
