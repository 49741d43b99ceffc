import { describe, expect, it } from 'vitest';
import type { CutView, KitView, PieceChange } from '../../components/kit/kit-view.ts';
import '../../components/notebook/qw-kit-leaf.ts';
import { kitOf } from '../../src/harmony/kit/kit.ts';
import type { KitLeaf } from '../../src/notebook/model.ts';
import { bunting, ledger } from '../support/hand-made.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const kit = kitOf([
  { name: 'Regatta bunting', side: bunting, role: 'paper', areaMm2: null },
  { name: 'Quayside ledger', side: ledger, role: 'paper', areaMm2: null },
  { name: 'Quayside ledger (2)', side: ledger, role: 'paper', areaMm2: null },
]);
const leaf: KitLeaf = { id: 'k', kind: 'kit', title: 'Boat-day page', text: '', pieces: [] };
const piece = (index: number): KitView['pieces'][number] => ({
  index,
  paper: { key: `p${index}`, name: kit.members[index]!.name, about: 'sheet', picture: null, bands: [] },
  isPhoto: false,
  canBePhoto: true,
  sizeMm: index === 0 ? { width: 127, height: 177.8 } : null,
  count: 1,
  mat: null,
});
const cuts: CutView = {
  sheets: [
    {
      stock: { name: 'Regatta bunting', sizeMm: { width: 304.8, height: 304.8 } },
      number: 1,
      layout: {
        style: 'stopped',
        placed: [{ x: 0, y: 0, width: 127, height: 177.8 }],
        left: [{ x: 127, y: 0, width: 177.8, height: 304.8 }],
      },
      names: ['Regatta bunting'],
    },
  ],
  says: ['From Regatta bunting: one piece.', 'Mind the blade.'],
};
const view: KitView = {
  pieces: [piece(0), piece(1), piece(2)],
  kit,
  cuts,
  mats: [{ id: 'k', name: 'kraft cardstock' }],
};
const all = { leaf, view, margin: ['leaf 5'] };

describe('a kit leaf', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds, in %s', async (look) => {
    const element = await standAlone('qw-kit-leaf', all, look);
    for (const details of within(element, 'qw-kit-pieces').shadowRoot!.querySelectorAll('details'))
      details.open = true;
    within(element, 'qw-kit-matrix', 'button').click();
    await drawn(element);
    expect(await axeTroubles()).toEqual([]);
  });

  it('has nothing that axe finds while it has no piece, and offers the drawer and photographs', async () => {
    const element = await standAlone('qw-kit-leaf', { ...all, view: { ...view, pieces: [], kit: null } });
    expect(await axeTroubles()).toEqual([]);
    const chosen = heard(element, 'qw-choose-paper');
    const photographs = heard(element, 'qw-add-photographs');
    within(element, '.take button:first-child').click();
    within(element, '.take button:last-child').click();
    expect([chosen, photographs]).toEqual([[{ as: 'piece' }], [{}]]);
  });

  it('shows every two pieces as a mark that tells its verdict in words and leads to its reason', async () => {
    const element = await standAlone('qw-kit-leaf', all);
    const matrix = within(element, 'qw-kit-matrix');
    const marks = [...matrix.shadowRoot!.querySelectorAll('button')];
    expect(marks).toHaveLength(kit.pairs.length);
    for (const [at, { one, other, verdict }] of kit.pairs.entries()) {
      const words = `${kit.members[one]!.name} and ${kit.members[other]!.name}: ${verdict.replaceAll('-', ' ')}`;
      expect(marks.map((mark) => mark.getAttribute('aria-label'))[at]).toBe(words);
    }
    marks[0]!.click();
    await drawn(matrix);
    const told = within(matrix, '.pair').textContent!;
    expect(told).toContain(kit.pairs[0]!.weightiest!.source);
    expect(matrix.shadowRoot!.querySelector('.pair a')?.getAttribute('href')).toMatch(/^#sources\//);
  });

  it('says the verdict of the whole, its reasons with their inks as chips, and where each colour comes back', async () => {
    const element = await standAlone('qw-kit-leaf', all);
    expect(within(element, 'qw-verdict', 'h3').textContent).toMatch(/\.$/);
    expect(within(element, 'qw-reasons').shadowRoot!.querySelectorAll('li')).toHaveLength(kit.reasons.length);
    expect(within(element, 'qw-reasons', '.chip').textContent).toMatch(/^\d[A-Z]$/);
    const repeats = within(element, '.repeats').textContent!;
    for (const { word } of kit.repeats) expect(repeats).toContain(word);
  });

  it('lights up the chips of a piece that a reason speaks of', async () => {
    const element = await standAlone('qw-kit-leaf', all);
    within(element, 'qw-reasons', '.dot').focus();
    await drawn(element);
    const lit = within(element, 'qw-kit-pieces').shadowRoot!.querySelectorAll('.chip.lit');
    expect(lit.length).toBe(kit.reasons.find(({ weighs }) => weighs !== 0)!.inks.length);
  });

  it('takes a size, a number and a mat, in inches as they are typed', async () => {
    const element = await standAlone('qw-kit-leaf', all);
    const told = heard<{ index: number; change: PieceChange }>(element, 'qw-change-piece');
    const size = within(element, 'qw-kit-pieces').shadowRoot!.querySelectorAll('qw-kit-size')[1]!;
    const [width, height] = size.shadowRoot!.querySelectorAll('input');
    for (const [field, value] of [
      [width!, '4'],
      [height!, '6'],
    ] as const) {
      field.value = value;
      field.dispatchEvent(new Event('change'));
    }
    expect(told).toHaveLength(1);
    expect(told[0]!.index).toBe(1);
    expect(told[0]!.change.sizeMm!.width).toBeCloseTo(101.6, 6);
    expect(told[0]!.change.sizeMm!.height).toBeCloseTo(152.4, 6);
    const mat = within<HTMLSelectElement>(element, 'qw-kit-pieces', '.mat select');
    mat.value = 'k';
    mat.dispatchEvent(new Event('change'));
    expect(told.at(-1)).toEqual({ index: 0, change: { mat: { plainId: 'k', borderMm: 3.2 } } });
  });

  it('draws what to cut, says how, and ends with the caution', async () => {
    const element = await standAlone('qw-kit-leaf', all);
    const list = within(element, 'qw-cut-list');
    expect(list.shadowRoot!.querySelectorAll('.piece')).toHaveLength(1);
    expect(within(list, 'figcaption').textContent).toMatch(/12\s×\s12\sin · with stopped cuts/);
    expect(within(list, '.says li:last-child').textContent).toBe('Mind the blade.');
  });
});
