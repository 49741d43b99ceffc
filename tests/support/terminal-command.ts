import { join } from 'node:path';
import type { BrowserCommand } from 'vitest/node';
import type { CastKind } from './sheets/photograph.ts';
import type { TerminalDoor } from './terminal-door.ts';

declare module 'vitest/browser' {
  interface BrowserCommands {
    throughTerminal(kind: CastKind, seed: number): Promise<TerminalDoor>;
  }
}

/** Lets a test in the browser ask what the terminal says. Loaded when it is asked, and not with the settings. */
export const throughTerminal: BrowserCommand<[kind: CastKind, seed: number]> = async (
  { project },
  kind,
  seed,
) => {
  const file = join(project.config.root, 'tests', 'support', 'terminal-door.ts');
  const door = await project.import<typeof import('./terminal-door.ts')>(file);
  return door.throughTerminal(kind, seed);
};
