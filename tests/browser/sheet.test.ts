import { afterEach, expect, test } from 'vitest';
import { bunting, ledger } from '../../components/support/sample-papers.ts';
import { drawSample } from '../../components/support/sample-picture.ts';
import '../../components/sheet/qw-paper.ts';
import { axeFinds, chartMarks, drawn, listen, show } from './charts-kit.ts';

const sample = drawSample(bunting.side);
const pictured = { paper: bunting, picture: sample.address, places: sample.places };

afterEach(() => document.body.replaceChildren());

/** A pointer over the middle of the place with this index. */
function pointAtPlace(paper: Element, index: number, pointerType = 'mouse'): void {
  const sheet = paper.shadowRoot!.querySelector('.sheet')!;
  const box = sheet.getBoundingClientRect();
  const { width, height } = sample.places;
  sheet.dispatchEvent(
    new PointerEvent(pointerType === 'touch' ? 'pointerdown' : 'pointermove', {
      pointerType,
      bubbles: true,
      clientX: box.left + (((index % width) + 0.5) / width) * box.width,
      clientY: box.top + ((Math.floor(index / width) + 0.5) / height) * box.height,
    }),
  );
}

async function showPaper(lit: readonly string[] = []) {
  const paper = await show('qw-paper', { ...pictured, lit });
  await paper.shadowRoot!.querySelector('img')!.decode();
  return paper;
}

/** Share of the veil that is clear. */
function clearShare(paper: Element): number {
  const canvas = paper.shadowRoot!.querySelector('canvas')!;
  const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
  let clear = 0;
  for (let i = 3; i < data.length; i += 4) clear += data[i] === 0 ? 1 : 0;
  return clear / (data.length / 4);
}

test('axe finds nothing in a paper with a picture, nor in one without', async () => {
  await showPaper(['C']);
  expect(await axeFinds()).toEqual([]);
  await show('qw-paper', { paper: ledger });
  expect(await axeFinds()).toEqual([]);
});

test('the picture says the paper and its inks in words', async () => {
  const paper = await showPaper();
  expect(paper.shadowRoot!.querySelector('img')!.alt).toBe(
    'Regatta bunting, printed in cream, navy, coral, aqua, mustard, off-white',
  );
});

test('a lit ink keeps exactly its places clear and veils the rest without adding colour', async () => {
  const paper = await showPaper(['C']);
  const share = sample.places.labels.filter((label) => label === 2).length / sample.places.labels.length;
  expect(clearShare(paper)).toBeCloseTo(share, 9);
  const canvas = paper.shadowRoot!.querySelector('canvas')!;
  const [r, g, b] = canvas.getContext('2d')!.getImageData(0, 0, 1, 1).data;
  expect([g, b]).toEqual([r, r]);
  paper.lit = ['A', 'B'];
  await drawn(paper);
  expect(clearShare(paper)).toBeGreaterThan(0.5);
});

test('pointing at a place sends the ink that lies there and names it beside the pointer', async () => {
  const paper = await showPaper();
  const heard = listen(paper);
  pointAtPlace(paper, sample.places.labels.indexOf(3));
  await drawn(paper);
  expect(heard).toEqual(['D']);
  expect(paper.shadowRoot!.querySelector('[part=tag]')!.textContent).toMatch(/D\s+aqua/);
  paper
    .shadowRoot!.querySelector('.sheet')!
    .dispatchEvent(new PointerEvent('pointerleave', { pointerType: 'mouse' }));
  expect(heard).toEqual(['D', '']);
});

test('a finger does the same, and what it touched stays', async () => {
  const paper = await showPaper();
  const heard = listen(paper);
  pointAtPlace(paper, sample.places.labels.indexOf(2), 'touch');
  paper
    .shadowRoot!.querySelector('.sheet')!
    .dispatchEvent(new PointerEvent('pointerleave', { pointerType: 'touch' }));
  expect(heard).toEqual(['C']);
});

test('without places nothing is veiled and nothing sent', async () => {
  const paper = await show('qw-paper', { paper: bunting, picture: sample.address, lit: ['C'] });
  expect(paper.shadowRoot!.querySelector('canvas')!.classList.contains('on')).toBe(false);
  const heard = listen(paper);
  pointAtPlace(paper, 100);
  expect(heard).toEqual([]);
});

test('without a picture strips of the inks stand in, and they are marks like any other', async () => {
  const paper = await show('qw-paper', { paper: ledger, lit: ['c'] });
  expect(chartMarks(paper)).toHaveLength(5);
  expect(chartMarks(paper).filter((m) => m.classList.contains('lit'))).toHaveLength(1);
});
