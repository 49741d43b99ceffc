import { scaleLinear } from 'd3-scale';
import type { ColourRegion } from '../harmony/model.ts';
import { inkWord } from '../sheet/words/side-words.ts';
import { letterNode } from './marks.ts';
import type { Drawing, NamedSide, SceneNode, Surround } from './model.ts';
import { regionsOnStrip } from './region.ts';
import { spreadAlong } from './spread.ts';
import type { Stretch } from './strip-gap.ts';
import { gapNodes, gapSays } from './strip-gap-nodes.ts';
import { lightnessOf, type StripLook, stripTop as top } from './strip-look.ts';
import { type SurroundTones, surroundTones } from './surround.ts';
import { fitText } from './text.ts';
import { n } from './torn.ts';
import { outlinedOnStrip, stripShows, stripTable } from './words/chart-words.ts';
import { capital, inkSays, inksOf, shareWords } from './words/says.ts';

export interface StripPapers {
  readonly anchor: NamedSide;
  readonly candidate?: NamedSide;
  /** Further candidates: a lane each, in outline. */
  readonly others?: readonly NamedSide[];
  /** Stretches of colour to outline, by their L*. Default: none. */
  readonly regions?: readonly ColourRegion[];
}

export interface StripOptions {
  /** Default 'grey'. */
  readonly surround?: Surround;
  /** The stretch of L* to mark as empty, as `gapIn` finds it in the reasons of the pair. Default: none. */
  readonly gap?: Stretch | null;
  /** Width in the drawing's units; heights and letters stay the same. Default 700. */
  readonly width?: number;
}

const usualWidth = 700;
const narrowest = 300;
const inset = 24;
const laneHeight = 46;
const outlineLaneHeight = 26;
const chipWidth = 17;

/**
 * The lightness strip: CIELAB L* along the axis, a lane for each paper, chips whose height grows with the square root
 * of the share. Chips that would cover each other stand side by side, with a foot at their true lightness.
 * 700 wide unless asked otherwise; 142 high with two lanes.
 */
