import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { type BoardSize, boardSizes } from '../../../src/board/model.ts';
import { migrate, notebookVersion } from '../../../src/storage/migrate.ts';
import {
  fileFromNotebook,
  notebookFromFile,
  openNotebookFile,
  parseNotebook,
  serialiseNotebook,
} from '../../../src/storage/notebook-file.ts';
import { refusalOf } from '../../../src/storage/refusal.ts';
import { schemaOf } from '../../../src/storage/schema/schema-ink.ts';
import { StorageTrouble } from '../../../src/storage/words/trouble.ts';
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

describe('a schema', () => {
  it('that lacks a member of the model is no longer one that compiles', () => {
    const some = v.picklist(boardSizes.slice(0, 2) as ['square', 'a4']);
    // @ts-expect-error -- a board of the third size would be stored and never open again
    expect(schemaOf<BoardSize>()(some)).toBe(some);
    const all = v.picklist(boardSizes);
    expect(schemaOf<BoardSize>()(all)).toBe(all);
  });
});

describe('a notebook in which something is not whole', () => {
  const broken = (spoil: (notebook: Record<string, unknown>) => void) => {
    const file = JSON.parse(serialiseNotebook(book)) as { notebook: Record<string, unknown> };
    spoil(file.notebook);
    return openNotebookFile(file);
  };

  it('opens without it, and keeps it as it was found', () => {
    const { notebook, setAside } = broken((of) => {
      Object.assign((of.drawer as { sheets: object[] }).sheets[0] ?? {}, {
        weight: { gsm: 10_750, weighed: true },
      });
    });
    expect(notebook.leaves).toEqual(book.leaves);
    expect(notebook.drawer).toEqual({ ...book.drawer, sheets: book.drawer.sheets.slice(1) });
    expect(setAside).toEqual([
      {
        what: 'sheet',
        id: book.drawer.sheets[0]?.id,
        name: book.drawer.sheets[0]?.name,
        value: { ...book.drawer.sheets[0], weight: { gsm: 10_750, weighed: true } },
        why: 'The weight is too large: the most that can be kept is 10,000 (at weight.gsm).',
      },
    ]);
  });

  it('opens whatever one place in a leaf, sheet, plain or part becomes, and everything else of it is there', () => {
    const file = JSON.parse(serialiseNotebook(book)) as unknown;
    const paths = pathsOf(file).filter((path) => path[1] === 'leaves' || path[1] === 'drawer');
    const spoilt = fc.constantFrom(null, -1, Infinity, 'x', [], {}, true, 1e308, '__proto__');
    fc.assert(
      fc.property(fc.constantFrom(...paths), spoilt, (path, value) => {
        const other = structuredClone(file);
        setAt(other, path, value);
        const opened = openNotebookFile(other);
        const count = ({ leaves, drawer }: typeof book) =>
          leaves.length + drawer.sheets.length + drawer.plains.length + drawer.parts.length;
        if (path.length > 3) {
          expect(opened.setAside.length).toBeLessThanOrEqual(1);
          expect(count(opened.notebook) + opened.setAside.length).toBe(count(book));
        }
        expect(notebookFromFile(fileFromNotebook(opened.notebook))).toEqual(opened.notebook);
        expect(refusalOf(opened.notebook)).toBeNull();
      }),
      { numRuns: 500 },
    );
  });

  it('keeps the first of two with one id, and sets the other aside', () => {
    const { notebook, setAside } = broken((of) => {
      const { leaves } = of as unknown as { leaves: object[] };
      leaves.push(leaves[0] ?? {});
    });
    expect(notebook).toEqual(book);
    expect(setAside).toMatchObject([{ what: 'leaf', value: book.leaves[0] }]);
  });

  it('gives a title where the title can’t be read, and keeps nothing that is nested without end', () => {
    const { notebook, setAside } = broken((of) => {
      Object.assign(of, { title: 7 });
      let deep: unknown = 1;
      for (let i = 0; i < 50_000; i++) deep = [deep];
      (of as unknown as { leaves: unknown[] }).leaves.push(deep, {
        kind: 'note',
        id: '../x',
        title: 'a\u202Eb\n',
      });
    });
    expect(notebook).toEqual({ ...book, title: 'A notebook whose title could not be read' });
    expect(setAside.map(({ id, name, value }) => ({ id, name, isKept: value !== null }))).toEqual([
      { id: null, name: null, isKept: false },
      { id: null, name: 'a b', isKept: true },
    ]);
  });

  it('is refused only where there is nothing to open', () => {
    for (const notebook of [null, 7, [], {}, { id: 'a', title: 'b' }, { id: '__proto__ /', leaves: [] }])
      expect(() => openNotebookFile({ format: 'quirewise-notebook', version: 1, notebook })).toThrow(
        StorageTrouble,
      );
    expect(() => openNotebookFile({ format: 'quirewise-notebook', version: 99, notebook: book })).toThrow(
      /later version/,
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
