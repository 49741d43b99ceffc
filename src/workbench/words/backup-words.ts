/** What is said of backup files. */

/** `left`: pictures that could not be put in. */
export function leftOutSays(left: number): string {
  return `This backup holds all but ${left === 1 ? 'one picture' : `${left} pictures`}, which could not be read from this browser’s storage just now. Save another one later, and keep older ones.`;
}

/** `unread`: things in it that will be set aside when it is opened. */
export function unreadInsideSays(unread: number): string {
  return `${unread === 1 ? 'One thing' : `${unread} things`} in this backup will not be read when it is opened: the rest opens, and ${unread === 1 ? 'that one is' : 'those are'} kept aside. Keep older backups too.`;
}

export const notMadeSays =
  'The backup file could not be made: there may be too little memory. Close other pages and try again.';
export const notReadBackSays =
  'The backup file was made, but it could not be read back whole, so it is not handed out. Close other pages, free some space, and save again.';

export function openedSays(title: string): string {
  return `“${title}” is open. The notebook before it is still kept; Undo brings it back.`;
}

export const notOpenedSays = 'This file could not be opened. Nothing was changed.';
export const noRoomForPicturesSays =
  'This browser has no room for the pictures in it, or does not store them just now. Nothing was changed. Free some space and open it again; the file itself is sound so far.';
