import { type ChildProcess, fork } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { setPriority } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { chanceOf } from '../support/chance.ts';
import { type Mutant, mutantsOf } from './mutants-of.ts';

const root = process.cwd();
const rooms: Readonly<Record<string, string>> = {
  colour: 'src/colour',
  light: 'src/sheet/light',
  harmony: 'src/harmony',
  notebook: 'src/notebook',
  storage: 'src/storage',
};
/** Sentences, types and lists: what they hold is text or was measured elsewhere. */
const noRules =
  /\/words\/|model\.ts$|messages\.ts$|\/sources[\w-]*\.ts$|\/trade-words[\w-]*\.ts$|-(tables?|digits)\.ts$/;

interface Answer {
  readonly failed: readonly string[];
  readonly times: readonly (readonly [string, number])[];
  readonly why: string;
  readonly isBroken: boolean;
}

/**
 * Changes one thing of the code at a time and runs the nearest tests that reach it: what no test notices is printed.
 * `mutants [room …] [--sample N] [--seed S] [--tests N]`: so many mutants a room (default 60; 0 takes all), drawn by the
 * seed, each held against so many test files at most (default 12). A rate is of those files alone: the whole suite can
 * only catch more.
 */
export async function bench(print: (line: string) => void, args: readonly string[] = []): Promise<void> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      sample: { type: 'string', default: '60' },
      seed: { type: 'string', default: '1' },
      tests: { type: 'string', default: '12' },
      file: { type: 'string', default: '' },
    },
  });
  const unknown = positionals.filter((room) => !(room in rooms));
  if (unknown.length > 0)
    throw new Error(`No room ${unknown.join(', ')}; there are ${Object.keys(rooms).join(', ')}.`);
  setPriority(15);
  const reach = reachOfTests();
  for (const room of positionals.length > 0 ? positionals : Object.keys(rooms)) {
    await measureRoom(room, reach, print, {
      sample: Number(values.sample),
      seed: Number(values.seed),
      most: Number(values.tests),
      only: values.file,
    });
  }
}

async function measureRoom(
  room: string,
  reach: Reach,
  print: (line: string) => void,
  { sample, seed, most, only }: { sample: number; seed: number; most: number; only: string },
): Promise<void> {
  const files = filesUnder(rooms[room]!).filter((file) => !noRules.test(file) && file.includes(only));
  const testsOf = new Map(files.map((file) => [file, testsThatReach(file, reach, most)]));
  const reached = files.filter((file) => testsOf.get(file)!.length > 0);
  const all = reached.flatMap((file) => mutantsOf(file, readFileSync(join(root, file), 'utf8')));
  const mutants = sample > 0 ? drawn(all, sample, seed) : all;
  const tests = [...new Set(mutants.flatMap(({ file }) => testsOf.get(file)!))];
  const started = Date.now();
  const runner = new Runner();
  try {
    const clean = await runner.run('', '', tests, 0, 900_000);
    if (clean === null) throw new Error('The tests do not end before anything is changed.');
    if (clean.failed.length > 0 || clean.isBroken)
      throw new Error(`Before anything is changed ${clean.failed.join(', ')} fail: ${clean.why}`);
    const times = new Map(clean.times);
    const survivors: Mutant[] = [];
    let endless = 0;
    const from = Date.now();
    for (const mutant of mutants) {
      const own = testsOf.get(mutant.file)!;
      const limitMs = 5 * own.reduce((sum, test) => sum + (times.get(join(root, test)) ?? 0), 0) + 15_000;
      const answer = await runner.run(mutant.file, mutant.text, own, 1, limitMs);
      if (answer === null) endless++;
      else if (answer.failed.length === 0 && !answer.isBroken) {
        survivors.push(mutant);
        print(
          `  ${mutant.file}:${mutant.line} survived: ${mutant.was} → ${mutant.now === ';' ? '(left out)' : mutant.now}`,
        );
      }
    }
    const killed = mutants.length - survivors.length;
    const each = ((Date.now() - from) / 1000 / Math.max(1, mutants.length)).toFixed(2);
    print(
      `${room}: ${mutants.length} of ${all.length} mutants (seed ${seed}), ${killed} killed (${endless} by time), ${survivors.length} survived, ${((100 * killed) / mutants.length).toFixed(1)} %; ${each} s a mutant, ${Math.round((from - started) / 1000)} s before`,
    );
    const unseen = files.filter((file) => !reached.includes(file));
    if (unseen.length > 0) print(`  left out, no node test reaches them: ${unseen.join(', ')}`);
  } finally {
    runner.end();
  }
}

