import { describe, expect, it } from 'vitest';
import { isRevealed, opinionOf, shownCandidate } from '../../../src/notebook/apply-study.ts';
import { applyEdit, type Edit } from '../../../src/notebook/edits.ts';
import { emptyNotebook, isEmptyNotebook } from '../../../src/notebook/empty.ts';
import { keptName, keptText, limits } from '../../../src/notebook/limits.ts';
import {
  bunting,
  corner,
  dots,
  kraft,
  ledger,
  ledgerBack,
  sampleNotebook,
  sheet,
  studyOf,
} from './sample-notebook.ts';

const book = sampleNotebook();
const bookAfter = (...edits: Edit[]) => edits.reduce(applyEdit, book);

describe('leaves', () => {
  it('are added at the end or where told, and never twice', () => {
    const leaf = { kind: 'note', id: 'n9', title: '', text: '' } as const;
    expect(bookAfter({ do: 'add leaf', leaf }).leaves.at(-1)).toBe(leaf);
    expect(bookAfter({ do: 'add leaf', leaf, at: 1 }).leaves[1]).toBe(leaf);
    expect(bookAfter({ do: 'add leaf', leaf, at: -5 }).leaves[0]).toBe(leaf);
    expect(bookAfter({ do: 'add leaf', leaf: { ...leaf, id: 'w1' } })).toBe(book);
  });

  it('of a board show what they are told to; the pair is what they show by default', () => {
    expect(bookAfter({ do: 'set board kind', leafId: 'b1', shows: 'pair' })).toBe(book);
    expect(bookAfter({ do: 'set board kind', leafId: 'w1', shows: 'pair' })).toBe(book);
  });

  it('move to the index they are to have afterwards', () => {
    const ids = (edit: Edit) => bookAfter(edit).leaves.map((leaf) => leaf.id);
    expect(ids({ do: 'move leaf', leafId: 'w1', to: 2 })).toEqual(['s1', 'k1', 'w1', 'b1', 'l1', 'e1']);
    expect(ids({ do: 'move leaf', leafId: 'b1', to: 0 })).toEqual(['b1', 'w1', 's1', 'k1', 'l1', 'e1']);
    expect(bookAfter({ do: 'move leaf', leafId: 'w1', to: 0 })).toBe(book);
    expect(bookAfter({ do: 'move leaf', leafId: 'gone', to: 0 })).toBe(book);
  });

  it('keep their own words; a board keeps its own in their place', () => {
    const written = bookAfter(
      { do: 'set text', leafId: 'w1', text: 'New\u0000 words\n' },
      { do: 'set text', leafId: 'b1', text: 'On the board' },
    );
    expect(written.leaves[0]).toMatchObject({ text: 'New words\n' });
    expect(written.leaves[3]).toMatchObject({ words: 'On the board' });
  });

  it('that are not there change nothing at all', () => {
    const edits: Edit[] = [
      { do: 'remove leaf', leafId: 'gone' },
      { do: 'rename leaf', leafId: 'gone', title: 'x' },
      { do: 'set text', leafId: 'gone', text: 'x' },
      { do: 'set anchor', leafId: 'w1', anchor: bunting },
      { do: 'add piece', leafId: 's1', piece: { held: kraft, areaMm2: 1 } },
      { do: 'answer', leafId: 'b1', verdict: 'pulls-apart' },
      { do: 'update sheet', sheetId: 'gone', change: { name: 'x' } },
    ];
    for (const edit of edits) expect(applyEdit(book, edit), edit.do).toBe(book);
  });
});

