import type { Held } from '../../../src/drawer/model.ts';
import { emptyNotebook, emptyStudy } from '../../../src/notebook/empty.ts';
import type { Notebook, StudyLeaf } from '../../../src/notebook/model.ts';
import type { Sheet } from '../../../src/sheet/model.ts';
import { plainOf } from '../../../src/sheet/plain.ts';
import { handSide } from '../../support/sides.ts';

/** A notebook of three sheets, a plain and a part, with a study, a kit and a board on it. */

export const bunting = { kind: 'sheet', id: 'bunting', side: 'A' } as const satisfies Held;
export const ledger = { kind: 'sheet', id: 'ledger', side: 'A' } as const satisfies Held;
export const ledgerBack = { kind: 'sheet', id: 'ledger', side: 'B' } as const satisfies Held;
export const dots = { kind: 'sheet', id: 'dots', side: 'A' } as const satisfies Held;
export const kraft = { kind: 'plain', id: 'cardstock-kraft' } as const satisfies Held;
export const corner = { kind: 'part', id: 'corner' } as const satisfies Held;

const buntingSide = handSide({
  base: 'cream',
  hex: '#f4e8cd',
  inks: [
    ['#1f3a5f', 0.11],
    ['#e2725b', 0.1],
  ],
});
const ledgerSide = handSide({
  base: 'cream',
  hex: '#f2e6cb',
  inks: [
    ['#62bfc1', 0.28],
    ['#c23b4e', 0.04],
  ],
});

export function sheet(id: string, name: string, back = false): Sheet {
  const reading = id === 'bunting' ? buntingSide : ledgerSide;
  const A = { reading, pictureId: `picture-${id}` };
  return {
    id,
    name,
    sides: back ? { A, B: { reading: buntingSide, pictureId: null } } : { A },
    sizeMm: { width: 305, height: 305 },
    weight: { gsm: 216, lb: 80, grade: 'cover' },
    count: 1,
    note: '',
  };
}

export function sampleNotebook(): Notebook {
  const study: StudyLeaf = {
    ...emptyStudy('s1', 'Does it hold?'),
    anchor: bunting,
    candidates: [ledger, dots, kraft],
  };
  return {
    ...emptyNotebook('n1', 'Garden book'),
    leaves: [
      { kind: 'note', id: 'w1', title: 'Welcome', text: 'Hello' },
      study,
      {
        kind: 'kit',
        id: 'k1',
        title: 'For the page',
        text: '',
        pieces: [
          { held: ledger, areaMm2: 900 },
          { held: corner, areaMm2: null },
        ],
      },
      {
        kind: 'board',
        id: 'b1',
        title: 'To show',
        studyId: 's1',
        candidate: dots,
        words: '',
        size: 'square',
      },
      { kind: 'sheet', id: 'l1', title: 'Ledger', sheetId: 'ledger', text: '' },
      { kind: 'exercise', id: 'e1', title: 'You say', text: '', studyId: 's1', answered: null },
    ],
    drawer: {
      sheets: [sheet('bunting', 'Bunting'), sheet('ledger', 'Ledger', true), sheet('dots', 'Dots')],
      plains: [plainOf({ name: 'kraft', kind: 'cardstock', hex: '#b08d62' })],
      parts: [
        {
          id: 'corner',
          name: 'Corner of the ledger',
          sheetId: 'ledger',
          side: 'A',
          frame: { x: 0, y: 0, width: 0.5, height: 0.5 },
          sizeMm: { width: 150, height: 150 },
          reading: ledgerSide,
        },
      ],
    },
  };
}

export function studyOf(notebook: Notebook): StudyLeaf {
  const leaf = notebook.leaves.find((one) => one.kind === 'study');
  if (leaf?.kind !== 'study') throw new Error('the sample has a study');
  return leaf;
}
