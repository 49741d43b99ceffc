import type { Ink, Places, Plain } from '../../sheet/model.ts';
import { inkFromHex } from '../../sheet/plain.ts';
import { sizeOf } from '../measure/link-kind.ts';
import { type MeasuredInk, type MeasuredSide, measureColour } from '../measure/measured.ts';
import { linksOf, sidesOf } from '../measure/pair.ts';
import type { Change, MendOptions, RemedyKind, Role } from '../model.ts';
import { likelySwaps } from '../ranking/likely-swaps.ts';
import type { Told } from '../reasons/build.ts';
import { answeredOn } from '../rules/answer.ts';
import { vividness } from '../rules/weights.ts';
import { carriedShare, inkLimits, matShare, neutralHexes, remedyEffort } from '../thresholds.ts';
import type { FindingName } from '../whole/model.ts';
import { said } from '../words/ink-word.ts';
import * as words from '../words/remedy-sentences.ts';
import { freePartOf } from './free-part.ts';
import { keepsPrint } from './keeps-print.ts';

/** Something that could be tried: what is done, what it costs, and how it is said. */
export interface Idea {
  readonly kind: RemedyKind;
  readonly words: words.RemedyWords;
  readonly changes: readonly Change[];
  readonly inks: readonly string[];
  readonly effort: number;
}

/** Everything worth trying on a pair, with what is owned and without. */
export function ideasFor(told: Told, options: MendOptions): Idea[] {
  return [
    ...turnIdeas(told, options),
    ...swapIdeas(told, options),
    ...stripIdeas(told, options),
    ...troubled(told)
      .flatMap((ink) => [...trimIdeas(told, ink, options), ...coverIdeas(told, ink)])
      .filter(({ changes }) => keepsPrint(told.pair, changes)),
    ...carried(told).map((ink) => carryIdea(told, ink)),
    ...plainIdeas(told, options),
  ];
}

/** Families that a finding against the pair speaks of, and the loudest where whole sides are spoken of; grounds cannot be cut or covered. */
function troubled({ judgement, pair }: Told): MeasuredInk[] {
  const standing = judgement.troubles.filter(({ weight }) => weight >= remedyEffort.troubledFrom);
  const named = standing.flatMap(({ inks }) => inks);
  const isLoud = standing.some(({ kind }) => loudKinds.has(kind));
  const loud = isLoud ? [pair.candidate, pair.anchor].flatMap(loudestOf) : [];
  const inks = [...named, ...loud].filter((ink) => !ink.isBase);
  return [...new Set(inks)].sort((a, b) => Number(a.of === 'anchor') - Number(b.of === 'anchor'));
}

const loudKinds: ReadonlySet<string> = new Set<FindingName>([
  'strong beside soft',
  'many hues',
  'strong contrast of colour',
]);

/** The family of a side that draws the eye most. */
function loudestOf({ inks }: MeasuredSide): MeasuredInk[] {
  const coloured = inks.filter((ink) => ink.actsAs === null && ink.chroma >= inkLimits.quietChroma);
  const pull = (ink: MeasuredInk) => vividness(ink) * sizeOf(ink.share);
  return coloured.sort((a, b) => pull(b) - pull(a)).slice(0, 1);
}

/** Families worth carrying across: the strongest of each side. */
function carried({ pair }: Told): MeasuredInk[] {
  return [pair.candidate, pair.anchor].flatMap(loudestOf);
}

function trimIdeas(told: Told, ink: MeasuredInk, { places }: MendOptions): Idea[] {
  if (!canBeTrimmed(told, ink, places?.[ink.of])) return [];
  const changes: Change[] = [{ kind: 'trim', of: ink.of, ink: ink.id }];
  const effort = remedyEffort.trim + (ink.of === 'anchor' ? remedyEffort.anchorExtra : 0);
  return [{ kind: 'trim', words: words.trim(said(ink, told.names)), changes, inks: [ink.id], effort }];
}

/** Whether the sheet has a part to use without the ink. Where the ink lies all over, no cut takes it away. */
function canBeTrimmed(told: Told, ink: MeasuredInk, places: Places | undefined): boolean {
  if (!places) return ink.share <= remedyEffort.trimUpToShare;
  const label = told.pair[ink.of].inks.indexOf(ink);
  return freePartOf(places, label) >= remedyEffort.trimFreePart;
}

function coverIdeas(told: Told, ink: MeasuredInk): Idea[] {
  const by = coverFor(told, ink);
  if (!by) return [];
  const few = ink.share < inkLimits.accentShare * 2;
  const effort =
    (few ? remedyEffort.punch : remedyEffort.pieces) + (ink.of === 'anchor' ? remedyEffort.anchorExtra : 0);
  const changes: Change[] = [{ kind: 'cover', of: ink.of, ink: ink.id, with: by.ink }];
  const say = words.cover(said(ink, told.names), said(by, told.names), few);
  return [{ kind: 'cover', words: say, changes, inks: [ink.id, by.id], effort }];
}

