import { converter, differenceCiede2000 } from 'culori';
import { compare } from '../../src/harmony/compare.ts';
import { takeSide } from '../../src/harmony/measure/take-side.ts';
import type { Ranked } from '../../src/harmony/model.ts';
import { byStanding, rank } from '../../src/harmony/ranking/rank.ts';
import { whatIf } from '../../src/harmony/remedies/what-if.ts';
import { linkLimits } from '../../src/harmony/thresholds.ts';
import type { Ink, Side } from '../../src/sheet/model.ts';
import { chanceLab, chanceOf, labSide } from '../support/chance.ts';

/** The bench of this room: a ranking of 10,000 sheets of 8 inks, one comparison, one what-if. Times are of this machine. */
export async function bench(print: (line: string) => void): Promise<void> {
  const chance = chanceOf(1);
  const side = () =>
    labSide(
      Array.from({ length: 8 }, () => chanceLab(chance)),
      Array.from({ length: 8 }, () => 0.01 + 0.1 * chance()),
      Math.floor(chance() * 5),
    );
  const anchor = side();
  const sheets = Array.from({ length: 10_000 }, side);
  print(
    'harmony: 10,000 sheets of 8 inks against one of 8; medians of rounds in turn, after a warm-up of both',
  );
  const others = Array.from({ length: 2000 }, side);
  for (let n = 0; n < 4; n++) {
    rank(anchor, others.map(fresh));
    differencesByCulori(anchor, others.map(fresh));
  }
  const ours = rounds((list) => rank(anchor, list));
  const bare = rounds(
    (list) => differencesByCulori(anchor, list),
    () => tookByCulori,
  );
  for (let n = 0; n < 5; n++) {
    // One list a round, new to both: neither finds what the other has kept.
    for (const { round } of [bare, ours]) round(sheets.map(fresh));
  }
  const measured = sheets.map(fresh);
  rank(anchor, measured);
  const again = rounds(() => rank(anchor, measured));
  for (let n = 0; n < 5; n++) again.round(measured);
  print(`  ranked, sheets never seen before, first 24 with reasons       ${ms(ours.took())}`);
  print(`  ranked, sheets seen before                                    ${ms(again.took())}`);
  print(
    `  culori: conversions and ΔE₀₀ of the same families, no ranking  ${ms(bare.took())}  (${times(bare.took(), ours.took())}; ${times(bare.took(), again.took())} once seen)`,
  );
  print(
    `  order of the first 50 as by full comparisons: ${sameFirst(anchor, sheets, ours.result(), 50) ? 'yes' : 'NO'}`,
  );
  const pair = [anchor, sheets[0]!] as const;
  print(`  one comparison with remedies  ${ms(timed(() => compare(...pair)).took)}`);
  const found = compare(...pair);
  const drags = Array.from(
    { length: 60 },
    (_, i) => ({ kind: 'trim', of: 'candidate', ink: 'b', toShare: i / 1000 }) as const,
  );
  const drag = timed(() => {
    for (const change of drags) whatIf(found.anchor, found.candidate, [change]);
  });
  print(`  one what-if change  ${ms(drag.took / drags.length)}`);
}

function timed<T>(work: () => T): { took: number; result: T } {
  const start = performance.now();
  const result = work();
  return { took: performance.now() - start, result };
}

/** One way of doing it, a round at a time: how long it took in the middle, and what the last round gave. */
function rounds<T>(work: (sheets: readonly Side[]) => T, own?: () => number) {
  const times: number[] = [];
  let result: T;
  const round = (sheets: readonly Side[]) => {
    const { took, result: found } = timed(() => work(sheets));
    times.push(own?.() ?? took);
    result = found;
  };
  const took = () => [...times].sort((one, other) => one - other)[times.length >> 1]!;
  return { round, took, result: () => result };
}

const ms = (took: number): string => `${took.toFixed(took < 10 ? 2 : 0)} ms`;
const times = (slow: number, fast: number): string => `${(slow / fast).toFixed(1)} times ours`;

/** The same side anew, inks and colours too, so that nothing measured before is found again. */
function fresh(side: Side): Side {
  const anew = <T extends Ink>(ink: T): T => ({ ...ink, oklch: [...ink.oklch] });
  return { ...side, base: anew(side.base), inks: side.inks.map(anew) };
}

/** Whether the first places are those that a full comparison of every sheet gives. */
function sameFirst(anchor: Side, sheets: readonly Side[], ranked: readonly Ranked[], count: number): boolean {
  const full = sheets.map((side, index) => ({ index, ...compare(anchor, side) })).sort(byStanding);
  return ranked.slice(0, count).every(({ index }, i) => index === full[i]!.index);
}

const toLab = converter('lab65');
const difference = differenceCiede2000();
const culoriOf = ({ oklch: [l, c, h] }: Ink) =>
  toLab(h === null ? { mode: 'oklch', l, c } : { mode: 'oklch', l, c, h });

/** Families are gathered by us for both; what is timed is culori's part alone. */
function differencesByCulori(anchor: Side, sheets: readonly Side[]): number {
  const of = (side: Side, as: 'anchor' | 'candidate') => {
    const { base, inks } = takeSide(side, as);
    return [base, ...inks].map(culoriOf);
  };
  const ends = of(anchor, 'anchor');
  const all = sheets.map((sheet) => {
    const { base, inks } = takeSide(sheet, 'candidate');
    return [base, ...inks];
  });
  const start = performance.now();
  let near = 0;
  for (const inks of all)
    for (const b of inks.map(culoriOf))
      for (const a of ends) if (difference(a, b) <= linkLimits.repeatApart) near++;
  tookByCulori = performance.now() - start;
  return near;
}

let tookByCulori = 0;
