import type { Wheel } from '../colour/model.ts';
import type { ColourRegion, Link } from '../harmony/model.ts';
import { inkWord } from '../sheet/words/side-words.ts';
import { diamondPath, halfDiagonal, inkMark } from './marks.ts';
import type { Drawing, NamedSide, SceneNode, Surround } from './model.ts';
import { regionsOnWheel } from './region.ts';
import { type SurroundTones, surroundTones } from './surround.ts';
import { n } from './torn.ts';
import { wheelKey } from './wheel-key.ts';
import { drawnLinks, linkNodes } from './wheel-links.ts';
import {
  polar,
  sitsInHub,
  usualRing,
  type WheelLayout,
  type WheelPlace,
  wheelAngleDeg,
  wheelPlaces,
} from './wheel-places.ts';
import { wheelReach, wheelRing } from './wheel-ring.ts';
import { wheelTable } from './wheel-table.ts';
import { outlinedOnWheel, ringNoteWords, wheelShows, wheelTitle } from './words/chart-words.ts';
import { inkSays, inksOf, shareWords } from './words/says.ts';

/** What the wheel shows: one paper, two with their links, and other candidates as outlines. */
export interface WheelPapers {
  readonly anchor: NamedSide;
  readonly candidate?: NamedSide;
  readonly others?: readonly NamedSide[];
  /** Links of anchor and candidate; repeats, near misses and opposites are drawn. Default: none. */
  readonly links?: readonly Link[];
  /** Stretches of colour to outline. Default: none. */
  readonly regions?: readonly ColourRegion[];
}

export interface WheelOptions {
  /** Hue by OKLCH angle or by the twelve-step pigment wheel. Default 'eye'. */
  readonly wheel?: Wheel;
  /** Default 'grey'. */
  readonly surround?: Surround;
  /** False leaves out the line that explains the marks. Default true. */
  readonly key?: boolean;
  /** Width in the drawing's units; where it is narrow the rings shrink and the letters keep their size. Default 480. */
  readonly width?: number;
}

const usualWidth = 480;
const narrowest = 300;

/**
 * The hue wheel: chroma from the hub outward, hue around, neutrals in the hub; discs for the anchor's inks, diamonds
 * for the candidate's, each of an area that follows its share. Marks that would cover each other are parted, and a
 * fine line leads from each to its true place. 480 wide unless asked otherwise.
 */
export function hueWheel(papers: WheelPapers, options: WheelOptions = {}): Drawing {
  const { anchor, candidate, others = [] } = papers;
  const wheel = options.wheel ?? 'eye';
  const tones = surroundTones(options.surround);
  const links = candidate ? drawnLinks(papers.links ?? [], wheel) : [];
  const width = Math.max(narrowest, options.width ?? usualWidth);
  const { ring, centreX } = fitRing(width, wheel);
  const centreY = ring + 46;
  const layout = wheelPlaces({
    anchor: anchor.side,
    candidate: candidate?.side,
    links,
    wheel,
    others: others.map((other) => other.side),
    ring,
  });
  const lines = linkNodes(links, layout.places, tones);
  const foot = centreY + ring + 38;
  const needs = { candidate: candidate !== undefined, others: others.length > 0, links };
  // Of one paper alone there is nothing to tell apart.
  const key = options.key === false || !candidate ? null : wheelKey(needs, width, foot + 15, tones);
  const height = key ? foot + 15 + key.height : foot;
  return {
    width,
    height,
    title: wheelTitle(anchor.name, candidate?.name),
    description: describe(papers, wheel, links.length),
    nodes: [
      ringNote(centreY + ring + 30, tones),
      {
        type: 'group',
        x: n(centreX),
        y: centreY,
        children: [
          ...wheelRing(layout, wheel, tones),
          ...lines.below,
          ...others.flatMap((other, i) => outlines(other, i, layout, wheel, tones)),
          ...regionsOnWheel(papers.regions ?? [], layout, wheel, tones),
          ...layout.places.flatMap((place) => leader(place, tones)),
          ...layout.places.map((place) => markOf(place, papers, tones)),
          ...lines.above,
        ],
      },
      ...(key ? [key.node] : []),
    ],
    table: wheelTable(papers, links, layout, wheel),
  };
}

function markOf(place: WheelPlace, papers: WheelPapers, tones: SurroundTones): SceneNode {
  const paper = place.of === 'anchor' ? papers.anchor : papers.candidate;
  return inkMark(place.ink, place.of, place, inkSays(place.ink, paper?.name ?? 'the paper'), tones);
}

/** A parted mark's fine line to its true place, and a small point there. */
function leader(place: WheelPlace, tones: SurroundTones): SceneNode[] {
  const distance = Math.hypot(place.x - place.trueX, place.y - place.trueY);
  if (distance < 3) return [];
  return [
    {
      type: 'line',
      className: 'leader',
      x1: n(place.trueX),
      y1: n(place.trueY),
      x2: n(place.x),
      y2: n(place.y),
      stroke: tones.soft,
      strokeWidth: 1,
    },
    { type: 'circle', className: 'leader', cx: n(place.trueX), cy: n(place.trueY), r: 1.9, fill: tones.soft },
  ];
}

/** Another candidate's strong inks as empty diamonds; they name no ink of the pair, so pointing at one lights nothing up. */
function outlines(
  paper: NamedSide,
  index: number,
  layout: WheelLayout,
  wheel: Wheel,
  tones: SurroundTones,
): SceneNode[] {
  return inksOf(paper.side)
    .filter((ink) => !sitsInHub(ink))
    .map((ink): SceneNode => {
      const at = polar(wheelAngleDeg(ink.oklch[2] ?? 0, wheel), layout.radiusFromChroma(ink.oklch[1]));
      const half = halfDiagonal(layout.radiusOf(ink));
      return {
        type: 'group',
        className: 'outline-mark',
        mark: {
          kind: 'ink',
          inks: [],
          label: outlinedOnWheel(paper.name, inkWord(ink), shareWords(ink.share)),
        },
        children: [
          { type: 'path', d: diamondPath(at.x, at.y, half), fill: '#808080', opacity: 0 },
          {
            type: 'path',
            d: diamondPath(at.x, at.y, half),
            fill: 'none',
            stroke: tones.soft,
            strokeWidth: 1.1,
            dash: index % 2 === 0 ? [] : [3, 2],
          },
        ],
      };
    });
}

/** What the rings are for, low on the left where no mark comes. */
function ringNote(y: number, tones: SurroundTones): SceneNode {
  return {
    type: 'text',
    x: 12,
    y: n(y),
    text: ringNoteWords,
    size: 11,
    face: 'sans',
    fill: tones.soft,
  };
}

/** The largest ring, up to the usual, whose names find room, and the centre that gives it to them. */
function fitRing(width: number, wheel: Wheel): { ring: number; centreX: number } {
  for (let ring = usualRing; ; ring -= 2) {
    const { left, right } = wheelReach(ring, wheel);
    if (left + right + 6 > width && ring > 60) continue;
    const centred = width / 2 >= Math.max(left, right) + 3;
    return { ring, centreX: centred ? width / 2 : left + (width - left - right) / 2 };
  }
}

function describe(papers: WheelPapers, wheel: Wheel, links: number): string {
  const inks =
    inksOf(papers.anchor.side).length + (papers.candidate ? inksOf(papers.candidate.side).length : 0);
  return wheelShows(wheel, inks, links);
}
