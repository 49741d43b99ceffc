import type { Command, Scene } from './command.ts';
import { openWhatIf } from './what-if-commands.ts';

/** Ways to look further at a pair: each is fetched when it is first opened. */
export const furtherCommands: Readonly<Record<string, Command>> = {
  'qw-look-further': (scene, { way }: { way: string }) => void lookFurther(scene, way),
};

async function lookFurther(scene: Scene, way: string): Promise<void> {
  const { app } = scene;
  if (way === 'what-if') return openWhatIf(scene);
  if (app.opened) app.open(null);
  const isOpen = app.further.includes(way);
  if (isOpen) {
    app.further = app.further.filter((one) => one !== way);
    return;
  }
  await fetched[way]?.();
  app.further = [...app.further, way];
  await app.updateComplete;
  app.renderRoot.querySelector(`[data-way="${way}"]`)?.scrollIntoView({ block: 'nearest' });
}

const fetched: Readonly<Record<string, () => Promise<unknown>>> = {
  drawer: () => import('./qw-open-find.ts'),
};
