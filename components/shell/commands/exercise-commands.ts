import { pairsOf } from '../open/exercise-pairs.ts';
import type { CommandMap } from './command.ts';

/** What can be done on an exercise. */
export const exerciseCommands = {
  'qw-answer': ({ session, leafId }, { verdict }) => session.dispatch({ do: 'answer', leafId, verdict }),
  'qw-point-at-inks': ({ session, leafId }, { inks }) =>
    session.dispatch({ do: 'point at inks', leafId, inks }),
  'qw-set-ask': ({ session, leafId }, { value }) =>
    void import('../../../src/notebook/words/exercise.ts').then(({ questions }) => {
      const leaf = session.leaf(leafId);
      // A title that is a question of ours follows the question; one of her own stays.
      const ours = leaf && Object.values(questions).some(({ title }) => title === leaf.title);
      const title = ours || leaf?.title === '' ? { title: questions[value].title } : {};
      session.dispatch({ do: 'set exercise', leafId, change: { ask: value, ...title } });
    }),
  'qw-set-pair': ({ session, leafId }, { key }) => {
    const pair = pairsOf(session.state.notebook).find((one) => one.key === key);
    if (!pair) return;
    const { study, candidate } = pair;
    session.dispatch({ do: 'set exercise', leafId, change: { studyId: study.id, candidate } });
  },
} satisfies CommandMap;
