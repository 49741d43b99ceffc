import { describe, expect, it } from 'vitest';
import type { Link, LinkKind } from '../../../src/harmony/model.ts';
import { applyEdit } from '../../../src/notebook/edits.ts';
import type { ExerciseLeaf } from '../../../src/notebook/model.ts';
import { asks, mark, questions } from '../../../src/notebook/words/exercise.ts';
import { needsABridge } from '../../support/hand-made.ts';
import { sampleNotebook } from './sample-notebook.ts';

const exercise: ExerciseLeaf = {
  id: 'x1',
  kind: 'exercise',
  title: 'Find the near miss',
  text: '',
  studyId: 's1',
  answered: null,
  ask: 'near miss',
};
const pointed = (...inks: string[]) => mark({ ...exercise, pointed: inks }, needsABridge);
const without = (kind: LinkKind) => ({
  ...needsABridge,
  links: needsABridge.links.filter((link) => link.kind !== kind),
});

describe('an exercise', () => {
  it('is not marked before it is answered', () => {
    expect(mark(exercise, needsABridge)).toBeNull();
    expect(mark({ ...exercise, ask: 'verdict' }, needsABridge)).toBeNull();
  });

  it('is right with the two inks that the engine linked, in either order, and with no others', () => {
    expect(pointed('C', 'c')).toMatchObject({ right: true, says: 'That is it.' });
    expect(pointed('c', 'C')?.right).toBe(true);
    expect(pointed('B', 'c')).toMatchObject({ right: false, says: 'Not those two; there is one near miss.' });
    expect(pointed()).toMatchObject({ right: false, says: 'Look again: there is one near miss.' });
    expect(pointed('C', 'c')?.links).toEqual(needsABridge.links.filter(({ kind }) => kind === 'near miss'));
  });

  it('takes “there are none” for right where the engine found none', () => {
    const none = without('near miss');
    expect(mark({ ...exercise, pointed: [] }, none)).toMatchObject({
      right: true,
      says: 'You are right: there is no near miss here.',
    });
    expect(mark({ ...exercise, pointed: ['C', 'c'] }, none)?.right).toBe(false);
  });

  it('passes over two grounds that agree where inks repeat too, and counts them where nothing else does', () => {
    const grounds: Link = { ...needsABridge.links[1]!, anchorInk: 'A', candidateInk: 'a' };
    const both = { ...needsABridge, links: [...needsABridge.links, grounds] };
    const only = { ...without('repeat'), links: [grounds] };
    const asked: ExerciseLeaf = { ...exercise, ask: 'repeat', pointed: ['A', 'a'] };
    expect(mark(asked, both)?.right).toBe(false);
    expect(mark(asked, only)?.right).toBe(true);
  });

  it('holds a verdict against the engine’s', () => {
    const asked = (answered: ExerciseLeaf['answered']) =>
      mark({ ...exercise, ask: 'verdict', answered }, needsABridge);
    expect(asked('needs-a-bridge')).toMatchObject({ right: true });
    expect(asked('pulls-apart')?.says).toContain('You say it pulls apart; Quirewise says it needs a bridge');
  });

  it('has a question for everything that can be asked', () => {
    expect([...asks].sort()).toEqual(Object.keys(questions).sort());
  });

  it('takes the answer back when another question or pair is set, or when it is tried again', () => {
    const before = { ...sampleNotebook(), leaves: [...sampleNotebook().leaves, exercise] };
    const leafAfter = (...edits: Parameters<typeof applyEdit>[1][]) =>
      edits.reduce(applyEdit, before).leaves.at(-1) as ExerciseLeaf;
    const answer = { do: 'point at inks', leafId: 'x1', inks: ['C', 'c'] } as const;
    expect(leafAfter(answer).pointed).toEqual(['C', 'c']);
    expect('pointed' in leafAfter(answer, { ...answer, inks: null })).toBe(false);
    const other = { do: 'set exercise', leafId: 'x1', change: { ask: 'verdict' } } as const;
    expect(leafAfter(answer, other)).toEqual({ ...exercise, ask: 'verdict' });
    const said = { do: 'answer', leafId: 'x1', verdict: 'pulls-apart' } as const;
    expect(leafAfter(said, other).answered).toBeNull();
  });
});
