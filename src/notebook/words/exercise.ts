import type { Comparison, Link, LinkKind } from '../../harmony/model.ts';
import type { ExerciseAsk, ExerciseLeaf } from '../model.ts';

/** What an exercise asks, as it stands over the two papers. */
export const questions: Readonly<Record<ExerciseAsk, { readonly title: string; readonly asks: string }>> = {
  verdict: {
    title: 'Do they belong together?',
    asks: 'Look at the two papers and say what you see. Answer first. Then see what Quirewise found.',
  },
  'near miss': {
    title: 'Find the near miss',
    asks: 'Is there a near miss: two colours, one on each paper, close enough to look meant and far enough to look wrong? Which two?',
  },
  repeat: {
    title: 'Find what comes back',
    asks: 'Which ink of the one paper comes back on the other? Point at the two; any pair that repeats is right.',
  },
  opposite: {
    title: 'Find the opposites',
    asks: 'Which ink of the one paper stands opposite an ink of the other on the wheel? Any such pair is right.',
  },
};

export const asks: readonly ExerciseAsk[] = ['near miss', 'repeat', 'opposite', 'verdict'];

/** How an answer stands to what the engine found. `none`: there is nothing of the kind, and she said so or did not. */
export interface Marked {
  readonly right: boolean;
  /** One or two plain sentences. */
  readonly says: string;
  /** All links that would have been right. */
  readonly links: readonly Link[];
}

/** Marks an exercise against the comparison of its pair, or null while it is not answered. */
export function mark(exercise: ExerciseLeaf, comparison: Comparison): Marked | null {
  const ask = exercise.ask ?? 'verdict';
  if (ask === 'verdict') return markVerdict(exercise, comparison);
  const { pointed } = exercise;
  if (!pointed) return null;
  const links = linksOf(ask, comparison);
  if (links.length === 0) {
    return pointed.length === 0
      ? { right: true, says: `You are right: ${noneOf[ask]}.`, links }
      : { right: false, says: `On these two ${noneOf[ask]}.`, links };
  }
  if (pointed.length === 0) return { right: false, says: `Look again: ${someOf(ask, links.length)}.`, links };
  const found = links.some(
    ({ anchorInk, candidateInk }) => pointed.includes(anchorInk) && pointed.includes(candidateInk),
  );
  if (found) return { right: true, says: rightSays(ask, links.length), links };
  return { right: false, says: `Not those two; ${someOf(ask, links.length)}.`, links };
}

function markVerdict({ answered }: ExerciseLeaf, { verdict, decision }: Comparison): Marked | null {
  if (answered === null) return null;
  const word = verdict.replaceAll('-', ' ');
  return answered === verdict
    ? { right: true, says: `You and Quirewise agree: it ${word}. ${decision.summary}`, links: [] }
    : {
        right: false,
        says: `You say it ${answered.replaceAll('-', ' ')}; Quirewise says it ${word}. ${decision.summary}`,
        links: [],
      };
}

/** What is right: of near misses those that the study finds, of the others every such pair of colours. */
function linksOf(kind: LinkKind, { links, findings, anchor, candidate }: Comparison): readonly Link[] {
  if (kind === 'near miss') {
    const found = findings.filter(({ name }) => name === kind);
    return links.filter(({ anchorInk, candidateInk }) =>
      found.some(({ families: [a, b] }) => a.includes(anchorInk) && b.includes(candidateInk)),
    );
  }
  const bases = new Set([anchor.base.id, candidate.base.id]);
  const of = links.filter((link) => link.kind === kind);
  // Two grounds that agree are seldom what is looked for; they count only where there is nothing else.
  const inks = of.filter(({ anchorInk, candidateInk }) => !bases.has(anchorInk) || !bases.has(candidateInk));
  return inks.length > 0 ? inks : of;
}

const noneOf = {
  'near miss': 'there is no near miss here',
  repeat: 'nothing comes back here',
  opposite: 'nothing stands opposite here',
} as const;

const named = {
  'near miss': ['near miss', 'near misses'],
  repeat: ['pair that repeats', 'pairs that repeat'],
  opposite: ['pair of opposites', 'pairs of opposites'],
} as const;

function someOf(ask: keyof typeof named, count: number): string {
  return count === 1 ? `there is one ${named[ask][0]}` : `there are ${count} ${named[ask][1]}`;
}

function rightSays(ask: keyof typeof named, count: number): string {
  return count === 1 ? 'That is it.' : `That is one: ${someOf(ask, count)}.`;
}
