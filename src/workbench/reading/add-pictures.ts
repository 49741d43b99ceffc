import type { Held } from '../../drawer/model.ts';
import type { Edit } from '../../notebook/edits.ts';
import { emptyStudy } from '../../notebook/empty.ts';
import type { Notebook, StudyLeaf } from '../../notebook/model.ts';
import type { KeptSide, Sheet, SizeMm } from '../../sheet/model.ts';
import type { Picture } from '../../storage/database.ts';
import type { PaperInPicture, ReadDone } from '../../workers/messages.ts';
import { newId } from '../new-id.ts';
import type { PictureTarget } from '../session-types.ts';

/** Longer side of a sheet whose size was not said: 12 in. */
const sheetMm = 305;

/** Pictures as they are kept, and the side that was read from them. */
export function keptFrom(
  done: ReadDone,
  fileName: string,
  digest: string | null = null,
): {
  readonly kept: KeptSide;
  /** The picture that was read; null where none was wanted. */
  readonly picture: Picture | null;
  /** The photograph that it was cut out of, where it was; else the picture itself. */
  readonly photograph: Picture | null;
} {
  const picture = pictureFrom(done, newId('picture'));
  const { paper } = done;
  const photograph = paper?.taken
    ? pictureFrom({ picture: paper.taken, thumb: null }, newId('picture'))
    : picture;
  return {
    kept: {
      reading: { ...done.side, file: fileName.slice(0, 200) },
      pictureId: picture?.id ?? null,
      ...(digest === null ? {} : { digest }),
      ...(paper && picture && photograph ? onTable(paper, picture, photograph) : {}),
    },
    picture,
    photograph,
  };
}

/** A paper that was cut out of its photograph unasked, or is to be asked about. */
function onTable(
  { corners, sizeMm, taken }: PaperInPicture,
  picture: Picture,
  photograph: Picture,
): Pick<KeptSide, 'asks' | 'taken' | 'options'> {
  if (taken === null) return { asks: corners };
  const mmPerPixel = Math.max(sizeMm.width, sizeMm.height) / Math.max(picture.width, picture.height);
  return { options: { mmPerPixel }, taken: { pictureId: photograph.id, corners, unasked: true } };
}

/** The picture that a reading gave, as it is stored; null where none was wanted. */
export function pictureFrom(
  { picture, thumb }: Pick<ReadDone, 'picture' | 'thumb'>,
  id: string,
): Picture | null {
  return picture === null ? null : { id, ...picture, thumb, addedAt: new Date().toISOString() };
}

/** A sheet with one side; its longer side is taken as 12 in, and one that was cut out as large as papers are sold, until the user says otherwise. */
export function sheetFrom(kept: KeptSide, done: ReadDone, name: string): Sheet {
  return {
    id: newId('sheet'),
    name,
    sides: { A: kept },
    sizeMm: done.paper?.taken ? done.paper.sizeMm : sizeOf(done.fullWidth, done.fullHeight),
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
