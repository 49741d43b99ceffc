// Builds the page when it is missing or older than its sources, serves it, and says where: one line.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { preview } from 'vite';
import { isFresh, root } from './fresh.mjs';

if (!isFresh('page')) {
  const script = join(root, '.ci', 'build.mjs');
  const { status } = spawnSync(process.execPath, [script, '--page', '--quiet'], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (status !== 0) process.exit(status ?? 1);
}

const port = Number(process.env.PORT || 5173);
if (!Number.isInteger(port) || port < 0 || port > 65535) {
  process.stderr.write(`PORT is set to "${process.env.PORT}", which is no port.\n`);
  process.exit(2);
}
const server = await preview({
  root,
  logLevel: 'error',
  preview: { host: '127.0.0.1', port, strictPort: false },
});
process.stdout.write(`Quirewise is open at ${server.resolvedUrls.local[0]}\n`);
