/** Stands at the foot of every board. */
export const caution =
  'This was judged on a screen. Before you cut, lay snippets together where the album is looked at.';

/** Heads the remedies. */
export const mendHeading = 'What could mend it';

/** What the kind of board with one pair is for. */
export const aboutPair = 'both papers, whether they hold together and why';

/** How the pair was judged and seen, in two lines. */
export function howSeen(wheel: 'eye' | 'painter', apart: boolean): string {
  const whose = wheel === 'eye' ? "on the eye's wheel" : "on the painter's wheel";
  const how = apart ? 'judged as lying apart' : 'judged as touching';
  return `${how},\nseen ${whose}`;
}
