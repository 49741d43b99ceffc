/** What is said of backup files that can't be opened or made. */
export const emptyFile = 'This file is empty. Nothing was changed.';
export const tornPicture = 'A picture in this file is damaged. Nothing was changed.';
export const noNotebookInside =
  'This file holds no notebook. Choose a file that ends in .quire. Nothing was changed.';
export const tornNotebookInside = 'The notebook in this file is damaged. Nothing was changed.';
export const tornPictureList = 'The list of pictures in this file is not whole. Nothing was changed.';
export const missingPicture = 'A picture is missing in this file. Nothing was changed.';
export const otherPictureThanTold =
  'A picture in this file is not what the file says it is. Nothing was changed.';
export const notLaidOutAsNotebook =
  'This file is not laid out as a notebook file, and was not opened. Nothing was changed.';
export const moreThanNotebookHolds =
  'This file holds more than a notebook can, and was not opened. Nothing was changed.';
export const tornOrOtherPicture =
  'A picture in this file is damaged, or not what it says it is. Nothing was changed.';
export const noWholeFile = 'This file is damaged: it is not a whole notebook file. Nothing was changed.';

export function tooManyParts(count: number): string {
  return `This file holds ${count} parts, more than a notebook can. Nothing was changed.`;
}

export const tooMuchForOneBackup =
  'The words and lists of this notebook are more than one backup file can hold. Take out leaves or sheets that are not needed, and save again.';
