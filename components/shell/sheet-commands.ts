import { partById, sheetById } from '../../src/drawer/by-id.ts';
import type { Held } from '../../src/drawer/model.ts';
import type { PlainDetail } from '../picture/qw-plain-form.ts';
import type { Command, Scene } from './command.ts';
import { plainFrom } from './plain-of.ts';

/** The way to a sheet's own page, and plains put into the drawer. */
export const sheetCommands: Readonly<Record<string, Command>> = {
  'qw-look-closer': (scene, { held }: { held: Held }) => lookCloser(scene, held),
  'qw-plain': ({ session }, detail: PlainDetail) =>
    session.dispatch({ do: 'add plain', plain: plainFrom(session.newId('plain'), detail) }),
  'qw-remove-part': ({ session }, { key }: { key: string }) =>
    session.dispatch({ do: 'remove part', partId: key.slice('part:'.length) }),
};

/** The side that a sheet's page opens on, by the sheet's id. */
export const faceAsked = new Map<string, 'A' | 'B'>();

/** The leaf of a sheet is made when it is first looked at; a part is looked at on its sheet. False for a plain, which has none. */
export function lookCloser({ app, session }: Scene, held: Held): boolean {
  const { leaves, drawer } = session.state.notebook;
  const part = held.kind === 'part' ? partById(drawer, held.id) : undefined;
  const at = held.kind === 'sheet' ? held : part ? { id: part.sheetId, side: part.side } : null;
  const sheet = at ? sheetById(drawer, at.id) : undefined;
  if (!at || !sheet) return false;
  faceAsked.set(sheet.id, at.side);
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