describe('a study', () => {
  it('takes a candidate once, and shows the one that was added', () => {
    const more = bookAfter({ do: 'add candidate', leafId: 's1', candidate: corner });
    expect(studyOf(more)).toMatchObject({ shown: 3 });
    expect(shownCandidate(studyOf(more))).toEqual(corner);
    const again = bookAfter({ do: 'add candidate', leafId: 's1', candidate: dots });
    expect(studyOf(again).candidates).toHaveLength(3);
    expect(studyOf(again).shown).toBe(1);
  });

  it('holds no paper against itself', () => {
    expect(bookAfter({ do: 'add candidate', leafId: 's1', candidate: bunting })).toBe(book);
    const turned = bookAfter({ do: 'set anchor', leafId: 's1', anchor: ledger });
    expect(studyOf(turned).candidates).toEqual([dots, kraft]);
  });

  it('takes no paper that is not in the drawer', () => {
    const stranger = { kind: 'sheet', id: 'stranger', side: 'A' } as const;
    expect(bookAfter({ do: 'add candidate', leafId: 's1', candidate: stranger })).toBe(book);
    expect(bookAfter({ do: 'set anchor', leafId: 's1', anchor: { ...bunting, side: 'B' } })).toBe(book);
  });

  it('goes on showing the same candidate when another is taken away', () => {
    const shown = bookAfter({ do: 'show candidate', leafId: 's1', index: 2 });
    const fewer = applyEdit(shown, { do: 'remove candidate', leafId: 's1', index: 0 });
    expect(shownCandidate(studyOf(fewer))).toEqual(kraft);
    const last = applyEdit(fewer, { do: 'remove candidate', leafId: 's1', index: 1 });
    expect(shownCandidate(studyOf(last))).toEqual(dots);
    expect(applyEdit(book, { do: 'show candidate', leafId: 's1', index: 9 })).toBe(book);
  });

  it('shows what stood next when the one that was shown is taken away', () => {
    const before = studyOf(book).candidates;
    expect(before.length).toBeGreaterThan(2);
    const shown = bookAfter({ do: 'show candidate', leafId: 's1', index: 1 });
    const fewer = applyEdit(shown, { do: 'remove candidate', leafId: 's1', index: 1 });
    expect(shownCandidate(studyOf(fewer))).toEqual(before[2]);
  });

  it('that asks first shows its verdict once the reader has said hers, candidate by candidate', () => {
    const asking = bookAfter({ do: 'set asks first', leafId: 's1', asksFirst: true });
    expect(isRevealed(studyOf(book), ledger)).toBe(true);
    expect(isRevealed(studyOf(asking), ledger)).toBe(false);
    const liked = applyEdit(asking, { do: 'say', leafId: 's1', candidate: ledger, opinion: { likes: true } });
    expect(isRevealed(studyOf(liked), ledger)).toBe(false);
    const said = applyEdit(liked, {
      do: 'say',
      leafId: 's1',
      candidate: ledger,
      opinion: { verdict: 'pulls-apart' },
    });
    expect(isRevealed(studyOf(said), ledger)).toBe(true);
    expect(isRevealed(studyOf(said), dots)).toBe(false);
    expect(opinionOf(studyOf(said), ledger)).toEqual({ verdict: 'pulls-apart', likes: true });
  });
});

describe('the drawer', () => {
  it('takes a sheet out of everything that held it', () => {
    const gone = bookAfter({ do: 'remove sheet', sheetId: 'ledger' });
    expect(gone.drawer.sheets.map((one) => one.id)).toEqual(['bunting', 'dots']);
    expect(gone.drawer.parts).toEqual([]);
    expect(studyOf(gone).candidates).toEqual([dots, kraft]);
    expect(gone.leaves.map((leaf) => leaf.id)).toEqual(['w1', 's1', 'k1', 'b1', 'e1']);
    expect(gone.leaves[2]).toMatchObject({ pieces: [] });
    expect(studyOf(bookAfter({ do: 'remove sheet', sheetId: 'bunting' })).anchor).toBeNull();
    expect(bookAfter({ do: 'remove sheet', sheetId: 'dots' }).leaves[3]).toMatchObject({ candidate: null });
  });

  it('gives up a side B, and what held it, but never a side A', () => {
    const held = bookAfter({ do: 'add candidate', leafId: 's1', candidate: ledgerBack });
    const gone = applyEdit(held, { do: 'set side', sheetId: 'ledger', side: 'B', kept: null });
    expect(gone.drawer.sheets[1]?.sides.B).toBeUndefined();
    expect(studyOf(gone).candidates).toEqual([ledger, dots, kraft]);
    expect(bookAfter({ do: 'set side', sheetId: 'ledger', side: 'A', kept: null })).toBe(book);
  });

  it('keeps ids apart, and parts only of sheets that are there', () => {
    expect(bookAfter({ do: 'add sheet', sheet: sheet('dots', 'Other dots') })).toBe(book);
    const part = { ...book.drawer.parts[0]!, id: 'p2', sheetId: 'gone' };
    expect(bookAfter({ do: 'add part', part })).toBe(book);
    expect(bookAfter({ do: 'add part', part: { ...part, sheetId: 'dots' } }).drawer.parts).toHaveLength(2);
  });

  it('renames in one line of sensible length', () => {
    const named = bookAfter({
      do: 'update sheet',
      sheetId: 'dots',
      change: { name: '  Blue\n dots ', count: 3 },
    });
    expect(named.drawer.sheets[2]).toMatchObject({ name: 'Blue dots', count: 3 });
    expect(
      bookAfter({ do: 'update plain', plainId: 'cardstock-kraft', change: { name: 'x'.repeat(900) } }).drawer
        .plains[0]!.name,
    ).toHaveLength(limits.name);
  });
});

describe('kept text', () => {
  it('loses control characters and marks that turn the reading direction, nothing else', () => {
    expect(keptText('a\u202Eb\u0007c\td\r\ne–é–😀', 100)).toBe('abc\td\ne–é–😀');
    expect(keptText('ab😀', 3)).toBe('ab');
    expect(keptName(' <b>Rose</b> & vine ')).toBe('<b>Rose</b> & vine');
  });
});

it('an empty notebook is empty until something is written or kept', () => {
  expect(isEmptyNotebook(emptyNotebook('x'))).toBe(true);
  expect(isEmptyNotebook(book)).toBe(false);
});
