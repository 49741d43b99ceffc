import { deltaE2000 } from '../../src/colour/difference.ts';
import type { Lab } from '../../src/colour/model.ts';
import { compare } from '../../src/harmony/compare.ts';
import { takeSide } from '../../src/harmony/measure/take-side.ts';
import type { Verdict } from '../../src/harmony/model.ts';
import { judgeWhole as judge } from '../../src/harmony/whole/judge.ts';
import { findingKinds } from '../../src/harmony/whole/model.ts';
import { type Portrait, portraitOf } from '../../src/harmony/whole/portrait.ts';
import { familiesOf } from '../../src/sheet/families/families.ts';
import type { Family } from '../../src/sheet/families/model.ts';
import type { Side } from '../../src/sheet/model.ts';
import { agreement, type Guess, guessedWithout } from '../support/judging/held-out.ts';
import {
  judgedPairs,
  majorityOf,
  type Retake,
  readJudged,
  retakes,
  stepOf,
} from '../support/judging/judged.ts';
import { namedKinds } from '../support/judging/viewer-kinds.ts';

/**
 * How often the verdict agrees with three viewers on 29 judged papers, beside what the simplest answers would; whether the first
 * reason is of a kind that a viewer named; and how steady families and verdicts are when a paper is photographed once more.
 */
export async function bench(print: (line: string) => void): Promise<void> {
  const pairs = judgedPairs().filter(({ subject }) => !subject);
  const files = [...new Set(pairs.flatMap(({ a, b }) => [a, b]))].sort();
  const sides = new Map<string, Side>();
  for (const file of files) sides.set(file, await readJudged(file));
  const portraits = new Map(files.map((file) => [file, portraitOf(takeSide(sides.get(file)!, 'anchor'))]));
  const truth = pairs.map((pair) => stepOf(majorityOf(pair)));
  const at = (verdict: Verdict): number => stepOf(verdict);

  print(`${files.length} papers, ${pairs.length} pairs decided by colour; majority of three viewings`);
  print('                                              agrees  opposite   holds bridge apart');
  const row = (name: string, guess: readonly number[]): void => print(rowOf(name, guess, truth));
  row('viewers', truth);
  row(
    'always "holds together"',
    pairs.map(() => 1),
  );
  const whole = new Map(files.map((file) => [file, meanOf(portraits.get(file)!)]));
  const far = pairs.map(({ a, b }) => -deltaE2000(whole.get(a)!, whole.get(b)!));
  const nearest = pairs.map(({ a, b }) => -nearestOf(portraits.get(a)!, portraits.get(b)!));
  const guesses = (value: readonly number[], leave: 'one' | 'both'): Guess[] =>
    guessedWithout(pairs, value, truth, leave);
  row('mean colours alike (two limits, both left out)', byPair(guesses(far, 'both'), pairs.length));
  row('nearest ΔE₀₀ (two limits, both left out)', byPair(guesses(nearest, 'both'), pairs.length));
  row(
    'the page’s verdict, touching',
    pairs.map(({ a, b }) => at(compare(sides.get(a)!, sides.get(b)!, { distance: 'touching' }).verdict)),
  );
  const judged = pairs.map(({ a, b }) => judge(portraits.get(a)!, portraits.get(b)!));
  const balance = judged.map((one) => one.balance);
  const one = guesses(balance, 'one');
  const { agrees, opposite } = agreement(
    one.map(({ step }) => step),
    one.map(({ pair }) => truth[pair]!),
  );
  print(`${'findings; limits set without one picture'.padEnd(46)} ${cent(agrees)}    ${cent(opposite)}`);
  row('findings; limits set without both pictures', byPair(guesses(balance, 'both'), pairs.length));
  row(
    'findings; limits as they stand',
    judged.map(({ verdict }) => at(verdict)),
  );
  const arguable = judged.filter((j) => j.arguable).length;
  print(`it can be argued: ${arguable} of ${pairs.length}`);

  firstReasons(print, pairs, judged);
  await retaken(print, files, sides, pairs, judged);
}

type Pairs = ReturnType<typeof judgedPairs>;
type Judgements = readonly ReturnType<typeof judge>[];

