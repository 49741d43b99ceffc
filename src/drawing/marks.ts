import { scaleSqrt } from 'd3-scale';
import type { Ink } from '../sheet/model.ts';
import { letterOn } from './ladders.ts';
import type { SceneNode } from './model.ts';
import type { SurroundTones } from './surround.ts';
import { n } from './torn.ts';

/** Radius of the disc that stands for a tenth of a sheet. All marks of a wheel follow from it. */
export const radiusOfTenth = 12.5;
/** No mark is smaller: a letter must fit in it. It is the size of a share of about 3 %. */
export const smallestRadius = 7;
/** Nor larger: it is the size of a share of 40 %. */
export const largestRadius = 25;
/** In the hub neutrals are drawn at most so large: it says which there are, the chips say how much. */
export const largestHubRadius = 11;

/** Radius of the disc whose area follows a share (0–1), between the smallest and the largest. */
export function radiusFromShare(share: number): number {
  return Math.min(largestRadius, Math.max(smallestRadius, areaScale(Math.max(0, share))));
}

/** Half the diagonal of the diamond that covers as much as a disc of this radius. */
export function halfDiagonal(radius: number): number {
  return radius * Math.sqrt(Math.PI / 2);
}

export interface MarkPlace {
  readonly x: number;
  readonly y: number;
  /** Radius of the disc of the same area. */
  readonly radius: number;
}

/** An ink's mark, a disc for the anchor and a diamond for the candidate, with its letter; reference and words as given. */
export function inkMark(
  ink: Ink,
  of: 'anchor' | 'candidate',
  place: MarkPlace,
  says: string,
  tones: SurroundTones,
): SceneNode {
  const paint = { fill: ink.hex, stroke: tones.edge, strokeWidth: 1.6 };
  const { x, y, radius } = place;
  return {
    type: 'group',
    className: 'ink-mark',
    mark: { kind: 'ink', inks: [ink.id], label: says },
    children: [
      of === 'anchor'
        ? { type: 'circle', cx: n(x), cy: n(y), r: n(radius), ...paint }
        : { type: 'path', d: diamondPath(x, y, halfDiagonal(radius)), ...paint },
      letterNode(ink, x, y, letterSize(radius)),
    ],
  };
}

/** The letter of an ink, centred on a point, in whichever of dark and light reads better on it. */
export function letterNode(ink: Ink, x: number, y: number, size: number): SceneNode {
  return {
    type: 'text',
    x: n(x),
    y: n(y + size * 0.335),
    text: ink.id,
    size,
    face: 'sans',
    weight: 600,
    anchor: 'middle',
    fill: letterOn(ink.hex),
  };
}

/** A diamond's outline. */
export function diamondPath(x: number, y: number, half: number): string {
  return `M${n(x)} ${n(y - half)}L${n(x + half)} ${n(y)}L${n(x)} ${n(y + half)}L${n(x - half)} ${n(y)}Z`;
}

const areaScale = scaleSqrt().domain([0, 0.1]).range([0, radiusOfTenth]);

function letterSize(radius: number): number {
  return radius < 9 ? 11 : radius < 14 ? 12 : 13;
}
