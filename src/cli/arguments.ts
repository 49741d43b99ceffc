import type { Distance } from '../harmony/model.ts';
import type { Card, Frame } from '../sheet/model.ts';
import { type StudyVersion, studyVersions } from './study-json.ts';
import { Trouble } from './trouble.ts';
import { formatRefused } from './words/study-words.ts';

/** One picture that was named, and how it is to be read. */
export interface PictureOrder {
  /** The path as it was given. */
  readonly file: string;
  /** Width of what is read (the crop, or the whole picture), in millimetres. */
  widthMm?: number;
  /** Pixels of the picture as it is seen, after turning it upright. */
  crop?: Frame;
  card?: Card;
  /** A chart of 24 patches, by their outer edges. */
  chart?: Frame;
}

export interface StudyOrder {
  readonly anchor: PictureOrder;
  readonly candidates: readonly PictureOrder[];
  readonly distance: Distance;
  readonly json: boolean;
  /** Of the JSON. */
  readonly version: StudyVersion;
  /** Where to put the board of the best candidate, and as what. */
  readonly board: { readonly file: string; readonly kind: 'svg' | 'png' } | null;
}

/**
 * What was asked for, or 'help'.
 * @throws Trouble in one sentence, where something is unknown, missing or no number.
 */
export function orderOf(args: readonly string[]): StudyOrder | 'help' {
  let anchor: PictureOrder | null = null;
  let [distance, json, board]: [Distance, boolean, StudyOrder['board']] = ['apart', false, null];
  let version: StudyVersion = 2;
  const candidates: PictureOrder[] = [];
  let last: PictureOrder | null = null;
  const rest = [...args];
  while (rest.length > 0) {
    const option = rest.shift()!;
    if (option === '--help' || option === '-h') return 'help';
    if (option === '--json') {
      json = true;
      continue;
    }
    if (!known.includes(option))
      throw new Trouble(`There is no option "${option}"; --help lists what there is.`);
    const value = rest.shift();
    if (value === undefined || known.includes(value)) throw new Trouble(`${option} needs a value after it.`);
    if (option === '--anchor') {
      if (anchor) throw new Trouble('A study has one anchor, and --anchor was given twice.');
      last = anchor = { file: value };
    } else if (option === '--candidate') {
      last = { file: value };
      candidates.push(last);
    } else if (option === '--distance') distance = distanceOf(value);
    else if (option === '--board') board = boardOf(value);
    else if (option === '--format') {
      version = versionOf(value);
      json = true;
    } else if (last === null)
      throw new Trouble(`${option} belongs to the picture before it, and there is none.`);
    else read(last, option, value);
  }
  if (!anchor) throw new Trouble('Name the paper to start from with --anchor FILE; --help tells more.');
  if (candidates.length === 0)
    throw new Trouble('Name at least one paper to hold against it with --candidate FILE.');
  return { anchor, candidates, distance, json, version, board };
}

function versionOf(value: string): StudyVersion {
  const version = studyVersions.find((one) => `v${one}` === value);
  if (version === undefined) throw new Trouble(formatRefused(value));
  return version;
}

const known = [
  ...['--anchor', '--candidate', '--distance', '--board', '--json', '--format', '--help', '-h'],
  ...['--width-mm', '--crop', '--card', '--chart'],
];

function read(picture: PictureOrder, option: string, value: string): void {
  if (option === '--width-mm') {
    const width = numberOf(value);
    if (!(width > 0)) throw new Trouble(`--width-mm needs a number of millimetres above 0, not "${value}".`);
    picture.widthMm = width;
  } else if (option === '--crop') picture.crop = frameOf(option, value.split(','), value);
  else if (option === '--chart') picture.chart = frameOf(option, value.split(','), value);
  else {
    const parts = value.split(',');
    const frame = frameOf(option, parts.slice(0, 4), value);
    if (parts.length > 5)
      throw new Trouble(`--card needs x,y,width,height and perhaps a reflectance, not "${value}".`);
    if (parts.length < 5) picture.card = frame;
    else {
      const reflectance = numberOf(parts[4]!);
      if (!(reflectance > 0 && reflectance <= 1)) {
        throw new Trouble(`The reflectance of a card is above 0 and at most 1, not "${parts[4]}".`);
      }
      picture.card = { ...frame, reflectance };
    }
  }
}

function frameOf(option: string, parts: readonly string[], value: string): Frame {
  const [x, y, width, height] = parts.map(numberOf);
  if (parts.length !== 4 || !(x! >= 0 && y! >= 0 && width! >= 1 && height! >= 1 && x! < 1e9 && y! < 1e9)) {
    throw new Trouble(`${option} needs x,y,width,height in pixels, not "${value}".`);
  }
  return { x: x!, y: y!, width: width!, height: height! };
}

function numberOf(text: string): number {
  return /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : Number.NaN;
}

function distanceOf(value: string): Distance {
  if (value === 'touching' || value === 'apart') return value;
  throw new Trouble(`--distance is touching or apart, not "${value}".`);
}

function boardOf(file: string): StudyOrder['board'] {
  const kind = /\.(svg|png)$/i.exec(file)?.[1]?.toLowerCase();
  if (kind === 'svg' || kind === 'png') return { file, kind };
  throw new Trouble(`A board is written as .svg or .png, and "${file}" is neither.`);
}
