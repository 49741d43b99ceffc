// Runs tests/bench/*.bench.ts, all or those whose names hold one of the arguments; each prints its own lines. `mutants` takes
// hours: it runs only when asked for by name, and what follows its name is its own.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { root } from './fresh.mjs';

const given = process.argv.slice(2);
const isMutants = given[0] === 'mutants';
const wanted = isMutants ? ['mutants'] : given;
const names = readdirSync(join(root, 'tests', 'bench'))
  .filter((name) => name.endsWith('.bench.ts') && name.startsWith('mutants') === isMutants)
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
  .sort();
if (names.length === 0) {
  process.stderr.write(`No bench has ${wanted.join(' or ')} in its name.\n`);
  process.exit(2);
}

// Our own code is put together as it ships; the packages that it is held against are loaded as they come.
const outDir = join(root, 'node_modules', '.cache', 'bench');
await build({
  root,
  configFile: false,
  logLevel: 'error',
  build: {
    ssr: true,
    outDir,
    emptyOutDir: true,
    minify: false,
    rollupOptions: { input: names.map((name) => join(root, 'tests', 'bench', name)) },
  },
});
for (const name of names) {
  process.stdout.write(`\n${name.replace(/\.bench\.ts$/, '')}\n`);
  const { bench } = await import(pathToFileURL(join(outDir, name.replace(/\.ts$/, '.js'))).href);
  await bench((line) => process.stdout.write(`  ${line}\n`), isMutants ? given.slice(1) : []);
}
