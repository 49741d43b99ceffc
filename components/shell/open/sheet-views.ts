import { sheetById } from '../../../src/drawer/by-id.ts';
import { spotsInside } from '../../../src/drawer/places.ts';
import type { Places, Sheet, Side, SizeMm, Spot } from '../../../src/sheet/model.ts';
import { weightWords } from '../../../src/sheet/paper-weight.ts';
import { relabel } from '../../../src/sheet/relabel.ts';
import type { FoundOnPicture, Session } from '../../../src/workbench/session-types.ts';
import { paperIndex, paperSizes, sizeWords } from '../../picture/lengths.ts';
import type { SheetView } from '../../picture/sheet-view.ts';
import { unbroken } from '../../support/unbroken.ts';

/** What was looked for on a side's pictures; null until the answer is there. */
export interface SeenOnPictures {
  readonly corners: FoundOnPicture['corners'] | undefined;
  readonly blocks: FoundOnPicture['blocks'];
  /** The size that a sheet with these corners is likely to have. */
  readonly sizeMm?: SizeMm;
}

/** Size to start from where nobody has said one. Common practice, no source: most patterned papers are 12 × 12 in. */
const usualSize: SizeMm = paperSizes[0]!.size;

/** True where the size is still what was made of the picture's proportion. */
function isGuess({ sizeMm }: Sheet): boolean {
  return paperIndex(sizeMm) < 0 && Math.max(sizeMm.width, sizeMm.height) === 305;
}

/** A side with all that its tools need, but for what is tapped on it. Null where the sheet has left the drawer. */
export function sheetView(
  session: Session,
  sheetId: string,
  face: 'A' | 'B',
  found: SeenOnPictures,
  places: Places | null,
): Omit<SheetView, 'spotReads'> | null {
  const { drawer } = session.state.notebook;
  const sheet = sheetById(drawer, sheetId);
  const kept = sheet?.sides[face];
  if (!sheet || !kept) return null;
  const side = relabel(kept.reading, 'anchor');
  const straightened = kept.taken?.corners !== undefined;
  return {
    sheet,
    face,
    side,
    picture: session.pictureUrl({ kind: 'sheet', id: sheetId, side: face }),
    taken: session.takenUrl(sheetId, face),
    corners: kept.taken?.corners ?? kept.asks ?? found.corners ?? null,
    straightSize: straightened || !isGuess(sheet) ? sheet.sizeMm : (found.sizeMm ?? usualSize),
    cornersSay: cornersSay(straightened, found),
    straightened,
    light: kept.taken?.light ?? null,
    hand: kept.hand ?? [],
    spots: spotsOf(places, side),
    blocks: found.blocks.map((frame) => ({ frame })),
    parts: drawer.parts
      .filter((part) => part.sheetId === sheetId && part.side === face)
      .map((part) => ({ key: `part:${part.id}`, name: part.name, size: unbroken(sizeWords(part.sizeMm)) })),
    weightSays: weightSays(sheet),
  };
}

function cornersSay(straightened: boolean, { corners }: SeenOnPictures): string {
  if (straightened)
    return 'Straightened by these corners. They can be moved, and it is straightened again from the photograph.';
  if (corners === undefined) return 'Looking for the sheet’s corners…';
  return corners === null
    ? 'No sheet stands out against a table here, so the handles lie on the picture’s own corners.'
    : 'The corners were found against the table; look whether they are right.';
}

function weightSays({ weight }: Sheet): string {
  return weight ? unbroken(weightWords(weight)) : '';
}

/** A spot well inside each ink, by its id on screen. */
function spotsOf(places: Places | null, side: Side): Record<string, Spot> {
  const inks = [side.base, ...side.inks];
  const spots = places === null ? [] : spotsInside(places, inks.length);
  return Object.fromEntries(inks.flatMap(({ id }, i) => (spots[i] ? [[id, spots[i]]] : [])));
}
