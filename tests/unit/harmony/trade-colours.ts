import type { HandSide } from '../../support/sides.ts';

/** Colours for the trade cases, chosen by eye for the words that paper people use. Common practice, no source. */
export const colour = {
  white: '#fbfaf7',
  coolWhite: '#f4f8fd',
  cream: '#f4e8cd',
  oldCream: '#f1e4c6',
  kraft: '#c9a878',
  black: '#1b1b1b',
  charcoal: '#3b3b3d',
  grey: '#8f8f8c',
  coral: '#e2725b',
  raspberry: '#c23b4e',
  red: '#c8232c',
  tomato: '#d2452a',
  burgundy: '#6e1f2e',
  blush: '#e7b3ae',
  dustyRose: '#c99a9a',
  neonPink: '#ff2f92',
  orange: '#f58a32',
  mustard: '#e8b23a',
  yellow: '#f6d33c',
  olive: '#7a7a33',
  lime: '#a4d233',
  leaf: '#4f8a3c',
  forest: '#24553a',
  mint: '#a8dcc0',
  sage: '#9caf88',
  teal: '#1f7a7a',
  aqua: '#62bfc1',
  aquaToo: '#66bcc4',
  skyBlue: '#86b9e0',
  royal: '#2b57a7',
  ultramarine: '#4a4fb5',
  navy: '#1f3a5f',
  navyToo: '#22395a',
  powder: '#b9d3e6',
  violet: '#6a2c9a',
  plum: '#5d2a5e',
  brown: '#5a4632',
} as const;

/** Inks [hex, share] on the common white, and on the common cream. */
export const onWhite = (...inks: readonly (readonly [string, number])[]): HandSide => ({
  base: 'white',
  hex: colour.white,
  inks,
});
export const onCream = (...inks: readonly (readonly [string, number])[]): HandSide => ({
  base: 'cream',
  hex: colour.cream,
  inks,
});
