import { ouLuo } from '../../colour/harmony-two.ts';
import type { Tied } from '../measure/links.ts';
import type { Reason } from '../model.ts';
import { inkLimits, pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say, type Told } from './build.ts';

/** The two-colour model's voice on the pair of inks where it has most to say, and where it parts from the wheel. */
export const modelReasons: ReasonBuilder = (told) => {
  const rated = told.pair.tied
    .filter(
      ({ a, b }) =>
        Math.min(a.share, b.share) >= inkLimits.accentShare && a.actsAs === null && b.actsAs === null,
    )
    .map((tied) => ({ tied, ch: ouLuo(tied.a.lab, tied.b.lab).ch }))
    .filter(({ tied, ch }) =>
      // That one colour goes with itself needs no second voice.
      tied.link.kind === 'repeat' ? ch <= pageLimits.ouLuoLow : Math.abs(ch) >= pageLimits.ouLuoHigh,
    )
    .sort(
      (one, other) =>
        Number(disagree(other)) - Number(disagree(one)) || Math.abs(other.ch) - Math.abs(one.ch),
    );
  const most = rated[0];
  return most ? [voice(told, most.tied, most.ch)] : [];
};

function voice(told: Told, tied: Tied, ch: number): Reason {
  const { link, a, b } = tied;
  const [one, other] = [say(told, a), say(told, b)];
  const says = disagree({ tied, ch })
    ? ch < 0
      ? sentences.modelAgainstWheel(one, other, wheelWords[link.kind])
      : sentences.modelForAgainstWheel(one, other, wheelWords[link.kind])
    : sentences.modelAgrees(one, other, ch > 0 ? 'high' : 'low');
  return reason({
    kind: 'two-colour model',
    weighs: 0,
    says,
    inks: [a, b],
    evidence: { ouLuo: ch, hueDeg: link.hueDeg ?? 0 },
    figure: `Ou–Luo ${sentences.number(ch, 2)}`,
    sources: ['ou-luo-2006'],
  });
}

const wheelWords = {
  repeat: 'one colour',
  'near miss': 'a near miss',
  tonal: 'tone on tone',
  neighbour: 'neighbours',
  opposite: 'opposites',
  unrelated: 'unrelated',
} as const;

function disagree({ tied, ch }: { tied: Tied; ch: number }): boolean {
  const against = tied.link.kind === 'near miss' || tied.link.kind === 'unrelated';
  return against ? ch > 0 : ch < 0;
}
