import { hexFromOklch } from '../../colour/gamut.ts';
import type { Lab, OkLab, OklchTuple } from '../../colour/model.ts';
import { isccName } from '../../colour/naming/names.ts';
import { tradeWord } from '../../colour/naming/trade-words.ts';
import {
  chromaAb,
  labFromOklch,
  oklabFromLab,
  oklchFromLab,
  oklchFromTuple,
  tupleFromOklch,
} from '../../colour/spaces.ts';
import { steadyExp } from '../../colour/steady.ts';
import { idAt } from '../ink.ts';
import type { Ramp, Seen, Side } from '../model.ts';
import { familyNumbers } from './family-numbers.ts';
import type { Family } from './model.ts';
import { namesThatDiffer } from './names-that-differ.ts';
import { isOneTexture } from './one-texture.ts';

/**
 * The colours that a person would name on a side: its inks gathered by hue, each hue at its depths, each neutral one; seven at
 * most, of a photograph eight; the base's family first, then by share. A texture is one family. A small colour of
 * its own hue stays one. `seen` is what an eye sees of the side at arm's length; without it no side but one of a single
 * ink is taken for a texture.
 * Source: ours.
 */
export function familiesOf(
  side: Pick<Side, 'base' | 'inks' | 'ramps'>,
  seen: Seen | null = null,
  first: 'A' | 'a' = 'A',
): Family[] {
  const all: Member[] = [side.base, ...side.inks].map((ink, place) => memberOf(ink, place === 0));
  const sum = all.reduce((total, one) => total + one.share, 0);
  const members = all.map((one) => ({ ...one, share: sum > 0 ? one.share / sum : 1 / all.length }));
  const groups = isOneTexture(members, seen) ? [gather(members)] : gathered(members, side.ramps ?? []);
  const [ground, ...rest] = [
    groups.find((g) => g.base)!,
    ...groups.filter((g) => !g.base).sort((p, q) => q.share - p.share || order(p) - order(q)),
  ];
  return namesThatDiffer([ground!, ...rest].map((group, place) => familyOf(group, idAt(place, first))));
}

/** An ink as it is gathered. */
export interface Member {
  readonly id: string;
  readonly lab: Lab;
  readonly share: number;
  readonly base: boolean;
}

interface Group extends Member {
  readonly members: readonly Member[];
  readonly place: Place;
}

function memberOf(
  { id, oklch, share }: { id: string; oklch: OklchTuple; share: number },
  base: boolean,
): Member {
  return { id, lab: labFromOklch(oklchFromTuple(oklch)), share, base };
}

/** Joins the two nearest groups until all are apart and few enough. */
function gathered(members: readonly Member[], washes: readonly Ramp[]): Group[] {
  let groups = members.map((one) => gather([one]));
  const most = members.length > familyNumbers.manyInks ? familyNumbers.mostOfMany : familyNumbers.most;
  while (groups.length > 1) {
    let best = Number.POSITIVE_INFINITY;
    let pair: readonly [number, number] = [0, 1];
    for (let i = 0; i < groups.length; i++)
      for (let j = i + 1; j < groups.length; j++) {
        const d =
          apart(groups[i]!, groups[j]!) *
          (inOneWash(groups[i]!, groups[j]!, washes) ? familyNumbers.wash : 1);
        if (d < best) {
          best = d;
          pair = [i, j];
        }
      }
    if (best >= 1 && groups.length <= most) break;
    const [i, j] = pair;
    const joined = gather([...groups[i]!.members, ...groups[j]!.members]);
    groups = [...groups.filter((_, k) => k !== i && k !== j), joined];
  }
  return groups;
}

/** Whether all inks of two groups shade into each other. */
function inOneWash(p: Group, q: Group, washes: readonly Ramp[]): boolean {
  return washes.some(({ inks }) => [...p.members, ...q.members].every(({ id }) => inks.includes(id)));
}

/** How far two groups lie from being one family: under 1 they are. */
function apart(p: Group, q: Group): number {
  const [one, other] = [p.place, q.place];
  const strength = (one.strength + other.strength) / 2;
  const dl =
    (familyNumbers.lightnessOfColours + familyNumbers.lightnessOfNeutrals * (1 - strength)) *
    (one.l - other.l);
  const dc = familyNumbers.chroma * (one.chroma - other.chroma);
  const d = Math.hypot(dl, dc, one.x - other.x, one.y - other.y);
  return d / (p.base || q.base ? familyNumbers.apartFromBase : familyNumbers.apart);
}

/** A colour by its hue, as far as it has one: strength 0 for a grey, towards 1 for any full colour, be it pale or deep. */
function placeOf({ l, a, b }: OkLab): Place {
  const chroma = Math.hypot(a, b);
  const [black, seen] = familyNumbers.hueFromLightness;
  const strength =
    (1 - 2 / (steadyExp((2 * chroma) / familyNumbers.hueFromChroma) + 1)) *
    Math.min(1, Math.max(0, (l - black) / (seen - black)));
  const per = chroma > 0 ? strength / chroma : 0;
  return { l, chroma, x: a * per, y: b * per, strength };
}

interface Place {
  readonly l: number;
  readonly chroma: number;
  readonly x: number;
  readonly y: number;
  readonly strength: number;
}

function gather(members: readonly Member[]): Group {
  const share = members.reduce((sum, one) => sum + one.share, 0);
  const mean = (of: (lab: Lab) => number): number =>
    members.reduce((sum, one) => sum + of(one.lab) * (share > 0 ? one.share : 1), 0) /
    (share || members.length);
  const sorted = [...members].sort((p, q) => Number(q.base) - Number(p.base) || q.share - p.share);
  const lab = { l: mean((v) => v.l), a: mean((v) => v.a), b: mean((v) => v.b) };
  const base = members.some((one) => one.base);
  return {
    id: sorted[0]!.id,
    lab,
    share,
    base,
    members: sorted,
    // The base's own colour stands for its family, or a chain of in-betweens would lead away from it.
    place: placeOf(oklabFromLab(base ? sorted[0]!.lab : lab)),
  };
}

function familyOf({ lab, share, base, members }: Group, id: string): Family {
  const oklch = oklchFromLab(lab);
  const lightness = members.map((one) => one.lab.l);
  const chroma = members.map((one) => chromaAb(one.lab));
  return {
    id,
    name: isccName(lab),
    trade: tradeWord(oklch),
    hex: hexFromOklch(oklch),
    oklch: tupleFromOklch(oklch),
    lab,
    share,
    inks: members.map((one) => one.id),
    lightness: [Math.min(...lightness), Math.max(...lightness)],
    chroma: [Math.min(...chroma), Math.max(...chroma)],
    base,
  };
}

/** Order among groups of one share: as their inks stand. */
function order({ id }: Group): number {
  return id.charCodeAt(0);
}
