/** What is known of a colour that was typed or tapped: told to the element from outside, which itself computes none. */
export interface KnownColour {
  /** `#rrggbb`, to show it. */
  readonly hex: string;
  /** Its name and numbers in a few words: "moderate reddish orange, Munsell 1YR 6/9". */
  readonly says: string;
}

/** Answers what a typed colour is, or undefined where it is none. */
export type ColourOf = ((text: string) => KnownColour | undefined) & {
  /** Why a text that is written as a colour is none, as a sentence. */
  readonly whyNot?: (text: string) => string | undefined;
};
