import { heldKey } from '../../../src/drawer/held.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type {
  BoardLeaf,
  ExerciseLeaf,
  Leaf,
  LeafKind,
  LeafOf,
  Notebook,
  StudyLeaf,
} from '../../../src/notebook/model.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import type { LeafEntry, LeafKind as OfferedKind } from '../../notebook/qw-leaves.ts';
import { type ExercisePair, pairsOf } from './exercise-pairs.ts';

/** What the page knows of a kind of leaf. */
interface KindOfLeaf<Kind extends LeafKind> {
  readonly label: string;
  /** What it is for; null where a leaf of this kind is not added from the list. */
  readonly about: string | null;
  /** What stands beside its title in the list of leaves. */
  readonly told: (leaf: LeafOf[Kind]) => string;
  /** A new one; null where there is nothing yet to make it of. */
  readonly make: (id: string, from: NewLeafFrom) => LeafOf[Kind] | null;
}

/** What a new leaf may be made of. */
export interface NewLeafFrom {
  readonly notebook: Notebook;
  readonly openId: string | null;
  /** Tells an exercise which pairs have what it asks for. */
  readonly compare: Session['compare'];
}

/** Every kind of leaf in the order in which they are offered. A kind that is missing here does not compile. */
const kinds: { readonly [Kind in LeafKind]: KindOfLeaf<Kind> } = {
  study: {
    label: 'Study',
    about: 'hold papers against one sheet',
    told: ({ candidates }) => `study, ${counted(candidates.length, 'candidate')}`,
    make: (id) => newStudy(id),
  },
  kit: {
    label: 'Kit',
    about: 'papers and plains for one page',
    told: ({ pieces }) => `kit, ${counted(pieces.length, 'piece')}`,
    make: (id) => ({ id, kind: 'kit', title: '', text: '', pieces: [] }),
  },
  exercise: {
    label: 'Exercise',
    about: 'look first, then see what the reading found',
    told: () => 'exercise',
    make: (id, { notebook, openId, compare }) => {
      const study = pairedStudy(notebook, openId);
      return study ? exerciseOn(id, study, notebook, compare) : null;
    },
  },
  note: {
    label: 'Note',
    about: 'words of your own',
    told: () => 'note',
    make: (id) => ({ id, kind: 'note', title: '', text: '' }),
  },
  board: {
    label: 'Board',
    about: 'one picture of a study, to share',
    told: () => 'board',
    make: (id, { notebook, openId }) => {
      const study = pairedStudy(notebook, openId);
      return study && !asksStill(study) ? boardOfStudy(id, study) : null;
    },
  },
  // A sheet's page opens from the sheet itself.
  sheet: { label: 'Sheet', about: null, told: () => 'sheet', make: () => null },
};

/**
 * Kinds of leaf that can be added now, with what each is for: a board and an exercise only where a study has a pair. A
 * board tells what was found, so that of a study that asks first it waits until the reader has said hers.
 */
export function leafKinds(notebook: Notebook, openId: string | null): readonly OfferedKind[] {
  const source = pairedStudy(notebook, openId);
  if (!source) return withoutPair;
  return asksStill(source) ? withQuietPair : withPair;
}

// The same lists each time, so that what shows them is drawn only when they change.
const withPair = (Object.keys(kinds) as LeafKind[]).flatMap((kind): readonly OfferedKind[] => {
  const { label, about } = kinds[kind];
  return about === null ? [] : [{ kind, label, about }];
});
const withoutPair = withPair.filter(({ kind }) => kind !== 'board' && kind !== 'exercise');
const withQuietPair = withPair.map((one) =>
  one.kind === 'board' ? { ...one, notNow: 'once you have said yours on the study' } : one,
);

/** True where the study keeps quiet about the pair that it shows, until the reader has said hers. */
export function asksStill(leaf: StudyLeaf): boolean {
  const pair = pairOf(leaf);
  return leaf.asksFirst && pair !== null && (leaf.opinions[heldKey(pair)]?.verdict ?? null) === null;
}

/** The study that is open, or the last that has a pair. */
function pairedStudy(notebook: Notebook, openId: string | null): StudyLeaf | undefined {
  const pairs = notebook.leaves.filter((leaf): leaf is StudyLeaf => leaf.kind === 'study' && !!pairOf(leaf));
  return pairs.find((leaf) => leaf.id === openId) ?? pairs.at(-1);
}

