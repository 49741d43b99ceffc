import type { MeasuredSide } from '../measure/measured.ts';
import type { Reason } from '../model.ts';
import { type Draft, reason } from '../reasons/build.ts';
import { thinReasons } from '../reasons/tags.ts';
import { lightReasonsOf } from '../reasons/unknown-light.ts';
import { adviceWeights, pageLimits } from '../thresholds.ts';
import * as kitSentences from '../words/kit-sentences.ts';
import * as sentences from '../words/sentences.ts';
import { type Measured, placeOf } from './kit-members.ts';

/** What a kit does as a page: print, warmth, photographs, areas, thin sheets, light. */
export function kitPageReasons(kit: Measured): Reason[] {
  return [
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

/** Which way the kit leans, warm or cool, and who leans against it. */
function warmth(kit: Measured): Reason[] {
  const values = new Map(kit.papers.map((at) => [at, warmthOf(kit.sides[at]!)]));
  const total = kit.papers.reduce((sum, at) => sum + values.get(at)! * kit.areas[at]!, 0);
  const leaning = kit.sheets.filter((at) => Math.abs(values.get(at)!) >= pageLimits.leaning);
  const [warm, cool] = [1, -1].map((sign) => leaning.filter((at) => Math.sign(values.get(at)!) === sign));
  const name = (at: number) => kit.members[at]!.name;
  const mixed = warm!.length > 0 && cool!.length > 0;
  // Where the page comes out otherwise than all that lean, nothing is said of the whole.
  if (leaning.length < 2 || (!mixed && Math.sign(total) !== (warm!.length > 0 ? 1 : -1))) return [];
  return [
    ofPlaces(
      {
        kind: 'warm and cool',
        weighs: 0,
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

/** Share-weighted warmth of a side, neutral = 0. */
function warmthOf(side: MeasuredSide): number {
  return side.inks.reduce((sum, ink) => sum + ink.warmth * ink.share, 0);
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
