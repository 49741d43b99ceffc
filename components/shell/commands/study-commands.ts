import type { Held } from '../../../src/drawer/model.ts';
import { asksStill, boardOfStudy, boardOnLeaf } from '../open/leaf-kinds.ts';
import type { CommandMap, Scene } from './command.ts';

/** What can be done on a study. */
export const studyCommands = {
  'qw-set-distance': ({ session, leafId }, { value }) =>
    session.dispatch({ do: 'set distance', leafId, distance: value }),
  'qw-set-wheel': ({ session, leafId }, { value }) =>
    session.dispatch({ do: 'set wheel', leafId, wheel: value }),
  'qw-set-surround': ({ session }, { value }) => session.prefer({ surround: value }),
  'qw-set-asks-first': ({ session, leafId }, { value }) =>
    session.dispatch({ do: 'set asks first', leafId, asksFirst: value }),
  'qw-show-candidate': ({ session, leafId }, { index }) =>
    session.dispatch({ do: 'show candidate', leafId, index }),
  'qw-remove-candidate': ({ session, leafId }, { index }) =>
    session.dispatch({ do: 'remove candidate', leafId, index }),
  'qw-say': ({ session, leafId, study }, { opinion, index = -1 }) => {
    const candidate = study?.candidates[index];
    if (candidate) session.dispatch({ do: 'say', leafId, candidate, opinion });
  },
  'qw-turn-over': turnOver,
  'qw-rename-paper': ({ session }, { held, name }) => {
    if (held.kind === 'sheet') session.dispatch({ do: 'update sheet', sheetId: held.id, change: { name } });
    else if (held.kind === 'plain')
      session.dispatch({ do: 'update plain', plainId: held.id, change: { name } });
    else session.dispatch({ do: 'update part', partId: held.id, change: { name } });
  },
  'qw-make-board': ({ app, session, study }) => {
    if (!study || asksStill(study)) return;
    const known = boardOnLeaf(session.state.notebook, study);
    const board = known ?? boardOfStudy(session.newId('leaf'), study);
    if (!known) session.dispatch({ do: 'add leaf', leaf: board });
    app.route.go(board.id);
  },
} satisfies CommandMap;

/** The other side of the same sheet in its place; a candidate keeps its place among the candidates. */
function turnOver({ session, leafId, study }: Scene, { as, index, side }: Turn): void {
  const held = as === 'anchor' ? study?.anchor : study?.candidates[index];
  if (!study || held?.kind !== 'sheet') return;
  const turned: Held = { ...held, side };
  if (as === 'anchor') session.dispatch({ do: 'set anchor', leafId, anchor: turned });
  else {
    session.dispatchAll([
      { do: 'remove candidate', leafId, index },
      { do: 'add candidate', leafId, candidate: turned },
    ]);
  }
}

interface Turn {
  readonly as: 'anchor' | 'candidate';
  /** Of the candidate. */
  readonly index: number;
  readonly side: 'A' | 'B';
}
