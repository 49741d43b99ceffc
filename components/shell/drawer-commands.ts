import { heldOfKey } from '../../src/drawer/find.ts';
import type { Held } from '../../src/drawer/model.ts';
import type { PictureTarget } from '../../src/workbench/session-types.ts';
import type { Command, Scene } from './command.ts';
import { askForFiles, pictureTypes } from './files.ts';
import { addToKit, readIntoKit } from './kit-commands.ts';
import { newStudy } from './leaf-kinds.ts';
import { lookCloser } from './sheet-commands.ts';

type Role = 'anchor' | 'candidate';
type Wanted = Role | 'piece';

/** The drawer opened and shut, papers taken out of it, pictures put into it. */
export const drawerCommands: Readonly<Record<string, Command>> = {
  'qw-drawer': ({ app }, { open }: { open: boolean }) => {
    if ((app.opened === 'drawer') !== open) app.open(open ? 'drawer' : null);
  },
  'qw-choose-paper': ({ app }, { as }: { as: Wanted }) => {
    app.wanted = as;
    if (app.opened !== 'drawer') app.open('drawer');
  },
  'qw-take': (scene, { key, as }: { key: string; as: Wanted | 'look' }) => {
    const held = heldOfKey(scene.session.state.notebook.drawer, key);
    if (!held) return;
    // A kit takes many: the drawer stays open.
    if (as === 'piece') return addToKit(scene.session, held);
    if (as === 'look') {
      if (!lookCloser(scene, held)) startStudy(scene, held);
    } else if (scene.study) scene.hold(held, as);
    else startStudy(scene, held);
    scene.app.open(null);
  },
  'qw-put-out': ({ session }, { key }: { key: string }) => {
    const held = heldOfKey(session.state.notebook.drawer, key);
    if (held?.kind === 'sheet') session.dispatch({ do: 'remove sheet', sheetId: held.id });
    else if (held?.kind === 'plain') session.dispatch({ do: 'remove plain', plainId: held.id });
    else if (held) session.dispatch({ do: 'remove part', partId: held.id });
  },
  'qw-drop-paper': ({ session, hold }, { key, as }: { key: string; as: Wanted }) => {
    const held = heldOfKey(session.state.notebook.drawer, key);
    if (held && as === 'piece') addToKit(session, held);
    else if (held && as !== 'piece') hold(held, as);
  },
  'qw-add-pictures': ({ app, session, study }, { as }: { as: Wanted | null }) =>
    void askForFiles(pictureTypes, true).then((files) => {
      if (files.length === 0) return;
      const target: PictureTarget | undefined =
        as && as !== 'piece' && study
          ? { to: 'study', studyId: study.id, as }
          : app.opened === 'drawer'
            ? { to: 'drawer' }
            : undefined;
      if (as === 'piece') void readIntoKit(session, files);
      else app.read(files, target);
      if (as) app.open(null);
    }),
};

function startStudy({ app, session }: Scene, anchor: Held): void {
  const leaf = newStudy(session.newId('leaf'), anchor);
  session.dispatch({ do: 'add leaf', leaf });
  app.route.go(leaf.id);
}
