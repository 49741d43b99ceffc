import { sheetById } from '../../../src/drawer/by-id.ts';
import type { QwFurther } from '../../study/qw-further.ts';
import type { CommandMap, Scene } from './command.ts';
import { openWhatIf, pairOn } from './what-if-commands.ts';

/** Ways to look further at a pair: each is fetched when it is first opened. */
export const furtherCommands = {
  'qw-keep-part': (scene, { frame, name }) => {
    const held = pairOn(scene)?.held;
    const { session } = scene;
    const sheet = held?.kind === 'sheet' ? sheetById(session.state.notebook.drawer, held.id) : undefined;
    if (held?.kind !== 'sheet' || !sheet) return;
    const { width, height } = sheet.sizeMm;
    const sizeMm = { width: width * frame.width, height: height * frame.height };
    void session.cutPart({ sheetId: held.id, side: held.side, frame, name, sizeMm });
  },
  'qw-look-further': (scene, { way }) => void lookFurther(scene, way),
} satisfies CommandMap;

/** One way is open at a time; the same again shuts it and goes back to where it was opened. */
async function lookFurther(scene: Scene, way: string): Promise<void> {
  const { app } = scene;
  if (way === 'what-if') {
    app.further = [];
    return openWhatIf(scene);
  }
  if (app.opened) app.open(null);
  if (app.further.includes(way)) {
    app.further = [];
    app.renderRoot.querySelector<QwFurther>('qw-further')?.focusWay(way);
    return;
  }
  await fetched[way]?.();
  // With nothing tried yet, the place to try is shut too.
  app.supposing.leave();
  app.further = [way];
  await app.updateComplete;
  const panel = app.renderRoot.querySelector(`[data-way="${way}"]`);
  if (panel) await bringUp(panel);
}

/** To the head of the page, once there is enough of it to be brought there. */
async function bringUp(panel: Element): Promise<void> {
  const enough = window.innerHeight / 2;
  for (let tries = 0; tries < 20 && panel.clientHeight < enough; tries += 1) {
    await new Promise((go) => setTimeout(go, 50));
  }
  panel.scrollIntoView({ block: 'start' });
}

const fetched: Readonly<Record<string, () => Promise<unknown>>> = {
  drawer: () => import('../open/qw-open-find.ts'),
  parts: () => import('../open/qw-open-parts.ts'),
  'colour-it': () => import('../open/qw-open-colour-it.ts'),
};
