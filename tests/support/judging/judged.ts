import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import type { Verdict } from '../../../src/harmony/model.ts';
import type { PixelImage, Side } from '../../../src/sheet/model.ts';
import { readSide } from '../../../src/sheet/read-side.ts';

/** Papers that viewers judged by eye before anything was computed; see tests/judged-papers/README.md. */
export const judgedFolder = join(process.cwd(), 'tests', 'judged-papers');

export interface Viewing {
  readonly v: 'goes' | 'bridge' | 'fights';
  readonly s: number;
  readonly why: string;
}

export interface JudgedPair {
  readonly a: string;
  readonly b: string;
  /** True where most viewers decided by theme or mood. */
  readonly subject: boolean;
  readonly viewings: readonly Viewing[];
}

/** Every pair. */
export function judgedPairs(folder: string = judgedFolder): JudgedPair[] {
  return JSON.parse(readFileSync(join(folder, 'pairs.json'), 'utf8')) as JudgedPair[];
}

const verdicts = { goes: 'holds-together', bridge: 'needs-a-bridge', fights: 'pulls-apart' } as const;

/** What most viewers say, or the middle where all three differ. */
export function majorityOf({ viewings }: JudgedPair): Verdict {
  for (const one of ['goes', 'bridge', 'fights'] as const)
    if (viewings.filter(({ v }) => v === one).length * 2 > viewings.length) return verdicts[one];
  return 'needs-a-bridge';
}

/** −1 pulls apart, 0 needs a bridge, 1 holds together. */
export function stepOf(verdict: Verdict): number {
  return verdict === 'holds-together' ? 1 : verdict === 'pulls-apart' ? -1 : 0;
}

/** What one more photograph of the same paper may differ by. */
export const retakes = {
  'as it is': (picture: Sharp) => picture,
  'resized to 70 %': (picture: Sharp) => picture.resize(490, 490),
  'JPEG 80': (picture: Sharp) => picture.flatten().jpeg({ quality: 80 }),
  'cropped by 10 %': (picture: Sharp) => picture.extract({ left: 35, top: 35, width: 630, height: 630 }),
  'brightened by 5 %': (picture: Sharp) => picture.linear(1.05, 0),
} as const;
export type Retake = keyof typeof retakes;

/** Reads one judged paper. */
export async function readJudged(
  file: string,
  retake: Retake = 'as it is',
  folder: string = judgedFolder,
): Promise<Side> {
  return readSide(await pixelsOf(file, retake, folder));
}

async function pixelsOf(file: string, retake: Retake, folder: string): Promise<PixelImage> {
  const changed = retakes[retake](sharp(join(folder, 'pictures', file)).removeAlpha());
  const picture = retake === 'JPEG 80' ? sharp(await changed.toBuffer()) : changed;
  const { data, info } = await picture.ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data: new Uint8ClampedArray(data), width: info.width, height: info.height };
}
