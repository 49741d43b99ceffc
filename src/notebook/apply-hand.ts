import type { Held } from '../drawer/model.ts';
import type { Base, Ink, Plain, Side } from '../sheet/model.ts';
import { inkFromHex } from '../sheet/plain.ts';
import type { HandEdit, InkChange } from './edit-kinds.ts';
import { limits } from './limits.ts';
import type { Notebook } from './model.ts';

/** The notebook after the user's hand has corrected a reading. Shares always sum to 1 afterwards. */
export function applyHandEdit(notebook: Notebook, edit: HandEdit): Notebook {
  if (edit.of.kind === 'plain') {
    return edit.do === 'change ink' ? changePlain(notebook, edit.of.id, edit.change) : notebook;
  }
  return withReading(notebook, edit.of, (side) => correct(side, edit));
}

function correct(side: Side, edit: HandEdit): Side {
  switch (edit.do) {
    case 'set reading':
      return edit.reading;
    case 'change ink':
      return changeInk(side, edit.inkId, edit.change);
    case 'add ink': {
      const taken = allInks(side).some((ink) => ink.id === edit.ink.id);
      if (taken || side.inks.length >= limits.inks) return side;
      const share = clamp(edit.ink.share, 0, 0.99);
      const rest = scaled(side, 1 - share);
      return { ...rest, inks: [...rest.inks, { ...edit.ink, share, byHand: true }] };
    }
    case 'remove ink': {
      const inks = side.inks.filter((ink) => ink.id !== edit.inkId);
      return inks.length === side.inks.length ? side : scaled({ ...side, inks }, 1);
    }
    case 'merge inks': {
      const from = side.inks.find((ink) => ink.id === edit.from);
      const into = allInks(side).find((ink) => ink.id === edit.into);
      if (from === undefined || into === undefined || from === into) return side;
      const inks = side.inks.filter((ink) => ink !== from);
      return mapInk({ ...side, inks }, edit.into, (ink) => ({
        ...ink,
        share: ink.share + from.share,
        accent: ink.accent && ink.share + from.share < 0.05,
        byHand: true,
      }));
    }
  }
}

function changeInk(side: Side, inkId: string, change: InkChange): Side {
  const before = allInks(side).find((ink) => ink.id === inkId);
  if (before === undefined) return side;
  const share = change.share === undefined ? before.share : clamp(change.share, 0, 1);
  const others = 1 - before.share;
  // With nothing else on the side, all of it is this ink.
  const settled = others <= 0 ? before.share : share;
  const rest =
    others <= 0 || settled === before.share ? side : scaleOthers(side, inkId, (1 - settled) / others);
  const isBase = inkId === side.base.id;
  return mapInk(rest, inkId, (ink) => ({
    ...ink,
    ...inkChange(change, ink, isBase),
    share: settled,
    byHand: true,
  }));
}

/** A new hex brings its unmapped colour and its names with it, unless these are given too. */
function inkChange(change: InkChange, ink: Ink, isBase: boolean): Partial<Base> {
  const { kind, ...plain } = change;
  const fresh =
    change.hex === undefined || change.hex === ink.hex
      ? undefined
      : inkFromHex(change.hex, ink.id, ink.share);
  return {
    ...(fresh && {
      oklch: fresh.oklch,
      name: fresh.name,
      ...(fresh.trade === undefined ? {} : { trade: fresh.trade }),
    }),
    ...plain,
    ...(isBase && kind !== undefined ? { kind } : {}),
  };
}

function changePlain(notebook: Notebook, id: string, change: InkChange): Notebook {
  const { plains } = notebook.drawer;
  const at = plains.findIndex((plain) => plain.id === id);
  const plain: Plain | undefined = plains[at];
  if (plain === undefined) return notebook;
  const ink: Ink = {
    ...plain.ink,
    ...inkChange(change, plain.ink, false),
    share: plain.ink.share,
    byHand: true,
  };
  return { ...notebook, drawer: { ...notebook.drawer, plains: plains.with(at, { ...plain, ink }) } };
}

function withReading(notebook: Notebook, of: Held, change: (side: Side) => Side): Notebook {
  const { drawer } = notebook;
  if (of.kind === 'part') {
    const at = drawer.parts.findIndex((part) => part.id === of.id);
    const part = drawer.parts[at];
    if (part === undefined) return notebook;
    const reading = change(part.reading);
    if (reading === part.reading) return notebook;
    return { ...notebook, drawer: { ...drawer, parts: drawer.parts.with(at, { ...part, reading }) } };
  }
  if (of.kind === 'plain') return notebook;
  const at = drawer.sheets.findIndex((sheet) => sheet.id === of.id);
  const sheet = drawer.sheets[at];
  const kept = sheet?.sides[of.side];
  if (sheet === undefined || kept === undefined) return notebook;
  const reading = change(kept.reading);
  if (reading === kept.reading) return notebook;
  const sides = { ...sheet.sides, [of.side]: { ...kept, reading } };
  return { ...notebook, drawer: { ...drawer, sheets: drawer.sheets.with(at, { ...sheet, sides }) } };
}

function allInks(side: Side): readonly Ink[] {
  return [side.base, ...side.inks];
}

function mapInk(side: Side, inkId: string, change: (ink: Ink) => Ink): Side {
  if (side.base.id === inkId) return { ...side, base: { ...side.base, ...change(side.base) } };
  return { ...side, inks: side.inks.map((ink) => (ink.id === inkId ? change(ink) : ink)) };
}

function scaleOthers(side: Side, inkId: string, by: number): Side {
  const scale = <T extends Ink>(ink: T): T => (ink.id === inkId ? ink : { ...ink, share: ink.share * by });
  return { ...side, base: scale(side.base), inks: side.inks.map(scale) };
}

/** All shares in proportion, so that they sum to `total`. */
function scaled(side: Side, total: number): Side {
  const sum = allInks(side).reduce((all, ink) => all + ink.share, 0);
  if (sum <= 0) return { ...side, base: { ...side.base, share: total } };
  return scaleOthers(side, '', total / sum);
}

function clamp(value: number, low: number, high: number): number {
  return Number.isFinite(value) ? Math.min(Math.max(value, low), high) : low;
}
