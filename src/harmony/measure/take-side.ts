import { hexFromOklch } from '../../colour/gamut.ts';
import { chromaAb, labFromOklch, oklchFromHex, oklchFromTuple, tupleFromOklch } from '../../colour/spaces.ts';
import { familiesOf } from '../../sheet/families/families.ts';
import type { Family } from '../../sheet/families/model.ts';
import { idAt } from '../../sheet/ink.ts';
import type { Base, Ink, Side } from '../../sheet/model.ts';
import { relabel } from '../../sheet/relabel.ts';
import type { FamilySide, SideFamily } from '../model.ts';

/**
 * A side as this room works with it: its inks gathered into families, base first, lettered for the role it plays (A, B …
 * on an anchor, a, b … on a candidate; an ink inside is A1, A2 …), and whatever a hand-written side left out filled with
 * what says least. A side that was gathered before keeps its families; what was laid on it since is one of its own.
 * @throws RangeError where an ink has neither a hex nor an OKLCH colour.
 */
export function takeSide(side: Side, as: 'anchor' | 'candidate'): FamilySide {
  const known = kept[as].get(side);
  if (known) return known;
  const first = as === 'anchor' ? 'A' : 'a';
  const taken = isGathered(side) ? again(side, first) : gathered(relabel(filled(side), as), first);
  kept[as].set(side, taken);
  // What was taken is what would come of taking it again.
  kept[as].set(taken, taken);
  return taken;
}

const kept = {
  anchor: new WeakMap<Side, FamilySide>(),
  candidate: new WeakMap<Side, FamilySide>(),
} as const;

export function isGathered(side: Side): side is FamilySide {
  return 'families' in side && 'within' in side;
}

function gathered(side: Side, first: 'A' | 'a'): FamilySide {
  const own = [side.base, ...side.inks];
  const places = new Map(own.map((ink, at) => [ink.id, at]));
  const families = familiesOf(side, side.seen ?? null, first);
  const insides = families.map(({ inks }) => inks.map((id) => places.get(id)!));
  const within = own.map((ink, at): Ink => {
    const of = insides.findIndex((inside) => inside.includes(at));
    return { ...ink, id: `${families[of]!.id}${insides[of]!.indexOf(at) + 1}` };
  });
  const told = families.map(
    ({ id, name, hex, share, lightness, chroma }, at): SideFamily => ({
      id,
      name,
      hex,
      share,
      inks: insides[at]!.map((place) => within[place]!.id),
      lightness,
      chroma,
    }),
  );
  const inks = families.map((family, at) =>
    asInk(
      family,
      insides[at]!.map((place) => own[place]!),
    ),
  );
  const [base, ...rest] = inks;
  const { ramps: _, ...whole } = side;
  return {
    ...whole,
    base: { ...side.base, ...base!, kind: side.base.kind, printed: side.base.printed },
    inks: rest,
    families: told,
    within,
  };
}

/** A family as one ink: its mean colour; what a hand said of its largest ink stays said. */
function asInk({ id, name, hex, oklch, share }: Family, inks: readonly Ink[]): Ink {
  const [lead] = inks;
  const alone = inks.length === 1;
  const sure = inks.flatMap((ink) => ink.sure ?? []);
  return {
    id,
    hex: alone ? lead!.hex : hex,
    oklch: alone ? lead!.oklch : oklch,
    name: lead!.name,
    trade: name,
    share,
    accent: share < accentShare && inks.some(({ accent }) => accent),
    ...(sure.length > 0 ? { sure: Math.min(...sure) } : {}),
    ...(lead!.special ? { special: lead!.special } : {}),
    ...(lead!.byHand ? { byHand: true } : {}),
  };
}

/** Share under which a colour is an accent. Common practice, no source. */
const accentShare = 0.05;

/** A gathered side under new letters. */
function again(side: FamilySide, first: 'A' | 'a'): FamilySide {
  const all = [side.base, ...side.inks];
  const within: Ink[] = [];
  const families = all.map((ink, at): SideFamily => {
    const id = idAt(at, first);
    const was = side.families.find((one) => one.id === ink.id && one.hex === ink.hex);
    const inside = was ? was.inks.map((name) => side.within.find((one) => one.id === name)!) : [ink];
    const named = inside.map((one, n): Ink => ({ ...one, id: `${id}${n + 1}` }));
    within.push(...named);
    const lab = labFromOklch(oklchFromTuple(ink.oklch));
    return {
      id,
      name: was?.name ?? ink.trade ?? ink.name,
      hex: ink.hex,
      share: ink.share,
      inks: named.map((one) => one.id),
      lightness: was?.lightness ?? [lab.l, lab.l],
      chroma: was?.chroma ?? [chromaAb(lab), chromaAb(lab)],
    };
  });
  const name = <T extends Ink>(ink: T, at: number): T => ({ ...ink, id: families[at]!.id });
  return {
    ...side,
    base: name(side.base, 0),
    inks: side.inks.map((ink, at) => name(ink, at + 1)),
    families,
    within,
  };
}

/** What a side written by hand may lack. */
interface Given {
  readonly inks?: readonly Ink[];
  readonly print?: Partial<Side['print']>;
  readonly light?: Side['light'];
}

function filled(side: Side): Side {
  const given = side as Given;
  return {
    ...side,
    base: whole(side.base) as Base,
    inks: (given.inks ?? []).map(whole),
    print: { busyness: 0, repeatMm: null, scale: null, ...given.print },
    light: given.light ?? { known: false, note: '' },
  };
}

function whole(ink: Ink): Ink {
  const given = ink as Partial<Ink> & { readonly id: string };
  if (given.oklch && given.hex && given.share !== undefined && given.accent !== undefined) return ink;
  if (!given.oklch && !given.hex) throw new RangeError(`Ink ${given.id} has no colour`);
  const oklch = given.oklch ?? tupleFromOklch(oklchFromHex(given.hex!));
  const share = given.share ?? 0;
  return {
    ...ink,
    oklch,
    hex: given.hex ?? hexFromOklch(oklchFromTuple(oklch)),
    share,
    accent: given.accent ?? share < 0.05,
    name: given.name ?? '',
  };
}
