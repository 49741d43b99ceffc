import type { Held } from '../../drawer/model.ts';
import type { Edit } from '../../notebook/edits.ts';
import type { Leaf, StudyLeaf } from '../../notebook/model.ts';
import type { KeptSide } from '../../sheet/model.ts';
import type { Book } from '../book.ts';
import type { PictureTarget } from '../session-types.ts';
import { ontoStudy, sheetFrom } from './add-pictures.ts';
import type { ReadResult } from './read-client.ts';

/** Edits that put papers where they are to go, one after the other. */
export interface Placing {
  /** For one that is in the drawer. */
  onto(held: Held): readonly Edit[];
  /** For one that was just read. `edits`: as the notebook is when they are asked for. */
  fresh(kept: KeptSide, result: ReadResult, name: string): { held: Held; edits: () => readonly Edit[] };
  /** One was put there. */
  done(): void;
}

export function startPlacing(
  book: Pick<Book, 'notebook'>,
  target: PictureTarget | undefined,
  studyId: string | null,
): Placing {
  const study = () => studyOf(book.notebook.leaves.find((leaf) => leaf.id === studyId));
  // On a study that has a pair already, what is dropped is what she wants to see.
  const showsNew = (study()?.candidates.length ?? 0) > 0;
  let as = target?.to === 'study' ? target.as : null;
  const onto = (held: Held) => ontoStudy(study(), held, as, showsNew);

  return {
    onto,
    fresh(kept, { done }, name) {
      if (target?.to === 'other side') {
        const { sheetId } = target;
        const held: Held = { kind: 'sheet', id: sheetId, side: 'B' };
        return { held, edits: () => [{ do: 'set side', sheetId, side: 'B', kept }] };
      }
      const sheet = sheetFrom(kept, done, name);
      const held: Held = { kind: 'sheet', id: sheet.id, side: 'A' };
      return { held, edits: () => [{ do: 'add sheet', sheet }, ...onto(held)] };
    },
    // One anchor a study: further pictures for it are candidates.
    done() {
      if (as === 'anchor') as = 'candidate';
    },
  };
}

export function studyOf(leaf: Leaf | undefined): StudyLeaf | null {
  return leaf?.kind === 'study' ? leaf : null;
}
