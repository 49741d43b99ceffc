import { heldOfKey } from '../../../src/drawer/held.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type { PictureTarget } from '../../../src/workbench/session-types.ts';
import { newStudy } from '../open/leaf-kinds.ts';
import { askForFiles, pictureTypes } from '../page/files.ts';
import type { CommandMap, Scene } from './command.ts';
import { addToKit, readIntoKit } from './kit-commands.ts';
import { lookCloser } from './sheet-commands.ts';

/** The drawer opened and shut, papers taken out of it, pictures put into it. */
export const drawerCommands = {
  'qw-drawer': ({ app }, { open }) => {
    if ((app.opened === 'drawer') !== open) app.open(open ? 'drawer' : null);
  },
  'qw-choose-paper': ({ app }, { as }) => {
    app.wanted = as;
    if (app.opened !== 'drawer') app.open('drawer');
  },
  'qw-take': (scene, { key, as }) => {
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
  'qw-put-out': ({ session }, { key }) => {
    const held = heldOfKey(session.state.notebook.drawer, key);
    if (held?.kind === 'sheet') session.dispatch({ do: 'remove sheet', sheetId: held.id });
    else if (held?.kind === 'plain') session.dispatch({ do: 'remove plain', plainId: held.id });
    else if (held) session.dispatch({ do: 'remove part', partId: held.id });
  },
  'qw-drop-paper': ({ session, hold }, { key, as }) => {
    const held = heldOfKey(session.state.notebook.drawer, key);
    if (held && as === 'piece') addToKit(session, held);
    else if (held && as !== 'piece') hold(held, as);
  },
  'qw-add-pictures': ({ app, session, study }, { as }) =>
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
} satisfies CommandMap;

function startStudy({ app, session }: Scene, anchor: Held): void {
  const leaf = newStudy(session.newId('leaf'), anchor);
  session.dispatch({ do: 'add leaf', leaf });
  app.route.go(leaf.id);
}