/** One Vitest in a process of its own, begun again where a change made it go on for ever. */
class Runner {
  private child: ChildProcess | null = null;

  async run(
    file: string,
    text: string,
    tests: readonly string[],
    bail: number,
    limitMs: number,
  ): Promise<Answer | null> {
    const child = this.child ?? (await this.begun());
    return new Promise((done) => {
      const take = (answer: Answer | null) => {
        clearTimeout(timer);
        child.off('message', take).off('exit', gone);
        if (answer === null) this.end();
        done(answer);
      };
      const gone = () => take(null);
      const timer = setTimeout(() => take(null), limitMs);
      child.on('message', take).on('exit', gone);
      child.send({
        file: file && join(root, file),
        text,
        tests: tests.map((test) => join(root, test)),
        bail,
      });
    });
  }

  end(): void {
    this.child?.kill('SIGKILL');
    this.child = null;
  }

  private async begun(): Promise<ChildProcess> {
    const child = fork(join(root, 'tests/bench/mutants-child.mjs'), {
      cwd: root,
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
      env: { ...process.env, NODE_ENV: 'test' },
    });
    this.child = child;
    await new Promise((ready, failed) => child.once('message', ready).once('exit', failed));
    return child;
  }
}

/** What each test file imports, directly or not, with the number of steps to it. */
type Reach = ReadonlyMap<string, ReadonlyMap<string, number>>;

function reachOfTests(): Reach {
  const imports = new Map<string, readonly string[]>();
  const importsOf = (file: string) => {
    const known = imports.get(file) ?? importsIn(file);
    imports.set(file, known);
    return known;
  };
  const tests = ['tests/unit', 'tests/reference', 'tests/fault'].flatMap(filesUnder);
  return new Map(
    tests
      .filter((file) => file.endsWith('.test.ts'))
      .map((test) => {
        const steps = new Map([[test, 0]]);
        for (const [file, step] of steps)
          for (const next of importsOf(file)) if (!steps.has(next)) steps.set(next, step + 1);
        return [test, steps];
      }),
  );
}

/** Values only: a type that is imported runs nothing. */
function importsIn(file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8');
  return [
    ...text.matchAll(
      /(?:^|\n)(?:import|export)\s(?!type\s)[^;'"]*?from\s*['"](\.[^'"]+)['"]|\bimport\(\s*['"](\.[^'"]+)['"]|\nimport\s*['"](\.[^'"]+)['"]/g,
    ),
  ]
    .map((match) => relative(root, resolve(root, dirname(file), (match[1] ?? match[2] ?? match[3])!)))
    .filter((path) => path.endsWith('.ts') && existsSync(join(root, path)));
}

/** Nearest first; of two as near, the one that reaches least else. */
function testsThatReach(file: string, reach: Reach, most: number): string[] {
  return [...reach]
    .filter(([, steps]) => steps.has(file))
    .sort(([one, a], [other, b]) => a.get(file)! - b.get(file)! || a.size - b.size || (one < other ? -1 : 1))
    .slice(0, most)
    .map(([test]) => test);
}

/** So many of them, no one twice, in the order of the code. */
function drawn(all: readonly Mutant[], count: number, seed: number): Mutant[] {
  const chance = chanceOf(seed);
  return all
    .map((mutant, i) => ({ mutant, i, lot: chance() }))
    .sort((one, other) => one.lot - other.lot)
    .slice(0, count)
    .sort((one, other) => one.i - other.i)
    .map(({ mutant }) => mutant);
}

function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder))
    .sort()
    .flatMap((name) => {
      const path = join(folder, name);
      if (statSync(join(root, path)).isDirectory()) return filesUnder(path);
      return path.endsWith('.ts') ? [path] : [];
    });
}
