import { allHeld, heldKey, otherSideOfHeld, sideOfHeld } from '../../src/drawer/find.ts';
import type { Drawer, Held } from '../../src/drawer/model.ts';
import type { Opinion, StudyLeaf } from '../../src/notebook/model.ts';
import { groundWords } from '../../src/sheet/ground-sure.ts';
import type { Side } from '../../src/sheet/model.ts';
import { relabel } from '../../src/sheet/relabel.ts';
import { weightWords } from '../../src/sheet/weight.ts';
import { baseWords, repeatWords } from '../../src/sheet/words.ts';
import type { Session } from '../../src/workbench/session-types.ts';
import type { DrawerPaper } from '../drawer/drawer-view.ts';
import type { CandidateView, PaperView } from '../study/study-view.ts';
import { unbroken } from '../support/unbroken.ts';
import { leavesByThing } from './lies-on.ts';
import type { PlacesShelf } from './places-shelf.ts';

/** A held paper as a study or a sheet leaf shows it, or null where it has left the drawer. */
export function paperView(
  session: Session,
  shelf: PlacesShelf,
  held: Held,
  role: 'anchor' | 'candidate',
): PaperView | null {
  const { drawer } = session.state.notebook;
  const reading = sideOfHeld(drawer, held);
  if (!reading) return null;
  const picture = session.pictureUrl(held);
  return {
    held,
    name: plainName(drawer, held) ?? session.nameOf(held),
    side: relabel(reading, role),
    picture,
    places: picture ? shelf.get(held, reading) : null,
    facts: factsOf(drawer, held, reading).map(unbroken),
    onTable: liesOnTable(session, held),
    ground: unbroken(`${baseWords(reading.base)}, ${groundWords(reading)}`),
    turnsTo: held.kind === 'sheet' && otherSideOfHeld(drawer, held) ? (held.side === 'A' ? 'B' : 'A') : null,
  };
}

/** Whether its picture shows the table too, and has not been straightened since. */
function liesOnTable({ state }: Session, held: Held): boolean {
  if (held.kind !== 'sheet') return false;
  const kept = state.notebook.drawer.sheets.find(({ id }) => id === held.id)?.sides[held.side];
  return kept?.pictureId != null && !kept.taken && state.onTable.includes(kept.pictureId);
}

/** A study's candidates, best first. */
export function candidateViews(
  session: Session,
  shelf: PlacesShelf,
  study: StudyLeaf,
): readonly CandidateView[] {
  const { anchor, distance, shown } = study;
  return session.rank(study.id).flatMap(({ index, held, comparison }, place, all) => {
    const paper = paperView(session, shelf, held, 'candidate');
    const opinion: Opinion = study.opinions[heldKey(held)] ?? { verdict: null, likes: null };
    // Only what is shown is mended: the first, where none is chosen.
    const isShown = all.some((one) => one.index === shown) ? index === shown : place === 0;
    const remedies = isShown && anchor ? session.remedies(anchor, held, distance) : null;
    return paper ? [{ ...paper, side: comparison.candidate, index, comparison, remedies, opinion }] : [];
  });
}

/**
 * Everything in the drawer, sheets first. What has not changed since it was last asked for is the same object, and so
 * is the whole, so that it is not drawn again.
 */
export function drawerPapers(session: Session): readonly DrawerPaper[] {
  const before = papersBefore.get(session) ?? [];
  const lies = leavesByThing(session.state.notebook);
  const known = new Map(before.map((paper) => [paper.key, paper]));
  const papers = allHeld(session.state.notebook.drawer).flatMap((held) => {
    const paper = drawerPaper(session, held);
    const fresh = paper && { ...paper, liesOn: lies.get(held.id) ?? [] };
    const same = fresh === null ? undefined : known.get(fresh.key);
    return fresh === null ? [] : [same !== undefined && isSamePaper(same, fresh) ? same : fresh];
  });
  if (papers.length === before.length && papers.every((paper, i) => paper === before[i])) return before;
  papersBefore.set(session, papers);
  return papers;
}

const papersBefore = new WeakMap<Session, readonly DrawerPaper[]>();

function isSamePaper(one: DrawerPaper, other: DrawerPaper): boolean {
  return (
    one.name === other.name &&
    one.about === other.about &&
    one.picture === other.picture &&
    one.liesOn?.join() === other.liesOn?.join() &&
    one.bands.length === other.bands.length &&
    one.bands.every(({ hex, share }, i) => hex === other.bands[i]?.hex && share === other.bands[i]?.share)
  );
}

/** A held paper in small, or null where it has left the drawer. */
export function drawerPaper(session: Session, held: Held): DrawerPaper | null {
  const { drawer } = session.state.notebook;
  const bands = bandsIn(drawer, held);
  if (!bands) return null;
  return {
    key: heldKey(held),
    name: plainName(drawer, held) ?? session.nameOf(held),
    about: aboutHeld(drawer, held),
    picture: session.pictureUrl(held, 'thumb'),
    bands,
  };
}

function bandsIn(drawer: Drawer, held: Held): DrawerPaper['bands'] | null {
  if (held.kind === 'plain') {
    const plain = drawer.plains.find(({ id }) => id === held.id);
    return plain ? [{ hex: plain.ink.hex, share: 1 }] : null;
  }
  const reading = sideOfHeld(drawer, held);
  return reading && [reading.base, ...reading.inks].map(({ hex, share }) => ({ hex, share }));
}

/** The held thing that a key of the drawer names, or null. */
export function heldByKey(drawer: Drawer, key: string): Held | null {
  return allHeld(drawer).find((held) => heldKey(held) === key) ?? null;
}

function plainName(drawer: Drawer, held: Held): string | null {
  return held.kind === 'sheet' ? (drawer.sheets.find(({ id }) => id === held.id)?.name ?? null) : null;
}

function aboutHeld(drawer: Drawer, held: Held): string {
  if (held.kind === 'sheet') {
    const sheet = drawer.sheets.find(({ id }) => id === held.id);
    return sheet?.sides.B ? `side ${held.side}` : 'sheet';
  }
  if (held.kind === 'part') return 'part of a sheet';
  return drawer.plains.find(({ id }) => id === held.id)?.kind ?? 'plain';
}

function factsOf(drawer: Drawer, held: Held, side: Side): readonly string[] {
  const facts = [];
  if (held.kind === 'sheet') {
    const sheet = drawer.sheets.find(({ id }) => id === held.id);
    facts.push(`side ${held.side} of ${sheet?.sides.B ? 'two' : 'one'}`);
    if (sheet?.weight) facts.push(weightWords(sheet.weight));
  } else facts.push(aboutHeld(drawer, held));
  const repeat = repeatWords(side.print);
  if (repeat !== null) facts.push(`repeat ${repeat}`);
  return facts;
}
