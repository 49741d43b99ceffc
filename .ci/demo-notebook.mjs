import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { runnerImport } from 'vite';

const root = path.resolve(import.meta.dirname, '..');
const name = 'virtual:demo-notebook';
/** What the demo notebook depends on. */
const rooms = ['src/colour', 'src/sheet', 'src/demo', 'src/notebook', 'reference-data'];

/**
 * Reading the demo's papers takes seconds, so it is done when the page is built and not when it is opened. The module
 * `virtual:demo-notebook` gives the notebook as the engine of this very source reads it; nothing of it is kept in the
 * repository.
 */
export function demoNotebook() {
  return {
    name: 'quirewise-demo-notebook',
    resolveId: (id) => (id === name ? `\0${name}` : null),
    // A page that is served while it is worked on is to have it ready when it is first opened.
    configureServer() {
      if (!process.env.VITEST) readDemo().catch(() => {});
    },
    async load(id) {
      if (id !== `\0${name}`) return null;
      return `export default JSON.parse(${JSON.stringify(await readDemo())})`;
    },
  };
}

let reading = null;

function readDemo() {
  reading ??= readOnce().finally(() => {
    reading = null;
  });
  return reading;
}

async function readOnce() {
  const folder = path.join(root, 'node_modules/.cache/quirewise');
  const file = path.join(folder, `demo-${await fingerprint()}.json`);
  try {
    return await readFile(file, 'utf8');
  } catch {
    const load = async (from) =>
      (await runnerImport(path.join(root, from), { configFile: false, root })).module;
    const { demoNotebook } = await load('src/demo/notebook.ts');
    const { readSide } = await load('src/sheet/read-side.ts');
    const text = JSON.stringify(demoNotebook(readSide).notebook);
    await mkdir(folder, { recursive: true });
    await writeFile(file, text);
    return text;
  }
}

async function fingerprint() {
  const hash = createHash('sha256');
  for (const room of rooms) {
    const entries = await readdir(path.join(root, room), { recursive: true, withFileTypes: true });
    const files = entries
      .filter((entry) => entry.isFile())
      .map((entry) => path.join(entry.parentPath, entry.name));
    for (const file of files.sort()) hash.update(file).update(await readFile(file));
  }
  return hash.digest('hex').slice(0, 16);
}
