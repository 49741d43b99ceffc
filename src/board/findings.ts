import type { SceneNode } from '../drawing/model.ts';
import { fitText, textWidth } from '../drawing/text.ts';
import { verdictMark, verdictMarkBox } from '../drawing/verdict-mark.ts';
import { capital } from '../drawing/words/says.ts';
import type { Comparison, Reason, Remedy } from '../harmony/model.ts';
import { verdictWords } from '../harmony/words/sentences.ts';
import type { Ink } from '../sheet/model.ts';
import { type Block, flowLines, flowSentence, moved } from './flow.ts';
import { boardTones, type Page, type } from './sizes.ts';
import { mendHeading } from './words/board-words.ts';

/** What the findings are set in: the page, how wide the text is, and the inks that sentences name. */
export interface FindingsSet {
  readonly page: Page;
  /** Type sizes times this; 1 or a little less where the page is full. */
  readonly squeeze: number;
  /** Width right of the margin column. */
  readonly width: number;
  readonly inks: ReadonlyMap<string, Ink>;
}

/** The verdict: its drawn mark, its word and the sentence under it; x = 0 is the left edge of the text. */
export function verdictBlock(comparison: Comparison, set: FindingsSet): Block {
  const k = set.page.k * set.squeeze;
  const markWidth = 196 * k;
  const scale = markWidth / verdictMarkBox.width;
  const x = markWidth + 56 * k;
  const word = { size: type.verdict * k, face: 'serif', weight: 500 } as const;
  const summary = flowSentence(
    comparison.decision.summary,
    set.width - x,
    textStyle(k, { maxLines: 3 }),
    set.inks,
  );
  const wordHeight = type.verdict * k * 1.18;
  const height = Math.max(wordHeight + summary.height, verdictMarkBox.height * scale);
  const markY = Math.max(
    0,
    (wordHeight + Math.min(summary.height, type.text * k * 1.4) - verdictMarkBox.height * scale) / 2,
  );
  return {
    height,
    nodes: [
      { type: 'group', x: 0, y: markY, scale, children: verdictMark(comparison.verdict, boardTones.ink) },
      {
        type: 'text',
        x,
        y: type.verdict * k * 0.92,
        text: `${capital(verdictWords[comparison.verdict])}.`,
        fill: boardTones.ink,
        ...word,
      },
      moved(summary, x, wordHeight),
    ],
  };
}

/**
 * A reason: a dot as large as it weighs, filled where it speaks for and open where it speaks against, and the sentence;
 * the number and the source stand left of x = 0, in the margin.
 */
export function reasonBlock(reason: Reason, set: FindingsSet): Block {
  const k = set.page.k * set.squeeze;
  const indent = 74 * k;
  const sentence = flowSentence(reason.says, set.width - indent, textStyle(k, { maxLines: 5 }), set.inks);
  const note = marginNote(reason.figure, reason.source, set);
  const radius = (9 + 16 * Math.min(1, Math.abs(reason.weighs))) * k;
  const dot: SceneNode = {
    type: 'circle',
    cx: 25 * k,
    cy: type.text * k * 0.7,
    r: radius,
    fill: reason.weighs > 0 ? boardTones.ink : 'none',
    stroke: boardTones.ink,
    strokeWidth: 4.5 * k,
  };
  return {
    height: Math.max(sentence.height, note.height),
    nodes: [dot, moved(sentence, indent, 0), ...note.nodes],
  };
}

