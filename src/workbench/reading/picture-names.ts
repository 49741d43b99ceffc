import { nameFromFile } from '../../storage/file-names.ts';

/**
 * Names for sheets from their pictures' file names, each that of no other. What a camera or a chat calls a picture says
 * nothing of the paper, so those become "First paper", "Second paper" and so on, whichever is free.
 */
export function sheetNames(files: readonly string[], taken: ReadonlySet<string>): readonly string[] {
  const used = new Set(taken);
  return files.map((file) => {
    const name = isCameraName(file) ? nextPaper(used) : wordsOf(file);
    used.add(name);
    return name;
  });
}

/** True for a name that a device or a program gave: "IMG_1234.jpg", "20251103_141522.jpg", "image (2).png". */
export function isCameraName(file: string): boolean {
  const bare = bareName(file);
  return deviceNames.some((shape) => shape.test(bare));
}

/** Shapes of names that devices and programs give. From memory; nothing hangs on one that is missed. */
const deviceNames: readonly RegExp[] = [
  /^_?(?:img|dsc[fn]?|pxl|mvimg|vid|pict?|p|wp|scan)(?:[-_ ]*\(?\d+\)?)+(?:[-_ ~.]+(?:mp|hdr|burst|cover|portrait|edit|edited|copy|pano|wa\d+|\d+))*$/i,
  /^(?:image|photo|picture|untitled|unnamed|download|screenshot|capture|file)s?(?:[-_ ]*\(?\d+\)?)*$/i,
  /^(?:screenshot|image|photo)[-_ ].*\d{4}[-_. ]?\d{2}[-_. ]?\d{2}.*$/i,
  /^\d[\d\s._:()-]*$/,
  /^[0-9a-f]{8}-(?:[0-9a-f]{4}-){3}[0-9a-f]{12}$/i,
  /^(?=.*\d)[0-9a-f]{16,}$/i,
];

function bareName(file: string): string {
  return file
    .replace(/^.*[\\/]/, '')
    .replace(/\.[a-z0-9]{1,5}$/i, '')
    .trim();
}

/** Words apart: dots between words, and where a small letter meets a capital. */
function wordsOf(file: string): string {
  const apart = bareName(file)
    .replace(/\.(?!\d)/g, ' ')
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2');
  return nameFromFile(`${apart}.png`);
}

function nextPaper(used: ReadonlySet<string>): string {
  const free = ordinals.find((word) => !used.has(`${word} paper`));
  if (free) return `${free} paper`;
  let count = ordinals.length + 1;
  while (used.has(`Paper ${count}`)) count += 1;
  return `Paper ${count}`;
}

const ordinals = [
  'First',
  'Second',
  'Third',
  'Fourth',
  'Fifth',
  'Sixth',
  'Seventh',
  'Eighth',
  'Ninth',
  'Tenth',
  'Eleventh',
  'Twelfth',
];
