import { converter, differenceCiede2000 } from 'culori';
import { munsellHueSteps } from '../../src/colour/munsell.ts';
import { hueDistanceDeg } from '../../src/colour/spaces.ts';
import { compare } from '../../src/harmony/compare.ts';
import {
  kindOf,
  type Meeting,
  missSizeOf,
  samenessOf,
  seenOf,
  sizeOf,
  strongOf,
  tintOf,
} from '../../src/harmony/measure/link-kind.ts';
import { isLightNeutral, type Tied } from '../../src/harmony/measure/links.ts';
import { type MeasuredInk, type MeasuredSide, measureColour } from '../../src/harmony/measure/measured.ts';
import type { Pair } from '../../src/harmony/measure/pair.ts';
import type { Link, Ranked } from '../../src/harmony/model.ts';
import { byStanding, rank, readyPlaces } from '../../src/harmony/ranking/rank.ts';
import { whatIf } from '../../src/harmony/remedies/what-if.ts';
import { standingOf } from '../../src/harmony/rules/standing.ts';
import { judge } from '../../src/harmony/rules/verdict.ts';
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
  const others = Array.from({ length: 3000 }, side);
  for (let n = 0; n < 12; n++) {
    rank(anchor, others.map(fresh));
    rankByCulori(anchor, others.slice(0, 1000).map(fresh));
  }
  const ours = rounds((list) => rank(anchor, list));
  const theirs = rounds((list) => rankByCulori(anchor, list));
  const bare = rounds((list) => differencesByCulori(anchor, list));
  for (let n = 0; n < 11; n++) {
    // One list a round, new to all three: none of them finds what another has kept. What only converts goes first, so
    // that clearing up after the making of the list falls to neither ranking.
    const list = sheets.map(fresh);
    for (const { round } of [bare, ours, theirs]) round(list);
  }
  const measured = sheets.map(fresh);
  rank(anchor, measured);
  const again = rounds(() => rank(anchor, measured));
  for (let n = 0; n < 5; n++) again.round(measured);
  print(`  ranked, sheets never seen before, first 24 with reasons  ${ms(ours.took())}`);
  print(`  ranked, sheets measured before                           ${ms(again.took())}`);
  print(
    `  culori: conversions and ΔE₀₀ of every pair, no ranking   ${ms(bare.took())}  (${times(bare.took(), ours.took())})`,
  );
  print(
    `  the same ranking by culori’s calls                       ${ms(theirs.took())}  (${times(theirs.took(), ours.took())}; ${times(theirs.took(), again.took())} once measured)`,
  );
  const inPlace = ours
    .result()
    .slice(0, 50)
    .filter(({ index }, i) => index === theirs.result()[i]).length;
  print(`  of the first 50, in the same place in both  ${inPlace}`);
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
  print(`  one what-if change, remedies included  ${ms(drag.took / drags.length)}`);
}

function timed<T>(work: () => T): { took: number; result: T } {
  const start = performance.now();
  const result = work();
  return { took: performance.now() - start, result };
}

/** One way of doing it, a round at a time: how long it took in the middle, and what the last round gave. */
function rounds<T>(work: (sheets: readonly Side[]) => T) {
  const times: number[] = [];
  let result: T;
  const round = (sheets: readonly Side[]) => {
    const { took, result: found } = timed(() => work(sheets));
    times.push(took);
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

/**
 * The same ranking, rule for rule, written with culori's calls: its conversions and its CIEDE2000 for every pair, with
 * objects throughout. What culori has not (Munsell, the painter's wheel, the neutrals) is looked up as we do.
 */
function rankByCulori(anchorSide: Side, sheets: readonly Side[]): number[] {
  const anchor = measuredByCulori(anchorSide, 'anchor');
  const order = sheets
    .map((side, index) => {
      const pair = pairByCulori(anchor, measuredByCulori(side, 'candidate'));
      const judgement = judge(pair);
      return { index, verdict: judgement.verdict, standing: standingOf(pair, judgement) };
    })
    .sort(byStanding)
    .map(({ index }) => index);
  // The first screen comes with its reasons here too; culori has none of its own.
  for (const index of order.slice(0, readyPlaces)) compare(anchorSide, sheets[index]!);
  return order;
}

function measuredByCulori(side: Side, of: 'anchor' | 'candidate'): MeasuredSide {
  const inks = [side.base, ...side.inks].map((ink, place): MeasuredInk => {
    const { l, a, b } = culoriOf(ink);
    const chroma = Math.hypot(a, b);
    const { munsellHue, munsellValue, painterDeg, neutral, counts } = measureColour(ink);
    const { kind } = side.base;
    const byKind = kind === 'white' || kind === 'cream' || kind === 'kraft' ? kind : null;
    return {
      lab: { l, a, b },
      chroma,
      saturation: chroma / Math.hypot(chroma, l),
      munsellHue,
      munsellValue,
      hueDeg: ink.oklch[2],
      painterDeg,
      neutral,
      counts,
      warmth: 0,
      ink,
      id: `${of} ${place}`,
      share: ink.share,
      isBase: place === 0,
      actsAs: place === 0 ? (byKind ?? neutral) : neutral,
      of,
    };
  });
  const quiet = inks.every(({ actsAs, chroma, share }) => actsAs !== null || chroma < 15 || share < 0.01);
  return { side, inks, quiet, plain: inks.every(({ isBase, share }) => isBase || share < 0.01) };
}

function pairByCulori(anchor: MeasuredSide, candidate: MeasuredSide): Pair {
  const tied = anchor.inks.flatMap((a) =>
    candidate.inks.map((b): Tied => {
      const meeting = meetingByCulori(a, b);
      const kind = kindOf(meeting, linkLimits.repeatApart);
      const link = { kind, anchorInk: a.id, candidateInk: b.id, hueSteps: meeting.hueSteps } as Link;
      return { link, a, b, meeting, same: samenessOf(meeting) };
    }),
  );
  const byInk = new Map<MeasuredInk, Tied[]>();
  for (const one of tied) for (const ink of [one.a, one.b]) byInk.set(ink, [...(byInk.get(ink) ?? []), one]);
  const repeated = Math.max(...tied.map(({ same }) => same));
  return { anchor, candidate, distance: 'apart', strip: false, tied, byInk, repeated };
}

function meetingByCulori(a: MeasuredInk, b: MeasuredInk): Meeting {
  const deltaE00 = difference({ mode: 'lab65', ...a.lab }, { mode: 'lab65', ...b.lab });
  const opposite = (x: number | null, y: number | null) => 180 - hueDistanceDeg(x ?? 0, y ?? 0);
  const off = Math.min(opposite(a.hueDeg, b.hueDeg), opposite(a.painterDeg, b.painterDeg));
  const share = Math.min(a.share, b.share);
  const counts = Math.min(a.counts, b.counts);
  const chroma = Math.min(a.chroma, b.chroma);
  return {
    deltaE00,
    hueSteps: munsellHueSteps(a.munsellHue ?? 0, b.munsellHue ?? 0),
    valueSteps: Math.abs(a.munsellValue - b.munsellValue),
    offSteps: off / 3.6,
    chromatic: a.actsAs === null && b.actsAs === null,
    whites: isLightNeutral(a) && isLightNeutral(b) && Math.abs(a.lab.b - b.lab.b) > linkLimits.whitesDeltaB,
    size: sizeOf(share),
    missSize: missSizeOf(share),
    seen: seenOf(share),
    tint: tintOf(chroma) * counts,
    strong: strongOf(chroma) * counts,
  };
}
