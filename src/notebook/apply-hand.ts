import { indexById } from '../drawer/by-id.ts';
import type { Held } from '../drawer/model.ts';
import { withHand } from '../sheet/hand/hand.ts';
import type { HandMade, Places, Side } from '../sheet/model.ts';
import type { HandEdit } from './edit-kinds.ts';
import { limits } from './limits.ts';
import type { Notebook } from './model.ts';

/** What is kept of a reading that a hand can correct. */
interface Corrected {
  readonly reading: Side;
  readonly asRead?: Side;
  readonly hand?: readonly HandMade[];
}

/** The notebook after the user's hand has corrected a reading. Shares always sum to 1 afterwards. */
export function applyHandEdit(notebook: Notebook, edit: HandEdit): Notebook {
  return withCorrected(notebook, edit.of, (kept) => {
    const hand = kept.hand ?? [];
    if (edit.do === 'take back') {
      return hand[edit.index] === undefined
        ? kept
        : correctedBy(kept.asRead ?? kept.reading, hand.toSpliced(edit.index, 1));
    }
    if (hand.length >= limits.corrections) return kept;
    const reading = madeOn(kept.reading, [edit.made]);
    const same = JSON.stringify(reading) === JSON.stringify(kept.reading);
    return (same && edit.made.change.kind !== 'keep') || reading.inks.length > limits.inks
      ? kept
      : { reading, asRead: kept.asRead ?? kept.reading, hand: [...hand, edit.made] };
  });
}

/** A fresh reading with what the hand corrected before made on it again. */
export function correctedBy(fresh: Side, hand: readonly HandMade[] | undefined): Corrected {
  if (hand === undefined || hand.length === 0) return { reading: fresh };
  return { reading: madeOn(fresh, hand), asRead: fresh, hand };
}

/** A notebook keeps no pixels: colours at spots are those that were read when the correction was made. */
function madeOn(side: Side, hand: readonly HandMade[]): Side {
  return withHand({ side, places: noPlaces }, hand).side;
}

const noPlaces: Places = { width: 0, height: 0, labels: new Uint8Array(0) };

function withCorrected(notebook: Notebook, of: Held, change: (kept: Corrected) => Corrected): Notebook {
  const { drawer } = notebook;
  if (of.kind === 'plain') return notebook;
  if (of.kind === 'part') {
    const at = indexById(drawer.parts, of.id);
    const part = drawer.parts[at];
    if (part === undefined) return notebook;
    const after = change(part);
    if (after === part) return notebook;
    const { asRead: _, hand: __, ...rest } = part;
    return { ...notebook, drawer: { ...drawer, parts: drawer.parts.with(at, { ...rest, ...after }) } };
  }
  const at = indexById(drawer.sheets, of.id);
  const sheet = drawer.sheets[at];
  const kept = sheet?.sides[of.side];
  if (sheet === undefined || kept === undefined) return notebook;
  const after = change(kept);
  if (after === kept) return notebook;
  const { asRead: _, hand: __, ...rest } = kept;
  const sides = { ...sheet.sides, [of.side]: { ...rest, ...after } };
  return { ...notebook, drawer: { ...drawer, sheets: drawer.sheets.with(at, { ...sheet, sides }) } };
}
