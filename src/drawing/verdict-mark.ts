import type { Verdict } from '../harmony/model.ts';
import type { SceneNode } from './model.ts';

/** What is said beside the mark. */
export { verdictWords } from '../harmony/words/verdict-words.ts';

/** Width and height of the box that `verdictMark` draws in. */
export const verdictMarkBox = { width: 74, height: 52 } as const;

/**
 * The drawn mark of a verdict, 74 by 52: two papers joined by stitches across their seam, two with a strip lying across
 * the gap between, two turned away from each other. Form alone tells them apart; without a verdict the second is a
 * dashed outline.
 */
export function verdictMark(verdict: Verdict | null, stroke = 'ink'): SceneNode[] {
  const line = { fill: 'none', stroke, strokeWidth: 2.8 } as const;
  switch (verdict) {
    case 'holds-together':
      return [
        { type: 'path', d: 'M37 44L7 46L5 5L37 3L37 47', ...line },
        { type: 'path', d: 'M37 8L69 10L67 49L37 47', ...line },
        ...['M27 19L47 14', 'M27 29L47 24', 'M27 39L47 34'].map(
          (d): SceneNode => ({ type: 'path', d, ...line, strokeWidth: 3.2, lineCap: 'round' }),
        ),
      ];
    case 'needs-a-bridge':
      return [
        { type: 'path', d: 'M27 22L27 6L3 8L5 46L27 44L27 35', ...line },
        { type: 'path', d: 'M47 17L47 8L71 6L69 44L47 46L47 30', ...line },
        { type: 'path', d: 'M15 24L58 16L60 28L17 36Z', ...line, fill: stroke, strokeWidth: 1 },
      ];
    case 'pulls-apart':
      return [
        { type: 'path', d: 'M34 38L13 45L3 14L24 7Z', ...line },
        { type: 'path', d: 'M40 38L61 45L71 14L50 7Z', ...line },
      ];
    case null:
      return [
        { type: 'path', d: 'M3 9L31 7L31 43L5 45Z', ...line },
        { type: 'path', d: 'M43 8L71 10L69 46L43 44Z', ...line, dash: [5, 4] },
      ];
  }
}