export function lightnessStrip(papers: StripPapers, options: StripOptions = {}): Drawing {
  const width = Math.max(narrowest, options.width ?? usualWidth);
  const look: StripLook = { width, tones: surroundTones(options.surround), x: xFromLightness(width) };
  const full = [papers.anchor, ...(papers.candidate ? [papers.candidate] : [])];
  const others = papers.others ?? [];
  const lanes = top + full.length * laneHeight;
  const bottom = lanes + others.length * outlineLaneHeight;
  const gap = options.gap ?? null;
  return {
    width,
    height: bottom + 26,
    title: `Lightness of ${full.map((paper) => paper.name).join(' and ')}`,
    description: `${stripShows}${gap ? ` ${capital(gapSays(gap, full))}.` : ''}`,
    nodes: [
      ...(gap ? gapNodes(gap, full, lanes, look) : []),
      ...axis(bottom, look),
      ...regionsOnStrip(papers.regions ?? [], lanes, look),
      ...full.flatMap((paper, lane) => chips(paper, top + lane * laneHeight, look)),
      ...others.flatMap((paper, lane) => outlineChips(paper, lanes + lane * outlineLaneHeight, look)),
    ],
    table: {
      caption: stripTable,
      columns: ['Ink', 'Colour', 'Paper', 'L*', 'Share'],
      rows: [...full, ...others].flatMap((paper) =>
        inksOf(paper.side).map((ink) => [
          ink.id,
          inkWord(ink),
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

/** Where an L* stands along a strip of this width. */
export function xFromLightness(width: number = usualWidth): (lightness: number) => number {
  const scale = scaleLinear()
    .domain([0, 100])
    .range([inset, width - inset])
    .clamp(true);
  return (lightness) => scale(lightness);
}

function chips(paper: NamedSide, y: number, { width, tones, x }: StripLook): SceneNode[] {
  const inks = inksOf(paper.side);
  const middle = y + laneHeight / 2;
  const wants = inks.map((ink) => x(lightnessOf(ink)));
  const places = spreadAlong(wants, chipWidth + 2, 8, width - 8);
  return inks.map((ink, i): SceneNode => {
    const h = chipHeight(ink.share);
    const place = places[i]!;
    return {
      type: 'group',
      className: 'ink-mark',
      mark: {
        kind: 'ink',
        inks: [ink.id],
        label: `${inkSays(ink, paper.name).slice(0, -1)}; lightness L* ${Math.round(lightnessOf(ink))}.`,
      },
      children: [
        ...foot(wants[i]!, place, middle + h / 2, y + laneHeight - 2, tones),
        {
          type: 'rect',
          x: n(place - chipWidth / 2),
          y: n(middle - h / 2),
          width: chipWidth,
          height: n(h),
          fill: ink.hex,
          stroke: tones.edge,
          strokeWidth: 0.8,
        },
        letterNode(ink, place, middle, 11.5),
      ],
    };
  });
}

/** From a chip that had to step aside, a fine line to its true lightness on the lane's floor. */
function foot(trueX: number, x: number, fromY: number, floorY: number, tones: SurroundTones): SceneNode[] {
  if (Math.abs(trueX - x) < 0.75) return [];
  return [
    {
      type: 'path',
      className: 'foot',
      d: `M${n(trueX)} ${n(floorY + 2)}V${n(floorY - 1)}L${n(x)} ${n(fromY)}`,
      fill: 'none',
      stroke: tones.soft,
      strokeWidth: 1,
    },
  ];
}

function outlineChips(paper: NamedSide, y: number, { tones, x }: StripLook): SceneNode[] {
  const middle = y + outlineLaneHeight / 2;
  const outlines = inksOf(paper.side).map((ink): SceneNode => {
    const h = chipHeight(ink.share) * 0.5;
    return {
      type: 'rect',
      className: 'outline-mark',
      x: n(x(lightnessOf(ink)) - chipWidth / 2),
      y: n(middle - h / 2),
      width: chipWidth,
      height: n(h),
      fill: 'none',
      stroke: tones.soft,
      strokeWidth: 1,
      mark: {
        kind: 'ink',
        inks: [],
        label: outlinedOnStrip(paper.name, inkWord(ink), lightnessOf(ink)),
      },
    };
  });
  return [...outlines, ...laneName(paper, middle, { tones, x })];
}

/** The paper's name in the dark end of its lane, where that is empty enough. */
function laneName(paper: NamedSide, y: number, { tones, x }: Pick<StripLook, 'tones' | 'x'>): SceneNode[] {
  const room = Math.min(...inksOf(paper.side).map((ink) => x(lightnessOf(ink)))) - chipWidth / 2 - 8;
  if (room < inset + 64) return [];
  const style = { size: 11, face: 'sans' } as const;
  return [
    {
      type: 'text',
      x: inset + 5,
      y: y + 4,
      text: fitText(paper.name, room - inset - 5, style),
      fill: tones.soft,
      ...style,
    },
  ];
}

function axis(bottom: number, { tones, x }: StripLook): SceneNode[] {
  const unit = {
    type: 'text',
    x: 3,
    y: bottom + 17,
    text: 'L*',
    size: 11.5,
    face: 'sans',
    fill: tones.text,
  } as const;
  const steps = Array.from({ length: 11 }, (_, i) => i * 10).flatMap((l): SceneNode[] => [
    { type: 'line', x1: n(x(l)), y1: top, x2: n(x(l)), y2: bottom, stroke: tones.line, strokeWidth: 1 },
    {
      type: 'text',
      x: n(x(l)),
      y: bottom + 17,
      text: `${l}`,
      size: 11.5,
      face: 'sans',
      anchor: 'middle',
      fill: tones.text,
    },
  ]);
  return [unit, ...steps];
}
