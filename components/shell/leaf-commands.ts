import type { BoardSize } from '../../src/board/model.ts';
import type { BoardFileKind } from '../../src/workbench/session-types.ts';
import type { Command } from './command.ts';
import { handOver } from './files.ts';

/** What can be done to any leaf, and to a board. */
export const leafCommands: Readonly<Record<string, Command>> = {
  'qw-retitle': ({ session, leafId }, { title }: { title: string }) =>
    session.dispatch({ do: 'rename leaf', leafId, title }),
  'qw-write': ({ session, leafId }, { text }: { text: string }) =>
    session.dispatch({ do: 'set text', leafId, text }),
  'qw-choose-text': ({ session }, { id, keep }: { id: string; keep: 'this' | 'that' | 'both' }) =>
    session.choose(id, keep),
  'qw-set-size': ({ session, leafId }, { value }: { value: BoardSize }) =>
    session.dispatch({ do: 'set board size', leafId, size: value }),
  'qw-save-board': ({ session, leafId }, { as }: { as: BoardFileKind }) =>
    void session.exportBoard(leafId, as).then((file) => file && handOver(file)),
};
