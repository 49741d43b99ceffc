/** What is said of pictures that come in. */
export const readerStoppedSays =
  'This picture could not be read: the reader stopped. Try again, or drop a smaller copy.';
export const unreadSays = 'This picture could not be read.';
export const tooLargeSays =
  'This file is too large to open (over 400 megabytes). Save a smaller copy and drop that.';
export const movedSays = 'The file could not be opened: it may have been moved or changed. Choose it again.';

/** `there`: the name that the same picture has in the drawer. */
export function alreadyThereSays(fileName: string, there: string): string {
  return `“${fileName}” is already in your drawer, as ${there}.`;
}

export function inDrawerSays(name: string): string {
  return `“${name}” is in the drawer.`;
}
