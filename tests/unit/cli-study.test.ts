import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { putDemoFile } from '../support/demo-files.ts';
import { root } from '../support/source-tree.ts';
import { expectComparison, expectSide } from '../support/study-shape.ts';

const folder = mkdtempSync(join(tmpdir(), 'quirewise-study-'));
const launcher = join(root, '.ci', 'study.mjs');

interface Told {
  readonly status: number | null;
  readonly out: string;
  readonly sorry: string;
}

/** The launcher as a process of its own, called from the folder with the pictures. */
function launched(...args: string[]): Told {
  const { status, stdout, stderr } = spawnSync(process.execPath, [launcher, ...args], {
    cwd: folder,
    encoding: 'utf8',
  });
  return { status, out: stdout, sorry: stderr };
}

/** The same without a process: what the launcher calls. */
async function study(...args: string[]): Promise<Told> {
  let [out, sorry] = ['', ''];
  const status = await main(args, {
    folder,
    out: (text) => {
      out += text;
    },
    sorry: (text) => {
      sorry += text;
    },
  });
  return { status, out, sorry };
}

/** One study with its board for all that look at it. */
const withBoard = (): Promise<Told> => {
  toldWithBoard ??= study('--anchor', 'bough.png', '--candidate', 'hearts.jpg', '--board', 'board.svg');
  return toldWithBoard;
};
let toldWithBoard: Promise<Told> | undefined;

