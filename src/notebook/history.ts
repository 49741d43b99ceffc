import type { Notebook } from './model.ts';

/** Where the notebook has been: whole notebooks, which share all that did not change between them. */
export interface History {
  readonly present: Notebook;
  /** Oldest first; each step holds the notebook before it, and what was done. */
  readonly past: readonly Step[];
  /** Next to be redone first; each holds the notebook after it. */
  readonly future: readonly Step[];
}

export interface Step {
  readonly notebook: Notebook;
  /** A few words: "add a candidate". */
  readonly says: string;
  /** Steps in a row with the same key are one step: a word typed letter by letter. */
  readonly mergeKey: string | null;
}

/** Steps of undo that are kept. */
export const mostSteps = 200;

export function startHistory(notebook: Notebook): History {
  return { present: notebook, past: [], future: [] };
}

/** One more step. The same object comes back where the notebook did not change. */
export function recordStep(
  history: History,
  notebook: Notebook,
  says: string,
  mergeKey: string | null = null,
): History {
  if (notebook === history.present) return history;
  const last = history.past.at(-1);
  const goesOn = mergeKey !== null && last?.mergeKey === mergeKey && history.future.length === 0;
  const past = goesOn ? history.past : [...history.past, { notebook: history.present, says, mergeKey }];
  return { present: notebook, past: past.slice(-mostSteps), future: [] };
}

/** One step back; the same object where there is none. */
export function undoStep(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    present: last.notebook,
    past: history.past.slice(0, -1),
    future: [{ ...last, notebook: history.present }, ...history.future],
  };
}

/** The history without its last step where that has this key: what was begun came to nothing. The same object otherwise. */
export function dropStep(history: History, mergeKey: string): History {
  const last = history.past.at(-1);
  return last?.mergeKey === mergeKey
    ? { present: last.notebook, past: history.past.slice(0, -1), future: [] }
    : history;
}

/** One step forward again; the same object where there is none. A redone step does not grow by typing on. */
export function redoStep(history: History): History {
  const next = history.future[0];
  if (next === undefined) return history;
  return {
    present: next.notebook,
    past: [...history.past, { notebook: history.present, says: next.says, mergeKey: null }],
    future: history.future.slice(1),
  };
}
