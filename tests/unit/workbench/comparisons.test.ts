import { describe, expect, it } from 'vitest';
import type { Drawer } from '../../../src/drawer/model.ts';
import type { Places } from '../../../src/sheet/model.ts';
import { startComparisons } from '../../../src/workbench/comparisons.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { colour as c, onWhite } from '../harmony/trade-colours.ts';
import { bunting, ledger, sheet } from '../notebook/sample-notebook.ts';

const sheetOf = (id: string, spec: HandSide) => ({
  ...sheet(id, id),
  sides: { A: { reading: handSide(spec), pictureId: null } },
});
const drawer: Drawer = {
  sheets: [
    sheetOf('bunting', onWhite([c.coral, 0.3])),
    sheetOf('ledger', onWhite([c.violet, 0.3], [c.coral, 0.2])),
  ],
  plains: [],
  parts: [],
};
const drawn = (rows: readonly string[]): Places => ({
  width: rows[0]!.length,
  height: rows.length,
  labels: Uint8Array.from(rows.join(''), Number),
});

describe('a comparison that is kept', () => {
  it('is made anew, and goes by where the inks lie, once that is known of a paper in it', () => {
    const comparisons = startComparisons();
    const compared = () => comparisons.of(drawer, bunting, ledger, 'apart')!;
    const trims = () => compared().remedies.filter(({ kind }) => kind === 'trim').length;
    expect(trims()).toBe(0);
    const before = compared();
    expect(compared()).toBe(before);

    const reading = drawer.sheets[1]!.sides.A.reading;
    const apart = drawn(['11110000', '11110022', '11110022', '11110000']);
    comparisons.lies(reading, apart);
    expect(trims()).toBeGreaterThan(0);
    const kept = compared();
    comparisons.lies(reading, apart);
    expect(compared()).toBe(kept);

    comparisons.lies(
      reading,
      drawn(['10101012', '01010121', '10101012', '01010121', '10101012', '01010121']),
    );
    expect(trims()).toBe(0);
  });
});
