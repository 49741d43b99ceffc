import { describe, expect, it } from 'vitest';
import type { Drawer } from '../../../src/drawer/model.ts';
import type { Notebook } from '../../../src/notebook/model.ts';
import type { Places } from '../../../src/sheet/model.ts';
import { startAdvice } from '../../../src/workbench/advice.ts';
import { startComparisons } from '../../../src/workbench/comparisons.ts';
import { handMade, looks } from '../../support/judging/families.ts';
import { bunting, ledger, sampleNotebook, sheet } from '../notebook/sample-notebook.ts';

const sheetOf = (id: string, colours: readonly (readonly [string, number])[]) => ({
  ...sheet(id, id),
  sides: { A: { reading: handMade(colours, looks.loose), pictureId: null } },
});
const drawer: Drawer = {
  sheets: [
    sheetOf('bunting', [
      ['#f3e8ce', 0.6],
      ['#db5a62', 0.2],
      ['#6c9a4f', 0.2],
    ]),
    sheetOf('ledger', [
      ['#f1f5fa', 0.6],
      ['#6f45b5', 0.2],
      ['#b4dc3a', 0.2],
    ]),
  ],
  plains: [],
  parts: [],
};
const notebook: Notebook = { ...sampleNotebook(), drawer };
const pair = { anchor: bunting, candidate: ledger, distance: 'apart' } as const;
const drawn = (rows: readonly string[]): Places => ({
  width: rows[0]!.length,
  height: rows.length,
  labels: Uint8Array.from(rows.join(''), Number),
});
const apart = drawn(['11110000', '11110022', '11110022', '11110000']);
const allOver = drawn(['12121212', '21212121', '12121212', '21212121', '12121212', '21212121']);

describe('what could mend a pair', () => {
  it('is told once it is known where the inks lie, and not before', async () => {
    const comparisons = startComparisons();
    let arrived = 0;
    const advice = startAdvice(
      comparisons,
      async ({ drawer: { sheets } }, held) => (held.id === sheets[1]!.id ? apart : null),
      () => {
        arrived += 1;
      },
    );
    const before = comparisons.of(drawer, bunting, ledger, 'apart')!;
    expect(advice.now(notebook, pair)).toBeNull();
    expect(advice.now(notebook, pair)).toBeNull();
    const told = await advice.whenKnown(notebook, pair);
    expect(arrived).toBe(2);
    expect(told).toEqual(comparisons.remedies(drawer, pair, { candidate: apart }));
    expect(told.length).toBeGreaterThan(1);
    expect(advice.now(notebook, pair)).toBe(told);
    expect(comparisons.of(drawer, bunting, ledger, 'apart')).toBe(before);
  });

  it('goes by where they lie: a colour that lies all over is not cut away', async () => {
    const advice = startAdvice(
      startComparisons(),
      async () => allOver,
      () => {},
    );
    const told = await advice.whenKnown(notebook, pair);
    expect(told.length).toBeGreaterThan(1);
    expect(told.filter(({ kind }) => kind === 'trim')).toEqual([]);
  });

  it('goes by share where a picture can’t be read again, and waits for nothing where a paper has left', async () => {
    const comparisons = startComparisons();
    const advice = startAdvice(
      comparisons,
      () => Promise.reject(new Error('no picture')),
      () => {},
    );
    expect(await advice.whenKnown(notebook, pair)).toEqual(comparisons.remedies(drawer, pair, undefined));
    const gone = { ...pair, candidate: { ...ledger, id: 'gone' } };
    expect(advice.now(notebook, gone)).toEqual([]);
    expect(await advice.whenKnown(notebook, gone)).toEqual([]);
  });

  it('waits for nothing where a pair holds: then nothing is cut away', () => {
    const advice = startAdvice(
      startComparisons(),
      () => Promise.reject(new Error('not asked for')),
      () => {},
    );
    expect(advice.now(notebook, { ...pair, candidate: bunting })).toEqual([]);
  });
});
