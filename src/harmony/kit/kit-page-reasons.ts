import type { MeasuredSide } from '../measure/measured.ts';
import type { Reason } from '../model.ts';
import { type Draft, reason } from '../reasons/build.ts';
import { lightReasonsOf } from '../reasons/other-voices.ts';
import { busynessOf } from '../reasons/print.ts';
import { thinReasons } from '../reasons/tags.ts';
import { warmthOf } from '../reasons/warmth.ts';
import { adviceWeights, pageLimits } from '../thresholds.ts';
import * as kitSentences from '../words/kit-sentences.ts';
import * as sentences from '../words/sentences.ts';
import { type Measured, placeOf } from './kit-members.ts';
import { findingsOf } from './kit-pairs-say.ts';

/** What a kit does as a page: print, warmth, photographs, areas, thin sheets, light. */
export function kitPageReasons(kit: Measured): Reason[] {
  return [
    ...scales(kit),
    ...busyness(kit),
    ...warmth(kit),
    ...photos(kit),
    ...areas(kit),
    ...kit.sheets.flatMap((at) => thinReasons(kit.sides[at]!, kit.members[at]!.name)),
    ...lightReasonsOf(kit.sheets.map((at) => ({ side: kit.sides[at]!, name: kit.members[at]!.name }))),
  ];
}

function ofPlaces(
  draft: Omit<Draft, 'inks'> & { readonly places: readonly number[] },
  kit: Measured,
): Reason {
  const { places, ...rest } = draft;
  const inks = places.map((at) => kit.sides[at]!.inks[0]!.id);
  return { ...reason({ ...rest, inks: [] }), inks: inks.sort((a, b) => placeOf(a) - placeOf(b)) };
}

/** Scales of the prints: what one pair says; of several, the prints that are alike, else that they differ. */
function scales(kit: Measured): Reason[] {
  const told = findingsOf(kit, 'print scale');
  if (told.length < 2) return told.map(({ found }) => found);
  const printed = placesIn(told);
  const scaleOf = (at: number) => kit.sides[at]!.side.print.scale!;
  const found = [...new Set(printed.map(scaleOf))];
  const alike = found
    .map((scale) => ({ scale, places: printed.filter((at) => scaleOf(at) === scale) }))
    .filter(({ places }) => places.length > 1);
  const common = {
    kind: 'print scale',
    evidence: { prints: printed.length, scales: found.length },
    sources: ['common-practice'],
  } as const;
  if (alike.length === 0) {
    const says = kitSentences.scalesApart(found);
    const figure = sentences.listed(found);
    return [ofPlaces({ ...common, weighs: adviceWeights.scaleApart, says, places: printed, figure }, kit)];
  }
  return alike.map(({ scale, places }) => {
    const says =
      found.length === 1
        ? kitSentences.scalesAlike(scale)
        : kitSentences.someScalesAlike(
            places.map((at) => kit.members[at]!.name),
            scale,
          );
    return ofPlaces({ ...common, weighs: adviceWeights.scaleAlike, says, places, figure: scale }, kit);
  });
}

/** Busy prints: those that every pair of them calls busy, else the one that lets all others be calm. */
function busyness(kit: Measured): Reason[] {
  const told = findingsOf(kit, 'busyness');
  if (told.length < 2) return told.map(({ found }) => found);
  const shouting = told.filter(({ found }) => found.weighs === adviceWeights.bothBusy);
  if (shouting.length === 1) return [shouting[0]!.found];
  const value = (at: number) => busynessOf(kit.sides[at]!);
  const busy = placesIn(shouting.length > 0 ? shouting : told).filter((at) => value(at) >= pageLimits.busy);
  // One busy print and others that are neither busy nor calm: what the pairs say of it stands for itself.
  if (busy.length === 1 && told.length < kit.sheets.length - 1) return [told[0]!.found];
  const names = busy.map((at) => kit.members[at]!.name);
  const draft = {
    kind: 'busyness',
    places: busy,
    evidence: { busy: busy.length, busiest: Math.max(...busy.map(value)) },
    figure: `${busy.length} of ${kit.sheets.length} busy`,
    sources: ['common-practice', 'reading'],
  } as const;
  return [
    busy.length > 1
      ? ofPlaces({ ...draft, weighs: adviceWeights.bothBusy, says: kitSentences.manyBusy(names) }, kit)
      : ofPlaces({ ...draft, weighs: adviceWeights.busyCalm, says: kitSentences.oneBusy(names[0]!) }, kit),
  ];
}