function firstReasons(print: (line: string) => void, pairs: Pairs, judged: Judgements): void {
  const named = pairs.map(namedKinds);
  const first = judged.filter(({ findings }, i) => findings[0] && named[i]!.has(findings[0].kind)).length;
  const odd = judged.filter(({ leading }, i) => leading.some(({ kind }) => !named[i]!.has(kind))).length;
  print(`first reason of a kind that a viewer named: ${cent(first / pairs.length)}`);
  print(`one of the first three of a kind that none named: ${cent(odd / pairs.length)}`);
  for (const kind of findingKinds) {
    const led = judged.filter(({ findings }) => findings[0]?.kind === kind);
    const said = named.filter((kinds) => kinds.has(kind)).length;
    const right = judged.filter(
      ({ findings }, i) => findings[0]?.kind === kind && named[i]!.has(kind),
    ).length;
    print(
      `  ${kind.padEnd(16)} leads ${String(led.length).padStart(3)}, named then ${String(right).padStart(3)}; named in ${cent(said / pairs.length)} of all`,
    );
  }
}

async function retaken(
  print: (line: string) => void,
  files: readonly string[],
  sides: ReadonlyMap<string, Side>,
  pairs: Pairs,
  judged: Judgements,
): Promise<void> {
  const before = new Map(
    files.map((file) => [file, familiesOf(sides.get(file)!, sides.get(file)!.seen ?? null)]),
  );
  for (const retake of Object.keys(retakes) as Retake[]) {
    if (retake === 'as it is') continue;
    const again = new Map<string, Side>();
    for (const file of files) again.set(file, await readJudged(file, retake));
    let kept = 0;
    let same = 0;
    for (const file of files) {
      const families = familiesOf(again.get(file)!, again.get(file)!.seen ?? null);
      const share = Math.min(sharedBy(before.get(file)!, families), sharedBy(families, before.get(file)!));
      kept += share;
      if (share >= 0.95) same++;
    }
    const faces = new Map(files.map((file) => [file, portraitOf(takeSide(again.get(file)!, 'anchor'))]));
    const turned = pairs.map(({ a, b }) => judge(faces.get(a)!, faces.get(b)!).verdict);
    const alike = turned.filter((verdict, i) => verdict === judged[i]!.verdict).length;
    const two = turned.filter(
      (verdict, i) => Math.abs(stepOf(verdict) - stepOf(judged[i]!.verdict)) === 2,
    ).length;
    print(
      `${retake.padEnd(18)} families kept ${cent(kept / files.length)} by share, ${same} of ${files.length} papers; verdict ${cent(alike / pairs.length)}, two steps off ${two}`,
    );
  }
}

/** Share of the families that have one within ΔE₀₀ 4 among the others. */
function sharedBy(families: readonly Family[], others: readonly Family[]): number {
  return families.reduce(
    (sum, f) => sum + (others.some((o) => deltaE2000(f.lab, o.lab) <= 4) ? f.share : 0),
    0,
  );
}

function rowOf(name: string, guess: readonly number[], truth: readonly number[]): string {
  const { agrees, opposite } = agreement(guess, truth);
  const count = (step: number): string => String(guess.filter((g) => g === step).length).padStart(6);
  return `${name.padEnd(46)} ${cent(agrees)}    ${cent(opposite)}   ${count(1)}${count(0)}${count(-1)}`;
}

function byPair(guesses: readonly Guess[], n: number): number[] {
  const out = new Array<number>(n).fill(0);
  for (const { pair, step } of guesses) out[pair] = step;
  return out;
}

function meanOf({ families }: Portrait): Lab {
  const mean = (of: (lab: Lab) => number): number => families.reduce((s, f) => s + f.share * of(f.lab), 0);
  return { l: mean((v) => v.l), a: mean((v) => v.a), b: mean((v) => v.b) };
}

function nearestOf(a: Portrait, b: Portrait): number {
  return Math.min(...a.families.flatMap((x) => b.families.map((y) => deltaE2000(x.lab, y.lab))));
}

function cent(part: number): string {
  return `${(100 * part).toFixed(1).padStart(5)} %`;
}
