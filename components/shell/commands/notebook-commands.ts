import { newLeaf } from '../open/leaf-kinds.ts';
import { askForFiles, handOver } from '../page/files.ts';
import type { CommandMap, Scene } from './command.ts';

/** Leaves added, moved and taken out; undo, backups, a fresh start; messages; how the page looks. */
export const notebookCommands = {
  'qw-add-leaf': ({ app, session, leafId }, { kind }) => {
    const leaf = newLeaf(kind, session.newId('leaf'), {
      notebook: session.state.notebook,
      openId: leafId,
      compare: session.compare,
    });
    if (!leaf) return;
    session.dispatch({ do: 'add leaf', leaf });
    app.route.go(leaf.id);
  },
  'qw-move-leaf': ({ session }, { id, to }) => session.dispatch({ do: 'move leaf', leafId: id, to }),
  'qw-remove-leaf': ({ session }, { id }) => session.dispatch({ do: 'remove leaf', leafId: id }),
  'qw-undo': ({ session }) => session.undo(),
  'qw-redo': ({ session }) => session.redo(),
  'qw-clear': (scene) => {
    scene.session.clear();
    void askKept(scene);
  },
  'qw-open-demo': (scene) => void scene.session.openDemo().then(() => askKept(scene)),
  'qw-save-backup': ({ session }) => void session.saveBundle().then((file) => file && handOver(file)),
  'qw-open-backup': (scene) =>
    void askForFiles('', false).then(
      ([file]) => file && scene.session.openBundle(file).then(() => askKept(scene)),
    ),
  'qw-save-set-aside': ({ session }) => void session.saveSetAside().then((file) => file && handOver(file)),
  'qw-save-kept': ({ session }, { id }) => void session.saveKept(id).then((file) => file && handOver(file)),
  'qw-ask-kept': (scene) => void askKept(scene),
  'qw-open-kept': (scene, { id }) => void scene.session.openKept(id).then(() => askKept(scene)),
  'qw-remove-kept': (scene, { id }) => void scene.session.removeKept(id).then(() => askKept(scene)),
  'qw-dismiss': ({ session }, { id }) => session.dismiss(id),
  'qw-stop-reading': ({ session }, { id }) => session.cancelReading(id),
  'qw-prefer': ({ session }, look) => session.prefer(look),
} satisfies CommandMap;

async function askKept({ app, session }: Scene): Promise<void> {
  app.kept = await session.keptNotebooks();
}
