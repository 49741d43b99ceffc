import type { Held } from '../drawer/model.ts';
import type { Leaf, Notebook, StudyLeaf } from '../notebook/model.ts';
import type { KeptSide, PixelImage, Sheet, Side } from '../sheet/model.ts';
import { demoPlains } from './plains.ts';
import { type DemoSheet, type DemoSide, demoSheets, drawDemoSheet } from './sheets.ts';

/** A picture of the demo, by the id under which a kept side names it. */
export interface DemoPicture {
  readonly id: string;
  /** As a file would be called. */
  readonly name: string;
  readonly image: PixelImage;
}

/**
 * The notebook that is open on first start, and the pictures its sheets were read from.
 * @param read the reading of a side; called once for each of them.
 * @param px size of each picture in pixels, default 640.
 */
export function demoNotebook(
  read: (image: PixelImage) => Side,
  px = 640,
): { readonly notebook: Notebook; readonly pictures: readonly DemoPicture[] } {
  const pictures: DemoPicture[] = [];
  const keep = (sheet: DemoSheet, side: 'A' | 'B', face: DemoSide): KeptSide => {
    const picture = {
      id: `demo-${sheet.id}-${side.toLowerCase()}`,
      name: `${sheet.id}-${side.toLowerCase()}.png`,
      image: drawDemoSheet(sheet.id, side, px),
    };
    pictures.push(picture);
    const reading: Side = {
      ...read(picture.image),
      file: picture.name,
      light: { known: true, note: 'Drawn for this notebook, so there was no lamp to correct.' },
      tags: { ...face.tags, weight: sheet.weight },
    };
    return { reading, pictureId: picture.id };
  };
  const sheets = demoSheets.map((sheet): Sheet => {
    const { id, name, weight, count, note, sides } = sheet;
    const A = keep(sheet, 'A', sides.A);
    const kept = sides.B ? { A, B: keep(sheet, 'B', sides.B) } : { A };
    return { id, name, sides: kept, sizeMm: { width: 305, height: 305 }, weight, count, note };
  });
  const notebook: Notebook = {
    id: 'orchard-album',
    title: 'The orchard album',
    leaves: demoLeaves,
    drawer: { sheets, plains: demoPlains, parts: [] },
  };
  return { notebook, pictures };
}

/** The leaves of the demo notebook, in order. */
export const demoLeaves: readonly Leaf[] = [
  study({
    id: 'bough-and-ledger',
    title: 'Does the last blossom hold with the new ledger?',
    text: 'The blossom is fifteen years old and there is one sheet left of it. The ledger and the stripe were bought last week.',
    anchor: { kind: 'sheet', id: 'blossom-bough', side: 'A' },
    candidates: [
      { kind: 'sheet', id: 'press-ledger', side: 'A' },
      { kind: 'sheet', id: 'ladder-stripe', side: 'A' },
      { kind: 'plain', id: 'cardstock-kraft-cardstock' },
    ],
  }),
  study({
    id: 'bough-and-hearts',
    title: 'Hearts among the blossom',
    text: 'The same cream and the same green are in the blossom and in the hearts. So what is it that the eye trips over? The quilt beside them shows how it looks when the red is right.',
    anchor: { kind: 'sheet', id: 'blossom-bough', side: 'A' },
    candidates: [
      { kind: 'sheet', id: 'pip-hearts', side: 'A' },
      { kind: 'sheet', id: 'morning-quilt', side: 'A' },
    ],
  }),
  study({
    id: 'pips-and-lanterns',
    title: 'Lanterns beside the hearts: what do you say?',
    text: 'The pip hearts were to be the page of the evening. The apple day ended with lanterns, and someone bought a paper for them. Look first, say what you think, and then see.',
    anchor: { kind: 'sheet', id: 'pip-hearts', side: 'A' },
    candidates: [{ kind: 'sheet', id: 'lantern-row', side: 'A' }],
    asksFirst: true,
  }),
  {
    id: 'board-bough-and-hearts',
    kind: 'board',
    title: 'For the kitchen table',
    studyId: 'bough-and-hearts',
    candidate: { kind: 'sheet', id: 'pip-hearts', side: 'A' },
    words: 'Two reds that nearly agree. Look at this before you cut the last sheet.',
    size: 'square',
  },
  {
    id: 'welcome',
    kind: 'note',
    title: 'About this notebook',
    text: [
      'This notebook belongs to an orchard that does not exist. Every autumn it holds an apple day, and somebody has to make the album. The papers in the drawer are drawn, not photographed; some are old, and one is the last of its kind.',
      'To try your own: drop two photographs of patterned paper anywhere on the page. They open in a notebook of your own. Lay a white card beside the paper when you take them, and the light can be taken out of the colours. Nothing you drop leaves this device.',
    ].join('\n\n'),
  },
];

function study(given: {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly anchor: Held;
  readonly candidates: readonly Held[];
  readonly asksFirst?: boolean;
}): StudyLeaf {
  return {
    kind: 'study',
    shown: 0,
    distance: 'apart',
    wheel: 'eye',
    asksFirst: false,
    opinions: {},
    ...given,
  };
}
