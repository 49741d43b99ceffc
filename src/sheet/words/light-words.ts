import type { CardDoubt } from '../light/card-doubt.ts';

/** What is said of a doubt about a card, after "Light corrected by the white card, but". */
const doubtWords: Readonly<Record<CardDoubt, string>> = {
  uneven: 'its frame lies on more than one colour: is all of it the card?',
  dim: 'much of the picture is then brighter than white: is that the card?',
};

/** How the light of a picture was known, as one sentence each. */
export const lightWords = {
  given: 'The colour was given, not photographed.',
  unknown:
    'No card has been pointed out: the light is unknown, so whites and creams are as the camera gave them.',
  card: (name: string) => `Light corrected by the ${name} in the picture.`,
  doubtful: (name: string, doubt: CardDoubt) => `Light corrected by the ${name}, but ${doubtWords[doubt]}`,
  overexposed: (name: string) =>
    `Light corrected by the ${name}, which is overexposed: trust light colours less.`,
  /** `mean` and `worst` in ΔE₀₀. */
  chart: (mean: number, worst: number, worstPatch: string) =>
    `Light corrected by the chart: ΔE₀₀ ${mean.toFixed(1)} is left on its patches on average, ${worst.toFixed(1)} at worst (${worstPatch}).`,
  /** Stands after one of the others. */
  evenedOut: 'It fell unevenly over the sheet, and that was taken out.',
} as const;