/** The lines of the list of leaves: the same list for as long as none of its lines changes, whatever is written on a leaf. */
export function leafEntries({ leaves }: Notebook): readonly LeafEntry[] {
  if (leaves === listed.leaves) return listed.entries;
  const before = listed.entries;
  const entries = leaves.map((leaf, i): LeafEntry => {
    const { id, title } = leaf;
    const about = aboutLeaf(leaf);
    const same = before[i];
    return same?.id === id && same.title === title && same.about === about ? same : { id, title, about };
  });
  const isSame = entries.length === before.length && entries.every((entry, i) => entry === before[i]);
  listed = { leaves, entries: isSame ? before : entries };
  return listed.entries;
}

/** What was listed last. */
let listed: { readonly leaves: readonly Leaf[]; readonly entries: readonly LeafEntry[] } = {
  leaves: [],
  entries: [],
};

/** What a leaf is, for the list: "study, 3 candidates". */
function aboutLeaf(leaf: Leaf): string {
  const { told } = kinds[leaf.kind] as KindOfLeaf<LeafKind>;
  return told(leaf);
}

/** An empty study. */
export function newStudy(id: string, anchor: Held | null = null): StudyLeaf {
  return {
    id,
    kind: 'study',
    title: '',
    text: '',
    anchor,
    candidates: [],
    shown: 0,
    distance: 'apart',
    wheel: 'eye',
    asksFirst: false,
    opinions: {},
  };
}

/**
 * A new leaf of a kind that `leafKinds` gives; a board or an exercise is of the study that is open, or the last that has a
 * pair. Null where there is no such kind, or nothing to make it of.
 */
export function newLeaf(kind: string, id: string, from: NewLeafFrom): Leaf | null {
  return Object.hasOwn(kinds, kind) ? kinds[kind as LeafKind].make(id, from) : null;
}

/** Pairs that are looked through for what a new exercise can ask; each is a comparison. A choice of ours. */
const pairsTried = 40;

/**
 * An exercise on the near miss of the pair that a study shows; where that has none, of another pair that has one, its own
 * study's first. Where none has, it asks for the verdict on the pair that is shown.
 */
function exerciseOn(
  id: string,
  study: StudyLeaf,
  notebook: Notebook,
  compare: Session['compare'],
): ExerciseLeaf {
  const shown = pairOf(study);
  const far = (pair: ExercisePair) =>
    pair.study !== study ? 2 : shown !== null && heldKey(pair.candidate) === heldKey(shown) ? 0 : 1;
  const found = pairsOf(notebook)
    .toSorted((a, b) => far(a) - far(b))
    .slice(0, pairsTried)
    .find(({ anchor, candidate, study: { distance } }) =>
      compare(anchor, candidate, distance)?.findings.some(({ name }) => name === 'near miss'),
    );
  const candidate = found?.candidate ?? shown;
  return {
    id,
    kind: 'exercise',
    title: found ? 'Find the near miss' : 'Do they belong together?',
    text: '',
    studyId: found?.study.id ?? study.id,
    answered: null,
    ask: found ? 'near miss' : 'verdict',
    ...(candidate ? { candidate } : {}),
  };
}

/** A board leaf for the candidate that a study shows. */
export function boardOfStudy(id: string, study: StudyLeaf): BoardLeaf {
  return {
    id,
    kind: 'board',
    title: study.title,
    studyId: study.id,
    candidate: pairOf(study),
    words: study.text,
    size: 'square',
  };
}

/** The board that was already made of this pair, so that it is opened and not made twice. */
export function boardOnLeaf(notebook: Notebook, study: StudyLeaf): Leaf | undefined {
  const pair = pairOf(study);
  return notebook.leaves.find(
    (leaf) =>
      leaf.kind === 'board' &&
      leaf.studyId === study.id &&
      leaf.candidate !== null &&
      pair !== null &&
      heldKey(leaf.candidate) === heldKey(pair),
  );
}

function pairOf(study: StudyLeaf): Held | null {
  return study.anchor ? (study.candidates[study.shown] ?? study.candidates[0] ?? null) : null;
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
