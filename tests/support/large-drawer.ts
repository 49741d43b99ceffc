import type { Notebook } from '../../src/notebook/model.ts';
import type { Sheet } from '../../src/sheet/model.ts';
import type { Picture } from '../../src/storage/database.ts';
import { openShelf } from '../../src/storage/shelf.ts';
import { chanceLab, chanceOf, labSide } from './chance.ts';

const words = [
  'Harbour',
  'Orchard',
  'Lantern',
  'Meadow',
  'Pebble',
  'Ribbon',
  'Thistle',
  'Cobble',
  'Paper',
  'Quill',
];

/** Id of the note and of the study in the notebook of a large drawer. */
export const largeDrawerLeaves = { note: 'leaf-note', study: 'leaf-study' } as const;

/** A notebook of so many sheets with two to seven inks each, a note and a study; the same for the same number. */
export function largeDrawer(count: number): Notebook {
  const chance = chanceOf(count);
  const sheets = Array.from({ length: count }, (_, n): Sheet => {
    const inks = 2 + Math.floor(chance() * 6);
    const labs = Array.from({ length: inks }, () => chanceLab(chance));
    const shares = labs.map(() => 0.01 + 0.1 * chance());
    return {
      id: `sheet-${n}`,
      name: `${words[n % 10]} ${words[Math.floor(n / 10) % 10]?.toLowerCase()} ${n}`,
      sides: { A: { reading: labSide(labs, shares, n % 5), pictureId: `picture-${n}` } },
      sizeMm: { width: 305, height: 305 },
      weight: null,
      count: 1 + (n % 4),
      note: '',
    };
  });
  const held = (n: number) => ({ kind: 'sheet', id: `sheet-${n}`, side: 'A' }) as const;
  return {
    id: `notebook-large-${count}`,
    title: `${count} sheets`,
    leaves: [
      { id: largeDrawerLeaves.note, kind: 'note', title: 'A note', text: 'Words.' },
      {
        id: largeDrawerLeaves.study,
        kind: 'study',
        title: 'A study',
        text: '',
        anchor: held(0),
        candidates: [held(1), held(2), held(3)],
        shown: 0,
        distance: 'apart',
        wheel: 'eye',
        asksFirst: false,
        opinions: {},
      },
    ],
    drawer: { sheets, plains: [], parts: [] },
  };
}

/** Puts such a notebook on the shelf of the browser that this runs in, every sheet with a small picture, to be opened next. */
export async function putLargeDrawer(count: number): Promise<void> {
  const shelf = openShelf();
  const drawn = await Promise.all(Array.from({ length: 24 }, (_, n) => draw(n)));
  const addedAt = new Date().toISOString();
  for (let from = 0; from < count; from += 200) {
    const some = Array.from({ length: Math.min(200, count - from) }, (_, i): Picture => {
      const n = from + i;
      return { id: `picture-${n}`, addedAt, ...drawn[n % drawn.length]! };
    });
    await shelf.putPictures(some);
  }
  const notebook = largeDrawer(count);
  await shelf.save(notebook, 0);
  await shelf.setSetting('last', notebook.id);
  await shelf.close();
}

async function draw(n: number): Promise<Omit<Picture, 'id' | 'addedAt'>> {
  const encoded = async (side: number) => {
    const canvas = new OffscreenCanvas(side, side);
    const context = canvas.getContext('2d')!;
    const chance = chanceOf(n + 1);
    context.fillStyle = `hsl(${n * 15} 30% 88%)`;
    context.fillRect(0, 0, side, side);
    for (let dot = 0; dot < 160; dot++) {
      context.fillStyle = `hsl(${n * 15 + chance() * 90} 60% ${30 + chance() * 50}%)`;
      context.fillRect(chance() * side, chance() * side, side / 14, side / 14);
    }
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
    return { bytes: await blob.arrayBuffer(), type: 'image/jpeg' as const };
  };
  return { ...(await encoded(480)), width: 480, height: 480, thumb: await encoded(160) };
}
