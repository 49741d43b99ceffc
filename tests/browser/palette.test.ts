import { afterEach, expect, test } from 'vitest';
import { bunting, ledger } from '../../components/support/sample-papers.ts';
import '../../components/palette/qw-palette.ts';
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

afterEach(() => document.body.replaceChildren());

test.each(['grey', 'white', 'dark'] as const)('axe finds nothing in the palette on %s', async (surround) => {
  await show('qw-palette', { paper: bunting, surround });
  expect(await axeFinds()).toEqual([]);
});

test('each chip is an image that reads as a sentence', async () => {
  const palette = await show('qw-palette', { paper: bunting });
  expect(chartMarks(palette).map((m) => m.getAttribute('role'))).toEqual(new Array(6).fill('img'));
  expect(markThatSays(palette, 'Coral (C)').getAttribute('aria-label')).toContain('of Regatta bunting');
});

test('arrow keys move from chip to chip and send each ink', async () => {
  const palette = await show('qw-palette', { paper: bunting });
  const heard = listen(palette);
  markThatSays(palette, 'Cream (A)').focus();
  press(chartRoot(palette), 'ArrowRight');
  await drawn(palette);
  press(chartRoot(palette), 'ArrowRight');
  expect(heard).toEqual(['A', 'B', 'C']);
});

test('pointing at a chip sends its ink and lights it', async () => {
  const palette = await show('qw-palette', { paper: bunting });
  const heard = listen(palette);
  pointAt(markThatSays(palette, 'Navy (B)'));
  await drawn(palette);
  expect(heard).toEqual(['B']);
  expect(markThatSays(palette, 'Navy (B)').classList.contains('lit')).toBe(true);
  expect(markThatSays(palette, 'Coral (C)').classList.contains('quiet')).toBe(true);
});

test('chips are laid out anew for the room there is, letters keeping their size', async () => {
  const palette = await show('qw-palette', { paper: bunting });
  const letter = () => chartRoot(palette).querySelector('text')!.getBoundingClientRect().height;
  // The drawing is as wide as its room only once it was laid out for it.
  const drawnFor = () => chartRoot(palette).querySelector('svg')!.viewBox.baseVal.width;
  palette.style.width = '260px';
  await expect.poll(drawnFor).toBe(260);
  const narrow = letter();
  palette.style.width = '520px';
  await expect.poll(drawnFor).toBe(520);
  expect(Math.abs(letter() - narrow)).toBeLessThan(1);
});

test('a new paper redraws, and a bare palette has no table', async () => {
  const palette = await show('qw-palette', { paper: bunting, bare: true });
  expect(chartRoot(palette).querySelector('button')).toBeNull();
  palette.paper = ledger;
  await drawn(palette);
  expect(chartMarks(palette)).toHaveLength(5);
});

test('the focus is a frame around its mark, whole within the chart, above all marks, and gone with the focus', async () => {
  const chart = await show('qw-palette', { paper: bunting });
  const root = chartRoot(chart);
  const box = root.querySelector('svg')!;
  for (const mark of chartMarks(chart).filter((m) => !m.matches('.link'))) {
    mark.focus();
    await drawn(chart);
    const frame = root.querySelector<SVGRectElement>('.frame .under')!;
    const whole = box.getBoundingClientRect();
    const [at, of] = [frame.getBoundingClientRect(), mark.getBoundingClientRect()];
    const half =
      (Number.parseFloat(getComputedStyle(frame).strokeWidth) / 2) *
      (whole.width / box.viewBox.baseVal.width);
    // The line of the frame counts: its outer edge is what the chart's own edge would cut.
    expect(at.left - half).toBeGreaterThanOrEqual(whole.left - 0.1);
    expect(at.top - half).toBeGreaterThanOrEqual(whole.top - 0.1);
    expect(at.right + half).toBeLessThanOrEqual(whole.right + 0.1);
    expect(at.bottom + half).toBeLessThanOrEqual(whole.bottom + 0.1);
    for (const side of ['left', 'top', 'right', 'bottom'] as const)
      expect(Math.abs(at[side] - of[side])).toBeLessThan(5);
    expect(frame.parentElement!.parentElement).toBe(box);
    expect(box.lastElementChild).toBe(frame.parentElement);
  }
  (root.activeElement as SVGGElement).blur();
  await drawn(chart);
  expect(root.querySelector('.frame')).toBeNull();
});
