import { partById, plainById, sheetById } from '../../../src/drawer/by-id.ts';
import { allHeld, heldKey, otherSideOfHeld, sideOfHeld } from '../../../src/drawer/held.ts';
import type { Drawer, Held } from '../../../src/drawer/model.ts';
import { familyPlaces } from '../../../src/harmony/measure/family-places.ts';
import { isGathered, takeSide } from '../../../src/harmony/measure/take-side.ts';
import type { FamilySide } from '../../../src/harmony/model.ts';
import { decidingColours } from '../../../src/harmony/reasons/deciding-colours.ts';
import type { Opinion, StudyLeaf } from '../../../src/notebook/model.ts';
import type { Places, Side } from '../../../src/sheet/model.ts';
import { weightWords } from '../../../src/sheet/paper-weight.ts';
import { groundWords } from '../../../src/sheet/print/base-sure.ts';
import { relabel } from '../../../src/sheet/relabel.ts';
import { baseWords, repeatWords } from '../../../src/sheet/words/side-words.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import type { DrawerPaper } from '../../drawer/drawer-view.ts';
import type { CandidateView, PaperView } from '../../study/study-view.ts';
import { unbroken } from '../../support/unbroken.ts';
import { leavesByThing } from './lies-on.ts';
import type { PlacesShelf } from './places-shelf.ts';

/**
 * A held paper as a leaf shows it, or null where it has left the drawer: in a study by its families, on its own leaf by the
 * inks that were read.
 */
export function paperView(
  session: Session,
  shelf: PlacesShelf,
  held: Held,
  role: 'anchor' | 'candidate' | 'alone',
): PaperView | null {
  const { drawer } = session.state.notebook;
  const reading = sideOfHeld(drawer, held);
  if (!reading) return null;
  const picture = session.pictureUrl(held);
  const places = picture ? shelf.get(held, reading) : null;
  const side = role === 'alone' ? relabel(reading, 'anchor') : takeSide(reading, role);
  return {
    held,
    name: plainName(drawer, held) ?? session.nameOf(held),
    side,
    picture,
    places: places && isGathered(side) ? placesByFamily(places, side) : places,
    facts: factsOf(drawer, held, reading).map(unbroken),
    ...onTable(drawer, held),
    ground: unbroken(`${baseWords(reading.base)}, ${groundWords(reading)}`),
    turnsTo: held.kind === 'sheet' && otherSideOfHeld(drawer, held) ? (held.side === 'A' ? 'B' : 'A') : null,
  };
}

/** Where the families of a side lie; the same value for the same places. */
function placesByFamily(places: Places, side: FamilySide): Places {
  const known = byFamily.get(places);
  if (known?.side === side) return known.places;
  const found = familyPlaces(places, side);
  byFamily.set(places, { side, places: found });
  return found;
}

const byFamily = new WeakMap<Places, { readonly side: FamilySide; readonly places: Places }>();

/** Whether it was cut out of its photograph unasked, or is to be asked about. */
function onTable(drawer: Drawer, held: Held): Pick<PaperView, 'cutOut' | 'asks'> {
  const kept = held.kind === 'sheet' ? sheetById(drawer, held.id)?.sides[held.side] : undefined;
  return {
    cutOut: kept?.taken?.unasked === true,
    ...(kept?.asks && kept.pictureId !== null ? { asks: kept.asks } : {}),
  };
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
    const deciding = isShown ? decidingColours(comparison) : null;
    return paper
      ? [{ ...paper, side: comparison.candidate, index, comparison, deciding, remedies, opinion }]
      : [];
  });
}

/**
 * Everything in the drawer, sheets first: the same list for as long as nothing of the drawer changes, and the same paper
 * for as long as the thing itself does not. A paper's picture and the leaves it lies on are asked for when they are read,
 * so that a drawer of ten thousand fetches what is in view and no more.
 */
export function drawerPapers(session: Session): readonly DrawerPaper[] {
  const { drawer } = session.state.notebook;
  const before = papersBefore.get(session);
  if (before?.drawer === drawer) return before.papers;
  const made = before?.made ?? new WeakMap<object, ReadonlyMap<string, DrawerPaper>>();
  const papers = allHeld(drawer).flatMap((held) => {
    const thing = thingOf(drawer, held);
    if (thing === undefined) return [];
    const key = heldKey(held);
    const known = made.get(thing);
    const paper = known?.get(key) ?? lazyPaper(session, held);
    if (paper !== null && !known?.has(key)) made.set(thing, new Map([...(known ?? []), [key, paper]]));
    return paper ?? [];
  });
  papersBefore.set(session, { drawer, papers, made });
  return papers;
}

interface PapersBefore {
  readonly drawer: Drawer;
  readonly papers: readonly DrawerPaper[];
  /** By the sheet, plain or part. */
  readonly made: WeakMap<object, ReadonlyMap<string, DrawerPaper>>;
}

const papersBefore = new WeakMap<Session, PapersBefore>();

function thingOf(drawer: Drawer, { kind, id }: Held): object | undefined {
  return { sheet: sheetById, plain: plainById, part: partById }[kind](drawer, id);
}

function lazyPaper(session: Session, held: Held): DrawerPaper | null {
  const said = paperWords(session, held);
  return (
    said && {
      ...said,
      get picture() {
        return session.pictureUrl(held, 'thumb');
      },
      get liesOn() {
        return leavesByThing(session.state.notebook).get(held.id) ?? [];
      },
    }
  );
}

/** A held paper in small, or null where it has left the drawer. */
export function drawerPaper(session: Session, held: Held): DrawerPaper | null {
  const said = paperWords(session, held);
  return said && { ...said, picture: session.pictureUrl(held, 'thumb') };
}

function paperWords(session: Session, held: Held): Omit<DrawerPaper, 'picture'> | null {
  const { drawer } = session.state.notebook;
  const bands = bandsIn(drawer, held);
  return (
    bands && {
      key: heldKey(held),
      name: plainName(drawer, held) ?? session.nameOf(held),
      about: aboutHeld(drawer, held),
      bands,
    }
  );
}

function bandsIn(drawer: Drawer, held: Held): DrawerPaper['bands'] | null {
  if (held.kind === 'plain') {
    const plain = plainById(drawer, held.id);
    return plain ? [{ hex: plain.ink.hex, share: 1 }] : null;
  }
  const reading = sideOfHeld(drawer, held);
  return reading && [reading.base, ...reading.inks].map(({ hex, share }) => ({ hex, share }));
}

function plainName(drawer: Drawer, held: Held): string | null {
  return held.kind === 'sheet' ? (sheetById(drawer, held.id)?.name ?? null) : null;
}

function aboutHeld(drawer: Drawer, held: Held): string {
  if (held.kind === 'sheet') return sheetById(drawer, held.id)?.sides.B ? `side ${held.side}` : 'sheet';
  if (held.kind === 'part') return 'part of a sheet';
  return plainById(drawer, held.id)?.kind ?? 'plain';
}

function factsOf(drawer: Drawer, held: Held, side: Side): readonly string[] {
  const facts = [];
  if (held.kind === 'sheet') {
    const sheet = sheetById(drawer, held.id);
    if (sheet?.sides.B) facts.push(`side ${held.side} of two`);
    if (sheet?.weight) facts.push(weightWords(sheet.weight));
  } else facts.push(aboutHeld(drawer, held));
  const repeat = repeatWords(side.print);
  if (repeat !== null) facts.push(`repeat ${repeat}`);
  return facts;
}
