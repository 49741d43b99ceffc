import type { ReactiveController } from 'lit';
import type { Session } from '../../../src/workbench/session-types.ts';
import type { AppHost } from '../app-host.ts';
import type { CommandMap, Scene } from './command.ts';
import { drawerCommands } from './drawer-commands.ts';
import { exerciseCommands } from './exercise-commands.ts';
import { furtherCommands } from './further-commands.ts';
import { kitCommands } from './kit-commands.ts';
import { leafCommands } from './leaf-commands.ts';
import { notebookCommands } from './notebook-commands.ts';
import { sheetCommands } from './sheet-commands.ts';
import { studyCommands } from './study-commands.ts';
import { whatIfCommands } from './what-if-commands.ts';

const commands = {
  ...notebookCommands,
  ...leafCommands,
  ...studyCommands,
  ...drawerCommands,
  ...sheetCommands,
  ...exerciseCommands,
  ...kitCommands,
  ...whatIfCommands,
  ...furtherCommands,
} satisfies CommandMap;

/** Turns what the elements say into what the session does: one listener for each event, all on the page. */
export class Commands implements ReactiveController {
  private readonly app: AppHost;

  constructor(app: AppHost) {
    this.app = app;
    app.addController(this);
  }

  hostConnected(): void {
    for (const name of Object.keys(commands)) this.app.addEventListener(name, this.hear);
  }

  hostDisconnected(): void {
    for (const name of Object.keys(commands)) this.app.removeEventListener(name, this.hear);
  }

  private readonly hear = (event: Event): void => {
    const { session } = this.app;
    if (!session) return;
    void this.app.keyboard.keep(event.type === 'qw-add-leaf');
    const command = (
      commands as Readonly<Record<string, ((scene: Scene, detail: unknown) => void) | undefined>>
    )[event.type];
    command?.(sceneOf(this.app, session), (event as CustomEvent).detail);
  };
}

function sceneOf(app: AppHost, session: Session): Scene {
  const leafId = session.state.leafId ?? '';
  const leaf = session.leaf(leafId);
  const study = leaf?.kind === 'study' ? leaf : null;
  return {
    app,
    session,
    leafId,
    study,
    hold: (held, as) => {
      if (as === 'anchor') session.dispatch({ do: 'set anchor', leafId, anchor: held });
      else session.dispatch({ do: 'add candidate', leafId, candidate: held });
    },
  };
}
