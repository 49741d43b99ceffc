import type { Held } from '../../src/drawer/model.ts';
import type { PictureTarget } from '../../src/workbench/session-types.ts';
import type { Command, Scene } from './command.ts';
import { askForFiles, pictureTypes } from './files.ts';
import { newStudy } from './leaf-kinds.ts';
import { heldByKey } from './views.ts';

type Role = 'anchor' | 'candidate';

/** The drawer opened and shut, papers taken out of it, pictures put into it. */
export const drawerCommands: Readonly<Record<string, Command>> = {
  'qw-drawer': ({ app }, { open }: { open: boolean }) => {
    if ((app.opened === 'drawer') !== open) app.open(open ? 'drawer' : null);
  },
  'qw-choose-paper': ({ app }, { as }: { as: Role }) => {
    app.wanted = as;
    if (app.opened !== 'drawer') app.open('drawer');
  },
  'qw-take': (scene, { key, as }: { key: string; as: Role | 'look' }) => {
    const held = heldByKey(scene.session.state.notebook.drawer, key);
    if (!held) return;
    if (as === 'look') lookAt(scene, held);
    else if (scene.study) scene.hold(held, as);
    else startStudy(scene, held);
    scene.app.open(null);
  },
  'qw-drop-paper': ({ session, hold }, { key, as }: { key: string; as: Role }) => {
    const held = heldByKey(session.state.notebook.drawer, key);
    if (held) hold(held, as);
  },
  'qw-add-pictures': ({ app, study }, { as }: { as: Role | null }) =>
    void askForFiles(pictureTypes, true).then((files) => {
      if (files.length === 0) return;
      const target: PictureTarget | undefined =
        as && study
          ? { to: 'study', studyId: study.id, as }
          : app.opened === 'drawer'
            ? { to: 'drawer' }
            : undefined;
      app.read(files, target);
      if (as) app.open(null);
    }),
};

function startStudy({ app, session }: Scene, anchor: Held): void {
  const leaf = newStudy(session.newId('leaf'), anchor);
  session.dispatch({ do: 'add leaf', leaf });
  app.route.go(leaf.id);
}

/** The leaf of a sheet is made when it is first looked at; a plain has none and starts a study. */
function lookAt(scene: Scene, held: Held): void {
  if (held.kind === 'sheet') scene.app.route.go(leafOfSheet(scene, held));
  else startStudy(scene, held);
}

function leafOfSheet({ session }: Scene, held: Extract<Held, { kind: 'sheet' }>): string {
  const { leaves, drawer } = session.state.notebook;
  const known = leaves.find((leaf) => leaf.kind === 'sheet' && leaf.sheetId === held.id);
  if (known) return known.id;
  const id = session.newId('leaf');
  const title = drawer.sheets.find(({ id: sheetId }) => sheetId === held.id)?.name ?? '';
  session.dispatch({ do: 'add leaf', leaf: { id, kind: 'sheet', title, sheetId: held.id, text: '' } });
  return id;
}
