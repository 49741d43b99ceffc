import type { NamedSide, SceneNode } from '../drawing/model.ts';
import { turnedWords } from '../drawing/words/kind-words.ts';
import { capital, inksOf } from '../drawing/words/says.ts';
import type { Comparison, Remedy } from '../harmony/model.ts';
import { verdictWords } from '../harmony/words/sentences.ts';
import {
  type FindingsSet,
  marginNote,
  reasonBlock,
  remediesBlock,
  remedyLines,
  smallLine,
  verdictBlock,
} from './findings.ts';
import { type Block, flowLines, moved } from './flow.ts';
import { matBlock } from './mat.ts';
import type { Board, BoardOptions } from './model.ts';
import { boardTones, type Page, pageOf, type } from './sizes.ts';
import { caution, howSeen } from './words/board-words.ts';

/**
 * A comparison as a picture to share: both papers, their inks, wheel and strip, the verdict, the three weightiest
 * reasons with number and source, what could mend it where it does not hold and that was worked out, and the user's
 * title and words. Reads what it is given and nothing else. Where there is much to say, the papers, the words, the remedies and at last the type give way,
 * so that nothing leaves the page.
 */
export function boardOf(comparison: MaybeAdvised, options: BoardOptions = {}): Board {
  const size = options.size ?? 'square';
  const page = pageOf(size);
  const anchor: NamedSide = { side: comparison.anchor, name: options.names?.anchor ?? 'the anchor' };
  const candidate: NamedSide = {
    side: comparison.candidate,
    name: options.names?.candidate ?? 'the candidate',
  };
  const title = options.title?.trim() || capital(`${anchor.name} with ${candidate.name}`);
  const mats = page.papers.map((paper) =>
    matBlock(comparison, { anchor, candidate }, options, page, page.width - 2 * page.edge, paper),
  );
  const content: Content = { comparison, options, page, anchor, candidate, title, mats };
  let laid = layOut(content, plans[0]!);
  for (const plan of plans.slice(1)) {
    if (laid.free >= 0) break;
    laid = layOut(content, plan);
  }
  return {
    title,
    size,
    scene: {
      width: page.width,
      height: page.height,
      title,
      description: describe(content),
      background: boardTones.leaf,
      nodes: laid.nodes,
    },
  };
}

/** A comparison, with or without what could mend it. */
type MaybeAdvised = Comparison & { readonly remedies?: readonly Remedy[] };

interface Content {
  readonly comparison: MaybeAdvised;
  readonly options: BoardOptions;
  readonly page: Page;
  readonly anchor: NamedSide;
  readonly candidate: NamedSide;
  readonly title: string;
  readonly mats: readonly Block[];
}

/** How much is said and how large; the first that fits the page is taken. */
interface Plan {
  /** Which of the page's sizes of paper. */
  readonly paper: 0 | 1 | 2;
  readonly wordLines: number;
  /** Remedies in frames with their sentences, or a line each. */
  readonly remedies: 'frames' | 'lines' | 'none';
  readonly squeeze: number;
}

const plans: readonly Plan[] = [
  { paper: 0, wordLines: 6, remedies: 'frames', squeeze: 1.1 },
  { paper: 0, wordLines: 5, remedies: 'frames', squeeze: 1 },
  { paper: 1, wordLines: 4, remedies: 'frames', squeeze: 1 },
  { paper: 2, wordLines: 4, remedies: 'frames', squeeze: 0.98 },
  { paper: 2, wordLines: 3, remedies: 'frames', squeeze: 0.92 },
  { paper: 2, wordLines: 3, remedies: 'frames', squeeze: 0.85 },
  { paper: 2, wordLines: 3, remedies: 'lines', squeeze: 0.95 },
  { paper: 2, wordLines: 2, remedies: 'lines', squeeze: 0.86 },
  { paper: 2, wordLines: 2, remedies: 'lines', squeeze: 0.78 },
  { paper: 2, wordLines: 1, remedies: 'none', squeeze: 0.72 },
  { paper: 2, wordLines: 1, remedies: 'none', squeeze: 0.58 },
];

