import type { Held } from '../../../src/drawer/model.ts';
import type { KitLeaf, KitPiece } from '../../../src/notebook/model.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import type { PieceChange } from '../../kit/kit-view.ts';
import { askForFiles, pictureTypes } from '../page/files.ts';
import type { CommandMap } from './command.ts';

/** What can be done on a kit. */
export const kitCommands = {
  'qw-change-piece': ({ session, leafId }, { index, change }) => {
    const piece = kitOn(session)?.pieces[index];
    if (piece) session.dispatch({ do: 'update piece', leafId, index, piece: changed(piece, change) });
  },
  'qw-remove-piece': ({ session, leafId }, { index }) =>
    session.dispatch({ do: 'remove piece', leafId, index }),
  'qw-add-photographs': ({ session }) =>
    void askForFiles(pictureTypes, true).then((files) => readIntoKit(session, files, 'photo')),
} satisfies CommandMap;

/** The open leaf where it is a kit. */
export function kitOn(session: Session): KitLeaf | null {
  const leaf = session.leaf(session.state.leafId ?? '');
  return leaf?.kind === 'kit' ? leaf : null;
}

/** Puts a paper of the drawer into the open kit. */
export function addToKit(session: Session, held: Held, role?: 'photo'): void {
  const kit = kitOn(session);
  if (!kit) return;
  session.dispatch({ do: 'add piece', leafId: kit.id, piece: pieceOf(held, role) });
}

/** Reads pictures into the drawer, and into the kit that was open when they were given. */
export async function readIntoKit(session: Session, files: readonly File[], role?: 'photo'): Promise<void> {
  const kit = kitOn(session);
  const added = await session.addPictures(files, { to: 'drawer' });
  if (!kit || added.length === 0) return;
  session.dispatchAll(
    added.map((held) => ({ do: 'add piece', leafId: kit.id, piece: pieceOf(held, role) }) as const),
  );
}

function pieceOf(held: Held, role?: 'photo'): KitPiece {
  return { held, areaMm2: null, ...(role ? { role } : {}) };
}

/** A null takes away; the area follows the size. */
function changed(piece: KitPiece, { sizeMm, count, mat, isPhoto }: PieceChange): KitPiece {
  const next: { -readonly [K in keyof KitPiece]: KitPiece[K] } = { ...piece };
  if (sizeMm) next.sizeMm = sizeMm;
  else if (sizeMm === null) delete next.sizeMm;
  if (count) next.count = count;
  if (mat) next.mat = mat;
  else if (mat === null) delete next.mat;
  if (isPhoto === true) next.role = 'photo';
  else if (isPhoto === false) delete next.role;
  const { sizeMm: size, count: many = 1 } = next;
  next.areaMm2 = size ? size.width * size.height * many : null;
  return next;
}
