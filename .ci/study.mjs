#!/usr/bin/env node
// The engine from a terminal. From a fresh clone it fetches and builds what it needs first, and says nothing about it.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { hasPackages, isFresh, resultOf, root } from './fresh.mjs';

if (!hasPackages()) prepare('setup.mjs', '--quiet');
if (!isFresh('cli')) prepare('build.mjs', '--cli', '--quiet');

// npm changes to the project's folder before it starts a script, and keeps in INIT_CWD where it was called.
const throughNpm = process.env.npm_lifecycle_event === 'study' && process.cwd() === root;
const folder = (throughNpm && process.env.INIT_CWD) || process.cwd();
const { main } = await import(pathToFileURL(join(root, resultOf.cli)).href);
process.exitCode = await main(process.argv.slice(2), {
  folder,
  out: (text) => process.stdout.write(text),
  sorry: (text) => process.stderr.write(text),
});

function prepare(script, ...options) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, '.ci', script), ...options], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status === 0) return;
  process.stderr.write(stdout + stderr);
  process.exit(1);
}
