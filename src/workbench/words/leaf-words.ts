/** What is said of the demo, of boards and of kits. */
export const demoNotDrawnSays = 'The demo could not be drawn in this browser.';
export const noPairForBoardSays =
  'There is no pair on this leaf yet: a board needs an anchor and a candidate.';
export const boardNotMadeSays =
  'The board could not be made into a file: there may be too little memory. Close other pages and try again, or choose another kind of file.';

/** `names`: plains whose size nobody has told. */
export function takenToBeSquareSays(names: Iterable<string>): string {
  return `Taken to be 12 × 12 in, as most plains are sold: ${[...names].join(', ')}. A smaller sheet holds fewer pieces.`;
}
