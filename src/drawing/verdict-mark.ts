import type { Verdict } from '../harmony/model.ts';
import type { SceneNode } from './model.ts';

/** What is said beside the mark. */
export { verdictWords } from '../harmony/words/verdict-words.ts';

/** Width and height of the box that `verdictMark` draws in. */
export const verdictMarkBox = { width: 74, height: 52 } as const;

/**
 * The drawn mark of a verdict, 74 by 52: two papers joined along an edge, two with a dotted bridge between, two that
 * turn away from each other. Form alone tells them apart; without a verdict the second is a dashed outline.
 */
export function verdictMark(verdict: Verdict | null, stroke = 'ink'): SceneNode[] {
  const line = { fill: 'none', stroke, strokeWidth: 2.6 } as const;
  switch (verdict) {
    case 'holds-together':
      return [
        { type: 'path', d: 'M7 11H37V41H7Z', ...line },
        { type: 'path', d: 'M37 11H67V41H37Z', ...line },
        { type: 'path', d: 'M29 26H45', ...line, lineCap: 'round' },
      ];
    case 'needs-a-bridge':
      return [
        { type: 'path', d: 'M2 9H32V39H2Z', ...line },
        { type: 'path', d: 'M42 13H72V43H42Z', ...line },
        { type: 'path', d: 'M33.5 26H41', ...line, dash: [0.1, 3.6], lineCap: 'round' },
      ];
    case 'pulls-apart':
      return [
        { type: 'path', d: 'M3 12L32 6L35 35L7 41Z', ...line },
        { type: 'path', d: 'M43 9L71 15L67 44L39 38Z', ...line },
      ];
    case null:
      return [
        { type: 'path', d: 'M2 9H32V39H2Z', ...line },
        { type: 'path', d: 'M42 13H72V43H42Z', ...line, dash: [5, 4] },
      ];
  }
}
