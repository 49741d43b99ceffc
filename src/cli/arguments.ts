import { parseArgs } from 'node:util';
import type { Distance } from '../harmony/model.ts';
import type { Card, Frame } from '../sheet/model.ts';
import { Refusal } from './refusal.ts';
import { type StudyVersion, studyVersions } from './study-json.ts';
import * as refusals from './words/refusals.ts';

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
  /** True where the whole picture is the paper, whatever it looks like. */
  whole?: true;
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

const options = {
  anchor: { type: 'string' },
  candidate: { type: 'string', multiple: true },
  distance: { type: 'string' },
  board: { type: 'string' },
  json: { type: 'boolean' },
  format: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
  'width-mm': { type: 'string', multiple: true },
  crop: { type: 'string', multiple: true },
  card: { type: 'string', multiple: true },
  chart: { type: 'string', multiple: true },
  whole: { type: 'boolean', multiple: true },
} as const;

/**
 * What was asked for, or 'help'.
 * @throws Refusal in one sentence, where something is unknown, missing or no number.
 */
export function orderOf(args: readonly string[]): StudyOrder | 'help' {
  let anchor: PictureOrder | null = null;
  let [distance, json, board]: [Distance, boolean, StudyOrder['board']] = ['apart', false, null];
  let version: StudyVersion = 2;
  const candidates: PictureOrder[] = [];
  let last: PictureOrder | null = null;
  // Not strict: its refusals run over several lines, and take a file "-odd.png" for an option. Tokens keep the order,
  // by which a width or a crop belongs to the picture before it.
  const { tokens } = parseArgs({ args: [...args], options, strict: false, tokens: true });
  for (const token of tokens) {
    const given = args[token.index]!;
    if (token.kind !== 'option' || !isOption(token.name)) throw new Refusal(refusals.noSuchOption(given));
    const { name, rawName, value, inlineValue } = token;
    if (options[name].type === 'boolean') {
      if (value !== undefined) throw new Refusal(refusals.takesNoValue(rawName, given));
      if (name === 'help') return 'help';
      if (name === 'json') json = true;
      else orderBefore(last, rawName).whole = true;
      continue;
    }
    if (!value || (!inlineValue && known.includes(value))) throw new Refusal(refusals.needsValue(rawName));
    if (name === 'anchor') {
      if (anchor) throw new Refusal(refusals.secondAnchor);
      last = anchor = { file: value };
    } else if (name === 'candidate') {
      last = { file: value };
      candidates.push(last);
    } else if (name === 'distance') distance = distanceOf(value);
    else if (name === 'board') board = boardOf(value);
    else if (name === 'format') {
      version = versionOf(value);
      json = true;
    } else read(orderBefore(last, rawName), rawName, value);
  }
  if (!anchor) throw new Refusal(refusals.noAnchor);
  if (candidates.length === 0) throw new Refusal(refusals.noCandidate);
  return { anchor, candidates, distance, json, version, board };
}

function orderBefore(last: PictureOrder | null, option: string): PictureOrder {
  if (last === null) throw new Refusal(refusals.noPictureBefore(option));
  return last;
}

function versionOf(value: string): StudyVersion {
  const version = studyVersions.find((one) => `v${one}` === value);
  if (version === undefined) throw new Refusal(refusals.noSuchFormat(value));
  return version;
}

const known = ['-h', ...Object.keys(options).map((name) => `--${name}`)];

function isOption(name: string): name is keyof typeof options {
  return Object.hasOwn(options, name);
}

function read(picture: PictureOrder, option: string, value: string): void {
  if (option === '--width-mm') {
    const width = numberOf(value);
    if (!(width > 0)) throw new Refusal(refusals.noWidth(value));
    picture.widthMm = width;
  } else if (option === '--crop') picture.crop = frameOf(option, value.split(','), value);
  else if (option === '--chart') picture.chart = frameOf(option, value.split(','), value);
  else {
    const parts = value.split(',');
    const frame = frameOf(option, parts.slice(0, 4), value);
    if (parts.length > 5) throw new Refusal(refusals.noCard(value));
    if (parts.length < 5) picture.card = frame;
    else {
      const reflectance = numberOf(parts[4]!);
      if (!(reflectance > 0 && reflectance <= 1)) {
        throw new Refusal(refusals.noReflectance(parts[4]!));
      }
      picture.card = { ...frame, reflectance };
    }
  }
}

function frameOf(option: string, parts: readonly string[], value: string): Frame {
  const [x, y, width, height] = parts.map(numberOf);
  if (parts.length !== 4 || !(x! >= 0 && y! >= 0 && width! >= 1 && height! >= 1 && x! < 1e9 && y! < 1e9)) {
    throw new Refusal(refusals.noFrame(option, value));
  }
  return { x: x!, y: y!, width: width!, height: height! };
}

function numberOf(text: string): number {
  return /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : Number.NaN;
}

function distanceOf(value: string): Distance {
  if (value === 'touching' || value === 'apart') return value;
  throw new Refusal(refusals.noSuchDistance(value));
}

function boardOf(file: string): StudyOrder['board'] {
  const kind = /\.(svg|png)$/i.exec(file)?.[1]?.toLowerCase();
  if (kind === 'svg' || kind === 'png') return { file, kind };
  throw new Refusal(refusals.noSuchBoard(file));
}
