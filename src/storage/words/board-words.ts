/** What is said where a board can't be made into a picture. */
export const boardTooLarge =
  'This board is larger than a browser can draw. Choose a smaller size, or save it as SVG or PDF.';
export const blankBoard =
  'The picture of this board came out blank on this device: there may be too little memory. Close other pages and try again, or save it as SVG.';
