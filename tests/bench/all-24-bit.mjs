// The nightly check of all 16.7 million colours: node tests/bench/all-24-bit.mjs
// Takes some minutes on one core; ends with status 1 where a fault was found. Two numbers, 0 to 256, take a range of reds,
// so that several processes can share the work: node tests/bench/all-24-bit.mjs 0 128
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const here = dirname(fileURLToPath(import.meta.url));
const { output } = await build({
  root: join(here, '..', '..'),
  configFile: false,
  logLevel: 'error',
  ssr: { noExternal: true },
  build: { ssr: join(here, 'all-24-bit.ts'), write: false, minify: false },
});
const { all24Bit } = await import(
  `data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`
);

const [first = 0, end = 256] = process.argv.slice(2).map(Number);
const began = performance.now();
const faults = await all24Bit((line) => process.stdout.write(`${line}\n`), first, end);
process.stdout.write(`${faults} faults, ${Math.round((performance.now() - began) / 1000)} s\n`);
process.exitCode = faults ? 1 : 0;
