import type { Command, Scene } from './command.ts';
import { askForFiles, handOver } from './files.ts';
import { newLeaf } from './leaf-kinds.ts';

/** Leaves added, moved and taken out; undo, backups, a fresh start; messages; how the page looks. */
export const notebookCommands: Readonly<Record<string, Command>> = {
  'qw-add-leaf': ({ app, session, leafId }, { kind }: { kind: string }) => {
    const leaf = newLeaf(kind, session.newId('leaf'), session.state.notebook, leafId, session.compare);
    if (!leaf) return;
    session.dispatch({ do: 'add leaf', leaf });
    app.route.go(leaf.id);
  },
  'qw-move-leaf': ({ session }, { id, to }: { id: string; to: number }) =>
    session.dispatch({ do: 'move leaf', leafId: id, to }),
  'qw-remove-leaf': ({ session }, { id }: { id: string }) =>
    session.dispatch({ do: 'remove leaf', leafId: id }),
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
  'qw-save-kept': ({ session }, { id }: { id: string }) =>
    void session.saveKept(id).then((file) => file && handOver(file)),
  'qw-ask-kept': (scene) => void askKept(scene),
  'qw-open-kept': (scene, { id }: { id: string }) =>
    void scene.session.openKept(id).then(() => askKept(scene)),
  'qw-remove-kept': (scene, { id }: { id: string }) =>
    void scene.session.removeKept(id).then(() => askKept(scene)),
  'qw-dismiss': ({ session }, { id }: { id: string }) => session.dismiss(id),
  'qw-stop-reading': ({ session }, { id }: { id: string }) => session.cancelReading(id),
  'qw-prefer': ({ session }, look: object) => session.prefer(look),
};

async function askKept({ app, session }: Scene): Promise<void> {
  app.kept = await session.keptNotebooks();
}
