import { oklchFromHex, tupleFromOklch } from '../../src/colour/spaces.ts';
import type { BaseKind, Ink, MotifGuess, Print, Side, Tags } from '../../src/sheet/model.ts';

/** A side written by hand: base by kind and colour, then each ink as [hex, share]. The base takes the rest. */
export interface HandSide {
  readonly base: BaseKind;
  readonly hex: string;
  readonly inks?: readonly (readonly [hex: string, share: number])[];
  readonly busyness?: number;
  readonly scale?: Print['scale'];
  readonly repeatMm?: number;
  readonly tags?: Tags;
  readonly motif?: MotifGuess;
  readonly lightKnown?: boolean;
}

/** An ink for tests, with a name that says nothing: the sentences must find their own words. */
export function handInk(hex: string, id: string, share: number): Ink {
  return { id, hex, oklch: tupleFromOklch(oklchFromHex(hex)), name: '', share, accent: share < 0.05 };
}

/** A full side from a few words; ids as on an anchor unless `lower` is given. */
export function handSide(spec: HandSide, lower = false): Side {
  const inks = spec.inks ?? [];
  const rest = 1 - inks.reduce((sum, [, share]) => sum + share, 0);
  const id = (i: number) => String.fromCharCode((lower ? 97 : 65) + i);
  return {
    base: { ...handInk(spec.hex, id(0), rest), accent: false, kind: spec.base, printed: null },
    inks: inks.map(([hex, share], i) => handInk(hex, id(i + 1), share)),
    print: { busyness: spec.busyness ?? 0.2, repeatMm: spec.repeatMm ?? null, scale: spec.scale ?? null },
    light: { known: spec.lightKnown ?? true, note: '' },
    ...(spec.tags ? { tags: spec.tags } : {}),
    ...(spec.motif ? { motif: spec.motif } : {}),
  };
}
