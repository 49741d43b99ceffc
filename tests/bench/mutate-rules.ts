import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Changes one number or comparison of the rules at a time, in a copy of the project, and runs the tests of the room:
 * a change that no test catches is printed, and the run fails. Not part of `npm test`; takes minutes.
 *
 * Call `run` with the root of the project; every `step`-th mutant only, where a sample will do.
 */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly was: string;
  readonly now: string;
  readonly text: string;
}

const targets = [
  'src/harmony/thresholds.ts',
  'src/harmony/whole/whole-thresholds.ts',
  'src/harmony/whole/measures.ts',
  'src/harmony/whole/judge.ts',
  'src/harmony/measure/link-kind.ts',
] as const;
/** The quick tests of the room, those that pin the rules first. */
const tests = [
  'tests/unit/judging/whole.test.ts',
  'tests/unit/judging/papers.test.ts',
  'tests/unit/harmony/links.test.ts',
  'tests/unit/harmony/thresholds.test.ts',
  'tests/unit/harmony/kit-cases.test.ts',
  'tests/unit/harmony/reasons.test.ts',
  'tests/unit/harmony/meeting.test.ts',
  'tests/reference/harmony-models.test.ts',
];

/** Every mutant of a file: each number moved up and down, each comparison loosened or turned. */
export function mutantsOf(file: string, text: string): Mutant[] {
  return text.split('\n').flatMap((was, i) => {
    if (/^\s*(\/?\*|\/\/|import|export interface|readonly)/.test(was)) return [];
    return changesOf(was).map((now) => ({
      file,
      line: i + 1,
      was: was.trim(),
      now: now.trim(),
      text: text
        .split('\n')
        .map((line, j) => (j === i ? now : line))
        .join('\n'),
    }));
  });
}

function changesOf(line: string): string[] {
  // A default where nothing was found lies below every limit: moved, it decides nothing, and no test could tell.
  const numbers = [...line.matchAll(/(?<!\?\? |[\w.'])(\d+(?:\.\d+)?)(?![\w'])/g)].flatMap((match) =>
    [0.7, 1.4].map((factor) => replaceAt(line, match.index, match[1]!, moved(Number(match[1]), factor))),
  );
  const signs = [...line.matchAll(/ (<=|>=|<|>|&&|\|\|) /g)].map((match) =>
    replaceAt(line, match.index + 1, match[1]!, turned[match[1] as keyof typeof turned]),
  );
  return [...new Set([...numbers, ...signs])].filter((now) => now !== line);
}

const turned = { '<=': '>', '>=': '<', '<': '>=', '>': '<=', '&&': '||', '||': '&&' } as const;

function moved(value: number, factor: number): string {
  return String(value === 0 ? 0.1 * factor : Number((value * factor).toPrecision(6)));
}

function replaceAt(line: string, at: number, was: string, now: string): string {
  return line.slice(0, at) + now + line.slice(at + was.length);
}

function copyOf(root: string): string {
  const copy = mkdtempSync(join(tmpdir(), 'rules-'));
  for (const part of ['src', 'tests', 'reference-data', '.ci', 'components']) {
    cpSync(join(root, part), join(copy, part), { recursive: true });
  }
  for (const part of ['package.json', 'vite.config.ts', 'tsconfig.json', 'tsconfig.base.json']) {
    cpSync(join(root, part), join(copy, part));
  }
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  mkdirSync(join(copy, 'dist'), { recursive: true });
  return copy;
}

function isCaught(copy: string, without: string): boolean {
  try {
    execFileSync(
      'npx',
      ['vitest', 'run', '--project', 'node', '--bail', '1', ...tests.filter((test) => test !== without)],
      {
        cwd: copy,
        stdio: 'pipe',
      },
    );
    return false;
  } catch {
    return true;
  }
}

/**
 * Runs all mutants of `files` (default: all that hold rules), or every `step`-th from `from` on, and prints the ones that
 * no test caught. `without` leaves one test file out, to see what the others catch. Comes back with how many survived.
 */
export function run(
  root: string,
  print: (line: string) => void,
  { step = 1, from = 0, files = targets as readonly string[], without = '' } = {},
): number {
  const copy = copyOf(root);
  let survived = 0;
  let count = 0;
  try {
    if (isCaught(copy, without)) throw new Error('The tests fail before anything is changed.');
    for (const file of files) {
      const text = readFileSync(join(root, file), 'utf8');
      const mutants = mutantsOf(file, text).filter((_, i) => i % step === from);
      for (const mutant of mutants) {
        count++;
        writeFileSync(join(copy, file), mutant.text);
        if (!isCaught(copy, without)) {
          survived++;
          print(`${file}:${mutant.line} survived: ${mutant.now}`);
        }
      }
      writeFileSync(join(copy, file), text);
    }
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
  print(`${count - survived} of ${count} mutants caught`);
  return survived;
}
