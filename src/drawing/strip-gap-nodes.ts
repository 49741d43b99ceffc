import type { NamedSide, SceneNode } from './model.ts';
import type { Stretch } from './strip-gap.ts';
import { lightnessOf, type StripLook, stripTop } from './strip-look.ts';
import { fitText, textWidth } from './text.ts';
import { n } from './torn.ts';
import { gapWords } from './words/chart-words.ts';
import { inksOf } from './words/says.ts';

/** The empty stretch as a lighter ground behind the lanes, and the words above it. */
export function gapNodes(
  gap: Stretch,
  papers: readonly NamedSide[],
  bottom: number,
  { width, tones, x }: StripLook,
): SceneNode[] {
  const [from, to] = [x(gap.from), x(gap.to)];
  const text = fitText(gapSays(gap, papers), width - 4, { size: 12, face: 'sans' });
  const half = textWidth(text, { size: 12, face: 'sans' }) / 2;
  // The words stay on the strip where the stretch lies at one of its ends.
  const middle = Math.min(Math.max((from + to) / 2, half + 2), width - half - 2);
  return [
    {
      type: 'rect',
      className: 'gap',
      x: n(from),
      y: stripTop,
      width: n(to - from),
      height: bottom - stripTop,
      fill: tones.veil,
    },
    {
      type: 'text',
      x: n(middle),
      y: stripTop - 8,
      text,
      size: 12,
      face: 'sans',
      anchor: 'middle',
      fill: tones.text,
    },
  ];
}

/** The empty stretch in words; that specks lie in it is said. */
export function gapSays(gap: Stretch, papers: readonly NamedSide[]): string {
  const specks = papers.some(({ side }) =>
    inksOf(side).some((ink) => lightnessOf(ink) > gap.from + 0.5 && lightnessOf(ink) < gap.to - 0.5),
  );
  return gapWords(gap, papers.length > 1, specks);
}