/** Up to three remedies side by side, in frames of one height. */
export function remediesBlock(remedies: readonly Remedy[], set: FindingsSet): Block {
  if (remedies.length === 0) return { height: 0, nodes: [] };
  const k = set.page.k * set.squeeze;
  const gap = 42 * k;
  const pad = 40 * k;
  const columns = Math.max(2, remedies.length);
  const width = (set.width - gap * (columns - 1)) / columns;
  const inner = width - 2 * pad;
  const heading = { size: type.remedy * k * 1.12, face: 'serif', weight: 600, fill: boardTones.ink } as const;
  const cards = remedies.map((remedy) => {
    const title = flowLines(remedy.title, inner, {
      ...heading,
      leading: 1.25,
      size: type.remedy * k * 1.04,
      maxLines: 2,
    });
    const says = flowSentence(
      remedy.says,
      inner,
      textStyle(k, { size: type.remedy * k, leading: 1.36, maxLines: 6 }),
      set.inks,
    );
    const note = flowLines(`${remedy.cost} · then: ${verdictWords[remedy.verdictAfter]}`, inner, {
      ...soft(k),
      maxLines: 2,
    });
    return { title, says, note, height: title.height + says.height + note.height + 24 * k };
  });
  const height = Math.max(...cards.map((card) => card.height)) + 2 * pad;
  const top = type.remedy * k * 1.9;
  const nodes = cards.flatMap((card, i): SceneNode[] => {
    const x = i * (width + gap);
    return [
      { type: 'rect', x, y: top, width, height, fill: 'none', stroke: boardTones.rule, strokeWidth: 3 * k },
      moved(card.title, x + pad, top + pad),
      moved(card.says, x + pad, top + pad + card.title.height + 6 * k),
      moved(card.note, x + pad, top + height - pad - card.note.height),
    ];
  });
  const foot = cautionLine(remedies, set, top + height + 10 * k);
  return {
    height: top + height + foot.height,
    nodes: [
      { type: 'text', x: 0, y: heading.size * 1.05, text: mendHeading, ...heading },
      ...nodes,
      ...foot.nodes,
    ],
  };
}

/** The same where there is little room: a line each, what to do and what it costs. */
export function remedyLines(remedies: readonly Remedy[], set: FindingsSet): Block {
  const k = set.page.k * set.squeeze;
  const bold = { size: type.remedy * k, face: 'serif', weight: 600, fill: boardTones.ink } as const;
  const note = soft(k);
  const step = type.remedy * k * 1.5;
  const top = type.remedy * k * 1.7;
  const foot = cautionLine(remedies, set, top + remedies.length * step);
  return {
    height: top + remedies.length * step + foot.height,
    nodes: [
      { type: 'text', x: 0, y: top * 0.62, text: mendHeading, ...bold, size: type.remedy * k * 1.1 },
      ...remedies.flatMap((remedy, i): SceneNode[] => {
        const y = top + i * step + step * 0.66;
        const title = fitText(remedy.title, set.width * 0.6, { ...bold, weight: 500 });
        const x = textWidth(title, { ...bold, weight: 500 }) + 28 * k;
        const says = fitText(
          `${remedy.cost} · then: ${verdictWords[remedy.verdictAfter]}`,
          set.width - x,
          note,
        );
        return [
          { type: 'text', x: 0, y, text: title, ...bold, weight: 500 },
          { type: 'text', x, y, text: says, size: note.size, face: note.face, fill: note.fill },
        ];
      }),
      ...foot.nodes,
    ],
  };
}

/** What to mind where a remedy asks for a blade: once under all of them, at this height. */
function cautionLine(remedies: readonly Remedy[], set: FindingsSet, y: number): Block {
  const cautions = [...new Set(remedies.flatMap(({ caution }) => caution ?? []))];
  if (cautions.length === 0) return { height: 0, nodes: [] };
  const note = soft(set.page.k * set.squeeze);
  const block = flowLines(cautions.join(' '), set.width, { ...note, maxLines: 2 });
  return { height: block.height + note.size * 0.4, nodes: [moved(block, 0, y)] };
}

/** A number and where it comes from, right-aligned in the margin column left of x = 0. */
export function marginNote(figure: string, source: string, set: FindingsSet, maxLines = 2): Block {
  const k = set.page.k * set.squeeze;
  const width = set.page.margin - 100 * set.page.k;
  const x = -set.page.margin + 14 * set.page.k;
  const bold = flowLines(figure, width, {
    ...soft(k),
    weight: 600,
    fill: boardTones.ink,
    anchor: 'end',
    maxLines: 3,
  });
  const light = flowLines(source, width, { ...soft(k), anchor: 'end', maxLines });
  const drop = type.text * k * 0.14;
  return {
    height: drop + bold.height + light.height,
    nodes: [moved(bold, x, drop), moved(light, x, drop + bold.height)],
  };
}

/** A line of small type that never outgrows its width. */
export function smallLine(text: string, width: number, k: number): SceneNode {
  const style = { size: type.small * k, face: 'sans' } as const;
  return { type: 'text', x: 0, y: 0, text: fitText(text, width, style), fill: boardTones.soft, ...style };
}

function textStyle(k: number, more: { size?: number; leading?: number; maxLines?: number } = {}) {
  return { size: type.text * k, face: 'serif', fill: boardTones.ink, leading: 1.4, ...more } as const;
}

function soft(k: number) {
  return { size: type.margin * k, face: 'sans', fill: boardTones.soft, leading: 1.32 } as const;
}
