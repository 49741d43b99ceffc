/** Why a picture, a part of it or a colour in it can't be read, as one sentence each. */
export const refusals = {
  onePixel: 'The picture is too small to read: one pixel.',
  transparent: 'The picture is fully transparent: there is nothing to read.',
  empty: 'The picture is empty.',
  partWithoutSize: 'The part to read has no size.',
  partOutside: 'The part to read lies outside the picture.',
  noCorners: 'These corners make no sheet: put each handle on its own corner of it, and straighten again.',
  cardTransparent: 'The card lies on a transparent part of the picture.',
  cardDark: 'The card in the picture is too dark to tell the light from.',
  offChart: (patches: number) =>
    `This frame does not lie on the ${patches} patches of a chart: lay it on their outer edges, so that each square holds one patch.`,
  noInk: (ink: string) => `There is no ink ${ink} in this reading.`,
  noColour: (hex: string) => `Quirewise does not know this colour code: ${hex}.`,
  noPicture: 'Without the picture, the colour at this spot is not known.',
  tooStrongForMunsell:
    'No paper and no ink is that strong. Check the last number: Munsell chroma seldom goes past 20.',
  noSuchColour: 'There is no such colour: it would be stronger than any light. Check the numbers.',
} as const;
