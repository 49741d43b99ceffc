import { deltaE2000 } from '../../colour/difference.ts';
import { warmCoolCentred } from '../../colour/emotion.ts';
import { hueDistanceDeg } from '../../colour/hue.ts';
import type { Distance, Standing } from '../model.ts';
import { type Measure, type MeasureName, measureNames, measuresOf } from './measures.ts';
import type { Backing, Finding, FindingKind, FindingName } from './model.ts';
import type { Portrait } from './portrait.ts';
import { ramp } from './ramp.ts';
import { betweenLimits, countWeights, standingWeights, toldLimits } from './whole-thresholds.ts';

/** Every finding of a pair, those that count and those that are only told, in no order. */
export function findingsOf(a: Portrait, b: Portrait, lying: Lying = touching): Finding[] {
  const measures = asLying(measuresOf(a, b), lying);
  const isOneGround = measures['grounds agree'].size > 0;
  return [
    ...measureNames.map((name) => counting(name, measures[name])),
    toneOnTone(a, b),
    lightAndDark(a, b),
    noStep(a, b),
    warmAndCool(a, b),
    ...(isOneGround ? [] : [groundsDiffer(a, b)]),
    ...oneWorld(a, b),
  ];
}

/** What the findings of a pair come to, without those that only are told. The same numbers as of `findingsOf`, bit for bit. */
export function balanceOf(a: Portrait, b: Portrait, lying: Lying): Standing {
  const measures = asLying(measuresOf(a, b), lying);
  let [ties, quarrels, balance] = [0, 0, 0];
  for (const name of measureNames) {
    const { size } = measures[name];
    const counts = countWeights[name] * size;
    balance += counts;
    if (counts < 0) quarrels -= counts;
    ties += (standingWeights[name] ?? 0) * size;
  }
  ties += (standingWeights['tone on tone'] ?? 0) * toneOnTone(a, b).size;
  return { ties, quarrels, balance };
}

/** How the two lie beside each other. */
export interface Lying {
  readonly distance: Distance;
  /** True where a plain strip or mat lies between them. */
  readonly strip: boolean;
}
const touching: Lying = { distance: 'touching', strip: false };

/** What is left of each measure where the edges do not meet, and what a strip adds. */
function asLying(
  measures: Record<MeasureName, Measure>,
  { distance, strip }: Lying,
): Record<MeasureName, Measure> {
  if (distance === 'touching' && !strip) return measures;
  const left: Partial<Record<MeasureName, number>> = strip ? betweenLimits.behindStrip : betweenLimits.apart;
  const lying = { ...measures };
  for (const name of measureNames) {
    const measure = measures[name];
    lying[name] = { ...measure, size: measure.size * (left[name] ?? 1) };
  }
  const rests = lying['one rests'];
  return strip && rests.size < betweenLimits.stripRests
    ? { ...lying, 'one rests': { ...rests, size: betweenLimits.stripRests } }
    : lying;
}

function counting(name: MeasureName, { size, numbers, families }: Measure): Finding {
  const { kind, standing, sources } = about[name];
  const weight = countWeights[name];
  return {
    kind,
    name,
    speaks: weight > 0 ? 'for' : 'against',
    size,
    counts: weight * size + 0,
    numbers,
    standing,
    sourceIds: sources,
    families: families ? [[families[0].id], [families[1].id]] : [[], []],
  };
}

interface About {
  readonly kind: FindingKind;
  readonly standing: Backing;
  readonly sources: readonly string[];
}

const tradeSources = ['common-practice'] as const;
const judgedSources = ['judged-papers'] as const;
const about: Readonly<Record<MeasureName, About>> = {
  'one rests': { kind: 'rest', standing: 'T', sources: tradeSources },
  'few colours': { kind: 'rest', standing: 'O', sources: judgedSources },
  'soft beside loose': { kind: 'print scale', standing: 'T', sources: tradeSources },
  'grounds agree': { kind: 'grounds', standing: 'T', sources: ['common-practice', 'ciede2000'] },
  'comes back': { kind: 'comes back', standing: 'T', sources: ['common-practice', 'ciede2000'] },
  'many hues': { kind: 'busy', standing: 'O', sources: judgedSources },
  'strong contrast of colour': { kind: 'busy', standing: 'O', sources: judgedSources },
  'strong beside soft': { kind: 'clean or dusty', standing: 'T', sources: tradeSources },
  'nothing shared': { kind: 'comes back', standing: 'O', sources: ['judged-papers', 'ciede2000'] },
  'near miss': { kind: 'near miss', standing: 'O', sources: ['moon-spencer', 'ciede2000'] },
  'one is greyed': { kind: 'clean or dusty', standing: 'T', sources: tradeSources },
  'hues far apart': { kind: 'hues', standing: 'O', sources: judgedSources },
  'hard beside hard': { kind: 'print scale', standing: 'T', sources: tradeSources },
};

