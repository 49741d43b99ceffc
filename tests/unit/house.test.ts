import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  blankComments,
  filesUnder,
  type Import,
  importsOf,
  matches,
  reachedFrom,
  root,
  type SourceFile,
  stringsOf,
} from '../support/source-tree.ts';

/** From the ground up; a room imports from lower floors only. */
const floors = [
  'colour',
  'sheet',
  'files',
  'harmony',
  'cutting',
  'drawing',
  'board',
  'drawer',
  'notebook',
  'demo',
  'storage',
  'workbench',
] as const;
const pureRooms = floors.slice(0, floors.indexOf('storage')) as readonly string[];

/** Pages and papers that show elements alone: they stand beside the page, and may know what it is made of. */
const showsElements = /^components\/support\/(show|sample)-[\w-]+\.ts$/;

const src = filesUnder('src');
const components = filesUnder('components');
const pure = src.filter(
  (file) => pureRooms.includes(roomOf(file.path) ?? '') || file.path === 'src/index.ts',
);

/** Waiting one's turn needs a clock, and so stands no lower; elements wait as the workbench does. */
const waits = 'src/storage/own-turn.ts';

describe('the scan that the house is checked with', () => {
  it('sees every form of import, and none in a comment', () => {
    const code = blankComments(
      [
        "import '../styles.css';",
        "import a, { type B, c } from '../sheet/c.ts';",
        "import type { D } from './model.ts';",
        "import { type E } from './e.ts';",
        "import {\n  f,\n  g,\n} from './f.ts';",
        "export * from './h.ts';",
        "export type { I } from './i.ts';",
        "const j = await import('./j.ts');",
        "import k from './k.woff2?url';",
        "// import l from './l.ts';",
        "/* import m from './m.ts'; */",
        "const n = 'from here'; const o = { w: import.meta.url };",
        "import * as p from 'node:fs';",
      ].join('\n'),
    );
    expect(
      importsOf('src/colour/x.ts', code).map(({ to, typeOnly }) => (typeOnly ? `type ${to}` : to)),
    ).toEqual([
      '../styles.css',
      '../sheet/c.ts',
      'type ./model.ts',
      'type ./e.ts',
      './f.ts',
      './h.ts',
      'type ./i.ts',
      './j.ts',
      './k.woff2',
      'node:fs',
    ]);
    expect(importsOf('src/colour/x.ts', code)[1]).toMatchObject({ file: 'src/sheet/c.ts', line: 2 });
  });
});

