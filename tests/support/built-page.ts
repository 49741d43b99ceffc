import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { root } from './source-tree.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built page. */
    readonly pageUrl: string;
    /** Folder that it was built into. */
    readonly pageFolder: string;
  }
}

/** Builds the page once into a folder of its own, as a user gets it, and serves it on a free port. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'quirewise-page-'));
  const built = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--outDir', folder], {
    cwd: root,
    encoding: 'utf8',
    // The runner's own settings would make a build for tests of it.
    env: { ...process.env, NODE_ENV: 'production', VITEST: '' },
  });
  if (built.status !== 0) throw new Error(`The page could not be built.\n${built.stdout}\n${built.stderr}`);
  const server = await preview({
    root,
    logLevel: 'error',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0, strictPort: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The built page is not served.');
  project.provide('pageUrl', url);
  project.provide('pageFolder', folder);
  return async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
}
