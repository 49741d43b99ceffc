import { afterEach, expect, test } from 'vitest';
import { bunting, dahlia, ledger } from '../../components/support/sample-papers.ts';
import '../../components/strip/qw-strip.ts';
import {
  axeFinds,
  chartMarks,
  chartRoot,
  drawn,
  listen,
  markThatSays,
  pointAt,
  press,
  show,
} from './charts-kit.ts';

const pair = { anchor: bunting, candidate: ledger };

afterEach(() => document.body.replaceChildren());

test.each(['grey', 'white', 'dark'] as const)('axe finds nothing in the strip on %s', async (surround) => {
  await show('qw-strip', { ...pair, others: [dahlia], surround });
  expect(await axeFinds()).toEqual([]);
});

test('the strip is a named group whose chips read as sentences with their lightness', async () => {
  const strip = await show('qw-strip', pair);
  expect(chartRoot(strip).querySelector('svg')!.getAttribute('aria-label')).toBe(
    'Lightness of Regatta bunting and Quayside ledger',
  );
  expect(markThatSays(strip, 'Navy (B)').getAttribute('aria-label')).toMatch(/lightness L\* 24\.$/);
});

test('arrow keys walk along the chips and stop at the ends', async () => {
  const strip = await show('qw-strip', pair);
  const heard = listen(strip);
  markThatSays(strip, 'Cream (A)').focus();
  press(chartRoot(strip), 'ArrowLeft');
  press(chartRoot(strip), 'End');
  press(chartRoot(strip), 'ArrowDown');
  expect(heard).toEqual(['A', 'e']);
});

test('pointing at a chip sends its ink', async () => {
  const strip = await show('qw-strip', pair);
  const heard = listen(strip);
  pointAt(markThatSays(strip, 'Raspberry (c)').querySelector('rect')!);
  expect(heard).toEqual(['c']);
});

test('lit chips stand out and a new paper redraws', async () => {
  const strip = await show('qw-strip', { ...pair, lit: ['D', 'b'] });
  expect(chartMarks(strip).filter((m) => m.classList.contains('lit'))).toHaveLength(2);
  strip.candidate = dahlia;
  await drawn(strip);
  expect(markThatSays(strip, 'Plum (b)')).toBeTruthy();
});

test('on a narrow page the strip is laid out narrower, and its letters keep their size', async () => {
  const strip = await show('qw-strip', pair);
  const letter = () => markThatSays(strip, 'Navy (B)').querySelector('text')!.getBoundingClientRect().height;
  strip.style.width = '560px';
  await new Promise((done) => setTimeout(done, 120));
  await drawn(strip);
  const wide = letter();
  strip.style.width = '340px';
  await new Promise((done) => setTimeout(done, 120));
  await drawn(strip);
  expect(Math.abs(letter() - wide)).toBeLessThan(1);
  expect(strip.scrollWidth).toBeLessThanOrEqual(340);
});
