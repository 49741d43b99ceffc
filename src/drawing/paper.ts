import { inkWord } from '../sheet/words/side-words.ts';
import { letterNode } from './marks.ts';
import type { Drawing, NamedSide, SceneNode } from './model.ts';
import { n, seeded } from './torn.ts';
import { inkSays, inksOf, shareWords } from './words/says.ts';

const edge = 240;

/**
 * What stands in for a paper without a picture: a square of its base and over it strips of its inks, torn along their
 * upper edge, each as high as its share. 240 by 240.
 */
export function paperStandIn(paper: NamedSide): Drawing {
  const inks = inksOf(paper.side);
  let y = 0;
  const nodes = inks.map((ink, i): SceneNode => {
    const height = ink.share * edge;
    const band: SceneNode = {
      type: 'group',
      className: 'ink-mark',
      mark: { kind: 'ink', inks: [ink.id], label: inkSays(ink, paper.name) },
      children: [
        { type: 'path', d: bandPath(y, i === 0, `${ink.id}${ink.hex}`), fill: ink.hex },
        ...(height >= 15 ? [letterNode(ink, 14, y + height / 2, 13)] : []),
      ],
    };
    y += height;
    return band;
  });
  return {
    width: edge,
    height: edge,
    title: paper.name,
    description: `No picture: ${inks.map((ink) => `${inkWord(ink)} ${shareWords(ink.share)}`).join(', ')}.`,
    nodes,
    table: {
      caption: `Inks of ${paper.name}`,
      columns: ['Ink', 'Colour', 'Share'],
      rows: inks.map((ink) => [ink.id, inkWord(ink), shareWords(ink.share)]),
    },
  };
}

/** From a torn upper edge down to the foot of the sheet, so that each strip lies over the one before. */
function bandPath(y: number, whole: boolean, seed: string): string {
  if (whole) return `M0 0H${edge}V${edge}H0Z`;
  const random = seeded(seed);
  let d = `M0 ${n(y)}`;
  for (let x = 6; x < edge; x += 6) d += `L${n(x)} ${n(Math.min(edge, y + (random() - 0.5) * 2.6))}`;
  return `${d}L${edge} ${n(y)}V${edge}H0Z`;
}