/** A finding that is told and decides nothing. */
function told(
  kind: FindingKind,
  name: FindingName,
  size: number,
  numbers: Readonly<Record<string, number>>,
  families: Finding['families'] = [[], []],
  standing: Backing = 'T',
  sourceIds: readonly string[] = tradeSources,
): Finding {
  return { kind, name, speaks: 'neither', size, counts: 0, numbers, standing, sourceIds, families };
}

/** One colour in two depths, equally clean. */
function toneOnTone(a: Portrait, b: Portrait): Finding {
  let best = told('tone on tone', 'tone on tone', 0, {});
  for (const x of a.families)
    for (const y of b.families) {
      if (x.neutral !== null || y.neutral !== null) continue;
      const hueDeg = hueDistanceDeg(x.hueDeg, y.hueDeg);
      const dL = Math.abs(x.lab.l - y.lab.l);
      const size =
        Math.min(x.tint, y.tint) *
        Math.sqrt(ramp(x.share, ...toldLimits.toneShare) * ramp(y.share, ...toldLimits.toneShare)) *
        (1 - ramp(hueDeg, ...toldLimits.toneHue)) *
        ramp(dL, ...toldLimits.toneLightness) *
        (1 - ramp(Math.abs(x.grey - y.grey), ...toldLimits.toneGrey));
      if (size > best.size)
        best = told('tone on tone', 'tone on tone', size, { hueDeg, dL }, [[x.id], [y.id]]);
    }
  return best;
}

function lightAndDark(a: Portrait, b: Portrait): Finding {
  const dL = Math.abs(a.lightness - b.lightness);
  return told('light and dark', 'light-dark step', ramp(dL, ...toldLimits.step), {
    lightnessA: a.lightness,
    lightnessB: b.lightness,
  });
}

/** Two papers at rest that lie too close to be told apart. */
function noStep(a: Portrait, b: Portrait): Finding {
  const deltaE00 = deltaE2000(a.base.lab, b.base.lab);
  const size = Math.min(a.rest, b.rest) * (1 - ramp(deltaE00, ...toldLimits.noStep));
  return told('light and dark', 'no step', size, { deltaE00 }, [[a.base.id], [b.base.id]]);
}

function warmAndCool(a: Portrait, b: Portrait): Finding {
  const warmth = (side: Portrait): number =>
    side.families.reduce((sum, f) => sum + f.share * warmCoolCentred(f.lab), 0);
  const [one, other] = [warmth(a), warmth(b)];
  const apart = one * other < 0 ? Math.min(Math.abs(one), Math.abs(other)) : 0;
  const numbers = { warmthA: one, warmthB: other };
  return told(
    'warm and cool',
    'warm beside cool',
    ramp(apart, ...toldLimits.warmth),
    numbers,
    [[], []],
    'P',
    ['ou-2004'],
  );
}

/** Two light grounds of which one is warmer. */
function groundsDiffer(a: Portrait, b: Portrait): Finding {
  const light = ({ base }: Portrait): number =>
    ramp(base.lab.l, ...toldLimits.lightGround) * ramp(base.share, ...toldLimits.groundShare);
  const apart = Math.hypot(a.base.lab.a - b.base.lab.a, a.base.lab.b - b.base.lab.b);
  const size = light(a) * light(b) * ramp(apart, ...toldLimits.groundApart);
  const numbers = { apartAb: apart, deltaE00: deltaE2000(a.base.lab, b.base.lab) };
  return told('grounds', 'grounds differ', size, numbers, [[a.base.id], [b.base.id]]);
}

/** What only tags tell: the same motif, the same hand or another. */
function oneWorld(a: Portrait, b: Portrait): Finding[] {
  const [one, other] = [a.side.tags, b.side.tags];
  const motifs = (one?.motifs ?? []).filter((motif) => other?.motifs?.includes(motif));
  const [mine, theirs] = [one?.finishes ?? [], other?.finishes ?? []];
  const differ = mine.length > 0 && theirs.length > 0 && !mine.some((finish) => theirs.includes(finish));
  return [
    ...(motifs.length ? [told('one world', 'same motif', 1, { motifs: motifs.length })] : []),
    ...(differ ? [told('one world', 'drawn differently', 1, {})] : []),
  ];
}
