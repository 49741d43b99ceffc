import { tornChips } from '../drawing/chips.ts';
import type { NamedSide, SceneNode, Surround } from '../drawing/model.ts';
import { paperStandIn } from '../drawing/paper.ts';
import { surroundTones } from '../drawing/surround.ts';
import { fitText } from '../drawing/text.ts';
import type { Side } from '../sheet/model.ts';
import { repeatWords } from '../sheet/words/side-words.ts';
import { type Block, flowLines, moved } from './flow.ts';
import { type } from './sizes.ts';

export interface PaperLook {
  /** Edge of the square in which the paper is shown. */
  readonly edge: number;
  /** Address of its picture, or undefined for the stand-in. */
  readonly picture: string | undefined;
  /** What it is in this board: "anchor" or "candidate". */
  readonly role: string;
  readonly k: number;
  /** What it lies on. Default 'grey'. */
  readonly surround?: Surround;
}

/** A paper on the mat: its picture, its name, a line of facts, and its inks as torn chips. */
export function paperBlock(paper: NamedSide, look: PaperLook): Block {
  const { edge, k } = look;
  const tones = surroundTones(look.surround);
  const name = { size: type.name * k, face: 'serif', weight: 600 } as const;
  const nameY = edge + 76 * k;
  const facts = flowLines(factsOf(paper.side, look.role), edge, {
    size: type.caption * k,
    face: 'sans',
    fill: tones.soft,
    leading: 1.3,
    maxLines: 3,
  });
  const chipsY = nameY + 20 * k + facts.height + 18 * k;
  const chipScale = 2.6 * k;
  const chips = tornChips(paper, {
    width: edge / chipScale,
    height: 40,
    ...(look.surround ? { surround: look.surround } : {}),
  });
  // A row with many inks is wider than the paper until it is scaled to it.
  const scale = edge / chips.width;
  return {
    height: chipsY + chips.height * scale,
    nodes: [
      ...shadow(edge, k),
      ...face(paper, look),
      { type: 'text', x: 0, y: nameY, text: fitText(paper.name, edge, name), fill: tones.text, ...name },
      moved(facts, 0, nameY + 20 * k),
      { type: 'group', x: 0, y: chipsY, scale, children: chips.nodes },
    ],
  };
}

function face(paper: NamedSide, look: PaperLook): SceneNode[] {
  const { edge, picture } = look;
  if (picture) return [{ type: 'image', x: 0, y: 0, width: edge, height: edge, href: picture }];
  const drawing = paperStandIn(paper);
  return [{ type: 'group', scale: edge / drawing.width, children: drawing.nodes }];
}

/** The sheet's soft edge, from plain shapes so that every renderer draws it alike. */
function shadow(edge: number, k: number): SceneNode[] {
  return [14, 9, 5, 2].map((spread) => ({
    type: 'rect',
    x: -spread * k,
    y: (-spread + 7) * k,
    width: edge + 2 * spread * k,
    height: edge + 2 * spread * k,
    radius: spread * k,
    fill: '#000000',
    opacity: 0.055,
  }));
}

/** "anchor · repeat 76 mm", and on a line of its own that the light is unknown. Only what is known is said. */
function factsOf(side: Side, role: string): string {
  const facts = [role];
  const repeat = repeatWords(side.print);
  if (repeat !== null) facts.push(`repeat ${repeat}`);
  else if (side.print.scale !== null) facts.push(`${side.print.scale} print`);
  return `${facts.join(' · ')}${side.light.known ? '' : '\nlight unknown'}`;
}