beforeAll(async () => {
  await putDemoFile(folder, 'bough.png', 'blossom-bough');
  await putDemoFile(folder, 'hearts.jpg', 'pip-hearts');
  await putDemoFile(folder, 'lanterns.webp', 'lantern-row');
  await putDemoFile(folder, 'stripe.tiff', 'ladder-stripe');
  // The first call builds the bundle where it is missing or old.
  const help = launched('--help');
  expect(help).toMatchObject({ status: 0, sorry: '' });
  expect(help.out).toMatch(/--anchor FILE/);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the study in the terminal', () => {
  it('prints one JSON object of the first version’s shape and nothing else, candidates best first', () => {
    const files = ['lanterns.webp', 'hearts.jpg', 'stripe.tiff'];
    const { status, out, sorry } = launched(
      '--anchor',
      'bough.png',
      ...files.flatMap((f) => ['--candidate', f]),
      '--format',
      'v1',
    );
    expect(sorry).toBe('');
    expect(status).toBe(0);
    const told = JSON.parse(out);
    expect(told.format).toBe('quirewise-study');
    expect(told.version).toBe(1);
    expect(told.anchor.file).toBe('bough.png');
    expectSide(told.anchor, 'A');
    expect(told.candidates.map(({ side }: { side: { file: string } }) => side.file).sort()).toEqual(
      files.sort(),
    );
    const order = ['holds-together', 'needs-a-bridge', 'pulls-apart'];
    const places = told.candidates.map(({ verdict }: { verdict: string }) => order.indexOf(verdict));
    expect(places).toEqual([...places].sort());
    for (const candidate of told.candidates) {
      expectSide(candidate.side, 'a');
      expectComparison(candidate, told.anchor, candidate.side);
    }
  });

  it('prints families with the inks in them, and findings, in the second version, which is the usual one', async () => {
    const ask = async (...more: string[]) =>
      (await study('--anchor', 'bough.png', '--candidate', 'hearts.jpg', ...more)).out;
    const told = JSON.parse(await ask('--json'));
    expect(told.version).toBe(2);
    expect(await ask('--format', 'v2')).toBe(await ask('--json'));
    const [one] = told.candidates;
    for (const [side, first] of [
      [told.anchor, 'A'],
      [one.side, 'a'],
    ]) {
      expect(side.families[0].id).toBe(first);
      expect(side.families.reduce((sum: number, { share }: { share: number }) => sum + share, 0)).toBeCloseTo(
        1,
        9,
      );
      const ids = [side.base, ...side.inks].map(({ id }: { id: string }) => id);
      expect(side.families.flatMap(({ inks }: { inks: string[] }) => inks).sort()).toEqual(ids.sort());
      for (const { id, inks, lightness, chroma, hex } of side.families) {
        expect(hex).toMatch(/^#[0-9a-f]{6}$/);
        expect(lightness[0]).toBeLessThanOrEqual(lightness[1]);
        expect(chroma[0]).toBeLessThanOrEqual(chroma[1]);
        expect(inks).toEqual(inks.map((_: string, n: number) => `${id}${n + 1}`));
      }
    }
    const families = new Set([...told.anchor.families, ...one.side.families].map(({ id }) => id));
    for (const { families: of } of one.findings) for (const id of of.flat()) expect(families).toContain(id);
    expect(one.findings.length).toBeGreaterThan(0);
  });

  it('tells a person the verdict, the reasons with their sources, and what could mend it', async () => {
    const { status, out } = await withBoard();
    expect(status).toBe(0);
    expect(out).toMatch(/^Anchor: bough\.png\n/);
    expect(out).toMatch(/^hearts\.jpg: (holds together|needs a bridge|pulls apart)$/m);
    expect(out).toMatch(/ΔE₀₀/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
    expect(out.match(/Cutting\? Use/g) ?? []).toHaveLength(out.includes('one cut') ? 1 : 0);
    const assumed = await study('--anchor', 'stripe.tiff', '--candidate', 'hearts.jpg');
    expect(assumed.out.replace(/\s+/g, ' ')).toContain('repeat about 38 mm, if the sheet is 12 in');
  });

  it('takes the width, the crop and the distance into the reading', async () => {
    const ask = async (...more: string[]) =>
      JSON.parse(
        (await study('--anchor', 'stripe.tiff', ...more, '--candidate', 'hearts.jpg', '--json')).out,
      );
    const [whole, small] = [await ask(), await ask('--width-mm', '152.5', '--distance', 'touching')];
    expect(whole.anchor.print.repeatMm).toBeCloseTo(305 / 8, 0);
    expect(small.anchor.print.repeatMm).toBeCloseTo(152.5 / 8, 0);
    expect(small.candidates[0].distance).toBe('touching');
    expect(whole.candidates[0].distance).not.toBe('touching');
    const green = (await ask('--crop', '2,0,12,360')).anchor;
    expect([green.base.hex, green.inks.length]).toEqual(['#6c9a4f', 0]);
  });

  it('writes the board of the best candidate as an SVG with its fonts and pictures inside', async () => {
    const { status, sorry } = await withBoard();
    expect([status, sorry]).toEqual([0, '']);
    const svg = readFileSync(join(folder, 'board.svg'), 'utf8');
    expect(svg).toMatch(/^<svg xmlns/);
    expect(svg.match(/data:image\/jpeg;base64,/g)?.length).toBe(2);
    expect(svg).toContain('@font-face');
    expect(svg).not.toMatch(/(href|src)="?\s*https?:/);
  });

  it('writes it as a PNG in which the words can be seen', async () => {
    const { status } = await study(
      '--anchor',
      'bough.png',
      '--candidate',
      'hearts.jpg',
      '--board',
      'board.png',
    );
    expect(status).toBe(0);
    const { width, height, format } = await sharp(join(folder, 'board.png')).metadata();
    expect(format).toBe('png');
    expect(Math.min(width!, height!)).toBeGreaterThanOrEqual(1500);
    const { channels } = await sharp(join(folder, 'board.png')).stats();
    expect(channels[0]!.stdev).toBeGreaterThan(10);
  }, 60_000);

  it('can be called by a link from anywhere, as a bin is, and ends with status 2 where it must refuse', () => {
    const link = join(folder, 'quirewise-study');
    symlinkSync(launcher, link);
    const args = ['--anchor', 'bough.png', '--candidate', 'none.png', '--json'];
    const { status, stdout, stderr } = spawnSync(link, args, { cwd: folder, encoding: 'utf8' });
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^[^\n]+none\.png[^\n]*[.]\n$/);
  });

  it('takes paths from where npm was called, and says the same each time', async () => {
    const args = ['--anchor', 'bough.png', '--candidate', 'hearts.jpg', '--json'];
    const { status, stdout, stderr } = spawnSync(
      'npm',
      ['--prefix', root, 'run', '-s', 'study', '--', ...args],
      {
        cwd: folder,
        encoding: 'utf8',
        shell: process.platform === 'win32',
        env: { ...process.env, INIT_CWD: undefined },
      },
    );
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(stdout).toBe((await study(...args)).out);
    expect(JSON.parse(stdout).candidates[0].side.file).toBe('hearts.jpg');
  });

  const good = ['--anchor', 'bough.png', '--candidate', 'hearts.jpg'];
  it.each([
    ['a missing file', () => ['--anchor', 'bough.png', '--candidate', 'none.png']],
    ['an empty file', () => ['--anchor', put('empty.png', ''), '--candidate', 'hearts.jpg']],
    [
      'text that is named .png',
      () => ['--anchor', put('text.png', 'only words'), '--candidate', 'hearts.jpg'],
    ],
    [
      'a torn picture',
      () => [
        '--anchor',
        put('torn.png', readFileSync(join(folder, 'bough.png')).subarray(0, 9_000)),
        '--candidate',
        'hearts.jpg',
      ],
    ],
    ['an unknown option', () => [...good, '--quickly']],
    ['a bad number', () => [...good, '--width-mm', 'wide']],
    ['no anchor', () => ['--candidate', 'hearts.jpg']],
    ['a board whose folder is missing', () => [...good, '--board', 'no/such/folder/board.svg']],
  ])('answers %s with one sentence on standard error, status 2, and writes nothing', async (_, args) => {
    const given = args();
    const before = readdirSync(folder).sort();
    const { status, out, sorry } = await study(
      ...given,
      '--json',
      ...(given.includes('--board') ? [] : ['--board', 'never.svg']),
    );
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(sorry).toMatch(/^[^\n]+[.]\n$/);
    expect(readdirSync(folder).sort()).toEqual(before);
    expect(existsSync(join(folder, 'never.svg'))).toBe(false);
  });

  it('answers one pixel, and a picture that is fully transparent, in the same way', async () => {
    for (const [name, size, background] of [
      ['pixel.png', 1, '#cc3344'],
      ['clear.png', 80, '#cc334400'],
    ] as const) {
      const bytes = await sharp({ create: { width: size, height: size, channels: 4, background } })
        .png()
        .toBuffer();
      const { status, out, sorry } = await study(
        '--anchor',
        put(name, bytes),
        '--candidate',
        'hearts.jpg',
        '--json',
      );
      expect([status, out]).toEqual([2, '']);
      expect(sorry).toMatch(/^[^\n]+[.]\n$/);
    }
  });
});

function put(name: string, bytes: Uint8Array | string): string {
  writeFileSync(join(folder, name), bytes);
  return name;
}
