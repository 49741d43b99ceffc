import { takeSide } from '../harmony/measure/take-side.ts';
import type { Advised } from '../harmony/model.ts';
import { rank } from '../harmony/ranking/rank.ts';
import { remediesFor } from '../harmony/remedies/remedies.ts';
import { orderOf, type StudyOrder } from './arguments.ts';
import { type ReadPicture, readPicture } from './read-picture.ts';
import { Refusal } from './refusal.ts';
import { report } from './report.ts';
import { type Placed, studyJson } from './study-json.ts';
import { help } from './words/help.ts';
import { writeWhole } from './write-file.ts';

/** Where the command was called, and where its words go. */
export interface Surroundings {
  readonly folder: string;
  readonly out: (text: string) => void;
  /** Standard error. */
  readonly sorry: (text: string) => void;
}

/**
 * Studies the pictures that are named and tells the result.
 * @returns the exit status: 0, or 2 after one sentence on standard error and nothing else said or written.
 */
export async function main(args: readonly string[], surroundings: Surroundings): Promise<number> {
  try {
    const order = orderOf(args);
    surroundings.out(order === 'help' ? help : await studied(order, surroundings.folder));
    return 0;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    surroundings.sorry(`${error.message}\n`);
    return 2;
  }
}

async function studied(order: StudyOrder, folder: string): Promise<string> {
  const anchor = await readPicture(order.anchor, folder);
  const candidates: ReadPicture[] = [];
  // One after the other: two large pictures at once would need the memory of both.
  for (const candidate of order.candidates) candidates.push(await readPicture(candidate, folder));

  const ranked = rank(
    anchor.side,
    candidates.map(({ side }) => side),
    { distance: order.distance },
  );
  const placed = ranked.map((place): Placed => {
    const { file, places } = candidates[place.index]!;
    const remedies = remediesFor(place, { places: { anchor: anchor.places, candidate: places } });
    return { file, comparison: { ...place, remedies } };
  });
  const anchorSide = takeSide(anchor.side, 'anchor');
  const told = order.json
    ? studyJson(anchor.file, anchorSide, placed, order.version)
    : report(anchor.file, anchorSide, placed);
  if (order.board)
    await writeBoard(order.board, folder, placed[0]!.comparison, anchor, candidates[ranked[0]!.index]!);
  return told;
}

async function writeBoard(
  { file, kind }: NonNullable<StudyOrder['board']>,
  folder: string,
  best: Advised,
  anchor: ReadPicture,
  candidate: ReadPicture,
): Promise<void> {
  // The renderer and the fonts are large, and only a board needs them.
  const { boardContent } = await import('./board-file.ts');
  await writeWhole(file, folder, await boardContent(kind, best, anchor, candidate));
}
