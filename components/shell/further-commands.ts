import type { Command } from './command.ts';
import { openWhatIf } from './what-if-commands.ts';

/** Ways to look further at a pair. */
export const furtherCommands: Readonly<Record<string, Command>> = {
  'qw-look-further': (scene, { way }: { way: string }) => {
    if (way === 'what-if') void openWhatIf(scene);
  },
};
