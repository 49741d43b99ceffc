import { applyEdit, type Edit } from '../notebook/edits.ts';
import { dropStep, type History, recordStep, redoStep, startHistory, undoStep } from '../notebook/history.ts';
import type { Notebook } from '../notebook/model.ts';
import { mergeKeyOf, tellEdit } from '../notebook/words/tell.ts';
import { refusalOf } from '../storage/refusal.ts';
import type { StateHolder } from './state-holder.ts';
import { stepNames } from './words/step-names.ts';

/** Whose change it was: hers, another tab's, or nobody's where a notebook was put in place on opening. */
export type ChangedBy = 'reader' | 'other tab' | 'opening';

/** The open notebook with its undo. Keeps the state's notebook, leaf and undo fields; calls back with each change. */
export interface Book {
  readonly notebook: Notebook;
  /**
   * @returns false where what came of it could not be stored and opened again: nothing is changed then, and `onRefused`
   * was told why.
   */
  dispatchAll(edits: readonly Edit[], says?: string, mergeKey?: string): boolean;
  /** Leaves no trace of a step that came to nothing, where nothing was done since. @returns whether it could. */
  drop(mergeKey: string): boolean;
  undo(): void;
  redo(): void;
  turnTo(leafId: string): void;
  /** What another tab did: one step of undo for as long as nothing is done here between. */
  takeFromOtherTab(notebook: Notebook): void;
  /** Puts a notebook in place without a step of undo: on opening. */
  start(notebook: Notebook, leafId: string | null): void;
}

/** Steps of typing join where they follow each other within this time, in ms. */
const joinMs = 2_000;

export function openBook(
  holder: StateHolder,
  onChange: (notebook: Notebook, by: ChangedBy) => void,
  onRefused: (why: string) => void = () => {},
  now = () => Date.now(),
): Book {
  let history: History = startHistory(holder.state.notebook);
  let lastAt = 0;
  let burst = 0;

  const show = (next: History, by: ChangedBy = 'reader', leafId = holder.state.leafId) => {
    const changed = next.present !== history.present;
    const before = history.present;
    history = next;
    holder.set({
      notebook: next.present,
      leafId: leafNear(before, next.present, leafId),
      canUndo: next.past.length > 0,
      canRedo: next.future.length > 0,
      undoes: next.past.at(-1)?.says ?? null,
      redoes: next.future[0]?.says ?? null,
    });
    if (changed) onChange(next.present, by);
  };

  function record(edits: readonly Edit[], by: ChangedBy, says?: string, mergeKey?: string): boolean {
    const first = edits[0];
    if (first === undefined) return true;
    const next = edits.reduce(applyEdit, history.present);
    const refused = refusalOf(next, history.present);
    if (refused !== null) {
      onRefused(refused);
      return false;
    }
    if (now() - lastAt > joinMs) burst++;
    lastAt = now();
    const own = edits.length === 1 ? mergeKeyOf(first) : null;
    const key = mergeKey ?? (own === null ? null : `${own} ${burst}`);
    show(recordStep(history, next, says ?? tellEdit(first), key), by);
    return true;
  }

  return {
    get notebook() {
      return history.present;
    },
    dispatchAll: (edits, says, mergeKey) => record(edits, 'reader', says, mergeKey),
    drop(mergeKey) {
      const next = dropStep(history, mergeKey);
      const could = next !== history;
      if (could) show(next);
      return could;
    },
    undo: () => show(undoStep(history)),
    redo: () => show(redoStep(history)),
    turnTo(leafId) {
      if (history.present.leaves.some((leaf) => leaf.id === leafId)) holder.set({ leafId });
    },
    takeFromOtherTab(notebook) {
      record([{ do: 'replace notebook', notebook }], 'other tab', stepNames.fromOtherTab, 'another tab');
    },
    start(notebook, leafId) {
      const known = notebook.leaves.some((leaf) => leaf.id === leafId);
      show(startHistory(notebook), 'opening', known ? leafId : (notebook.leaves[0]?.id ?? null));
    },
  };
}

/** The leaf to look at after a change: the same one, or what now stands where it stood. */
function leafNear(before: Notebook, after: Notebook, leafId: string | null): string | null {
  if (after.leaves.some((leaf) => leaf.id === leafId)) return leafId;
  const at = before.id === after.id ? before.leaves.findIndex((leaf) => leaf.id === leafId) : 0;
  return after.leaves[Math.min(Math.max(at, 0), after.leaves.length - 1)]?.id ?? null;
}
