import type { Held } from '../../../src/drawer/model.ts';
import type { Change, Comparison } from '../../../src/harmony/model.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { QwBeforeAfter } from '../../study/tried/qw-before-after.ts';
import type { CommandMap, Scene } from './command.ts';

/** What if: opened, changed, stepped back, left, kept. */
export const whatIfCommands = {
  'qw-try': (scene, { changes }) => void tryIt(scene, changes),
  'qw-suppose': ({ app }, { changes, settled }) => app.supposing.suppose(changes, settled),
  'qw-step-back': ({ app }) => void app.supposing.back(),
  'qw-leave-it': ({ app }) => app.supposing.leave(),
  'qw-keep-supposed': async (scene, { picture }) => {
    const pair = pairOn(scene);
    const id = pair && (await scene.app.supposing.keep(pair.study, pair.held, pair.comparison, picture));
    if (!id) return;
    scene.app.supposing.leave();
    scene.app.route.go(id);
  },
} satisfies CommandMap;

/** Draws a remedy on the papers, where it was asked for. */
async function tryIt(scene: Scene, changes: readonly Change[]): Promise<void> {
  const pair = pairOn(scene);
  if (!pair) return;
  scene.app.supposing.leave();
  await scene.app.supposing.open(pair.study, pair.held, changes);
  await scene.app.updateComplete;
  const tried = scene.app.renderRoot.querySelector<QwBeforeAfter>('qw-before-after');
  await tried?.pictured();
  tried?.focus({ preventScroll: true });
  tried?.scrollIntoView({ block: 'nearest' });
}

/** Opens the panel on the pair that is shown and takes the reader to it. */
export async function openWhatIf(scene: Scene): Promise<void> {
  const pair = pairOn(scene);
  if (!pair) return;
  await scene.app.supposing.open(pair.study, pair.held);
  await scene.app.updateComplete;
  const panel = scene.app.renderRoot.querySelector<HTMLElement & { updateComplete: Promise<unknown> }>(
    'qw-what-if',
  );
  await panel?.updateComplete;
  panel?.focus({ preventScroll: true });
  panel?.scrollIntoView({ block: 'center' });
}

/** The pair that the open study shows, as it is. */
export function pairOn({ session, study }: Scene): Pair | null {
  if (!study) return null;
  const ranked = session.rank(study.id);
  const shown = ranked.find(({ index }) => index === study.shown) ?? ranked[0];
  return shown ? { study, held: shown.held, comparison: shown.comparison } : null;
}

interface Pair {
  readonly study: StudyLeaf;
  readonly held: Held;
  readonly comparison: Comparison;
}
