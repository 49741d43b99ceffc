import { html, type TemplateResult } from 'lit';
import { letterOn } from '../../src/drawing/ladders.ts';
import type { Comparison, Kit } from '../../src/harmony/model.ts';
import type { Ink, Side } from '../../src/sheet/model.ts';
import { withSubscript } from '../support/subscript.ts';
import { unbroken } from '../support/unbroken.ts';

/** What a chip in a sentence needs to know, by ink id. */
export type InkTable = ReadonlyMap<string, Ink>;

/** Both sides' inks by id: capitals from the anchor, small letters from the candidate. */
export function inkTable(...sides: readonly Side[]): InkTable {
  return new Map(sides.flatMap((side) => [side.base, ...side.inks]).map((ink) => [ink.id, ink]));
}

/** The inks that the sentences of a comparison or a kit speak of. */
export function inksSpokenOf(of: Comparison | Kit): InkTable {
  return 'members' in of
    ? inkTable(...of.members.map(({ side }) => side))
    : inkTable(of.anchor, of.candidate);
}

/**
 * A sentence with its inks as chips: where "(C)" names an ink that the sentence speaks of, the letter stands on
 * that ink's colour. Everything else stays as it was written.
 */
export function withChips(says: string, inks: readonly string[], table: InkTable): TemplateResult {
  return html`${pieces(says, inks, table).map((piece) =>
    typeof piece === 'string'
      ? withSubscript(unbroken(piece))
      : html`<span class="chip" style="background:${piece.hex};color:${letterOn(piece.hex)}">${piece.id}</span>`,
  )}`;
}

/** The sentence cut at its inks: plain text, and an ink for each "(id)" that is known and spoken of. */
export function pieces(says: string, inks: readonly string[], table: InkTable): readonly (string | Ink)[] {
  const found: (string | Ink)[] = [];
  let from = 0;
  for (const match of says.matchAll(/\((\d{0,3}[A-Za-z]\d?)\)/g)) {
    const ink = inks.includes(match[1]!) ? table.get(match[1]!) : undefined;
    if (!ink) continue;
    found.push(says.slice(from, match.index), ink);
    from = match.index + match[0].length;
  }
  found.push(says.slice(from));
  return found.filter((piece) => piece !== '');
}
