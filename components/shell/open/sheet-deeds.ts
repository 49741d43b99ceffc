import { sheetById } from '../../../src/drawer/by-id.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type {
  HandChange,
  HandMade,
  Ink,
  KeptSide,
  LightMark,
  PaperWeight,
  Side,
} from '../../../src/sheet/model.ts';
import { weightFromPounds, weightFromScales } from '../../../src/sheet/paper-weight.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import { asideIndex } from '../../picture/hand-view.ts';
import type { SheetDetails } from '../../picture/qw-sheet-form.ts';
import type { GivenWeight } from '../../picture/qw-weight.ts';
import type { QwEventName, QwEvents } from '../../support/events.ts';

type SheetSide = Extract<Held, { kind: 'sheet' }>;

/** What events of a sheet's tools do to the side that is looked at. */
type Deeds = {
  readonly [Name in QwEventName]?: (session: Session, at: SheetSide, detail: QwEvents[Name]) => unknown;
};

/** The same without the detail's type: for whoever has an event in hand whose name is not known yet. */
export type Deed = (session: Session, at: SheetSide, detail: unknown) => unknown;

export const sheetDeeds = {
  'qw-corners': (session, { id, side }, { corners, sizeMm }) =>
    session.prepareSide(id, side, { corners, sizeMm }),
  'qw-leave-straight': (session, { id, side }) => session.prepareSide(id, side, { corners: null }),
  'qw-card': (session, { id, side }, detail) => {
    const light: LightMark | null = detail.kind === 'none' ? null : detail;
    if (light === null && keptOf(session, { kind: 'sheet', id, side })?.taken?.light === undefined) return;
    return session.prepareSide(id, side, { light });
  },
  'qw-card-undo': (session, { id, side }) => session.prepareSide(id, side, { light: null }),
  'qw-part': (session, { id, side }, part) => session.cutPart({ sheetId: id, side, ...part }),
  'qw-hand': (session, at, { edit }) => correct(session, at, edit),
  'qw-sheet-details': (session, at, { change }) => tell(session, at, change),
} satisfies Deeds;

async function correct(session: Session, at: SheetSide, change: HandChange): Promise<void> {
  const back = change.kind === 'keep' ? asideIndex(change.ink) : null;
  if (back !== null) return session.dispatch({ do: 'take back', of: at, index: back });
  const reading = keptOf(session, at)?.reading;
  if (!reading) return;
  const spot = 'spot' in change ? change.spot : undefined;
  const read = spot ? await session.colourAt(at, spot) : null;
  const made: HandMade = {
    change,
    inks: namedBy(change, reading),
    ...(read ? { hex: read.hex, share: read.share } : {}),
  };
  session.dispatch({ do: 'correct', of: at, made });
}

function namedBy(change: HandChange, { base, inks }: Side): Record<string, Ink> {
  const ids = 'ink' in change ? [change.ink] : 'from' in change ? [change.from, change.into] : [];
  return Object.fromEntries(
    [base, ...inks].filter(({ id }) => ids.includes(id)).map((ink) => [ink.id, plainInk(ink)]),
  );
}

/** A base without what only a base has. */
function plainInk(ink: Ink): Ink {
  const { kind: _, printed: __, ...plain } = ink as Ink & { kind?: unknown; printed?: unknown };
  return plain;
}

function tell(session: Session, at: SheetSide, change: SheetDetails): unknown {
  const { name, count, note, sizeMm, weight, side, motifs, finishes } = change;
  const sheet = sheetById(session.state.notebook.drawer, at.id);
  if (!sheet) return;
  if (sizeMm) return session.resizeSheet(at.id, sizeMm);
  if (side) {
    const kept = sheet.sides[side];
    if (!kept) return;
    const tags = {
      ...kept.reading.tags,
      ...(motifs ? { motifs } : {}),
      ...(finishes ? { finishes } : {}),
    };
    const tagged = (reading: Side): Side => ({ ...reading, tags });
    const after: KeptSide = {
      ...kept,
      reading: tagged(kept.reading),
      ...(kept.asRead ? { asRead: tagged(kept.asRead) } : {}),
    };
    return session.dispatch({ do: 'set side', sheetId: at.id, side, kept: after });
  }
  session.dispatch({
    do: 'update sheet',
    sheetId: at.id,
    change: {
      ...(name === undefined ? {} : { name }),
      ...(count === undefined ? {} : { count }),
      ...(note === undefined ? {} : { note }),
      ...(weight === undefined ? {} : { weight: weight && weightOf(weight, sheet.sizeMm) }),
    },
  });
}

function weightOf(given: GivenWeight, { width, height }: { width: number; height: number }): PaperWeight {
  switch (given.by) {
    case 'gsm':
      return { gsm: given.gsm };
    case 'pounds':
      return weightFromPounds(given.lb, given.grade);
    case 'scales':
      return weightFromScales(given.grams, width, height);
  }
}

function keptOf(session: Session, { id, side }: SheetSide): KeptSide | undefined {
  return sheetById(session.state.notebook.drawer, id)?.sides[side];
}
