import { heldKey, sideOfHeld } from '../drawer/held.ts';
import type { Held } from '../drawer/model.ts';
import type { StudyEdit } from './edit-kinds.ts';
import { withLeafOf } from './leaves.ts';
import { limits } from './limits.ts';
import type { Notebook, Opinion, StudyLeaf } from './model.ts';

/** The notebook after an edit of one study. */
export function applyStudyEdit(notebook: Notebook, edit: StudyEdit): Notebook {
  return withLeafOf(notebook, edit.leafId, 'study', (study) => editStudy(notebook, study, edit));
}

/** What the reader said of a candidate; nothing yet where she has not. */
export function opinionOf(study: StudyLeaf, candidate: Held): Opinion {
  return study.opinions[heldKey(candidate)] ?? { verdict: null, likes: null };
}

/** True where the engine's verdict may be shown: at once, or once the reader has said hers. */
export function isRevealed(study: StudyLeaf, candidate: Held): boolean {
  return !study.asksFirst || opinionOf(study, candidate).verdict !== null;
}

/** The candidate drawn in full, or null in a study without candidates. */
export function shownCandidate(study: StudyLeaf): Held | null {
  return study.candidates[study.shown] ?? null;
}

function editStudy(notebook: Notebook, study: StudyLeaf, edit: StudyEdit): StudyLeaf {
  switch (edit.do) {
    case 'set anchor':
      return setAnchor(notebook, study, edit.anchor);
    case 'add candidate':
      return addCandidate(notebook, study, edit.candidate, edit.show ?? true);
    case 'remove candidate':
      return withoutCandidate(study, edit.index);
    case 'show candidate':
      return study.candidates[edit.index] === undefined || study.shown === edit.index
        ? study
        : { ...study, shown: edit.index };
    case 'set distance':
      return study.distance === edit.distance ? study : { ...study, distance: edit.distance };
    case 'set wheel':
      return study.wheel === edit.wheel ? study : { ...study, wheel: edit.wheel };
    case 'set asks first':
      return study.asksFirst === edit.asksFirst ? study : { ...study, asksFirst: edit.asksFirst };
    case 'say':
      return say(study, edit.candidate, edit.opinion);
  }
}

function setAnchor(notebook: Notebook, study: StudyLeaf, anchor: Held | null): StudyLeaf {
  if (anchor === null) return study.anchor === null ? study : { ...study, anchor };
  if (sideOfHeld(notebook.drawer, anchor) === null) return study;
  const key = heldKey(anchor);
  if (study.anchor !== null && heldKey(study.anchor) === key) return study;
  // A paper is not held against itself.
  const at = study.candidates.findIndex((held) => heldKey(held) === key);
  return { ...(at < 0 ? study : withoutCandidate(study, at)), anchor };
}

function addCandidate(notebook: Notebook, study: StudyLeaf, candidate: Held, show: boolean): StudyLeaf {
  const key = heldKey(candidate);
  if (sideOfHeld(notebook.drawer, candidate) === null) return study;
  if (study.anchor !== null && heldKey(study.anchor) === key) return study;
  const at = study.candidates.findIndex((held) => heldKey(held) === key);
  if (at >= 0) return show && study.shown !== at ? { ...study, shown: at } : study;
  if (study.candidates.length >= limits.candidates) return study;
  const candidates = [...study.candidates, candidate];
  return { ...study, candidates, shown: show ? candidates.length - 1 : study.shown };
}

/** The study without one candidate; the one drawn in full stays in full where it can. Opinions stay, for when it comes back. */
export function withoutCandidate(study: StudyLeaf, index: number): StudyLeaf {
  if (study.candidates[index] === undefined) return study;
  const candidates = study.candidates.toSpliced(index, 1);
  const shown = study.shown > index ? study.shown - 1 : study.shown;
  return { ...study, candidates, shown: Math.max(0, Math.min(shown, candidates.length - 1)) };
}

function say(study: StudyLeaf, candidate: Held, opinion: Partial<Opinion>): StudyLeaf {
  const before = opinionOf(study, candidate);
  const after = { ...before, ...opinion };
  if (after.verdict === before.verdict && after.likes === before.likes) return study;
  return { ...study, opinions: { ...study.opinions, [heldKey(candidate)]: after } };
}
