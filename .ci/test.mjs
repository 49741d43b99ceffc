// The lot: types, lint, then every test. Arguments go to the test runner and skip the checks before it.
import { spawnSync } from 'node:child_process';

const extra = process.argv.slice(2);
const steps = extra.length
  ? [['vitest', 'run', ...extra]]
  : [
      ['tsc', '-p', 'tsconfig.json'],
      ['tsc', '-p', 'tsconfig.pure.json'],
      ['biome', 'check', '.'],
      ['vitest', 'run'],
    ];
for (const [tool, ...args] of steps) {
  const { status } = spawnSync('npx', ['--no-install', tool, ...args], {
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    process.stderr.write(`${tool} ${args.join(' ')} failed.\n`);
    process.exit(status ?? 1);
  }
}
