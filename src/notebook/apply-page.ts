import type { PageEdit } from './edit-kinds.ts';
import { withLeafOf } from './leaves.ts';
import { limits } from './limits.ts';
import type { Notebook } from './model.ts';

/** The notebook after an edit of a kit, a board or an exercise. */
export function applyPageEdit(notebook: Notebook, edit: PageEdit): Notebook {
  switch (edit.do) {
    case 'add piece':
      return withLeafOf(notebook, edit.leafId, 'kit', (kit) =>
        kit.pieces.length >= limits.pieces ? kit : { ...kit, pieces: [...kit.pieces, edit.piece] },
      );
    case 'update piece':
      return withLeafOf(notebook, edit.leafId, 'kit', (kit) =>
        kit.pieces[edit.index] === undefined
          ? kit
          : { ...kit, pieces: kit.pieces.with(edit.index, edit.piece) },
      );
    case 'remove piece':
      return withLeafOf(notebook, edit.leafId, 'kit', (kit) =>
        kit.pieces[edit.index] === undefined ? kit : { ...kit, pieces: kit.pieces.toSpliced(edit.index, 1) },
      );
    case 'set board study':
      return withLeafOf(notebook, edit.leafId, 'board', (board) => ({
        ...board,
        studyId: edit.studyId,
        candidate: edit.candidate,
      }));
    case 'set board size':
      return withLeafOf(notebook, edit.leafId, 'board', (board) =>
        board.size === edit.size ? board : { ...board, size: edit.size },
      );
    case 'set board kind':
      return withLeafOf(notebook, edit.leafId, 'board', (board) =>
        (board.shows ?? 'pair') === edit.shows ? board : { ...board, shows: edit.shows },
      );
    case 'answer':
      return withLeafOf(notebook, edit.leafId, 'exercise', (exercise) =>
        exercise.answered === edit.verdict ? exercise : { ...exercise, answered: edit.verdict },
      );
    case 'point at inks':
      return withLeafOf(notebook, edit.leafId, 'exercise', (exercise) => {
        const { pointed: before, ...rest } = exercise;
        if (edit.inks === null) return before === undefined ? exercise : rest;
        return { ...rest, pointed: edit.inks.slice(0, 2) };
      });
    case 'set exercise':
      return withLeafOf(notebook, edit.leafId, 'exercise', ({ pointed: _, ...exercise }) => ({
        ...exercise,
        ...edit.change,
        answered: null,
      }));
  }
}
