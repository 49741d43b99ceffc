import { repeatLimit } from '../measure/links.ts';
import type { Tie } from '../rules/verdict.ts';
import { inkLimits, pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say, type Told } from './build.ts';
import { tiesOf } from './ties.ts';

/** A colour on both sheets, be it a few specks. */
export const repeatReasons: ReasonBuilder = (told) => {
  const ties = tiesOf(told.pair, 'repeat');
  const alone = ties.slice(0, pageLimits.tiesTold).map((tie) => one(told, tie));
  const rest = ties.slice(pageLimits.tiesTold);
  return rest.length > 0 ? [...alone, together(told, rest)] : alone;
};

function one(told: Told, { tied }: Tie) {
  const { link, a, b } = tied;
  return reason({
    kind: 'repeat',
    weighs: 0,
    says: sentences.repeat(say(told, a), say(told, b), sizeOf(a.share, b.share)),
    inks: [a, b],
    evidence: {
      deltaE00: link.deltaE00,
      limitDeltaE00: repeatLimit(told.pair.distance),
      anchorShare: a.share,
      candidateShare: b.share,
    },
    figure: `ΔE₀₀ ${sentences.number(link.deltaE00)} · ${sentences.percent(a.share)} and ${sentences.percent(b.share)}`,
    sources: ['ciede2000', 'link-limits'],
  });
}

function together(told: Told, ties: readonly Tie[]) {
  const inks = ties.flatMap(({ tied }) => [tied.a, tied.b]);
  const worst = Math.max(...ties.map(({ tied }) => tied.link.deltaE00));
  return reason({
    kind: 'repeat',
    weighs: 0,
    says: sentences.repeatsMore(inks.map((ink) => say(told, ink))),
    inks,
    evidence: { colours: ties.length, largestDeltaE00: worst },
    figure: `${ties.length} more · ΔE₀₀ up to ${sentences.number(worst)}`,
    sources: ['ciede2000', 'link-limits'],
  });
}

function sizeOf(one: number, other: number): sentences.RepeatSize {
  const [small, large] = [Math.min(one, other), Math.max(one, other)];
  if (large < inkLimits.accentShare) return 'specks';
  if (small < inkLimits.accentShare) return 'uneven';
  return small >= inkLimits.largeShare / 2 && large >= inkLimits.largeShare ? 'large' : 'even';
}
