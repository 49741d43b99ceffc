import { describe, expect, test } from 'vitest';
import { adaptationMatrix } from '../../../src/colour/adaptation.ts';
import { type WhiteName, white, whites } from '../../../src/colour/illuminants.ts';
import { numbers, table } from './table.ts';

describe('whites', () => {
  // Source: CIE 015:2018 chromaticities; X and Z recomputed, see SOURCE.md.
  const rows = table('illuminants/illuminants-2deg.csv');

  test.each(rows)('$name has the XYZ of its chromaticity', (row) => {
    const { x, y, z } = white(Number(row.x), Number(row.y));
    // The chromaticities of the indoor daylights are published to five decimals and their XYZ were computed from more.
    expect(Math.abs(x - Number(row.X))).toBeLessThan(2.5e-5);
    expect(y).toBe(1);
    expect(Math.abs(z - Number(row.Z))).toBeLessThan(2.5e-5);
  });

  test('are those of the table, each by its name', () => {
    for (const [name, xyz] of Object.entries(whites)) {
      const row = rows.find((r) => r.name!.replace('-', '') === name)!;
      expect(xyz.x).toBeCloseTo(Number(row.X), 5);
      expect(xyz.z).toBeCloseTo(Number(row.Z), 5);
    }
  });
});

describe('adaptation', () => {
  // Sources: Bradford: Lam 1985 as in CSS Color 4; CAT16: Li et al. 2017, doi 10.1002/col.22131; matrices recomputed.
  const rows = table('adaptation/cat-matrices.csv').map((row, i) => ({
    name: `${row.method} ${row.from} to ${row.to}`,
    method: row.method === 'bradford' ? ('bradford' as const) : ('cat16' as const),
    from: row.from as WhiteName,
    to: row.to as WhiteName,
    row: numbers('adaptation/cat-matrices.csv')[i]!,
  }));

  test.each(rows)('by $name has the matrix of the table to eight decimals', ({ method, from, to, row }) => {
    const matrix = adaptationMatrix(whites[from], whites[to], method);
    matrix.forEach((v, i) => {
      expect(Math.abs(v - row[`m${Math.floor(i / 3) + 1}${(i % 3) + 1}`]!)).toBeLessThanOrEqual(6e-9);
    });
  });
});
