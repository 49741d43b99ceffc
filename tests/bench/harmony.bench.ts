import { converter, differenceCiede2000 } from 'culori';
import { munsellFromLab, munsellHueSteps } from '../../src/colour/munsell.ts';
import { neutralKind } from '../../src/colour/neutral.ts';
import { hueDistanceDeg } from '../../src/colour/spaces.ts';
import { painterFromHue } from '../../src/colour/wheels.ts';
import { compare } from '../../src/harmony/compare.ts';
import type { Ranked } from '../../src/harmony/model.ts';
import { byStanding, rank } from '../../src/harmony/rank.ts';
import { linkLimits } from '../../src/harmony/thresholds.ts';
import { whatIf } from '../../src/harmony/what-if.ts';
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
  print('harmony: 10,000 sheets of 8 inks against one of 8');
  const small = sheets.slice(0, 400);
  rank(anchor, small);
  linksByCulori(anchor, small);
  const unseen = sheets.map(fresh);
  const ours = timed(() => rank(anchor, unseen));
  rank(anchor, sheets);
  const again = timed(() => rank(anchor, sheets));
  const bare = timed(() => differencesByCulori(anchor, sheets));
  const theirs = timed(() => linksByCulori(anchor, sheets));
  print(`  ranked, sheets never seen before, first 24 with reasons  ${ms(ours.took)}`);
  print(`  ranked, sheets measured before                           ${ms(again.took)}`);
  print(
    `  culori: conversions and ΔE₀₀ of every pair, no ranking   ${ms(bare.took)}  (${times(bare.took, ours.took)})`,
  );
  print(
    `  culori: the links of the same ranking                    ${ms(theirs.took)}  (${times(theirs.took, ours.took)})`,
  );
  print(
    `  order of the first 50 as by full comparisons: ${sameFirst(anchor, sheets, ours.result, 50) ? 'yes' : 'NO'}`,
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
  print(`  one what-if change, remedies included  ${ms(drag.took / drags.length)}`);
}

function timed<T>(work: () => T): { took: number; result: T } {
  const start = performance.now();
  const result = work();
  return { took: performance.now() - start, result };
}

const ms = (took: number): string => `${took.toFixed(took < 10 ? 2 : 0)} ms`;
const times = (slow: number, fast: number): string => `${(slow / fast).toFixed(1)} times ours`;

/** The same side as a new object, so that nothing measured before is found again. */
function fresh(side: Side): Side {
  return { ...side, inks: side.inks.map((ink) => ({ ...ink })) };
}

/** Whether the first places are those that a full comparison of every sheet gives. */
function sameFirst(anchor: Side, sheets: readonly Side[], ranked: readonly Ranked[], count: number): boolean {
  const full = sheets
    .map((side, index) => ({ index, ...compare(anchor, side, { withoutRemedies: true }) }))
    .sort(byStanding);
  return ranked.slice(0, count).every(({ index }, i) => index === full[i]!.index);
}

const toLab = converter('lab65');
const difference = differenceCiede2000();
const culoriOf = ({ oklch: [l, c, h] }: Ink) =>
  toLab(h === null ? { mode: 'oklch', l, c } : { mode: 'oklch', l, c, h });

function differencesByCulori(anchor: Side, sheets: readonly Side[]): number {
  const ends = [anchor.base, ...anchor.inks].map(culoriOf);
  let near = 0;
  for (const sheet of sheets) {
    for (const b of [sheet.base, ...sheet.inks].map(culoriOf)) {
      for (const a of ends) if (difference(a, b) <= linkLimits.repeatApart) near++;
    }
  }
  return near;
}

/** The table of links as anyone would write it with culori and the exact Munsell inversion; nothing is weighed or sorted. */
function linksByCulori(anchor: Side, sheets: readonly Side[]): number {
  const measured = (ink: Ink) => {
    const lab = culoriOf(ink);
    const munsell = munsellFromLab(lab);
    const neutral = neutralKind(lab) !== null;
    return { lab, munsell, neutral, eye: ink.oklch[2] ?? 0, painter: painterFromHue(ink.oklch[2] ?? 0) };
  };
  const ends = [anchor.base, ...anchor.inks].map(measured);
  let related = 0;
  for (const sheet of sheets) {
    for (const b of [sheet.base, ...sheet.inks].map(measured)) {
      for (const a of ends) {
        if (difference(a.lab, b.lab) <= linkLimits.repeatApart) related++;
        else if (!a.neutral && !b.neutral) {
          const steps = munsellHueSteps(a.munsell.hue ?? 0, b.munsell.hue ?? 0);
          const opposite =
            Math.max(hueDistanceDeg(a.eye, b.eye), hueDistanceDeg(a.painter, b.painter)) >= 162;
          if (steps <= linkLimits.neighbourToSteps || opposite) related++;
        }
      }
    }
  }
  return related;
}
