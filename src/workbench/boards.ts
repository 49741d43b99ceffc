import type { Board } from '../board/model.ts';
import { pairNames } from '../drawer/held.ts';
import type { Held } from '../drawer/model.ts';
import { shownCandidate } from '../notebook/apply-study.ts';
import type { BoardLeaf, Notebook, StudyLeaf, Surround } from '../notebook/model.ts';
import { fileName } from '../storage/file-names.ts';
import type { Advice } from './advice.ts';
import type { Comparisons } from './comparisons.ts';
import { type Pictures, sourceOf } from './pictures.ts';
import type { BoardFileKind, ReadyFile } from './session-types.ts';

export interface Boards {
  /** Null where the leaf has no pair to show. */
  board(notebook: Notebook, leafId: string): Promise<Board | null>;
  svg(notebook: Notebook, leafId: string): Promise<string | null>;
  /** @throws StorageTrouble where the picture can't be made. */
  file(notebook: Notebook, leafId: string, as: BoardFileKind): Promise<ReadyFile | null>;
}

export function startBoards(
  comparisons: Comparisons,
  advice: Advice,
  pictures: Pictures,
  surround: () => Surround,
): Boards {
  async function dataAddress(notebook: Notebook, held: Held): Promise<string | null> {
    const source = sourceOf(notebook, held);
    const id = source?.pictureId ?? null;
    const picture = id === null || source?.part != null ? null : await pictures.get(id);
    return picture === null ? null : addressOf(new Uint8Array(picture.bytes), picture.type);
  }

  async function board(notebook: Notebook, leafId: string): Promise<Board | null> {
    const found = pairOf(notebook, leafId);
    if (found === null) return null;
    const { study, anchor, candidate, leaf } = found;
    const comparison = comparisons.of(notebook.drawer, anchor, candidate, study.distance);
    if (comparison === null) return null;
    const [one, other, remedies] = await Promise.all([
      dataAddress(notebook, anchor),
      dataAddress(notebook, candidate),
      advice.whenKnown(notebook, { anchor, candidate, distance: study.distance }),
    ]);
    // Boards are drawn on their own leaves only, so what draws them is fetched there.
    const { boardKinds } = await import('../board/kinds.ts');
    return boardKinds[leaf?.shows ?? 'pair'].draw(
      { ...comparison, remedies },
      {
        ...(leaf !== null && leaf.title !== '' ? { title: leaf.title } : {}),
        ...(leaf === null ? {} : { words: leaf.words, size: leaf.size }),
        names: pairNames(notebook.drawer, anchor, candidate),
        pictures: {
          ...(one === null ? {} : { anchor: one }),
          ...(other === null ? {} : { candidate: other }),
        },
        wheel: study.wheel,
        surround: surround(),
      },
    );
  }

  async function svg(notebook: Notebook, leafId: string): Promise<string | null> {
    const made = await board(notebook, leafId);
    if (made === null) return null;
    // Shown as a picture, it can use no font of the page: its own are inside it.
    const [{ fontCss }, { boardSvg }] = await Promise.all([
      import('../storage/board-fonts.ts'),
      import('../board/svg.ts'),
    ]);
    return boardSvg(made, { fontCss: await fontCss() });
  }

  return {
    board,
    svg,
    async file(notebook, leafId, as) {
      const made = await board(notebook, leafId);
      if (made === null) return null;
      const name = fileName(made.title, as);
      const { fontCss } = await import('../storage/board-fonts.ts');
      const { boardSvg } = await import('../board/svg.ts');
      const text = boardSvg(made, { fontCss: await fontCss() });
      if (as === 'svg') return { name, blob: new Blob([text], { type: 'image/svg+xml' }) };
      const { svgToPng } = await import('../storage/svg-to-png.ts');
      const { width, height } = made.scene;
      if (as === 'png') return { name, blob: await svgToPng(text, width, height) };
      const { pdfOffPage } = await import('../storage/pdf/pdf-client.ts');
      const bytes = await pdfOffPage(made, () => svgToPng(text, width, height));
      return { name, blob: new Blob([bytes], { type: 'application/pdf' }) };
    },
  };
}

interface Pair {
  readonly study: StudyLeaf;
  readonly anchor: Held;
  readonly candidate: Held;
  /** Null for the board of a study leaf that has no board leaf. */
  readonly leaf: BoardLeaf | null;
}

function pairOf(notebook: Notebook, leafId: string): Pair | null {
  const asked = notebook.leaves.find((one) => one.id === leafId);
  const leaf = asked?.kind === 'board' ? asked : null;
  const study = leaf === null ? asked : notebook.leaves.find((one) => one.id === leaf.studyId);
  if (study?.kind !== 'study' || study.anchor === null) return null;
  const candidate = leaf?.candidate ?? shownCandidate(study);
  return candidate === null ? null : { study, anchor: study.anchor, candidate, leaf };
}

function addressOf(bytes: Uint8Array, type: string): string {
  let binary = '';
  // In pieces, because a call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += 8192) {
    binary += String.fromCharCode(...bytes.subarray(at, at + 8192));
  }
  return `data:${type};base64,${btoa(binary)}`;
}
