import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { migrate, notebookVersion } from '../../../src/storage/migrate.ts';
import {
  fileFromNotebook,
  notebookFromFile,
  parseNotebook,
  serialiseNotebook,
} from '../../../src/storage/notebook-file.ts';
import { StorageTrouble } from '../../../src/storage/trouble.ts';
import { sampleNotebook } from '../notebook/sample-notebook.ts';
import { anyNotebook } from './any-notebook.ts';

const book = sampleNotebook();

describe('a notebook written as text', () => {
  it('is read back the same, whatever is in it', () => {
    fc.assert(
      fc.property(anyNotebook, (notebook) => {
        expect(parseNotebook(serialiseNotebook(notebook))).toEqual(notebook);
      }),
      { numRuns: 200 },
    );
  });

  it('tells when it is torn, wherever it breaks off', () => {
    const text = serialiseNotebook(book);
    fc.assert(
      fc.property(fc.nat(text.length - 1), (at) => {
        expect(() => parseNotebook(text.slice(0, at))).toThrow(StorageTrouble);
      }),
    );
  });

  it('never gives back what is not a notebook, whatever one field becomes', () => {
    const spoilt = fc.constantFrom(null, -1, Infinity, 'x', '<script>alert(1)</script>', [], {}, true);
    const file = JSON.parse(serialiseNotebook(book)) as unknown;
    const paths = pathsOf(file);
    fc.assert(
      fc.property(fc.constantFrom(...paths), spoilt, (path, value) => {
        const other = structuredClone(file);
        setAt(other, path, value);
        let read: unknown;
        try {
          read = notebookFromFile(other);
        } catch (error) {
          expect(error).toBeInstanceOf(StorageTrouble);
          expect((error as Error).message).toMatch(/^This .*\.$/);
          return;
        }
        // What passed is a notebook: written and read again it is the same.
        expect(parseNotebook(serialiseNotebook(read as typeof book))).toEqual(read);
      }),
      { numRuns: 500 },
    );
  });
});

describe('what is refused', () => {
  const refused: readonly [string, (file: Record<string, unknown>) => void, RegExp][] = [
    ['another format', (file) => (file.format = 'something-else'), /not a Quirewise notebook/],
    ['a later version', (file) => (file.version = 99), /later version/],
    ['a version that never was', (file) => (file.version = 0), /not a Quirewise notebook/],
    ['no notebook', (file) => (file.notebook = null), /not whole/],
    ['a field that nobody knows', (file) => (at(file).extra = 1), /not whole/],
    ['an id that could leave its place', (file) => (at(file).id = '../../x'), /not whole/],
    ['two leaves with one id', (file) => (at(file).leaves = [book.leaves[0], book.leaves[0]]), /not whole/],
    ['a number that is none', (file) => (sheetOf(file).count = Number.NaN), /not whole/],
    ['an endless share', (file) => (inkOf(file).share = Infinity), /not whole/],
    ['a colour that is no colour', (file) => (inkOf(file).hex = 'url(https://x)'), /not whole/],
    [
      'a huge count',
      (file) =>
        (at(file).leaves = Array.from({ length: 3000 }, (_, i) => ({ ...book.leaves[0], id: `n${i}` }))),
      /not whole/,
    ],
    [
      'a key that reaches behind objects',
      (file) => (at(file).drawer = JSON.parse('{"sheets":[],"plains":[],"parts":[],"__proto__":{"x":1}}')),
      /not whole/,
    ],
  ];
  it.each(refused)('is %s, in one clear sentence', (_, spoil, says) => {
    const file = structuredClone(fileFromNotebook(book)) as unknown as Record<string, unknown>;
    spoil(file);
    expect(() => notebookFromFile(file)).toThrow(says);
    expect(() => notebookFromFile(file)).toThrow(StorageTrouble);
  });

  it('is never a name with a script in it: that is a name, and stays text', () => {
    const title = '<img src=x onerror=alert(1)>';
    expect(parseNotebook(serialiseNotebook({ ...book, title })).title).toBe(title);
  });
});

describe('migration', () => {
  const old = { format: 'quirewise-notebook', version: 1, notebook: { a: 1 } };
  it('goes up step by step', () => {
    const steps = {
      1: (n: unknown) => ({ ...(n as object), b: 2 }),
      2: (n: unknown) => ({ ...(n as object), c: 3 }),
    };
    expect(migrate(old, steps, 3)).toEqual({
      format: 'quirewise-notebook',
      version: 3,
      notebook: { a: 1, b: 2, c: 3 },
    });
  });
  it('says so where a step finds something else than it should', () => {
    const steps = {
      1: () => {
        throw new TypeError('x');
      },
    };
    expect(() => migrate(old, steps, 2)).toThrow(/file version is 1/);
    expect(() => migrate(old, {}, 2)).toThrow(/never in use/);
  });
  it('leaves the newest version as it is', () => {
    expect(migrate({ ...old, version: notebookVersion }).notebook).toBe(old.notebook);
  });
});

function at(file: Record<string, unknown>): Record<string, unknown> {
  return file.notebook as Record<string, unknown>;
}
function sheetOf(file: Record<string, unknown>): Record<string, unknown> {
  return (at(file).drawer as { sheets: Record<string, unknown>[] }).sheets[0]!;
}
function inkOf(file: Record<string, unknown>): Record<string, unknown> {
  return (sheetOf(file).sides as { A: { reading: { inks: Record<string, unknown>[] } } }).A.reading.inks[0]!;
}

type Path = readonly (string | number)[];
function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inside = Object.entries(value).flatMap(([key, part]) => pathsOf(part, [...path, key]));
  return path.length === 0 ? inside : [path, ...inside];
}
function setAt(value: unknown, path: Path, to: unknown): void {
  let here = value as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) here = here[key] as Record<string | number, unknown>;
  here[path.at(-1)!] = to;
}
