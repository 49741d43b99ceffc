import { describe, expect, it } from 'vitest';
import type { Held } from '../../../src/drawer/model.ts';
import { opinionOf, shownCandidate } from '../../../src/notebook/apply-study.ts';
import { applyEdit, type Edit } from '../../../src/notebook/edits.ts';
import { isEmptyNotebook } from '../../../src/notebook/empty.ts';
import { limits } from '../../../src/notebook/limits.ts';
import { bunting, corner, dots, kraft, ledger, sampleNotebook, studyOf } from './sample-notebook.ts';

const book = sampleNotebook();
const bookAfter = (...edits: Edit[]) => edits.reduce(applyEdit, book);
const piecesAfter = (...edits: Edit[]) => {
  const leaf = bookAfter(...edits).leaves[2]!;
  if (leaf.kind !== 'kit') throw new Error('the third leaf is a kit');
  return leaf.pieces;
};

describe('a kit', () => {
  const [first, second] = piecesAfter();
  const mist = { held: kraft, areaMm2: 40 };

  it('takes a piece at its end, and no more than it may hold', () => {
    const add: Edit = { do: 'add piece', leafId: 'k1', piece: mist };
    expect(piecesAfter(add)).toEqual([first, second, mist]);
    const full = bookAfter(...Array.from({ length: limits.pieces - 2 }, () => add));
    expect(full.leaves[2]).toMatchObject({ pieces: { length: limits.pieces } });
    expect(applyEdit(full, add)).toBe(full);
  });

  it('changes and gives up one piece, the others stay', () => {
    const update = (index: number): Edit => ({ do: 'update piece', leafId: 'k1', index, piece: mist });
    expect(piecesAfter(update(0))).toEqual([mist, second]);
    expect(piecesAfter(update(1))).toEqual([first, mist]);
    expect(bookAfter(update(2))).toBe(book);
    const remove = (index: number): Edit => ({ do: 'remove piece', leafId: 'k1', index });
    expect(piecesAfter(remove(0))).toEqual([second]);
    expect(piecesAfter(remove(1))).toEqual([first]);
    expect(bookAfter(remove(2))).toBe(book);
  });
});

describe('a board', () => {
  it('changes its study, size and kind, and is the same notebook where nothing changes', () => {
    const board = (edit: Edit) => bookAfter(edit).leaves[3];
    expect(board({ do: 'set board study', leafId: 'b1', studyId: 's2', candidate: kraft })).toMatchObject({
      studyId: 's2',
      candidate: kraft,
    });
    expect(bookAfter({ do: 'set board size', leafId: 'b1', size: 'square' })).toBe(book);
    expect(board({ do: 'set board size', leafId: 'b1', size: 'wide' as never })).toMatchObject({
      size: 'wide',
    });
    expect(bookAfter({ do: 'set board kind', leafId: 'b1', shows: 'pair' })).toBe(book);
    expect(board({ do: 'set board kind', leafId: 'b1', shows: 'kit' as never })).toMatchObject({
      shows: 'kit',
    });
  });
});

describe('an exercise', () => {
  const exercise = (...edits: Edit[]) => bookAfter(...edits).leaves[5];
  const point = (inks: readonly string[] | null) =>
    ({ do: 'point at inks', leafId: 'e1', inks }) as unknown as Edit;

  it('keeps an answer and two inks at most that were pointed at, until they are taken back', () => {
    expect(exercise({ do: 'answer', leafId: 'e1', verdict: 'pulls-apart' })).toMatchObject({
      answered: 'pulls-apart',
    });
    expect(bookAfter({ do: 'answer', leafId: 'e1', verdict: null })).toBe(book);
    expect(exercise(point(['A', 'B', 'C']))).toMatchObject({ pointed: ['A', 'B'] });
    expect(exercise(point(['A']), point(null))).not.toHaveProperty('pointed');
    expect(bookAfter(point(null))).toBe(book);
  });

  it('starts anew with other papers', () => {
    const set: Edit = { do: 'set exercise', leafId: 'e1', change: { studyId: 's2' } };
    const anew = exercise({ do: 'answer', leafId: 'e1', verdict: 'pulls-apart' }, point(['A']), set);
    expect(anew).toMatchObject({ studyId: 's2', answered: null });
    expect(anew).not.toHaveProperty('pointed');
  });
});

