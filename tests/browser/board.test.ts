import { afterEach, expect, test } from 'vitest';
import '../../components/board/qw-board.ts';
import { comparison } from '../../components/support/sample-papers.ts';
import { boardOf } from '../../src/board/compose.ts';
import { boardSvg } from '../../src/board/svg.ts';
import { axeFinds, show } from './charts-kit.ts';

const square = boardOf(comparison, { names: { anchor: 'Regatta bunting', candidate: 'Quayside ledger' } });
const svg = boardSvg(square);

afterEach(() => document.body.replaceChildren());

async function picture(board: Element): Promise<HTMLImageElement> {
  const image = board.shadowRoot!.querySelector('img')!;
  await image.decode();
  return image;
}

test('axe finds nothing in a board', async () => {
  await show('qw-board', { svg, label: square.scene.description });
  expect(await axeFinds()).toEqual([]);
});

test('a board is one image that says what it shows', async () => {
  const board = await show('qw-board', { svg, label: square.scene.description });
  const image = await picture(board);
  expect(image.alt).toMatch(/^Regatta bunting with Quayside ledger: needs a bridge/);
});

test('the browser draws the very SVG that is exported, at its size', async () => {
  const image = await picture(await show('qw-board', { svg }));
  expect([image.naturalWidth, image.naturalHeight]).toEqual([3600, 3600]);
  expect(await (await fetch(image.src)).text()).toBe(svg);
  const canvas = document.createElement('canvas');
  canvas.width = 360;
  canvas.height = 360;
  const context = canvas.getContext('2d')!;
  context.drawImage(image, 0, 0, 360, 360);
  // In the middle of the mat's left edge lies its grey.
  expect([...context.getImageData(20, 110, 1, 1).data]).toEqual([0xba, 0xba, 0xba, 255]);
});

test('a new SVG is shown in place of the old, and none shows nothing', async () => {
  const board = await show('qw-board', { svg });
  await picture(board);
  board.svg = boardSvg(boardOf(comparison, { size: 'a4' }));
  await board.updateComplete;
  expect((await picture(board)).naturalHeight).toBe(3508);
  board.svg = '';
  await board.updateComplete;
  expect(board.shadowRoot!.querySelector('img')).toBeNull();
});

test('a board that was taken off the page and put back still shows', async () => {
  const board = await show('qw-board', { svg });
  board.remove();
  document.body.append(board);
  await board.updateComplete;
  expect((await picture(board)).naturalWidth).toBe(3600);
});
