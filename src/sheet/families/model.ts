import type { Lab, OklchTuple } from '../../colour/model.ts';

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
