import { deltaE2000 } from '../../colour/difference.ts';
import { ouLuo } from '../../colour/harmony-two.ts';
import type { Lab } from '../../colour/model.ts';
import { labFromRgb, oklchFromTuple, rgbFromOklch } from '../../colour/spaces.ts';
import { seenBy, type VisionKind } from '../../colour/vision.ts';
import type { Tied } from '../measure/links.ts';
import type { MeasuredInk, MeasuredSide } from '../measure/measured.ts';
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

/** Trouble for other eyes: two inks, plainly apart for most, that fall together for some. */
export const otherEyesReasons: ReasonBuilder = (told) => {
  let worst: { tied: Tied; kind: VisionKind; left: number } | undefined;
  for (const tied of told.pair.tied) {
    const { link, a, b } = tied;
    if (link.deltaE00 < pageLimits.otherEyesFrom) continue;
    if (Math.min(a.share, b.share) < pageLimits.otherEyesShare) continue;
    for (const kind of ['protan', 'deutan', 'tritan'] as const) {
      const left = leftFor(tied, kind);
      if (left <= pageLimits.otherEyesTo && left < (worst?.left ?? Number.POSITIVE_INFINITY))
        worst = { tied, kind, left };
    }
  }
  if (!worst) return [];
  const { tied, kind, left } = worst;
  return [
    reason({
      kind: 'other eyes',
      weighs: 0,
      says: sentences.otherEyes(say(told, tied.a), say(told, tied.b), kind),
      inks: [tied.a, tied.b],
      evidence: { deltaE00: tied.link.deltaE00, deltaE00Seen: left },
      figure: `ΔE₀₀ ${sentences.number(tied.link.deltaE00)} → ${sentences.number(left)}`,
      sources: kind === 'tritan' ? ['brettel'] : ['machado'],
    }),
  ];
};

/** Pictures read without a card. */
export const lightReasons: ReasonBuilder = ({ pair, names }) =>
  lightReasonsOf((['anchor', 'candidate'] as const).map((of) => ({ side: pair[of], name: names[of] })));

/** The same of any sheets. */
export function lightReasonsOf(
  sheets: readonly { readonly side: MeasuredSide; readonly name: string }[],
): Reason[] {
  const unknown = sheets.filter(({ side }) => !side.side.light.known);
  if (unknown.length === 0) return [];
  return [
    reason({
      kind: 'light unknown',
      weighs: 0,
      says: sentences.lightUnknown(unknown.map(({ name }) => name)),
      inks: unknown.map(({ side }) => side.inks[0]!),
      evidence: { sheets: unknown.length },
      figure: sentences.noCardFigure,
      sources: ['common-practice'],
    }),
  ];
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

/** ΔE₀₀ that is left of two inks for such an eye. */
function leftFor({ a, b }: Tied, kind: VisionKind): number {
  return deltaE2000(seenLab(a, kind), seenLab(b, kind));
}

function seenLab({ ink }: MeasuredInk, kind: VisionKind): Lab {
  const known = kept[kind].get(ink.oklch);
  if (known) return known;
  const lab = labFromRgb(seenBy(rgbFromOklch(oklchFromTuple(ink.oklch)), kind));
  kept[kind].set(ink.oklch, lab);
  return lab;
}

const kept: Readonly<Record<VisionKind, WeakMap<object, Lab>>> = {
  protan: new WeakMap(),
  deutan: new WeakMap(),
  tritan: new WeakMap(),
};
