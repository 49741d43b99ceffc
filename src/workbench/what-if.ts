import { oklabFromOklch } from '../colour/spaces.ts';
import { allHeld, heldKey, nameOfHeld, pairNames, sideOfHeld } from '../drawer/held.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import type { Change, Comparison } from '../harmony/model.ts';
import { whatIf } from '../harmony/remedies/what-if.ts';
import {
  beforeAfterAlt,
  changeSays,
  type PairNames,
  whatIfNote,
  whatIfSays,
} from '../harmony/words/change-words.ts';
import { keptName } from '../notebook/limits.ts';
import type { NoteLeaf } from '../notebook/model.ts';
import { inkOf } from '../sheet/ink.ts';
import type { Ink, Side } from '../sheet/model.ts';

/** A pair as it would be after some changes. Nothing of it is stored. */
export interface Supposed {
  readonly comparison: Comparison;
  /** What is supposed, one clause a change. */
  readonly clauses: readonly string[];
  /** The same as one sentence. */
  readonly question: string;
  /** The papers that then lie there: others than those of the pair where one was turned or exchanged. */
  readonly papers: Pair;
  /** What they are called. */
  readonly names: PairNames;
  /** The pair with papers turned or exchanged and nothing else done to them: what further changes start from. */
  readonly start: Comparison;
}

interface Pair {
  readonly anchor: Held;
  readonly candidate: Held;
}

/** Compares a held pair again as if the changes were made. */
export function supposeOn(
  drawer: Drawer,
  pair: Pair,
  from: Comparison,
  changes: readonly Change[],
): Supposed {
  const exchanges = changes.filter(({ kind }) => kind === 'replace');
  const papers = exchanges.reduce((lie, change) => exchanged(drawer, lie, change), pair);
  const names = namesOf(drawer, papers);
  const made = (some: readonly Change[]) =>
    whatIf(from.anchor, from.candidate, some, { distance: from.distance, names });
  const start = exchanges.length ? made(exchanges) : from;
  const before = namesOf(drawer, pair);
  const clauses = changes.map((change) =>
    change.kind === 'replace'
      ? changeSays(change, from, before, nameOfHeld(drawer, papers[change.of]))
      : changeSays(change, start, names),
  );
  return { comparison: made(changes), clauses, question: whatIfSays(clauses), papers, names, start };
}

/** The pair once a paper of the drawer lies in place of another; the pair as it is where the drawer has none like it. */
function exchanged(drawer: Drawer, pair: Pair, change: Change): Pair {
  if (change.kind !== 'replace') return pair;
  const { side } = change;
  const others = allHeld(drawer).filter((one) => heldKey(one) !== heldKey(pair[change.of]));
  const held = others.find((one) => isLike(sideOfHeld(drawer, one), side));
  return held ? { ...pair, [change.of]: held } : pair;
}

/** Whether two readings are of one paper: their inks may have been renamed for another role. */
function isLike(one: Side | null, other: Side): boolean {
  if (one === null || one.inks.length !== other.inks.length) return false;
  const [mine, theirs] = [one, other].map(({ base, inks }) => [base, ...inks]);
  return mine!.every(({ hex, share }, i) => hex === theirs![i]!.hex && share === theirs![i]!.share);
}

/** The note that keeps a what-if, with the two pairs as a picture where there is one. */
export function noteOfSupposed(
  id: string,
  from: Comparison,
  supposed: Supposed,
  pictureId: string | null,
): NoteLeaf {
  const { question, comparison } = supposed;
  const note: NoteLeaf = { id, kind: 'note', title: question, text: whatIfNote(from, comparison) };
  return pictureId === null
    ? note
    : { ...note, picture: { pictureId, alt: keptName(beforeAfterAlt(from, comparison)) } };
}

/** An ink of a colour that was set by hand: OKLCH lightness 0–1, chroma, hue in degrees. */
export function supposedInk(l: number, c: number, h: number): Ink {
  return inkOf(oklabFromOklch({ l, c, h }), 'X', 0, false);
}

function namesOf(drawer: Drawer, pair: Pair): PairNames {
  return pairNames(drawer, pair.anchor, pair.candidate);
}
