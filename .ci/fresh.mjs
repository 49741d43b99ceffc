// Tells whether something that was built is at least as new as everything it was built from.
import { readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

const engine = ['src', 'reference-data', 'package-lock.json', '.ci/build.mjs', 'tsconfig.base.json'];

/** What each of the three is built from. */
export const sourcesOf = {
  page: [...engine, 'components', 'public', 'index.html', 'vite.config.ts'],
  engine,
  cli: engine,
};

/** The file that stands when each of the three is built. */
export const resultOf = {
  page: 'dist/index.html',
  engine: 'dist/engine/quirewise.js',
  cli: 'dist/cli/study.js',
};

/** Whether the packages are there and as new as the lock file asks; setup.mjs makes them so. */
export function hasPackages() {
  const mark = timeOf(join(root, 'node_modules', '.package-lock.json'));
  return mark > 0 && mark >= timeOf(join(root, 'package-lock.json')) - 1000;
}

export function isFresh(what) {
  const built = timeOf(join(root, resultOf[what]));
  return built > 0 && sourcesOf[what].every((path) => newestIn(join(root, path)) <= built);
}

function newestIn(path) {
  const here = timeOf(path);
  if (here === 0 || !statSync(path).isDirectory()) return here;
  return Math.max(here, ...readdirSync(path).map((name) => newestIn(join(path, name))));
}

function timeOf(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}
