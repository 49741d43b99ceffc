import type { Held } from '../drawer/model.ts';
import type { Edit } from '../notebook/edits.ts';
import { emptyStudy } from '../notebook/empty.ts';
import type { Notebook, StudyLeaf } from '../notebook/model.ts';
import type { KeptSide, Sheet, SizeMm } from '../sheet/model.ts';
import type { Picture } from '../storage/database.ts';
import type { ReadDone } from '../workers/messages.ts';
import { newId } from './new-id.ts';
import type { PictureTarget } from './session-types.ts';

/** Longer side of a sheet whose size was not said: 12 in. */
const sheetMm = 305;

/** A picture as it is kept, and the side that was read from it. */
export function keptFrom(
  done: ReadDone,
  fileName: string,
  digest: string | null = null,
  pictureId = newId('picture'),
): { kept: KeptSide; picture: Picture | null } {
  const picture = pictureFrom(done, pictureId);
  return {
    kept: {
      reading: { ...done.side, file: fileName.slice(0, 200) },
      pictureId: picture?.id ?? null,
      ...(digest === null ? {} : { digest }),
    },
    picture,
  };
}

/** The picture that a reading gave, as it is stored; null where none was wanted. */
export function pictureFrom({ picture, thumb }: ReadDone, id: string): Picture | null {
  return picture === null ? null : { id, ...picture, thumb, addedAt: new Date().toISOString() };
}

/** A sheet with one side; its longer side is taken as 12 in until the user says otherwise. */
export function sheetFrom(kept: KeptSide, done: ReadDone, name: string): Sheet {
  return {
    id: newId('sheet'),
    name,
    sides: { A: kept },
    sizeMm: sizeOf(done.fullWidth, done.fullHeight),
    weight: null,
    count: 1,
    note: '',
  };
}

/** The study that `count` pictures go to, made first where it must be: the target with its default filled in. */
export function studyFor(
  notebook: Notebook,
  leafId: string | null,
  count: number,
  target: PictureTarget | undefined,
): { readonly edits: readonly Edit[]; readonly studyId: string | null } {
  if (target?.to === 'study') return { edits: [], studyId: target.studyId };
  if (target?.to === 'drawer' || target?.to === 'other side') return { edits: [], studyId: null };
  const leaf = notebook.leaves.find((one) => one.id === leafId);
  if (target === undefined && leaf?.kind === 'study') return { edits: [], studyId: leaf.id };
  const hasStudy = notebook.leaves.some((one) => one.kind === 'study');
  if (target === undefined && count === 1 && hasStudy) return { edits: [], studyId: null };
  const study = emptyStudy(newId('leaf'), titleOf([]));
  return { edits: [{ do: 'add leaf', leaf: study }], studyId: study.id };
}

/** What puts one more paper onto a study: as its anchor where it has none, else as a candidate; `show` draws it in full. */
export function ontoStudy(
  study: StudyLeaf | null,
  held: Held,
  as: 'anchor' | 'candidate' | null,
  show = false,
): readonly Edit[] {
  if (study === null) return [];
  const leafId = study.id;
  return as === 'anchor' || (as === null && study.anchor === null)
    ? [{ do: 'set anchor', leafId, anchor: held }]
    : [
        {
          do: 'add candidate',
          leafId,
          candidate: held,
          show: show || study.candidates.length === 0 || as !== null,
        },
      ];
}

/** A study's first title: the names of its papers, as many as there are yet. */
export function titleOf([first = 'A study', second, ...more]: readonly string[]): string {
  if (second === undefined) return first;
  return more.length === 0 ? `${first} with ${second}` : `${first} with ${more.length + 1} others`;
}

function sizeOf(width: number, height: number): SizeMm {
  const scale = sheetMm / Math.max(width, height);
  return { width: Math.round(width * scale), height: Math.round(height * scale) };
}
