import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { boardSizes } from '../../../src/board/model.ts';
import { wheels } from '../../../src/colour/model.ts';
import { distances, verdicts } from '../../../src/harmony/model.ts';
import { limits } from '../../../src/notebook/limits.ts';
import { exerciseAsks, type Leaf, type Notebook } from '../../../src/notebook/model.ts';
import {
  asideReasons,
  baseKinds,
  finishes,
  type HandMade,
  motifFamilies,
  motifs,
  plainKinds,
  printScales,
  type Sheet,
  type SheetSide,
  sheetSides,
  specialFinishes,
  weightGrades,
} from '../../../src/sheet/model.ts';
import { fileFromNotebook, notebookFromFile } from '../../../src/storage/notebook-file.ts';
import { openShelf, type Shelf } from '../../../src/storage/shelf.ts';
import { openBook } from '../../../src/workbench/book.ts';
import { holdState } from '../../../src/workbench/state-holder.ts';
import { sampleNotebook } from '../notebook/sample-notebook.ts';
import { anyNotebook } from './any-notebook.ts';
import { bundleBytes, opened } from './bundles.ts';

/** How many notebooks at and beyond the limits; `NOTEBOOKS=10000 npm test -- tests/unit/storage/at-the-limits` for many. */
const runs = Number(process.env.NOTEBOOKS ?? 100);

beforeAll(() => {
  globalThis.indexedDB = new IDBFactory();
});

const book = sampleNotebook();

/** Stored as the page stores it, read again, put into a backup, read again: what came back each time. */
async function throughAll(shelf: Shelf, notebook: Notebook) {
  const known = (await shelf.notebook(notebook.id))?.revision ?? 0;
  await shelf.save(notebook, known);
  const kept = await shelf.notebook(notebook.id);
  const bundle = await opened(await bundleBytes(kept?.notebook ?? notebook, () => Promise.resolve(null)));
  return { kept, bundle };
}

/** A bundle has a notebook under another id; without their pictures its sheets have none. */
const withoutIds = (notebook: Notebook): unknown =>
  JSON.parse(
    JSON.stringify({ ...notebook, id: '' }, (key, value: unknown) =>
      key === 'pictureId' || key === 'taken' ? undefined : value,
    ),
  );

describe('a notebook with every member of every list of the model', () => {
  it('is stored, opens, is saved as a backup, and opens from it', async () => {
    const notebook = withEverything();
    const { kept, bundle } = await throughAll(openShelf({ name: 'everything' }), notebook);
    expect(kept?.setAside).toEqual([]);
    expect(kept?.notebook).toEqual(notebook);
    expect(bundle.setAside).toEqual([]);
    expect(withoutIds(bundle.notebook)).toEqual(withoutIds(notebook));
  });
});

describe('any notebook, at every limit and beyond', () => {
  it(`opens again where it was stored, and leaves what was there where it was refused (${runs})`, async () => {
    const shelf = openShelf({ name: 'limits' });
    const counts = { stored: 0, refused: 0 };
    let before: Notebook | null = null;
    await fc.assert(
      fc.asyncProperty(anyNotebook, fc.array(spoiler, { maxLength: 3 }), async (any, spoilers) => {
        const notebook = spoilers.reduce(spoilt, { ...any, id: 'n' }) as Notebook;
        const holder = holdState({ notebook: book, leafId: null, messages: [] } as never);
        const says: string[] = [];
        const page = openBook(
          holder,
          () => {},
          (why) => says.push(why),
        );
        const was = page.notebook;
        if (!page.dispatchAll([{ do: 'replace notebook', notebook }])) {
          counts.refused++;
          expect(page.notebook).toBe(was);
          expect(says).toHaveLength(1);
          expect(says[0]).toMatch(/^[A-Z].*\.$/);
          expect((await shelf.notebook('n'))?.notebook ?? null).toEqual(before);
          return;
        }
        counts.stored++;
        expect(says).toEqual([]);
        const whole = notebookFromFile(fileFromNotebook(notebook));
        const { kept, bundle } = await throughAll(shelf, page.notebook);
        expect(kept?.setAside).toEqual([]);
        expect(kept?.notebook).toEqual(whole);
        expect(bundle.setAside).toEqual([]);
        expect(withoutIds(bundle.notebook)).toEqual(withoutIds(whole));
        before = whole;
      }),
      { numRuns: runs },
    );
    if (runs > 100) console.log(`${counts.stored} stored and opened, ${counts.refused} refused`);
    // A test in which nothing is refused, or all is, tests nothing.
    expect(Math.min(counts.stored, counts.refused)).toBeGreaterThan(runs / 10);
  }, 3_600_000);
});

/** Numbers that limits end at, with those beside them. */
const edges = [
  0,
  1,
  60,
  360,
  ...Object.values(limits).flatMap((one) => (typeof one === 'number' ? [one] : [])),
]
  .flatMap((n) => [n - 1, n, n + 1, -n, n * 1.0001])
  .concat([Number.NaN, Infinity, 1e308, 0.5, 2.6, -0.6]);
const strings = [limits.name, limits.text].flatMap((n) => [n, n + 1].map((length) => 'x'.repeat(length)));

interface Spoiler {
  readonly at: number;
  readonly number: number;
  readonly text: string;
  readonly kind: 'value' | 'unknown member' | 'double';
}
const spoiler: fc.Arbitrary<Spoiler> = fc.record({
  at: fc.nat(),
  number: fc.constantFrom(...edges),
  text: fc.constantFrom(...strings, '', '../x', '__proto__'),
  kind: fc.constantFrom('value' as const, 'value' as const, 'unknown member' as const, 'double' as const),
});

