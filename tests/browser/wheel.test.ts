import { afterEach, expect, test } from 'vitest';
import { bunting, dahlia, ledger, links, pebble } from '../../components/support/sample-papers.ts';
import '../../components/wheel/qw-wheel.ts';
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

const pair = { anchor: bunting, candidate: ledger, links };

afterEach(() => document.body.replaceChildren());

test.each(['grey', 'white', 'dark'] as const)('axe finds nothing in the wheel on %s', async (surround) => {
  await show('qw-wheel', { ...pair, others: [pebble, dahlia], surround });
  expect(await axeFinds()).toEqual([]);
});

test('the wheel is a named group with a description, and each mark an image that reads as a sentence', async () => {
  const wheel = await show('qw-wheel', pair);
  const svg = chartRoot(wheel).querySelector('svg')!;
  expect(svg.getAttribute('role')).toBe('group');
  expect(svg.getAttribute('aria-label')).toBe('Hue wheel of Regatta bunting and Quayside ledger');
  const about = chartRoot(wheel).getElementById('about')!;
  expect(about.textContent).toContain('Arrow keys move');
  // Read as the description of the group, and not once more as text of its own.
  expect(svg.getAttribute('aria-describedby')).toBe('about');
  expect(getComputedStyle(about).display).toBe('none');
  for (const mark of chartMarks(wheel)) {
    expect(mark.getAttribute('role')).toBe('img');
    expect(mark.getAttribute('aria-label')).toMatch(/^[A-Z].*\.$/);
  }
});

test('one mark takes the tab stop, and the arrow keys walk through all, inks before links', async () => {
  const wheel = await show('qw-wheel', pair);
  const heard = listen(wheel);
  const stops = chartMarks(wheel).filter((m) => m.getAttribute('tabindex') === '0');
  expect(stops.map((m) => m.getAttribute('aria-label')!.slice(0, 9))).toEqual(['Cream (A)']);
  markThatSays(wheel, 'Cream (A)').focus();
  for (let i = 0; i < 15; i += 1) {
    press(chartRoot(wheel), 'ArrowRight');
    await drawn(wheel);
  }
  expect(heard[0]).toBe('A');
  expect(heard.slice(0, 11)).toEqual(['A', 'B', 'C', 'D', 'E', 'F', 'a', 'b', 'c', 'd', 'e']);
  expect(heard.slice(11).every((ids) => ids.includes('+'))).toBe(true);
  expect(heard).toHaveLength(16);
  press(chartRoot(wheel), 'Home');
  expect(heard.at(-1)).toBe('A');
});

test('pointing at a mark sends its inks and shows its sentence, leaving takes both back', async () => {
  const wheel = await show('qw-wheel', pair);
  const heard = listen(wheel);
  pointAt(markThatSays(wheel, 'Coral (C), moderate'));
  await drawn(wheel);
  expect(heard).toEqual(['C']);
  expect(chartRoot(wheel).querySelector('[part=says]')!.textContent).toContain('Coral (C)');
  chartRoot(wheel)
    .querySelector('svg')!
    .dispatchEvent(new PointerEvent('pointerleave', { pointerType: 'mouse' }));
  expect(heard).toEqual(['C', '']);
});

test('a finger that comes near a small mark means it, and what it touched stays after it lifts', async () => {
  const wheel = await show('qw-wheel', pair);
  const heard = listen(wheel);
  const box = markThatSays(wheel, 'Mustard (E)').getBoundingClientRect();
  const svg = chartRoot(wheel).querySelector('svg')!;
  const near = {
    clientX: box.left - 14,
    clientY: box.top + box.height / 2,
    pointerType: 'touch',
    bubbles: true,
  };
  svg.dispatchEvent(new PointerEvent('pointerdown', near));
  svg.dispatchEvent(new PointerEvent('pointerleave', near));
  expect(heard).toEqual(['E']);
});

test('lit inks and the links between them stand out, all else goes quiet', async () => {
  const wheel = await show('qw-wheel', { ...pair, lit: ['C', 'c'] });
  const state = (start: string) => markThatSays(wheel, start).classList;
  expect(state('Coral (C), moderate').contains('lit')).toBe(true);
  expect(state('Coral (C) and raspberry (c)').contains('lit')).toBe(true);
  expect(state('Coral (C) and aqua (b)').contains('quiet')).toBe(true);
  expect(state('Navy (B), dark').contains('quiet')).toBe(true);
  wheel.lit = [];
  await drawn(wheel);
  expect(chartMarks(wheel).some((m) => m.classList.contains('quiet'))).toBe(false);
});

test('a new candidate, wheel or surround redraws', async () => {
  const wheel = await show('qw-wheel', pair);
  const before = chartRoot(wheel).querySelector('svg')!.innerHTML;
  wheel.wheel = 'painter';
  await drawn(wheel);
  const painter = chartRoot(wheel).querySelector('svg')!.innerHTML;
  expect(painter).not.toBe(before);
  expect(painter).toContain('red-violet');
  wheel.candidate = pebble;
  wheel.links = [];
  await drawn(wheel);
  expect(chartMarks(wheel)).toHaveLength(9);
});

test('the table behind the wheel opens by its button and says each ink', async () => {
  const wheel = await show('qw-wheel', pair);
  const button = chartRoot(wheel).querySelector('button')!;
  expect(button.getAttribute('aria-expanded')).toBe('false');
  expect(button.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
  button.click();
  await drawn(wheel);
  expect(button.getAttribute('aria-expanded')).toBe('true');
  expect(chartRoot(wheel).querySelectorAll('tbody tr')).toHaveLength(11);
  expect(await axeFinds()).toEqual([]);
});

test('the focus is a frame around its mark, whole within the chart, above all marks, and gone with the focus', async () => {
  const chart = await show('qw-wheel', pair);
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
