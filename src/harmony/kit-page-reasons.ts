import { type Measured, placeOf } from './kit-members.ts';
import * as kitSentences from './kit-sentences.ts';
import type { MeasuredSide } from './measured.ts';
import type { Reason } from './model.ts';
import { type Draft, reason } from './reasons/build.ts';
import { busynessOf } from './reasons/print.ts';
import { warmthOf } from './reasons/warmth.ts';
import * as sentences from './sentences.ts';
import { adviceWeights, pageLimits } from './thresholds.ts';

/** What a kit does as a page: print, warmth, photographs, areas, thin sheets, light. */
export function kitPageReasons(kit: Measured): Reason[] {
  return [
    ...scales(kit),
    ...busyness(kit),
    ...warmth(kit),
    ...photos(kit),
    ...areas(kit),
    ...thin(kit),
    ...light(kit),
  ];
}

function told(draft: Omit<Draft, 'inks'> & { readonly places: readonly number[] }, kit: Measured): Reason {
  const { places, ...rest } = draft;
  const inks = places.map((at) => kit.sides[at]!.inks[0]!.id);
  return { ...reason({ ...rest, inks: [] }), inks: inks.sort((a, b) => placeOf(a) - placeOf(b)) };
}

function scales(kit: Measured): Reason[] {
  const printed = kit.sheets.filter(
    (at) => kit.sides[at]!.side.print.scale !== null && !kit.sides[at]!.plain,
  );
  if (printed.length < 2) return [];
  const found = [...new Set(printed.map((at) => kit.sides[at]!.side.print.scale!))];
  const alike = found.length === 1;
  return [
    told(
      {
        kind: 'print scale',
        weighs: alike ? adviceWeights.scaleAlike : adviceWeights.scaleApart,
        says: alike ? kitSentences.scalesAlike(found[0]!) : kitSentences.scalesApart(found),
        places: printed,
        evidence: { prints: printed.length, scales: found.length },
        figure: sentences.listed(found),
        sources: ['common-practice'],
      },
      kit,
    ),
  ];
}

function busyness(kit: Measured): Reason[] {
  const value = (at: number) => busynessOf(kit.sides[at]!);
  const busy = kit.sheets.filter((at) => value(at) >= pageLimits.busy);
  if (busy.length === 0 || kit.sheets.length < 2) return [];
  const names = busy.map((at) => kit.members[at]!.name);
  return [
    told(
      {
        kind: 'busyness',
        weighs: busy.length > 1 ? adviceWeights.bothBusy : adviceWeights.busyCalm,
        says: busy.length > 1 ? kitSentences.manyBusy(names) : kitSentences.oneBusy(names[0]!),
        places: busy,
        evidence: { busy: busy.length, busiest: Math.max(...busy.map(value)) },
        figure: `${busy.length} of ${kit.sheets.length} busy`,
        sources: ['common-practice', 'reading'],
      },
      kit,
    ),
  ];
}

function warmth(kit: Measured): Reason[] {
  const values = kit.papers.map((at) => ({ at, warmth: warmthOf(kit.sides[at]!) }));
  const total = values.reduce((sum, { at, warmth }) => sum + warmth * kit.areas[at]!, 0);
  const leaning = (sign: number) =>
    values
      .filter(({ at, warmth }) => kit.sheets.includes(at) && warmth * sign >= pageLimits.leaning)
      .map(({ at }) => at);
  const [warm, cool] = [leaning(1), leaning(-1)];
  if (warm.length + cool.length === 0) return [];
  const name = (at: number) => kit.members[at]!.name;
  const mixed = warm.length > 0 && cool.length > 0;
  return [
    told(
      {
        kind: 'warm and cool',
        weighs: mixed ? adviceWeights.warmApart : adviceWeights.warmAlike,
        says: mixed
          ? kitSentences.leans(warm.map(name), cool.map(name), total, kit.sized)
          : kitSentences.lean(total),
        places: [...warm, ...cool],
        evidence: { warmth: total, warm: warm.length, cool: cool.length },
        figure: `warmth ${sentences.number(total, 2)}`,
        sources: ['ou-2004'],
      },
      kit,
    ),
  ];
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
      told(
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
    told(
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

function thin(kit: Measured): Reason[] {
  return kit.sheets.flatMap((at) => {
    const gsm = kit.sides[at]!.side.tags?.weight?.gsm;
    if (gsm === undefined || gsm >= pageLimits.thinGsm) return [];
    return [
      told(
        {
          kind: 'weight',
          weighs: 0,
          says: sentences.thin(kit.members[at]!.name, gsm),
          places: [at],
          evidence: { gsm, thinBelowGsm: pageLimits.thinGsm },
          figure: `${Math.round(gsm)} g/m²`,
          sources: ['common-practice', 'paper-weights'],
        },
        kit,
      ),
    ];
  });
}

function light(kit: Measured): Reason[] {
  const unknown = kit.sheets.filter((at) => !kit.sides[at]!.side.light.known);
  if (unknown.length === 0) return [];
  return [
    told(
      {
        kind: 'light unknown',
        weighs: 0,
        says: sentences.lightUnknown(unknown.map((at) => kit.members[at]!.name)),
        places: unknown,
        evidence: { sheets: unknown.length },
        figure: 'no card in the picture',
        sources: ['common-practice'],
      },
      kit,
    ),
  ];
}

function meanLightness({ inks }: MeasuredSide): number {
  return inks.reduce((sum, ink) => sum + ink.lab.l * ink.share, 0);
}
