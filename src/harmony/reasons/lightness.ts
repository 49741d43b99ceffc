import type { MeasuredInk } from '../measure/measured.ts';
import { inkLimits, pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say } from './build.ts';

/** The range from dark to light, and the gap that a photograph will fill. */
export const lightnessReasons: ReasonBuilder = (told) => {
  const inks = [...told.pair.anchor.inks, ...told.pair.candidate.inks]
    .filter((ink) => ink.share >= inkLimits.strayShare)
    .sort((a, b) => a.lab.l - b.lab.l);
  if (inks.length < 2) return [];
  const dark = inks[0]!;
  const light = inks.at(-1)!;
  const range = light.lab.l - dark.lab.l;
  const gap = widestGap(inks);
  const evidence = { darkest: dark.lab.l, lightest: light.lab.l };
  const common = { kind: 'lightness range', evidence, sources: ['common-practice', 'cielab'] } as const;
  const whole = `L* ${sentences.number(dark.lab.l, 0)} to ${sentences.number(light.lab.l, 0)}`;
  const [d, l] = [say(told, dark), say(told, light)];
  if (range < pageLimits.flatRange) {
    const says = sentences.flatRange(d, l);
    return [reason({ ...common, weighs: 0, says, inks: [dark, light], figure: whole })];
  }
  if (gap.to.lab.l - gap.from.lab.l < pageLimits.photoGap) {
    const says = sentences.fullRange(d, l);
    return [reason({ ...common, weighs: 0, says, inks: [dark, light], figure: whole })];
  }
  return [
    reason({
      ...common,
      evidence: { ...evidence, gapFrom: gap.from.lab.l, gapTo: gap.to.lab.l },
      weighs: 0,
      says: sentences.photoGap(say(told, gap.from), say(told, gap.to)),
      inks: [gap.from, gap.to],
      figure: `empty in both, L* ${sentences.number(gap.from.lab.l, 0)}–${sentences.number(gap.to.lab.l, 0)}`,
    }),
  ];
};

/** The widest empty stretch between inks sorted by lightness. */
export function widestGap(sorted: readonly MeasuredInk[]): { from: MeasuredInk; to: MeasuredInk } {
  let best = { from: sorted[0]!, to: sorted[1] ?? sorted[0]! };
  for (let i = 1; i < sorted.length; i++) {
    const [from, to] = [sorted[i - 1]!, sorted[i]!];
    if (to.lab.l - from.lab.l > best.to.lab.l - best.from.lab.l) best = { from, to };
  }
  return best;
}
