import { handOver } from '../page/files.ts';
import type { CommandMap } from './command.ts';

/** What can be done to any leaf, and to a board. */
export const leafCommands = {
  'qw-retitle': ({ session, leafId }, { title }) => session.dispatch({ do: 'rename leaf', leafId, title }),
  'qw-write': ({ session, leafId }, { text }) => session.dispatch({ do: 'set text', leafId, text }),
  'qw-choose-text': ({ session }, { id, keep }) => session.choose(id, keep),
  'qw-set-size': ({ session, leafId }, { value }) =>
    session.dispatch({ do: 'set board size', leafId, size: value }),
  'qw-set-kind': ({ session, leafId }, { value }) =>
    session.dispatch({ do: 'set board kind', leafId, shows: value }),
  'qw-save-board': ({ session, leafId }, { as }) =>
    void session.exportBoard(leafId, as).then((file) => file && handOver(file)),
} satisfies CommandMap;
