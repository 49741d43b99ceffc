import { scaleLinear } from 'd3-scale';
import { labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import type { Ink } from '../sheet/model.ts';
import { letterNode } from './marks.ts';
import type { Drawing, NamedSide, SceneNode, Surround } from './model.ts';
import { inkSays, inksOf, inkWords, shareWords } from './says.ts';
import { spreadAlong } from './spread.ts';
import { emptyStretch, type Stretch } from './strip-gap.ts';
import { type SurroundTones, surroundTones } from './surround.ts';
import { textWidth } from './text.ts';
import { n } from './torn.ts';

export interface StripPapers {
  readonly anchor: NamedSide;
  readonly candidate?: NamedSide;
  /** Further candidates: a lane each, in outline. */
  readonly others?: readonly NamedSide[];
}

export interface StripOptions {
  /** Default 'grey'. */
  readonly surround?: Surround;
  /** The stretch of L* to mark as empty, null for none. Default: the widest between the inks, where it is 12 or more. */
  readonly gap?: Stretch | null;
}

const width = 700;
const left = 24;
const right = 676;
const top = 24;
const laneHeight = 46;
const outlineLaneHeight = 26;
const chipWidth = 17;

/**
 * The lightness strip: CIELAB L* along the axis, a lane for each paper, chips whose height grows with the square root
 * of the share. Chips that would cover each other stand side by side, with a foot at their true lightness.
 * 700 wide; 142 high with two lanes.
 */
export function lightnessStrip(papers: StripPapers, options: StripOptions = {}): Drawing {
  const tones = surroundTones(options.surround);
  const full = [papers.anchor, ...(papers.candidate ? [papers.candidate] : [])];
  const others = papers.others ?? [];
  const bottom = top + full.length * laneHeight + others.length * outlineLaneHeight;
  const gap = options.gap === undefined ? emptyStretch(full.map((paper) => paper.side)) : options.gap;
  const nodes: SceneNode[] = [
    ...(gap ? gapNodes(gap, full.length, top + full.length * laneHeight, tones) : []),
    ...axis(bottom, tones),
    ...full.flatMap((paper, lane) => chips(paper, top + lane * laneHeight, laneHeight, tones)),
    ...others.flatMap((paper, lane) =>
      outlineChips(paper, top + full.length * laneHeight + lane * outlineLaneHeight, tones),
    ),
  ];
  return {
    width,
    height: bottom + 26,
    title: `Lightness of ${full.map((paper) => paper.name).join(' and ')}`,
    description: `CIELAB L* from 0, black, to 100, white; a lane for each paper.${gap ? ` ${gapSays(gap, full.length)}.` : ''}`,
    nodes,
    table: {
      caption: 'Lightness of each ink',
      columns: ['Ink', 'Colour', 'Paper', 'L*', 'Share'],
      rows: [...full, ...others].flatMap((paper) =>
        inksOf(paper.side).map((ink) => [
          ink.id,
          inkWords(ink),
          paper.name,
          lightnessOf(ink).toFixed(0),
          shareWords(ink.share),
        ]),
      ),
    },
  };
}

/** Height of a chip for a share, in the drawing's units: 13 for none, 40 for all. */
export function chipHeight(share: number): number {
  return 13 + 27 * Math.sqrt(Math.min(1, Math.max(0, share)));
}

/** Where an L* stands along the strip. */
export const xFromLightness = scaleLinear().domain([0, 100]).range([left, right]).clamp(true);

function lightnessOf(ink: Ink): number {
  return labFromOklch(oklchFromTuple(ink.oklch)).l;
}

function chips(paper: NamedSide, y: number, height: number, tones: SurroundTones): SceneNode[] {
  const inks = inksOf(paper.side);
  const middle = y + height / 2;
  const wants = inks.map((ink) => xFromLightness(lightnessOf(ink)));
  const places = spreadAlong(wants, chipWidth + 2, left - 14, right + 14);
  return inks.map((ink, i): SceneNode => {
    const h = chipHeight(ink.share);
    const x = places[i]!;
    const place = wants[i]!;
    return {
      type: 'group',
      className: 'ink-mark',
      mark: {
        kind: 'ink',
        inks: [ink.id],
        label: `${inkSays(ink, paper.name).slice(0, -1)}; lightness L* ${Math.round(lightnessOf(ink))}.`,
      },
      children: [
        {
          type: 'path',
          className: 'foot',
          d: `M${n(place)} ${n(y + height - 1)}V${n(y + height - 4)}L${n(x)} ${n(middle + h / 2)}`,
          fill: 'none',
          stroke: tones.soft,
          strokeWidth: 1,
        },
        {
          type: 'rect',
          x: n(x - chipWidth / 2),
          y: n(middle - h / 2),
          width: chipWidth,
          height: n(h),
          fill: ink.hex,
          stroke: tones.edge,
          strokeWidth: 0.8,
        },
        letterNode(ink, x, middle, 11.5),
      ],
    };
  });
}

function outlineChips(paper: NamedSide, y: number, tones: SurroundTones): SceneNode[] {
  const middle = y + outlineLaneHeight / 2;
  return inksOf(paper.side).map((ink): SceneNode => {
    const h = chipHeight(ink.share) * 0.5;
    return {
      type: 'rect',
      className: 'outline-mark',
      x: n(xFromLightness(lightnessOf(ink)) - chipWidth / 2),
      y: n(middle - h / 2),
      width: chipWidth,
      height: n(h),
      fill: 'none',
      stroke: tones.soft,
      strokeWidth: 1,
      mark: {
        kind: 'ink',
        inks: [],
        label: `${paper.name}, not drawn in full: ${inkWords(ink)}, lightness L* ${Math.round(lightnessOf(ink))}.`,
      },
    };
  });
}

function axis(bottom: number, tones: SurroundTones): SceneNode[] {
  return Array.from({ length: 11 }, (_, i) => i * 10).flatMap((l): SceneNode[] => {
    const x = n(xFromLightness(l));
    return [
      { type: 'line', x1: x, y1: top, x2: x, y2: bottom, stroke: tones.line, strokeWidth: 1 },
      {
        type: 'text',
        x,
        y: bottom + 17,
        text: l === 0 ? '0' : `${l}`,
        size: 11.5,
        face: 'sans',
        anchor: 'middle',
        fill: tones.text,
      },
    ];
  });
}

function gapNodes(gap: Stretch, papers: number, bottom: number, tones: SurroundTones): SceneNode[] {
  const from = xFromLightness(gap.from);
  const to = xFromLightness(gap.to);
  const text = gapSays(gap, papers);
  const half = textWidth(text, { size: 12, face: 'sans' }) / 2;
  // The words stay on the strip where the stretch lies at one of its ends.
  const x = Math.min(Math.max((from + to) / 2, half + 2), width - half - 2);
  return [
    {
      type: 'rect',
      className: 'gap',
      x: n(from),
      y: top,
      width: n(to - from),
      height: bottom - top,
      fill: tones.veil,
    },
    { type: 'text', x: n(x), y: top - 8, text, size: 12, face: 'sans', anchor: 'middle', fill: tones.text },
  ];
}

function gapSays(gap: Stretch, papers: number): string {
  const where = papers > 1 ? 'empty in both' : 'empty';
  return `${where}, L* ${Math.round(gap.from)}–${Math.round(gap.to)}: a photograph will stand out here`;
}
