// Runs tests/bench/*.bench.ts, all or those whose names hold one of the arguments; each prints its own lines.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { createServer } from 'vite';
import { root } from './fresh.mjs';

const wanted = process.argv.slice(2);
const names = readdirSync(join(root, 'tests', 'bench'))
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
  .sort();
if (names.length === 0) {
  process.stderr.write(`No bench has ${wanted.join(' or ')} in its name.\n`);
  process.exit(2);
}

const server = await createServer({
  root,
  configFile: false,
  logLevel: 'error',
  appType: 'custom',
  server: { middlewareMode: true, ws: false, watch: null },
  optimizeDeps: { noDiscovery: true, include: [] },
});
try {
  for (const name of names) {
    process.stdout.write(`\n${name.replace(/\.bench\.ts$/, '')}\n`);
    const { bench } = await server.ssrLoadModule(`/tests/bench/${name}`);
    await bench((line) => process.stdout.write(`  ${line}\n`));
  }
} finally {
  await server.close();
}
