import type { HandChange } from '../../sheet/model.ts';
import type { Edit } from '../edit-kinds.ts';

/** A few words that say what an edit does, as they follow "Undo: ". */
export function tellEdit(edit: Edit): string {
  switch (edit.do) {
    case 'add leaf':
      return `add a ${edit.leaf.kind} leaf`;
    case 'show candidate':
      return 'show another candidate';
    case 'correct':
      return handWords[edit.made.change.kind];
    case 'say':
      return edit.opinion.verdict === undefined ? 'say whether you like it' : 'say your verdict';
    default:
      return words[edit.do];
  }
}

/** Steps with the same key, one after the other, are one step of undo; null where each stands alone. */
export function mergeKeyOf(edit: Edit): string | null {
  switch (edit.do) {
    case 'set text':
    case 'rename leaf':
      return `${edit.do} ${edit.leafId}`;
    case 'rename notebook':
      return edit.do;
    case 'update sheet':
      return `${edit.do} ${edit.sheetId} ${Object.keys(edit.change).sort().join()}`;
    default:
      return null;
  }
}

const words: Record<Exclude<Edit['do'], 'add leaf' | 'show candidate' | 'say' | 'correct'>, string> = {
  'rename notebook': 'rename the notebook',
  'remove leaf': 'take out a leaf',
  'move leaf': 'move a leaf',
  'replace notebook': 'change to another notebook',
  'rename leaf': 'rename a leaf',
  'set text': 'write',
  'set anchor': 'choose the anchor',
  'add candidate': 'add a candidate',
  'remove candidate': 'take away a candidate',
  'set distance': 'change the distance',
  'set wheel': 'change the wheel',
  'set asks first': 'change who says it first',
  'add piece': 'add a piece to the kit',
  'update piece': 'change a piece of the kit',
  'remove piece': 'take a piece out of the kit',
  'set board study': 'choose what the board shows',
  'set board size': 'change the size of the board',
  'set board kind': 'change what the board shows',
  answer: 'answer the exercise',
  'point at inks': 'answer the exercise',
  'set exercise': 'change the exercise',
  'add sheet': 'add a sheet',
  'update sheet': 'change a sheet',
  'remove sheet': 'take a sheet out of the drawer',
  'set side': 'change a side',
  'add plain': 'add a plain',
  'update plain': 'change a plain',
  'remove plain': 'take a plain out of the drawer',
  'add part': 'add a part',
  'update part': 'change a part',
  'remove part': 'take away a part',
  'take back': 'take a correction back',
};

const handWords: Record<HandChange['kind'], string> = {
  rename: 'rename an ink',
  merge: 'merge two inks',
  split: 'split an ink',
  keep: 'keep an ink as it is',
  'set-aside': 'set an ink aside',
  'set-share': 'set an ink’s share',
  add: 'add an ink',
  'move-spot': 'read an ink from another spot',
};
