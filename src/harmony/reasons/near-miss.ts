import { bothChromatic } from '../measure/links.ts';
import type { Reason } from '../model.ts';
import type { NearMiss } from '../rules/troubles.ts';
import { nearMissWeight } from '../rules/weights.ts';
import { troubleWeights, verdictLimits } from '../thresholds.ts';
import { familyOf } from '../words/ink-word.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say, type Told } from './build.ts';

/** Inks close enough to look meant and far enough to look wrong: the weightiest for each ink. */
export const nearMissReasons: ReasonBuilder = (told) => {
  const used = new Set<string>();
  return told.judgement.troubles
    .filter((trouble): trouble is NearMiss => trouble.kind === 'near miss')
    .filter((miss) => {
      const { a, b } = miss.tied;
      // A near miss that is answered is still worth a word; two whites that nearly agree are not.
      const weight = bothChromatic(a, b) ? nearMissWeight(miss.tied, told.pair.distance) : miss.weight;
      return weight >= troubleWeights.worthSaying;
    })
    .filter(({ tied: { a, b } }) => {
      if (used.has(a.id) || used.has(b.id)) return false;
      used.add(a.id).add(b.id);
      return true;
    })
    .map((miss) => one(told, miss));
};

function one(told: Told, miss: NearMiss): Reason {
  const { link, a, b } = miss.tied;
  const whites = !bothChromatic(a, b);
  const hue = `hue ${sentences.number(link.hueDeg ?? 0, 0)}°`;
  return reason({
    kind: 'near miss',
    weighs: -miss.weight,
    says: sentence(told, miss),
    inks: [a, b],
    evidence: {
      deltaE00: link.deltaE00,
      hueDeg: link.hueDeg ?? 0,
      hueSteps: link.hueSteps ?? 0,
      valueSteps: Math.abs(link.dV),
      deltaB: b.lab.b - a.lab.b,
      answered: miss.answered,
    },
    figure: `ΔE₀₀ ${sentences.number(link.deltaE00)} · ${whites ? `Δb* ${sentences.number(b.lab.b - a.lab.b)}` : hue}`,
    sources: whites ? ['ciede2000', 'link-limits'] : ['moon-spencer', 'link-limits'],
  });
}

function sentence(told: Told, { tied: { a, b }, weight, answered }: NearMiss): string {
  const [one, other] = [say(told, a), say(told, b)];
  if (!bothChromatic(a, b)) return sentences.nearWhites(one, other, a.lab.b > b.lab.b ? one : other);
  if (answered > 0 && weight < verdictLimits.trouble) {
    const sheet = told.pair.tied.some((t) => t.a === a && t.link.kind === 'repeat') ? 'candidate' : 'anchor';
    return sentences.nearMissAnswered(one, other, told.names[sheet]);
  }
  if (told.pair.strip) return sentences.nearMissBehindStrip(one, other);
  return sentences.nearMiss(one, other, sharedFamily(a, b));
}

function sharedFamily(a: NearMiss['tied']['a'], b: NearMiss['tied']['b']): string {
  const [one, other] = [familyOf(a), familyOf(b)];
  // The stronger ink's family names the pair; the eye files the weaker one under it.
  return one === other || a.chroma >= b.chroma ? one : other;
}