describe('a study', () => {
  const show = (index: number): Edit => ({ do: 'show candidate', leafId: 's1', index });
  const shownAfter = (...edits: Edit[]) => shownCandidate(studyOf(bookAfter(...edits)));

  it('gives up its anchor once', () => {
    const none = bookAfter({ do: 'set anchor', leafId: 's1', anchor: null });
    expect(studyOf(none).anchor).toBeNull();
    expect(applyEdit(none, { do: 'set anchor', leafId: 's1', anchor: null })).toBe(none);
    expect(bookAfter({ do: 'set anchor', leafId: 's1', anchor: bunting })).toBe(book);
    const again = applyEdit(none, { do: 'set anchor', leafId: 's1', anchor: dots });
    expect(studyOf(again)).toMatchObject({ anchor: dots, candidates: [ledger, kraft] });
  });

  it('shows the candidate that is added again, without a second place for it', () => {
    const add = (candidate: Held, more = {}): Edit => ({
      do: 'add candidate',
      leafId: 's1',
      candidate,
      ...more,
    });
    expect(shownAfter(show(2), add(ledger))).toEqual(ledger);
    expect(studyOf(bookAfter(show(2), add(ledger))).candidates).toHaveLength(3);
    expect(shownAfter(show(2), add(ledger, { show: false }))).toEqual(kraft);
    expect(shownAfter(add(corner, { show: false }))).toEqual(ledger);
    expect(shownAfter(add(corner))).toEqual(corner);
  });

  it('shows what it showed when one before or behind it goes, the next where it goes itself', () => {
    const remove = (index: number): Edit => ({ do: 'remove candidate', leafId: 's1', index });
    expect(shownAfter(show(1), remove(0))).toEqual(dots);
    expect(shownAfter(show(1), remove(2))).toEqual(dots);
    expect(shownAfter(show(1), remove(1))).toEqual(kraft);
    expect(shownAfter(show(2), remove(2))).toEqual(dots);
    expect(shownAfter(remove(0), remove(0), remove(0))).toBeNull();
    expect(bookAfter(remove(3))).toBe(book);
    expect(bookAfter(show(3))).toBe(book);
    expect(bookAfter(show(0))).toBe(book);
  });

  it('keeps what was said, and is the same notebook where it is said again', () => {
    const likes = (likes: boolean): Edit => ({
      do: 'say',
      leafId: 's1',
      candidate: dots,
      opinion: { likes },
    });
    const said = bookAfter(likes(true));
    expect(opinionOf(studyOf(said), dots)).toEqual({ verdict: null, likes: true });
    expect(applyEdit(said, likes(true))).toBe(said);
    expect(opinionOf(studyOf(applyEdit(said, likes(false))), dots).likes).toBe(false);
  });
});

describe('how a study looks at its papers', () => {
  it('changes, and is the same notebook where it is so already', () => {
    const { distance, wheel, asksFirst } = studyOf(book);
    expect(bookAfter({ do: 'set distance', leafId: 's1', distance })).toBe(book);
    expect(bookAfter({ do: 'set wheel', leafId: 's1', wheel })).toBe(book);
    expect(bookAfter({ do: 'set asks first', leafId: 's1', asksFirst })).toBe(book);
    const other = distance === 'apart' ? 'touching' : 'apart';
    expect(studyOf(bookAfter({ do: 'set distance', leafId: 's1', distance: other })).distance).toBe(other);
    const otherWheel = wheel === 'eye' ? 'painter' : 'eye';
    expect(studyOf(bookAfter({ do: 'set wheel', leafId: 's1', wheel: otherWheel })).wheel).toBe(otherWheel);
  });
});

describe('what is kept', () => {
  it('is no more than a drawer may hold', () => {
    const [plain] = book.drawer.plains;
    const plains = Array.from({ length: limits.plains - 1 }, (_, n) => ({ ...plain!, id: `p${n}` }));
    const almost = { ...book, drawer: { ...book.drawer, plains } };
    const full = applyEdit(almost, { do: 'add plain', plain: { ...plain!, id: 'last' } });
    expect(full.drawer.plains).toHaveLength(limits.plains);
    expect(applyEdit(full, { do: 'add plain', plain: { ...plain!, id: 'one more' } })).toBe(full);
  });

  it('makes a notebook that is not empty: a sheet with a part cut of it alone', () => {
    const { sheets, parts } = book.drawer;
    const alone = { ...book, leaves: [], drawer: { sheets: sheets.slice(0, 1), plains: [], parts } };
    expect(isEmptyNotebook(alone)).toBe(false);
  });
});
