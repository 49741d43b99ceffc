import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../support/source-tree.ts';

const folder = mkdtempSync(join(tmpdir(), 'quirewise-engine-'));
const built = join(root, 'dist', 'engine');

beforeAll(() => {
  const build = spawnSync(process.execPath, [join(root, '.ci', 'build.mjs'), '--engine', '--quiet'], {
    encoding: 'utf8',
  });
  expect([build.status, build.stdout, build.stderr]).toEqual([0, '', '']);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the built engine', () => {
  it('is one module that imports nothing, of Node or of anybody', () => {
    const code = readFileSync(join(built, 'quirewise.js'), 'utf8');
    expect(code).not.toMatch(/^\s*import\b/m);
    expect(code).not.toMatch(/\bimport\s*\(|\brequire\s*\(/);
  });

  it('loads in plain Node and works there, without a page', () => {
    const program = `
      const engine = await import(${JSON.stringify(join(built, 'quirewise.js'))});
      const { readSide, compare, rank, deltaE2000, boardOf, boardSvg } = engine;
      const image = (hexes) => {
        const data = new Uint8ClampedArray(120 * 120 * 4);
        for (let y = 0; y < 120; y += 1) for (let x = 0; x < 120; x += 1) {
          const hex = (x >> 4) % 3 === 1 ? hexes[1] : hexes[0];
          data.set([parseInt(hex.slice(1, 3), 16), parseInt(hex.slice(3, 5), 16), parseInt(hex.slice(5), 16), 255], (y * 120 + x) * 4);
        }
        return { data, width: 120, height: 120 };
      };
      const anchor = readSide(image(['#f3e8ce', '#e26f57']));
      const same = readSide(image(['#f3e8ce', '#e26f57']));
      const other = readSide(image(['#f1f5fa', '#6f45b5']), { mmPerPixel: 1 });
      const comparison = compare(anchor, other);
      console.log(JSON.stringify({
        exports: Object.keys(engine).sort(),
        ids: [anchor.base.id, ...anchor.inks.map((ink) => ink.id)],
        verdict: comparison.verdict,
        ranked: rank(anchor, [other, same]).map(({ index, verdict }) => [index, verdict]),
        // Sharma, Wu & Dalal 2005, table 1, first pair.
        deltaE: deltaE2000({ l: 50, a: 2.6772, b: -79.7751 }, { l: 50, a: 0, b: -82.7485 }),
        svg: boardSvg(boardOf(comparison, { title: 'A <board>' })).slice(0, 5),
        page: [typeof document, typeof window],
      }));
    `;
    const { status, stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect([status, stderr]).toEqual([0, '']);
    const told = JSON.parse(stdout);
    for (const name of [
      'boardOf',
      'boardSvg',
      'compare',
      'deltaE2000',
      'rank',
      'readSide',
      'readWithPlaces',
      'relabel',
    ]) {
      expect(told.exports).toContain(name);
    }
    expect(told.ids).toEqual(['A', 'B']);
    expect(told.ranked[0]).toEqual([1, 'holds-together']);
    expect(told.verdict).not.toBe('holds-together');
    expect(told.deltaE).toBeCloseTo(2.0425, 4);
    expect(told.svg).toBe('<svg ');
    expect(told.page).toEqual(['undefined', 'undefined']);
  });

  it('has types that hold for someone who imports it by the package’s name, with no page and no Node', () => {
    mkdirSync(join(folder, 'node_modules'));
    symlinkSync(root, join(folder, 'node_modules', 'quirewise'));
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
    writeFileSync(
      join(folder, 'use.ts'),
      `import { boardOf, boardSvg, type Comparison, compare, deltaE2000, type PixelImage, rank, readSide, type Side } from 'quirewise';
      const image: PixelImage = { data: new Uint8ClampedArray(16), width: 2, height: 2 };
      const side: Side = readSide(image, { crop: { x: 0, y: 0, width: 1, height: 2 }, card: { x: 0, y: 0, width: 1, height: 1, reflectance: 0.9 } });
      const comparison: Comparison = compare(side, side, { distance: 'touching' });
      const first: number | undefined = rank(side, [side])[0]?.index;
      const difference: number = deltaE2000({ l: 1, a: 2, b: 3 }, { l: 1, a: 2, b: 3 });
      const svg: string = boardSvg(boardOf(comparison, { words: 'ours' }));
      // @ts-expect-error: a distance is touching or apart.
      compare(side, side, { distance: 'near' });
      export { difference, first, svg };`,
    );
    const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
    const options = ['--noEmit', '--strict', '--exactOptionalPropertyTypes', '--skipLibCheck', 'false'];
    for (const module of ['nodenext', 'bundler']) {
      const how =
        module === 'nodenext'
          ? ['--module', 'nodenext']
          : ['--module', 'esnext', '--moduleResolution', 'bundler'];
      const { status, stdout } = spawnSync(
        process.execPath,
        [tsc, ...options, '--target', 'es2022', '--lib', 'es2023', '--types', '', ...how, 'use.ts'],
        { cwd: folder, encoding: 'utf8' },
      );
      expect([module, status, stdout]).toEqual([module, 0, '']);
    }
    expect(existsSync(join(built, 'index.d.ts'))).toBe(true);
  });
});