function layOut(content: Content, plan: Plan): { nodes: SceneNode[]; free: number } {
  const { comparison, page } = content;
  const mat = content.mats[plan.paper]!;
  const { edge, margin, k } = page;
  const textX = edge + margin;
  const set: FindingsSet = {
    page,
    squeeze: plan.squeeze,
    width: page.width - edge - textX,
    inks: new Map(
      [...inksOf(comparison.anchor), ...inksOf(comparison.candidate)].map((ink) => [ink.id, ink]),
    ),
  };
  const head = headBlock(content, plan, set.width);
  const findings = [
    withNote(verdictBlock(comparison, set), comparison, set),
    ...comparison.reasons.slice(0, 3).map((reason) => reasonBlock(reason, set)),
    ...mending(comparison, plan, set),
  ];
  const footY = page.height - edge * 0.62;
  const gap = 34 * k * plan.squeeze;
  const matY = edge * 0.86 + head.height + 40 * k;
  const findingsY = matY + mat.height + 62 * k;
  const needed = findings.reduce((sum, block) => sum + block.height, 0) + gap * (findings.length - 1);
  const room = footY - 76 * k - findingsY;
  const free = room - needed;
  // What is left over goes between the findings, up to a line's height each.
  const spread = gap + Math.max(0, Math.min(free / Math.max(1, findings.length - 1), 64 * k));
  let y = findingsY + Math.max(0, Math.min((free - (spread - gap) * (findings.length - 1)) / 2, 90 * k));
  const nodes: SceneNode[] = [
    {
      type: 'line',
      x1: textX - 44 * k,
      y1: 0,
      x2: textX - 44 * k,
      y2: page.height,
      stroke: boardTones.rule,
      strokeWidth: 3 * k,
    },
    moved(head, textX, edge * 0.86),
    moved(mat, edge, matY),
  ];
  for (const block of findings) {
    nodes.push(moved(block, textX, y));
    y += block.height + spread;
  }
  nodes.push({ type: 'group', x: textX, y: footY, children: [smallLine(caution, set.width, k)] });
  return { nodes, free };
}

/** The first remedies, where the pair does not hold as it is and the page has room. */
function mending(comparison: MaybeAdvised, plan: Plan, set: FindingsSet): Block[] {
  const remedies = (comparison.remedies ?? []).slice(0, 3);
  if (comparison.verdict === 'holds-together' || plan.remedies === 'none' || remedies.length === 0) return [];
  return [plan.remedies === 'frames' ? remediesBlock(remedies, set) : remedyLines(remedies, set)];
}

function headBlock({ title, options, page, comparison }: Content, plan: Plan, width: number): Block {
  const { k } = page;
  const heading = flowLines(title, width, {
    size: type.title * k,
    face: 'serif',
    weight: 500,
    fill: boardTones.ink,
    leading: 1.16,
    maxLines: 2,
  });
  const words = options.words?.trim()
    ? flowLines(options.words.trim(), width, {
        size: type.words * k,
        face: 'serif',
        italic: true,
        fill: boardTones.soft,
        leading: 1.4,
        maxLines: plan.wordLines,
      })
    : { height: 0, nodes: [] };
  const seen = howSeen(options.wheel ?? 'eye', comparison.distance === 'apart');
  const note = flowLines(seen, page.margin - 100 * k, {
    size: type.margin * k,
    face: 'sans',
    fill: boardTones.soft,
    leading: 1.32,
    anchor: 'end',
  });
  return {
    height: heading.height + words.height + (words.height > 0 ? 12 * k : 0),
    nodes: [
      ...heading.nodes,
      moved(words, 0, heading.height + 12 * k),
      moved(note, -page.margin + 14 * k, type.title * k * 0.3),
    ],
  };
}

/** What turned the verdict stands in the margin beside it; the rule itself stands at the foot. */
function withNote(block: Block, comparison: Comparison, set: FindingsSet): Block {
  const turned = comparison.decision.turnedBy.flatMap((i) => comparison.reasons[i] ?? []);
  if (turned.length === 0) return block;
  const note = marginNote('decided by', turnedWords(turned).join('; '), set, 4);
  return { height: Math.max(block.height, note.height), nodes: [...block.nodes, ...note.nodes] };
}

function describe({ comparison, anchor, candidate }: Content): string {
  const verdict = verdictWords[comparison.verdict];
  const reasons = comparison.reasons.slice(0, 3).map((reason) => reason.says);
  return [
    `${capital(anchor.name)} with ${candidate.name}: ${verdict}. ${comparison.decision.summary}`,
    ...reasons,
  ].join(' ');
}
