import type { Tied } from '../measure/links.ts';
import { degreesPerStep, offAxisDeg } from '../measure/links.ts';
import { inkLimits, linkLimits, pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say, type Told } from './build.ts';
import { tiesOf } from './ties.ts';

/** Two hues side by side on the circle. */
export const neighbourReasons: ReasonBuilder = (told) =>
  tiesOf(told.pair, 'neighbour')
    .slice(0, 2)
    .map(({ tied: { link, a, b } }) =>
      reason({
        kind: 'neighbours',
        weighs: 0,
        says: sentences.neighbours(say(told, a), say(told, b)),
        inks: [a, b],
        evidence: { hueSteps: link.hueSteps ?? 0, hueDeg: link.hueDeg ?? 0 },
        figure: `hue ${steps(link.hueSteps)} of 100 · ${sentences.number(link.hueDeg ?? 0, 0)}°`,
        sources: ['munsell', 'link-limits'],
      }),
    );

/** Two hues across the circle from each other, and on which wheel. */
export const oppositeReasons: ReasonBuilder = (told) =>
  tiesOf(told.pair, 'opposite')
    .slice(0, pageLimits.tiesTold / 2)
    .map(({ tied }) => opposite(told, tied));

function opposite(told: Told, { link, a, b }: Tied) {
  const eye = offAxisDeg(a, b, 'eye')!;
  const painter = offAxisDeg(a, b, 'painter')!;
  const wheels = link.wheels ?? [];
  const off = Math.min(...wheels.map((wheel) => (wheel === 'eye' ? eye : painter)));
  return reason({
    kind: 'opposites',
    weighs: 0,
    says: sentences.opposites(say(told, a), say(told, b), {
      wheels,
      offDeg: off,
      edges: edgesOf(told, a, b),
    }),
    inks: [a, b],
    evidence: {
      offAxisEyeDeg: eye,
      offAxisPainterDeg: painter,
      limitDeg: linkLimits.oppositeWithinSteps * degreesPerStep,
      hueDeg: link.hueDeg ?? 0,
    },
    figure: sentences.offOnBothWheels(eye, painter),
    // The figure gives both wheels: both are named beside it, and the first to look up is the sentence's own.
    source: sentences.bothWheels,
    sources:
      wheels[0] === 'painter'
        ? ['painter-wheel', 'oklab', 'link-limits']
        : ['oklab', 'painter-wheel', 'link-limits'],
  });
}

function edgesOf(told: Told, a: Tied['a'], b: Tied['b']): 'shimmer' | 'uneven' | 'even' {
  const [small, large] = [Math.min(a.share, b.share), Math.max(a.share, b.share)];
  if (small * 2 < large) return 'uneven';
  const strong = Math.min(a.chroma, b.chroma) >= inkLimits.vividFull / 2;
  return told.pair.distance === 'touching' && strong ? 'shimmer' : 'even';
}

const steps = (value: number | null): string => `${sentences.number(value ?? 0)} steps`;
