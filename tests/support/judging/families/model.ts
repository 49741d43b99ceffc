import type { Lab, OklchTuple } from '../../../../src/colour/model.ts';
import type { Side } from '../../../../src/sheet/model.ts';

/** The inks of a side that a person would name as one colour, from light to dark; a texture is one of them. */
export interface Family {
  /** Base first: A, B, C … on an anchor; a, b, c … on a candidate. */
  readonly id: string;
  /** Unlike every other family's of its side. */
  readonly name: string;
  /** Trade word (navy, coral, kraft …) where one fits. */
  readonly trade: string | null;
  /** `#rrggbb` of its mean colour, mapped into sRGB where that lies outside. */
  readonly hex: string;
  /** Its mean colour by share, unmapped: the one that is computed with. */
  readonly oklch: OklchTuple;
  /** The same in CIELAB D65. */
  readonly lab: Lab;
  /** Fraction of the side's area, 0–1; all of one side sum to 1. */
  readonly share: number;
  /** Ids of its inks as the side has them, the largest first; the base before all. */
  readonly inks: readonly string[];
  /** CIELAB L* of its darkest and its lightest ink. */
  readonly lightness: readonly [from: number, to: number];
  /** C*ab of its weakest and its strongest ink. */
  readonly chroma: readonly [from: number, to: number];
  /** True for the family that holds the base. */
  readonly base: boolean;
}

/** What an eye sees of a side at arm's length. Lengths are on the sheet. */
export interface Seen {
  /** Contrast of lightness in patterns of 1.5 mm to 20 mm, as root mean square of L*; linen 1–2, bold checks 15. */
  readonly light: number;
  /** The same of colour, as root mean square in the plane of a* and b*. */
  readonly colour: number;
  /** Contrast, lightness and colour together, of what is larger than that: washes, ombres, big bodies. */
  readonly large: number;
  /** Part of the contrast in patterns up to 20 mm that is finer than 4 mm, 0–1. */
  readonly fine: number;
  /** How exactly the side comes back on itself within `repeatMm`, 0–1. */
  readonly regular: number;
  /** The shortest way, in mm, at which it comes back on itself best, both ways taken together; null where none is seen. */
  readonly repeatMm: number | null;
}

/** A side with what an eye sees of it; none where its pixels were not looked at. */
export interface SeenSide extends Side {
  readonly seen?: Seen;
}