describe('the house', () => {
  it('lets a room import from lower floors only', () => {
    const wrong = imports(src).filter(({ from, link }) => {
      const [here, there] = [roomOf(from.path), link.file === null ? null : roomOf(link.file)];
      if (link.file === null || here === there) return false;
      // The published tables lie in the cellar: colours are looked up in them, and nothing else is.
      if (link.file.startsWith('reference-data/')) return here !== 'colour';
      if (there === null || there === 'cli') return true;
      if (here === 'workers' || here === 'cli' || from.path === 'src/index.ts')
        return !pureRooms.includes(there);
      // A worker is started from storage or above, and from nowhere else.
      if (there === 'workers') return here === null || pureRooms.includes(here);
      return floorOf(there) >= floorOf(here);
    });
    expect(wrong.map(told)).toEqual([]);
  });

  it('has every folder of src on a floor, or known as one that stands beside them', () => {
    const rooms = new Set(src.map((file) => roomOf(file.path)).filter((room) => room !== null));
    expect([...rooms].filter((room) => ![...floors, 'workers', 'cli'].includes(room))).toEqual([]);
  });

  it('has no circles', () => {
    expect(circles([...src, ...components])).toEqual([]);
  });

  it('names every file inside it by a relative address that ends as the file does, and finds it there', () => {
    const known = new Set([...src, ...components, ...filesUnder('reference-data')].map((file) => file.path));
    const wrong = imports([...src, ...components]).filter(
      ({ link }) =>
        link.file !== null && !known.has(link.file) && !/\.(css|json|csv|svg|woff2?|wasm)$/.test(link.file),
    );
    expect(wrong.map(told)).toEqual([]);
  });

  it('keeps culori, d3-color, chroma-js and d3-scale each in its one place', () => {
    const places: [RegExp, (path: string) => boolean][] = [
      [/^culori(\/|$)/, (path) => path === 'src/colour/culori.ts'],
      [/^d3-color(\/|$)/, (path) => path === 'src/colour/css.ts'],
      [/^chroma-js(\/|$)/, (path) => path === 'src/drawing/ladders.ts'],
      [/^d3-scale(\/|$)/, (path) => path.startsWith('src/drawing/')],
    ];
    const wrong = imports([...src, ...components]).filter(({ from, link }) =>
      places.some(([name, allowed]) => name.test(link.to) && !allowed(from.path)),
    );
    expect(wrong.map(told)).toEqual([]);
  });

  it('takes no other package below storage, and no module of Node outside the terminal', () => {
    const allowed = /^(culori|d3-color|chroma-js|d3-scale)(\/|$)/;
    const below = imports(pure).filter(({ link }) => link.file === null && !allowed.test(link.to));
    const node = imports([...src, ...components]).filter(
      ({ from, link }) => link.to.startsWith('node:') && roomOf(from.path) !== 'cli',
    );
    expect([...below, ...node].map(told)).toEqual([]);
  });

  it('has no page, clock, chance, network or console below storage', () => {
    const forbidden =
      /(?<![\w.$'"-])(Date(?=[.(\s])|performance\.|Math\.random|fetch\s*\(|document\.|navigator\.|localStorage|indexedDB|OffscreenCanvas|HTMLElement|XMLHttpRequest|WebSocket|setTimeout|setInterval|requestAnimationFrame|globalThis|process\.|crypto\.|console\.)/;
    expect(matches(pure, forbidden)).toEqual([]);
  });

  it('lets only components/shell know the workbench; other elements know drawing, types, limits and each other', () => {
    const wrong = imports(components)
      .filter(({ from }) => !from.path.startsWith('components/shell/') && !showsElements.test(from.path))
      .filter(({ link }) => {
        if (link.file === null) return !/^(lit|@lit|@tanstack\/lit-virtual)(\/|$)/.test(link.to);
        if (link.file.startsWith('components/')) return link.file.startsWith('components/shell/');
        if (roomOf(link.file) === 'drawing' || link.file === waits) return false;
        // Papers are sold in the same sizes wherever these are told.
        if (link.file === 'src/sheet/sold-sizes.ts') return false;
        // What can be typed ends where what can be stored does.
        if (/^src\/\w+\/limits\.ts$/.test(link.file)) return false;
        return !(link.typeOnly && /^src\/\w+\/model\.ts$/.test(link.file));
      });
    expect(wrong.map(told)).toEqual([]);
  });

  it('keeps what shows elements alone out of the page itself', () => {
    const wrong = imports(components).filter(
      ({ from, link }) =>
        link.file !== null &&
        showsElements.test(link.file) &&
        !showsElements.test(from.path) &&
        !from.path.endsWith('/alone.ts'),
    );
    expect(wrong.map(told)).toEqual([]);
    expect(leadsTo('components/shell/main.ts').filter((path) => showsElements.test(path))).toEqual([]);
  });

  it('has nothing that nothing leads to: all is reached from the page, a worker, the terminal or the engine', () => {
    const doors = ['components/shell/main.ts', 'src/cli/main.ts', 'src/index.ts', ...drawsTheDemo];
    // Pages that show elements alone name these.
    const shown = components.flatMap(({ path }) => (/\/alone|show-charts/.test(path) ? [path] : []));
    const reached = new Set([...doors, ...shown].flatMap(leadsTo));
    const dead = [...src, ...components].filter(({ path }) => !reached.has(path) && !path.endsWith('.d.ts'));
    expect(dead.map(({ path }) => path)).toEqual([]);
  });

  it('lets only the ranking know a side as lines of numbers', () => {
    const wrong = imports([...src, ...components]).filter(
      ({ from, link }) =>
        /^src\/harmony\/ranking\/score/.test(link.file ?? '') &&
        !from.path.startsWith('src/harmony/ranking/'),
    );
    expect(wrong.map(told)).toEqual([]);
  });

  it('has the keeper call the book, and the book know of no keeper: what it tells goes to whoever opened it', () => {
    const isKeeping = (path: string) => /^src\/workbench\/(keeper\.ts|keeping\/)/.test(path);
    const workbench = src.filter(({ path }) => path.startsWith('src/workbench/'));
    const called = workbench.filter(({ path }) => isKeeping(path)).flatMap(({ imports }) => imports);
    expect(called.map(({ file }) => file)).toContain('src/workbench/book.ts');
    expect(leadsTo('src/workbench/book.ts').filter(isKeeping)).toEqual([]);
    // Nor is it called back through what is handed over at the start.
    const session = workbench.find(({ path }) => path.endsWith('/session.ts'));
    expect(callsOf('startKeeper', session).filter((call) => /\bbook\s*(\.|\[)/.test(call))).toEqual([]);
    expect(callsOf('startKeeper', session)).toHaveLength(1);
  });

  it('names its files in lower case with hyphens', () => {
    const wrong = [...src, ...components].filter(
      ({ path }) => !/\/[a-z0-9]+(-[a-z0-9]+)*(\.d)?\.ts$/.test(path),
    );
    expect(wrong.map((file) => file.path)).toEqual([]);
  });

  it('has nothing at the top level but what was named and what tools must find there', () => {
    const allowed = [
      ...['index.html', 'vite.config.ts', 'README.md', 'DEVELOPERS.md', 'LICENSE'],
      ...['src', 'components', 'tests', 'reference-data', 'public', '.ci'],
      ...['package.json', 'package-lock.json', 'biome.json', '.npmrc', '.gitignore', '.git'],
      ...['tsconfig.json', 'tsconfig.base.json', 'tsconfig.pure.json'],
    ];
    const ignored = readFileSync(join(root, '.gitignore'), 'utf8')
      .split('\n')
      .map((line) => line.replace(/\/$/, ''));
    const extra = readdirSync(root).filter((name) => !allowed.includes(name) && !ignored.includes(name));
    expect(extra).toEqual([]);
  });

  it('ships no address of a network, but namespaces and the DOIs of its sources', () => {
    const shipped = [...src, ...filesUnder('components', ['.ts', '.css', '.html'])];
    const wrong = matches(shipped, /(https?|wss?):\/\/[^\s'"`)<]*/).filter(
      (found) =>
        !/ http:\/\/www\.w3\.org\//.test(found) &&
        !/^src\/colour\/sources\S* https:\/\/doi\.org\//.test(found),
    );
    expect(wrong).toEqual([]);
  });

  it('uses no word in what it says that belongs to another kind of program', () => {
    const words =
      /\b(cells?|kernels?|moods?|themes|shuffl\w*|generat\w*|random palette|palette generator|colou?r scheme)\b/i;
    const wrong = [...src, ...components].flatMap((file) =>
      stringsOf(file)
        .filter(({ text }) => / /.test(text.trim()) && words.test(prose(text)))
        .map(({ text, line }) => `${file.path}:${line} ${words.exec(prose(text))?.[0]}`),
    );
    expect(wrong).toEqual([]);
  });

  it('leaves no work marked as undone, and no test marked to be left out or to stand alone', () => {
    const undone = matches([...src, ...components], /\b(TODO|FIXME|XXX)\b/, 'text');
    const left = matches(filesUnder('tests'), /\b(it|test|describe)\.(only|skip|todo)\b/);
    expect([...undone, ...left]).toEqual([]);
  });
});

/** What the build draws the demo with, beside the page: it is led to from `.ci`, not from the page. */
const drawsTheDemo = ['src/demo/notebook.ts', 'src/sheet/read-side.ts'];

/** Folder of a file under src, or null for what stands in src itself or elsewhere. */
function roomOf(path: string): string | null {
  return /^src\/([^/]+)\//.exec(path)?.[1] ?? null;
}

function floorOf(room: string | null): number {
  const floor = (floors as readonly string[]).indexOf(room ?? '');
  return floor < 0 ? Number.POSITIVE_INFINITY : floor;
}

function imports(files: readonly SourceFile[]): { from: SourceFile; link: Import }[] {
  return files.flatMap((from) => from.imports.map((link) => ({ from, link })));
}

function told({ from, link }: { from: SourceFile; link: Import }): string {
  return `${from.path}:${link.line} imports ${link.file ?? link.to}`;
}

/** Every file that a file leads to, however far. */
const leadsTo = (path: string): string[] => reachedFrom(path, [...src, ...components]);

/** The texts of all calls of a function in a file, from its name to the bracket that closes it. */
function callsOf(name: string, file: SourceFile | undefined): string[] {
  const code = file?.code ?? '';
  return [...code.matchAll(new RegExp(`\\b${name}\\(`, 'g'))].map(({ index }) => {
    let open = 0;
    let at = index + name.length;
    do {
      if (code[at] === '(') open++;
      if (code[at] === ')') open--;
      at++;
    } while (open > 0 && at < code.length);
    return code.slice(index, at);
  });
}

/** A template of styles or markup is not prose: its rules, tags and classes say nothing to a reader. */
function prose(text: string): string {
  return text.replace(/\{[^{}]*\}/g, ' ').replace(/<[^>]*>/g, ' ');
}

/** Circles of imports that are still there when it runs (types are gone by then), as "a → b → a". */
function circles(files: readonly SourceFile[]): string[] {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const done = new Set<string>();
  const found: string[] = [];
  const walk = (path: string, trail: readonly string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) found.push([...trail.slice(at), path].join(' → '));
    if (at >= 0 || done.has(path)) return;
    for (const link of byPath.get(path)?.imports ?? [])
      if (link.file && !link.typeOnly) walk(link.file, [...trail, path]);
    done.add(path);
  };
  for (const { path } of files) walk(path, []);
  return found;
}
