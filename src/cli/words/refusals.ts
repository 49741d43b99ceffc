/** What the terminal says where it can't do what was asked, a line each. */

/** What was written on the command line. */
export const noSuchOption = (given: string): string =>
  `There is no option "${given}"; --help lists what there is.`;
export const takesNoValue = (option: string, given: string): string =>
  `${option} takes no value, and "${given}" gives it one.`;
export const needsValue = (option: string): string => `${option} needs a value after it.`;
export const secondAnchor = 'A study has one anchor, and --anchor was given twice.';
export const noPictureBefore = (option: string): string =>
  `${option} belongs to the picture before it, and there is none.`;
export const noAnchor = 'Name the paper to start from with --anchor FILE; --help tells more.';
export const noCandidate = 'Name at least one paper to hold against it with --candidate FILE.';
export const noSuchFormat = (value: string): string => `--format is v1 or v2, not "${value}".`;
export const noWidth = (value: string): string =>
  `--width-mm needs a number of millimetres above 0, not "${value}".`;
export const noCard = (value: string): string =>
  `--card needs x,y,width,height and perhaps a reflectance, not "${value}".`;
export const noReflectance = (value: string): string =>
  `The reflectance of a card is above 0 and at most 1, not "${value}".`;
export const noFrame = (option: string, value: string): string =>
  `${option} needs x,y,width,height in pixels, not "${value}".`;
export const noSuchDistance = (value: string): string => `--distance is touching or apart, not "${value}".`;
export const noSuchBoard = (file: string): string =>
  `A board is written as .svg or .png, and "${file}" is neither.`;

/** Files that were named. */
export const noSuchFile = (file: string): string => `There is no file ${file}.`;
export const isFolder = (file: string): string => `${file} is a folder, not a picture.`;
export const notReadable = (file: string, code: string | undefined): string =>
  `${file} could not be read (${code}).`;
export const noFolderFor = (file: string): string => `There is no folder for ${file}.`;
export const notWritable = (file: string, code: string | undefined): string =>
  `${file} could not be written (${code}).`;
export const reachesOutside = (what: string, file: string, width: number, height: number): string =>
  `The ${what} reaches outside ${file}, which has ${width} × ${height} pixels.`;
export const unknownColours =
  'The colours of this picture are of a kind that is not known here. Save it as JPEG and use that.';
export const noHeicDecoder =
  'What opens HEIC pictures is not installed; save the picture as JPEG and use that.';
