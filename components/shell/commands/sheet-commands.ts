import { partById, sheetById } from '../../../src/drawer/by-id.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type { Ink, Plain } from '../../../src/sheet/model.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { parseColourText } from '../../../src/sheet/typed-colour.ts';
import type { PlainDetail } from '../../picture/qw-plain-form.ts';
import type { CommandMap, Scene } from './command.ts';

/** A sheet looked at closely, and plains put into the drawer. */
export const sheetCommands = {
  'qw-look-closer': (scene, { held, tool }) => lookCloser(scene, held, tool),
  'qw-done-looking': ({ app }) => {
    app.near = null;
  },
  'qw-paper-is': ({ session }, { held, is }) => {
    if (held.kind === 'sheet') void session.settlePaper(held.id, held.side, is);
  },
  'qw-plain': ({ session }, detail) =>
    session.dispatch({ do: 'add plain', plain: plainFrom(session.newId('plain'), detail) }),
  'qw-remove-part': ({ session }, { key }) =>
    session.dispatch({ do: 'remove part', partId: key.slice('part:'.length) }),
} satisfies CommandMap;

/** Opens a sheet over the open leaf; a part is looked at on its sheet. False for a plain, which has no picture. */
export function lookCloser({ app, session }: Scene, held: Held, tool = ''): boolean {
  const { drawer } = session.state.notebook;
  const part = held.kind === 'part' ? partById(drawer, held.id) : undefined;
  const at = held.kind === 'sheet' ? held : part ? { id: part.sheetId, side: part.side } : null;
  const sheet = at ? sheetById(drawer, at.id) : undefined;
  if (!at || !sheet) return false;
  app.faces.set(sheet.id, at.side);
  app.near = { sheetId: sheet.id, tool };
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
