import { deltaE2000 } from '../../colour/difference.ts';
import type { Lab } from '../../colour/model.ts';
import { labFromRgb, oklchFromTuple, rgbFromOklch } from '../../colour/spaces.ts';
import { seenBy, type VisionKind } from '../../colour/vision.ts';
import type { Tied } from '../measure/links.ts';
import type { MeasuredInk } from '../measure/measured.ts';
import { pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say } from './build.ts';

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
