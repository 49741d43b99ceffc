import { applyBookEdit } from './apply-book.ts';
import { applyDrawerEdit } from './apply-drawer.ts';
import { applyHandEdit } from './apply-hand.ts';
import { applyPageEdit } from './apply-page.ts';
import { applyStudyEdit } from './apply-study.ts';
import type { Edit } from './edit-kinds.ts';
import type { Notebook } from './model.ts';

export type * from './edit-kinds.ts';

/**
 * The notebook after one edit. An edit that does not fit (an id that is not there, an index out of range) changes
 * nothing and gives the same object back, so a late click never tears a notebook.
 */
export function applyEdit(notebook: Notebook, edit: Edit): Notebook {
  switch (edit.do) {
    case 'rename notebook':
    case 'add leaf':
    case 'remove leaf':
    case 'move leaf':
    case 'replace notebook':
    case 'rename leaf':
    case 'set text':
      return applyBookEdit(notebook, edit);
    case 'set anchor':
    case 'add candidate':
    case 'remove candidate':
    case 'show candidate':
    case 'set distance':
    case 'set wheel':
    case 'set asks first':
    case 'say':
      return applyStudyEdit(notebook, edit);
    case 'add piece':
    case 'update piece':
    case 'remove piece':
    case 'set board study':
    case 'set board size':
    case 'set board kind':
    case 'answer':
    case 'point at inks':
    case 'set exercise':
      return applyPageEdit(notebook, edit);
    case 'correct':
    case 'take back':
      return applyHandEdit(notebook, edit);
    default:
      return applyDrawerEdit(notebook, edit);
  }
}
