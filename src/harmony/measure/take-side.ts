import { hexFromOklch } from '../../colour/gamut.ts';
import { oklchFromHex, oklchFromTuple, tupleFromOklch } from '../../colour/spaces.ts';
import type { Base, Ink, Side } from '../../sheet/model.ts';
import { relabel } from '../../sheet/relabel.ts';

/**
 * A side as this room works with it: inks labelled by order for the role it plays, and whatever a hand-written
 * side left out filled with what says least.
 * @throws RangeError where an ink has neither a hex nor an OKLCH colour.
 */
export function takeSide(side: Side, as: 'anchor' | 'candidate'): Side {
  const given = side as Given;
  const whole: Side = {
    ...side,
    base: whole1(side.base) as Base,
    inks: (given.inks ?? []).map(whole1),
    print: { busyness: 0, repeatMm: null, scale: null, ...given.print },
    light: given.light ?? { known: false, note: '' },
  };
  return relabel(whole, as);
}

/** What a side written by hand may lack. */
interface Given {
  readonly inks?: readonly Ink[];
  readonly print?: Partial<Side['print']>;
  readonly light?: Side['light'];
}

function whole1(ink: Ink): Ink {
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
