import type { Notebook, StudyLeaf } from './model.ts';

/** A notebook without leaves and with an empty drawer. */
export function emptyNotebook(id: string, title = 'My notebook'): Notebook {
  return { id, title, leaves: [], drawer: { sheets: [], plains: [], parts: [] } };
}

/** A study without papers: apart, on the eye's wheel, verdict shown. */
export function emptyStudy(id: string, title = 'A study'): StudyLeaf {
  return {
    kind: 'study',
    id,
    title,
    text: '',
    anchor: null,
    candidates: [],
    shown: 0,
    distance: 'apart',
    wheel: 'eye',
    asksFirst: false,
    opinions: {},
  };
}

/** True where nothing is written and nothing kept. */
export function isEmptyNotebook(notebook: Notebook): boolean {
  const { sheets, plains, parts } = notebook.drawer;
  return notebook.leaves.length + sheets.length + plains.length + parts.length === 0;
}
