import { partById, sheetById } from '../../../src/drawer/by-id.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type { Ink, Plain } from '../../../src/sheet/model.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { parseColourText } from '../../../src/sheet/typed-colour.ts';
import type { PlainDetail } from '../../picture/qw-plain-form.ts';
import type { CommandMap, Scene } from './command.ts';

/** The way to a sheet's own page, and plains put into the drawer. */
export const sheetCommands = {
  'qw-look-closer': (scene, { held }) => lookCloser(scene, held),
  'qw-paper-is': ({ session }, { held, is }) => {
    if (held.kind === 'sheet') void session.settlePaper(held.id, held.side, is);
  },
  'qw-plain': ({ session }, detail) =>
    session.dispatch({ do: 'add plain', plain: plainFrom(session.newId('plain'), detail) }),
  'qw-remove-part': ({ session }, { key }) =>
    session.dispatch({ do: 'remove part', partId: key.slice('part:'.length) }),
} satisfies CommandMap;

/** The leaf of a sheet is made when it is first looked at; a part is looked at on its sheet. False for a plain, which has none. */
export function lookCloser({ app, session }: Scene, held: Held): boolean {
  const { leaves, drawer } = session.state.notebook;
  const part = held.kind === 'part' ? partById(drawer, held.id) : undefined;
  const at = held.kind === 'sheet' ? held : part ? { id: part.sheetId, side: part.side } : null;
  const sheet = at ? sheetById(drawer, at.id) : undefined;
  if (!at || !sheet) return false;
  app.faces.set(sheet.id, at.side);
  const known = leaves.find((leaf) => leaf.kind === 'sheet' && leaf.sheetId === sheet.id);
  const leafId = known?.id ?? session.newId('leaf');
  if (!known) {
    const leaf = { id: leafId, kind: 'sheet', title: sheet.name, sheetId: sheet.id, text: '' } as const;
    session.dispatch({ do: 'add leaf', leaf });
  }
  app.open(null);
  app.route.go(leafId);
  return true;
}

/** The plain that a form gave. A typed colour is kept as it was meant, though a screen may not show it. */
function plainFrom(id: string, detail: PlainDetail): Plain {
  const { name, kind, from, hex, special, takesColour } = detail;
  const typed = 'text' in from ? parseColourText(from.text) : undefined;
  const ink: Ink = {
    ...inkFromHex(typed?.hex ?? hex),
    ...(typed ? { oklch: typed.oklch } : {}),
    ...(special ? { special } : {}),
    byHand: true,
  };
  return { id, name, kind, ink, ...(takesColour ? { takesColour } : {}) };
}
