import Color from 'colorjs.io';
import { expect, test } from 'vitest';
import { bunting, dahlia, ledger } from '../../../components/support/sample-papers.ts';
import { chipWidths, tornChips } from '../../../src/drawing/chips.ts';
import { paperStandIn } from '../../../src/drawing/paper.ts';
import { chipHeight, lightnessStrip, xFromLightness } from '../../../src/drawing/strip.ts';
import { gapIn } from '../../../src/drawing/strip-gap.ts';
import { inksOf } from '../../../src/drawing/words/says.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { flat, markNode, marks, sideOf } from './nodes.ts';
import { says } from './says-of.ts';

const pair = { anchor: bunting, candidate: ledger };

test('a chip, or its foot where it had to step aside, stands at the L* that colorjs.io gives its hex under D65', () => {
  const drawing = lightnessStrip(pair);
  for (const ink of [...inksOf(bunting.side), ...inksOf(ledger.side)]) {
    const parts = flat([markNode(drawing, 'ink', ink.id).node]).map((p) => p.node);
    const foot = parts.find((node) => node.className === 'foot') as { d: string } | undefined;
    const chip = parts.find((node) => node.type === 'rect') as { x: number; width: number };
    const at = foot ? Number(/^M([\d.]+)/.exec(foot.d)![1]) : chip.x + chip.width / 2;
    const [l] = new Color(ink.hex).to('lab-d65').coords;
    expect(Math.abs(at - xFromLightness()(l!))).toBeLessThan(0.8);
  }
});

test('chips of one lane never cover each other and keep the order of their lightness', () => {
  const side = sideOf(
    'A',
    'white',
    [0.98, 0, null, 0.4],
    [0.5, 0.1, 20, 0.2],
    [0.5, 0.1, 90, 0.2],
    [0.51, 0.1, 200, 0.2],
  );
  const drawing = lightnessStrip({ anchor: { side, name: 'one' } });
  const lefts = flat(drawing.nodes)
    .filter((p) => p.mark && p.node.type === 'rect')
    .map((p) => (p.node as { x: number }).x)
    .sort((a, b) => a - b);
  for (let i = 1; i < lefts.length; i += 1) expect(lefts[i]! - lefts[i - 1]!).toBeGreaterThanOrEqual(17);
});

test('a larger share makes a taller chip, and a letter fits the smallest', () => {
  expect(chipHeight(0)).toBeGreaterThanOrEqual(13);
  expect(chipHeight(0.7)).toBeGreaterThan(chipHeight(0.3));
  expect(chipHeight(1)).toBeLessThanOrEqual(46);
});

test('the stretch of lightness that the reasons call empty is marked and put in words, and no other', () => {
  const { reasons } = compare(bunting.side, ledger.side);
  const gap = gapIn(reasons)!;
  const told = reasons.find(({ kind }) => kind === 'lightness range')!;
  const words = `empty in both, L* ${Math.round(gap.from)}–${Math.round(gap.to)}`;
  expect(told.figure).toBe(words);
  expect(says(lightnessStrip(pair, { gap }))).toContain(`${words}: a photograph will stand out here`);
  expect(says(lightnessStrip(pair)).join()).not.toContain('photograph');
});

test('papers whose reasons speak of a flat range have none marked', () => {
  const side = sideOf('A', 'white', [0.9, 0, null, 0.6], [0.85, 0.05, 20, 0.4]);
  const { reasons } = compare(side, side);
  expect(reasons.map(({ kind }) => kind)).toContain('lightness range');
  expect(gapIn(reasons)).toBeNull();
});

test('each further candidate has a lane of its own, in outline', () => {
  const drawing = lightnessStrip({ ...pair, others: [dahlia] });
  expect(drawing.height).toBeGreaterThan(lightnessStrip(pair).height);
  expect(flat(drawing.nodes).filter((p) => p.node.className === 'outline-mark')).toHaveLength(5);
});

test('torn chips are as wide as their shares and fill the row', () => {
  expect(chipWidths([0.5, 0.3, 0.2], 200)).toEqual([100, 60, 40]);
  expect(chipWidths([0.9, 0.08, 0.01, 0.01], 300).reduce((a, b) => a + b)).toBeCloseTo(300, 9);
  for (const width of chipWidths([0.97, 0.01, 0.01, 0.01], 300)) expect(width).toBeGreaterThanOrEqual(19);
});

test('a row that is asked to be too narrow grows to hold its letters', () => {
  const drawing = tornChips(bunting, { width: 20 });
  expect(drawing.width).toBeGreaterThanOrEqual(6 * 19);
});

test('a chip always tears the same way, and two inks tear differently', () => {
  const d = (id: string) =>
    (flat([markNode(tornChips(bunting), 'ink', id).node])[1]!.node as { d: string }).d;
  expect(d('B')).toBe(d('B'));
  expect(d('E')).not.toBe(d('F'));
});

test('the chart of chips says each ink with its share, and its table has the hex', () => {
  const drawing = tornChips(bunting);
  expect(marks(drawing)[2]!.label).toBe('Coral (C), moderate reddish orange: 9\u00a0% of Regatta bunting.');
  expect(drawing.table.rows[2]).toEqual(['C', 'coral', 'moderate reddish orange', '#e2725b', '9\u00a0%']);
});

test('a paper without a picture is strips of its inks, as high as their shares', () => {
  const drawing = paperStandIn(ledger);
  expect(marks(drawing).map((mark) => mark.inks[0])).toEqual(['a', 'b', 'c', 'd', 'e']);
  const top = Number(
    /^M0 ([\d.]+)/.exec((flat([markNode(drawing, 'ink', 'b').node])[1]!.node as { d: string }).d)![1],
  );
  expect(top).toBeCloseTo(0.64 * 240, 1);
});
