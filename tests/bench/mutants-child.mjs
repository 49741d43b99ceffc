// Holds one Vitest and runs tests under one changed file at a time: a message in, a message out. The change is made
// as the file is read, so nothing is written. Whoever started this ends it where a change makes a test go on for ever.
import { createVitest } from 'vitest/node';
import { demoNotebook } from '../../.ci/demo-notebook.mjs';

let changed = { file: '', text: '' };
let order = [];

class AsGiven {
  sort(files) {
    return [...files].sort((one, other) => order.indexOf(one.moduleId) - order.indexOf(other.moduleId));
  }
  shard(files) {
    return files;
  }
}

const vitest = await createVitest(
  'test',
  {
    config: false,
    watch: false,
    root: process.cwd(),
    include: ['tests/{unit,reference,fault}/**/*.test.ts'],
    environment: 'node',
    isolate: false,
    fileParallelism: false,
    pool: 'threads',
    testTimeout: 30_000,
    bail: 1,
    reporters: [{}],
    sequence: { sequencer: AsGiven },
  },
  {
    plugins: [
      demoNotebook(),
      {
        name: 'one-change',
        enforce: 'pre',
        transform: (_, id) => (id.split('?')[0] === changed.file ? { code: changed.text, map: null } : null),
      },
    ],
  },
);
await vitest.standalone();

process.on('message', async ({ file, text, tests, bail }) => {
  const before = changed.file;
  changed = { file, text };
  for (const one of [before, file]) if (one !== '') vitest.invalidateFile(one);
  order = tests;
  vitest.config.bail = bail;
  for (const project of vitest.projects) project.config.bail = bail;
  const project = vitest.projects[0];
  const { testModules: known, unhandledErrors } = await vitest.runTestSpecifications(
    tests.map((test) => project.createSpecification(test)),
  );
  // What is known from earlier turns comes along.
  const testModules = known.filter(({ moduleId }) => tests.includes(moduleId));
  const failed = testModules.filter((module) => module.state() === 'failed').map(({ moduleId }) => moduleId);
  const times = testModules.map((module) => [module.moduleId, module.diagnostic().duration]);
  const why = testModules.flatMap((module) => [
    ...module.errors().map(({ message }) => message),
    ...[...module.children.allTests('failed')].map((test) => test.fullName),
  ]);
  process.send({
    failed,
    times,
    why: why[0] ?? unhandledErrors[0]?.message ?? '',
    isBroken: unhandledErrors.length > 0,
  });
});
process.send({ ready: true });
