// Builds the page (dist/), the engine as one module with its types (dist/engine/), the terminal's bundle (dist/cli/).
// All three, or those that are named: --page, --engine, --cli. With --quiet nothing is said unless it fails.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { build } from 'vite';
import { root } from './fresh.mjs';
import { licences } from './licences.mjs';

const dist = join(root, 'dist');
const steps = { page: buildPage, engine: buildEngine, cli: buildCli };
const options = process.argv.slice(2);
const quiet = options.includes('--quiet');
const named = options.filter((option) => option !== '--quiet').map((option) => option.replace(/^--/, ''));
const unknown = named.filter((name) => !(name in steps));

if (unknown.length) {
  process.stderr.write(`There is nothing called ${unknown.join(', ')} to build: page, engine or cli.\n`);
  process.exit(2);
}
for (const name of named.length ? named : Object.keys(steps)) await steps[name]();

async function buildPage() {
  mkdirSync(dist, { recursive: true });
  for (const name of readdirSync(dist)) {
    if (name !== 'engine' && !name.startsWith('cli'))
      rmSync(join(dist, name), { recursive: true, force: true });
  }
  await build({ root, logLevel: quiet ? 'error' : 'info' });
}

async function buildEngine() {
  const folder = join(dist, 'engine');
  rmSync(folder, { recursive: true, force: true });
  await build({
    ...common(),
    build: {
      outDir: folder,
      target: 'es2022',
      minify: false,
      copyPublicDir: false,
      lib: { entry: join(root, 'src/index.ts'), formats: ['es'], fileName: () => 'quirewise.js' },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  declareTypes(folder);
}

// Built beside its place and then put there in one step: two terminals may ask for it at the same moment.
async function buildCli() {
  const beside = join(dist, `cli-${process.pid}`);
  try {
    await build({
      ...common(),
      ssr: { noExternal: true, external: ['sharp', '@resvg/resvg-js'] },
      build: {
        ssr: join(root, 'src/cli/main.ts'),
        outDir: beside,
        target: 'node20',
        minify: false,
        copyPublicDir: false,
        rolldownOptions: { output: { entryFileNames: 'study.js', codeSplitting: false } },
      },
    });
    mkdirSync(join(dist, 'cli'), { recursive: true });
    for (const name of ['licences.txt', 'study.js']) renameSync(join(beside, name), join(dist, 'cli', name));
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
}

function common() {
  const { page, worker } = licences();
  return {
    root,
    configFile: false,
    logLevel: quiet ? 'error' : 'warn',
    plugins: [page],
    worker: { plugins: () => [worker] },
  };
}

/** Declarations of all that the engine shows: types/… as the sources lie, and index.d.ts that leads there. */
function declareTypes(folder) {
  const config = join(folder, 'tsconfig.json');
  const types = join(folder, 'types');
  writeFileSync(
    config,
    JSON.stringify({
      extends: relative(folder, join(root, 'tsconfig.pure.json')),
      compilerOptions: {
        noEmit: false,
        emitDeclarationOnly: true,
        declaration: true,
        outDir: types,
        rootDir: root,
      },
      include: [],
      // What an untyped package looks like is declared beside its one user.
      files: [join(root, 'src/index.ts'), join(root, 'src/drawing/chroma-parts.d.ts')],
    }),
  );
  const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsc, '-p', config], { encoding: 'utf8' });
  rmSync(config);
  if (status !== 0) {
    process.stderr.write(stdout + stderr);
    process.exit(1);
  }
  const kept = new Set();
  keepDeclaration(join(types, 'src', 'index.d.ts'), kept);
  for (const file of readdirSync(types, { recursive: true }).map((name) => join(types, name))) {
    if (file.endsWith('.ts') && !kept.has(file)) rmSync(file);
  }
  writeFileSync(join(folder, 'index.d.ts'), "export * from './types/src/index.js';\n");
}

/** Imports in a declaration must end as the built file would, whoever reads them; what nothing leads to goes. */
function keepDeclaration(file, kept) {
  if (kept.has(file) || !existsSync(file)) return;
  kept.add(file);
  const address = /(\bfrom\s*|\bimport\s*\(\s*|\bimport\s+)(['"])(\.[^'"]*?)\.ts\2/g;
  const text = readFileSync(file, 'utf8');
  writeFileSync(file, text.replace(address, '$1$2$3.js$2'));
  for (const [, , , path] of text.matchAll(address)) {
    keepDeclaration(join(dirname(file), path.split('/').join(sep)).concat('.d.ts'), kept);
  }
}
