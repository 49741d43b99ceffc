import { describe, expect, it } from 'vitest';
import { emptyNotebook } from '../../../src/notebook/empty.ts';
import { mostSteps, recordStep, redoStep, startHistory, undoStep } from '../../../src/notebook/history.ts';
import { mergeKeyOf, tellEdit } from '../../../src/notebook/words/tell.ts';

const named = (title: string) => emptyNotebook('n', title);
const start = startHistory(named('0'));

describe('undo', () => {
  it('goes back step by step and forward again, and says what each was', () => {
    const two = recordStep(recordStep(start, named('1'), 'write one'), named('2'), 'write two');
    const back = undoStep(two);
    expect(back.present.title).toBe('1');
    expect(back.future[0]?.says).toBe('write two');
    expect(undoStep(back).present.title).toBe('0');
    expect(redoStep(back).present.title).toBe('2');
    expect(redoStep(redoStep(undoStep(undoStep(two)))).present.title).toBe('2');
  });

  it('at its ends changes nothing', () => {
    expect(undoStep(start)).toBe(start);
    expect(redoStep(start)).toBe(start);
  });

  it('has no step for what changed nothing', () => {
    expect(recordStep(start, start.present, 'nothing')).toBe(start);
  });

  it('forgets what could be redone once something new is done', () => {
    const again = recordStep(undoStep(recordStep(start, named('1'), 'a')), named('2'), 'b');
    expect(again.future).toEqual([]);
  });

  it('takes a word typed letter by letter as one step', () => {
    const typed = ['h', 'he', 'hen'].reduce(
      (history, title) => recordStep(history, named(title), 'write', 'k'),
      start,
    );
    expect(typed.past).toHaveLength(1);
    expect(undoStep(typed).present.title).toBe('0');
    const other = recordStep(typed, named('x'), 'write', 'other');
    expect(undoStep(other).present.title).toBe('hen');
    // After undo and redo, typing on is a step of its own.
    const on = recordStep(redoStep(undoStep(typed)), named('hens'), 'write', 'k');
    expect(undoStep(on).present.title).toBe('hen');
  });

  it('after an undo takes typing as a step of its own, under whatever key the step before was', () => {
    const typed = recordStep(recordStep(start, named('h'), 'write', 'k'), named('x'), 'write', 'other');
    const on = recordStep(undoStep(typed), named('he'), 'write', 'k');
    expect(on.past).toHaveLength(2);
    expect(undoStep(on).present.title).toBe('h');
    expect(undoStep(undoStep(on)).present.title).toBe('0');
  });

  it('keeps a bounded number of steps', () => {
    let history = start;
    for (let i = 1; i <= mostSteps + 20; i++) history = recordStep(history, named(`${i}`), 'x');
    expect(history.past).toHaveLength(mostSteps);
  });
});

describe('the words for a step', () => {
  it('say what was done', () => {
    expect(tellEdit({ do: 'add leaf', leaf: { kind: 'note', id: 'n', title: '', text: '' } })).toBe(
      'add a note leaf',
    );
    expect(tellEdit({ do: 'set text', leafId: 'n', text: '' })).toBe('write');
  });

  it('join typing on one leaf and nothing else', () => {
    expect(mergeKeyOf({ do: 'set text', leafId: 'a', text: 'x' })).toBe(
      mergeKeyOf({ do: 'set text', leafId: 'a', text: 'y' }),
    );
    expect(mergeKeyOf({ do: 'set text', leafId: 'a', text: 'x' })).not.toBe(
      mergeKeyOf({ do: 'set text', leafId: 'b', text: 'x' }),
    );
    expect(mergeKeyOf({ do: 'remove leaf', leafId: 'a' })).toBeNull();
  });
});