/** What to cover an ink with: a colour of its own sheet that the other repeats, strongest first, else its ground. */
function coverFor(told: Told, ink: MeasuredInk): MeasuredInk | null {
  const { own } = sidesOf(told.pair, ink);
  const repeats = own.inks
    .filter((one) => one !== ink && linksOf(told.pair, one).some(({ link }) => link.kind === 'repeat'))
    .sort((a, b) => Number(a.isBase) - Number(b.isBase) || b.chroma - a.chroma);
  return repeats[0] ?? own.inks.find((one) => one.isBase && one.actsAs !== null) ?? null;
}

function carryIdea(told: Told, ink: MeasuredInk): Idea {
  const to = ink.of === 'anchor' ? 'candidate' : 'anchor';
  const changes: Change[] = [{ kind: 'add', of: to, ink: ink.ink, share: carriedShare }];
  const say = words.carry(said(ink, told.names), told.names[to]);
  return { kind: 'carry', words: say, changes, inks: [ink.id], effort: remedyEffort.carry };
}

/** A strip of a neutral between the two; where the grounds quarrel, a whole mat of it does as well. */
function stripIdeas(told: Told, options: MendOptions): Idea[] {
  if (told.pair.strip) return [];
  const { name, ink } = neutralToHand(told, options);
  const changes: Change[] = [{ kind: 'strip', ink }];
  const strip = words.strip(name, told.pair.distance === 'touching');
  const ideas: Idea[] = [{ kind: 'buffer', words: strip, changes, inks: [], effort: remedyEffort.strip }];
  const quarrel = told.judgement.whole.findings.some(({ name }) => name === 'grounds differ');
  if (!quarrel) return ideas;
  const mat = words.mountNeutral(name, told.names.candidate);
  const under: Change[] = [{ kind: 'strip', ink, as: 'mat' }];
  return [...ideas, { kind: 'mount', words: mat, changes: under, inks: [], effort: remedyEffort.mat }];
}

/** A neutral for strips: an owned cardstock that is one, else kraft beside warm grounds and grey beside cold ones. */
function neutralToHand(told: Told, { owned }: MendOptions): { name: string; ink: Ink } {
  const plain = owned?.plains.find((one) => one.kind === 'cardstock' && isNeutralPlain(one));
  if (plain) return { name: plain.name, ink: plain.ink };
  const warm = [told.pair.anchor, told.pair.candidate].some(({ inks }) => inks[0]!.lab.b > 6);
  const name = warm ? 'kraft' : 'grey';
  return { name, ink: inkFromHex(neutralHexes[name], `${name} strip`) };
}

function isNeutralPlain(plain: Plain): boolean {
  return plain.takesColour !== true && measureColour(plain.ink).neutral !== null;
}

function turnIdeas(told: Told, { otherSide }: MendOptions): Idea[] {
  if (!otherSide) return [];
  const changes: Change[] = [{ kind: 'replace', of: 'candidate', side: otherSide }];
  return [
    { kind: 'turn', words: words.turn(told.names.candidate), changes, inks: [], effort: remedyEffort.turn },
  ];
}

function swapIdeas(told: Told, { owned }: MendOptions): Idea[] {
  const sheets = owned?.sheets ?? [];
  const likely = likelySwaps(told, sheets);
  return sheets.flatMap(({ name, sides }) =>
    sides.flatMap((side, at): Idea[] => {
      if (!likely.has(side)) return [];
      const changes: Change[] = [{ kind: 'replace', of: 'candidate', side }];
      const which = sides.length > 1 ? `side ${'AB'.charAt(at) || at + 1} of ${name}` : name;
      const say = words.swap(told.names.candidate, which, told.names.anchor);
      return [{ kind: 'swap', words: say, changes, inks: [], effort: remedyEffort.swap }];
    }),
  );
}

/** Owned plains that answer the other sheet: laid on one in small pieces, or put under the candidate as a mat. */
function plainIdeas(told: Told, { owned }: MendOptions): Idea[] {
  return (owned?.plains ?? [])
    .filter((plain) => plain.takesColour !== true && !isNeutralPlain(plain))
    .flatMap((plain) => [
      ...(['anchor', 'candidate'] as const).flatMap((of) => laidIdeas(told, plain, of)),
      ...matIdeas(told, plain),
    ]);
}

function laidIdeas(told: Told, plain: Plain, of: Role): Idea[] {
  const { pair, names } = told;
  const found = answeredOn(pair[of === 'anchor' ? 'candidate' : 'anchor'], plain.ink, pair.distance);
  if (!found) return [];
  const changes: Change[] = [{ kind: 'add', of, ink: plain.ink, share: carriedShare }];
  const say = words.carryPlain(plain.name, names[of], said(found.ink, names), found.how);
  return [{ kind: 'carry', words: say, changes, inks: [found.ink.id], effort: remedyEffort.carryOwned }];
}

function matIdeas(told: Told, plain: Plain): Idea[] {
  const { pair, names } = told;
  // With a mat between, the two lie apart.
  const found = plain.kind === 'cardstock' ? answeredOn(pair.anchor, plain.ink, 'apart') : null;
  if (!found) return [];
  const changes: Change[] = [
    { kind: 'add', of: 'candidate', ink: plain.ink, share: matShare },
    { kind: 'strip', ink: plain.ink, as: 'mat' },
  ];
  const say = words.mount(plain.name, names.candidate, said(found.ink, names), found.how);
  return [{ kind: 'mount', words: say, changes, inks: [found.ink.id], effort: remedyEffort.mat }];
}