/** One place of the notebook at a limit or past it. */
function spoilt(notebook: unknown, { at, number, text, kind }: Spoiler): unknown {
  const other = structuredClone(notebook) as { leaves: unknown[]; drawer: { plains: unknown[] } };
  if (kind === 'double') {
    const list = at % 2 === 0 ? other.leaves : other.drawer.plains;
    if (list[0] !== undefined) list.push(list[0]);
    return other;
  }
  const places: [Record<string, unknown>, string][] = [];
  const walk = (value: unknown, depth: number): void => {
    if (typeof value !== 'object' || value === null) return;
    for (const [key, one] of Object.entries(value)) {
      // The notebook's own id is how the shelf knows it.
      if (depth === 0 && key === 'id') continue;
      if (typeof one === 'number' || typeof one === 'string') places.push([value as never, key]);
      else walk(one, depth + 1);
    }
  };
  walk(other, 0);
  const place = places[at % places.length];
  if (place === undefined) return other;
  const [holder, key] = place;
  if (kind === 'unknown member') holder[`${key} too`] = text;
  else holder[key] = typeof holder[key] === 'number' ? number : text;
  return other;
}

function withEverything(): Notebook {
  const sheet = book.drawer.sheets[0]!;
  const { reading } = sheet.sides.A;
  const ink = reading.inks[0]!;
  const study = book.leaves.find((leaf) => leaf.kind === 'study')!;
  const kit = book.leaves.find((leaf) => leaf.kind === 'kit')!;
  const board = book.leaves.find((leaf) => leaf.kind === 'board')!;
  const exercise = book.leaves.find((leaf) => leaf.kind === 'exercise') ?? {
    kind: 'exercise' as const,
    id: 'e',
    title: '',
    text: '',
    studyId: study.id,
    answered: null,
  };
  const hand: HandMade[] = [
    { change: { kind: 'rename', ink: 'B', name: 'n' }, inks: { B: ink } },
    { change: { kind: 'merge', from: 'B', into: 'C' }, inks: {} },
    { change: { kind: 'split', ink: 'B' }, inks: {} },
    { change: { kind: 'keep', ink: 'B' }, inks: {} },
    { change: { kind: 'set-share', ink: 'B', share: 1 }, inks: {}, share: 1 },
    { change: { kind: 'move-spot', ink: 'B', spot: { x: 0, y: 1 } }, inks: {}, hex: '#ffffff' },
    { change: { kind: 'add', spot: { x: 1, y: 0 } }, inks: {} },
    ...asideReasons.map(
      (reason): HandMade => ({ change: { kind: 'set-aside', ink: 'B', reason }, inks: {} }),
    ),
    ...specialFinishes.map(
      (special): HandMade => ({ change: { kind: 'add', hex: '#ffffff', special }, inks: {} }),
    ),
  ];
  const variants: Sheet['sides']['A'][] = [
    ...baseKinds.map((kind) => ({
      reading: { ...reading, base: { ...reading.base, kind } },
      pictureId: null,
    })),
    ...printScales.map((scale) => ({
      reading: { ...reading, print: { ...reading.print, scale } },
      pictureId: null,
    })),
    ...motifFamilies.map((family) => ({
      reading: { ...reading, motif: { family, sure: 1 } },
      pictureId: null,
    })),
    ...weightGrades.map((grade) => ({
      reading: { ...reading, tags: { motifs, finishes, weight: { gsm: limits.gsm, lb: limits.lb, grade } } },
      pictureId: null,
    })),
    ...(['white', 'grey', 'chart'] as const).map((kind) => {
      const frame = { x: 0, y: 0, width: 1, height: 1 };
      const light = kind === 'chart' ? { kind, frame } : { kind, frame, reflectance: 1 };
      return { reading, pictureId: null, taken: { pictureId: 'p', light }, asRead: reading, hand };
    }),
  ];
  const held = (side: SheetSide) => ({ kind: 'sheet' as const, id: 'sheet-0', side });
  const leaves: Leaf[] = [
    ...book.leaves,
    ...distances.map((distance) => ({ ...study, id: `d-${distance}`, distance })),
    ...wheels.map((wheel) => ({ ...study, id: `w-${wheel}`, wheel, anchor: held('B') })),
    ...verdicts.map((verdict) => ({
      ...study,
      id: `v-${verdict}`,
      candidates: sheetSides.map(held),
      opinions: { 'sheet:sheet-0:B': { verdict, likes: false } },
    })),
    ...boardSizes.map((size) => ({ ...board, id: `b-${size}`, size })),
    ...exerciseAsks.flatMap((ask, i) =>
      verdicts.map((answered, k) => ({ ...exercise, id: `e-${i}-${k}`, ask, answered })),
    ),
    { ...kit, id: 'photo', pieces: [{ held: held('A'), areaMm2: limits.areaMm2, role: 'photo' }] },
  ];
  return {
    ...book,
    id: 'everything',
    leaves,
    drawer: {
      sheets: [
        ...book.drawer.sheets,
        ...variants.map((A, i) => ({ ...sheet, id: `sheet-${i}`, sides: { A, B: A }, count: limits.count })),
      ],
      plains: [
        ...book.drawer.plains,
        ...plainKinds.map((kind, i) => ({ id: `plain-${i}`, name: kind, kind, ink })),
        ...specialFinishes.map((special, i) => ({
          id: `special-${i}`,
          name: special,
          kind: 'tag' as const,
          ink: { ...ink, special },
        })),
      ],
      parts: [
        ...book.drawer.parts,
        ...sheetSides.map((side) => ({
          id: `part-${side}`,
          name: side,
          sheetId: 'sheet-0',
          side,
          frame: { x: 0, y: 0, width: 1, height: 1 },
          sizeMm: { width: limits.lengthMm, height: 0 },
          reading,
        })),
      ],
    },
  };
}
