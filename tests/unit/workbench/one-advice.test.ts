import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { demoNotebook } from '../../../src/demo/notebook.ts';
import { allHeld, heldKey, sideOfHeld } from '../../../src/drawer/held.ts';
import type { Drawer, Held } from '../../../src/drawer/model.ts';
import { advise } from '../../../src/harmony/advise.ts';
import type { Notebook } from '../../../src/notebook/model.ts';
import type { PixelImage, Places, Side } from '../../../src/sheet/model.ts';
import { readWithPlaces } from '../../../src/sheet/read-side.ts';
import { startAdvice } from '../../../src/workbench/advice.ts';
import { startComparisons } from '../../../src/workbench/comparisons.ts';

/** The demo as it is read, with the places and the pixels of each of its readings. */
const placed = new Map<Side['base'], { readonly places: Places; readonly image: PixelImage }>();
const { notebook } = demoNotebook((image) => {
  const { side, places } = readWithPlaces(image);
  placed.set(side.base, { places, image });
  return side;
}, 320);
const { drawer } = notebook;
const held = allHeld(drawer).filter((one) => one.kind === 'sheet');
const pairs = held.flatMap((anchor) =>
  held
    .filter(({ id }) => id !== anchor.id)
    .map((candidate) => ({ anchor, candidate, distance: 'apart' as const })),
);
const placesIn = (book: Notebook, one: Held): Promise<Places | null> =>
  Promise.resolve(placed.get(sideOfHeld(book.drawer, one)!.base)?.places ?? null);

describe('advice', () => {
  it('is the same before and after inks were lit up, on every pair of the demo', async () => {
    const comparisons = startComparisons();
    const advice = startAdvice(comparisons, placesIn, () => {});
    let byPlaces = 0;
    for (const pair of pairs) {
      const before = comparisons.of(drawer, pair.anchor, pair.candidate, 'apart')!;
      const told = JSON.stringify(before);
      const shown = advice.now(notebook, pair);
      // To light up inks, the page asks where they lie.
      const lit = {
        anchor: await placesIn(notebook, pair.anchor),
        candidate: await placesIn(notebook, pair.candidate),
      };
      expect(lit.anchor).not.toBeNull();
      const after = await advice.whenKnown(notebook, pair);
      if (shown !== null) expect(after).toBe(shown);
      expect(advice.now(notebook, pair)).toBe(after);
      expect(comparisons.of(drawer, pair.anchor, pair.candidate, 'apart')).toBe(before);
      expect(JSON.stringify(before)).toBe(told);
      const byShare = comparisons.remedies(drawer, pair, undefined);
      if (JSON.stringify(byShare) !== JSON.stringify(after)) byPlaces += 1;
    }
    expect(pairs.length).toBeGreaterThan(90);
    // Some of it does go by places, or nothing was tried here.
    expect(byPlaces).toBeGreaterThan(0);
  });

  const folder = mkdtempSync(join(tmpdir(), 'quirewise-advice-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('is the same on the page, in a terminal and from the engine, where there is nothing else to mend with', async () => {
    const file = (one: Held) => `${heldKey(one).replaceAll(':', '-')}.png`;
    for (const one of held) {
      const { data, width, height } = placed.get(sideOfHeld(drawer, one)!.base)!.image;
      const raw = { raw: { width, height, channels: 4 as const } };
      writeFileSync(join(folder, file(one)), await sharp(Buffer.from(data.buffer), raw).png().toBuffer());
    }
    // Side A of each sheet alone: the terminal knows of no other side.
    const fronts: Drawer = {
      sheets: drawer.sheets.map(({ sides, ...rest }) => ({ ...rest, sides: { A: sides.A } })),
      plains: [],
      parts: [],
    };
    const front = allHeld(fronts);
    let mended = 0;
    for (const anchor of front.slice(0, 2)) {
      const candidates = front.filter(({ id }) => id !== anchor.id);
      const orders = candidates.flatMap((one) => ['--candidate', file(one)]);
      let out = '';
      const status = await main(['--anchor', file(anchor), ...orders, '--distance', 'apart', '--json'], {
        folder,
        out: (text) => {
          out += text;
        },
        sorry: () => {},
      });
      expect(status).toBe(0);
      for (const { side, verdict, remedies } of (JSON.parse(out) as { candidates: readonly Told[] })
        .candidates) {
        const candidate = candidates.find((one) => file(one) === side.file)!;
        const only = fronts.sheets.filter(({ id }) => id === anchor.id || id === candidate.id);
        const book: Notebook = { ...notebook, drawer: { ...fronts, sheets: only } };
        const comparisons = startComparisons();
        const page = await startAdvice(comparisons, placesIn, () => {}).whenKnown(book, {
          anchor,
          candidate,
          distance: 'apart',
        });
        const sides = [anchor, candidate].map((one) => sideOfHeld(fronts, one)!);
        const engine = advise(sides[0]!, sides[1]!, {
          places: {
            anchor: placed.get(sides[0]!.base)!.places,
            candidate: placed.get(sides[1]!.base)!.places,
          },
        });
        const kinds = (all: Told['remedies']) =>
          all.map(({ kind, inks, verdictAfter }) => ({ kind, inks, verdictAfter }));
        expect(verdict).toBe(comparisons.of(book.drawer, anchor, candidate, 'apart')!.verdict);
        expect(kinds(remedies), side.file).toEqual(kinds(page));
        expect(kinds(engine.remedies), side.file).toEqual(kinds(page));
        mended += page.length;
      }
    }
    expect(mended).toBeGreaterThan(10);
  });
});

interface Told {
  readonly side: { readonly file: string };
  readonly verdict: string;
  readonly remedies: readonly {
    readonly kind: string;
    readonly inks: readonly string[];
    readonly verdictAfter: string;
  }[];
}