/** Warm and cool: what one pair says; of several, who leans where, and how the page comes out. */
function warmth(kit: Measured): Reason[] {
  const told = findingsOf(kit, 'warm and cool');
  if (told.length < 2) return told.map(({ found }) => found);
  const leaning = placesIn(told);
  const values = new Map(kit.papers.map((at) => [at, warmthOf(kit.sides[at]!)]));
  const total = kit.papers.reduce((sum, at) => sum + values.get(at)! * kit.areas[at]!, 0);
  const [warm, cool] = [1, -1].map((sign) => leaning.filter((at) => Math.sign(values.get(at)!) === sign));
  const name = (at: number) => kit.members[at]!.name;
  const mixed = warm!.length > 0 && cool!.length > 0;
  // Where the page comes out otherwise than all that lean, the pairs speak for themselves.
  if (!mixed && Math.sign(total) !== (warm!.length > 0 ? 1 : -1)) return [told[0]!.found];
  return [
    ofPlaces(
      {
        kind: 'warm and cool',
        weighs: mixed ? adviceWeights.warmApart : adviceWeights.warmAlike,
        says: mixed
          ? kitSentences.leans(warm!.map(name), cool!.map(name), total, kit.sized)
          : kitSentences.lean(total),
        places: leaning,
        evidence: { warmth: total, warm: warm!.length, cool: cool!.length },
        figure: `warmth ${sentences.number(total, 2)}`,
        sources: ['ou-2004'],
      },
      kit,
    ),
  ];
}

/** Places of all that some findings are of. */
function placesIn(told: ReturnType<typeof findingsOf>): number[] {
  return [...new Set(told.flatMap(({ placed: { one, other } }) => [one, other]))].sort((a, b) => a - b);
}

/** Each photograph against the piece that takes most of the page: it stands out, or it sinks. */
function photos(kit: Measured): Reason[] {
  if (kit.papers.length === 0) return [];
  const ground = kit.papers.reduce((best, at) => (kit.areas[at]! > kit.areas[best]! ? at : best));
  const paperL = meanLightness(kit.sides[ground]!);
  return kit.members.flatMap(({ role, name }, at) => {
    if (role !== 'photo') return [];
    const photoL = meanLightness(kit.sides[at]!);
    const sinks = Math.abs(photoL - paperL) < pageLimits.photoGap;
    const say = sinks ? kitSentences.photoSinks : kitSentences.photoStands;
    return [
      ofPlaces(
        {
          kind: 'lightness range',
          weighs: sinks ? adviceWeights.flat : adviceWeights.range,
          says: say(name, photoL, kit.members[ground]!.name, paperL),
          places: [at, ground],
          evidence: { photoLightness: photoL, paperLightness: paperL, least: pageLimits.photoGap },
          figure: `L* ${sentences.number(photoL, 0)} on ${sentences.number(paperL, 0)}`,
          sources: ['common-practice', 'cielab'],
        },
        kit,
      ),
    ];
  });
}

function areas(kit: Measured): Reason[] {
  if (kit.papers.length < 2 || kit.papers.every((at) => kit.members[at]!.areaMm2 === null)) return [];
  const largest = kit.papers.reduce((best, at) => (kit.areas[at]! > kit.areas[best]! ? at : best));
  const share = kit.areas[largest]!;
  const leads = share >= pageLimits.dominant - pageLimits.dominantSlack;
  const say = leads ? kitSentences.largest : kitSentences.noneLargest;
  return [
    ofPlaces(
      {
        kind: 'dominance',
        weighs: leads ? adviceWeights.dominance : -adviceWeights.dominance,
        says: say(kit.members[largest]!.name, share),
        places: [largest],
        evidence: { largestShare: share, ruleOfThumb: pageLimits.dominant },
        figure: `${sentences.percent(share)} · 60–30–10`,
        sources: ['common-practice'],
      },
      kit,
    ),
  ];
}

function meanLightness({ inks }: MeasuredSide): number {
  return inks.reduce((sum, ink) => sum + ink.lab.l * ink.share, 0);
}
