import type { Wheel } from '../colour/model.ts';
import type { Link, LinkKind } from '../harmony/model.ts';
import { halfDiagonal } from './marks.ts';
import type { MarkRef, SceneNode } from './model.ts';
import type { SurroundTones } from './surround.ts';
import { n } from './torn.ts';
import type { WheelPlace } from './wheel-places.ts';
import { linkSays } from './words/says.ts';

/** How a link is drawn: solid for a repeat, dotted for a near miss, dashed for opposites. */
export const linkStrokes: Partial<Record<LinkKind, LinkStroke>> = {
  repeat: { width: 2.8 },
  'near miss': { width: 3.4, dash: [0.1, 5.6] },
  opposite: { width: 1.5, dash: [8, 6] },
};

export interface LinkStroke {
  readonly width: number;
  readonly dash?: readonly number[];
}

/**
 * The links that are drawn, of all that were found, so that the wheel stays readable: repeats and near misses where
 * one of the two inks has no closer one of its kind, but no near miss of two inks that each have a repeat; and of the
 * opposites that hold on this wheel those where neither ink has one nearer to 180°.
 */
export function drawnLinks(all: readonly Link[], wheel: Wheel): Link[] {
  const links = all.filter((link) => link.kind !== 'opposite' || !link.wheels || link.wheels.includes(wheel));
  return links.filter((link) => {
    if (!linkStrokes[link.kind]) return false;
    const rivals = links.filter((other) => other.kind === link.kind);
    const closest = (of: 'anchorInk' | 'candidateInk') =>
      rivals.every((other) => other[of] !== link[of] || rank(other) >= rank(link));
    if (link.kind === 'opposite') return closest('anchorInk') && closest('candidateInk');
    if (link.kind === 'near miss' && repeated('anchorInk', link) && repeated('candidateInk', link))
      return false;
    return closest('anchorInk') || closest('candidateInk');
  });

  function repeated(of: 'anchorInk' | 'candidateInk', link: Link): boolean {
    return links.some((other) => other.kind === 'repeat' && other[of] === link[of]);
  }
}

/** The links' lines, from edge to edge of their marks, each above a halo so that it shows on any ink. */
export function linkNodes(
  links: readonly Link[],
  places: readonly WheelPlace[],
  tones: SurroundTones,
): LinkNodes {
  const below: SceneNode[] = [];
  const above: SceneNode[] = [];
  for (const link of links) {
    const from = places.find((p) => p.of === 'anchor' && p.ink.id === link.anchorInk);
    const to = places.find((p) => p.of === 'candidate' && p.ink.id === link.candidateInk);
    const stroke = linkStrokes[link.kind];
    if (!from || !to || !stroke) continue;
    const ends = edgeToEdge(from, to);
    const mark: MarkRef = {
      kind: 'link',
      inks: [link.anchorInk, link.candidateInk],
      label: linkSays(link, from.ink, to.ink),
    };
    const length = Math.hypot(ends.x2 - ends.x1, ends.y2 - ends.y1);
    (length > 44 ? below : above).push(linkNode(mark, link.kind, ends, stroke, tones));
  }
  return { below, above };
}

/** Long links lie below the marks they pass, short ones above. */
export interface LinkNodes {
  readonly below: SceneNode[];
  readonly above: SceneNode[];
}

interface Ends {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

function linkNode(
  mark: MarkRef,
  kind: LinkKind,
  ends: Ends,
  stroke: LinkStroke,
  tones: SurroundTones,
): SceneNode {
  const line = { type: 'line', ...ends, lineCap: 'round' } as const;
  return {
    type: 'group',
    className: `link-mark link-${kind.replace(' ', '-')}`,
    mark,
    children: [
      { ...line, className: 'reach', stroke: tones.text, strokeWidth: 16, opacity: 0 },
      { ...line, className: 'halo', stroke: tones.halo, strokeWidth: stroke.width + 2.4, opacity: 0.85 },
      {
        ...line,
        className: 'link-line',
        stroke: tones.text,
        strokeWidth: stroke.width,
        ...(stroke.dash ? { dash: stroke.dash } : {}),
      },
    ],
  };
}

function edgeToEdge(from: WheelPlace, to: WheelPlace): Ends {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const distance = Math.hypot(dx, dy) || 1;
  const ux = dx / distance;
  const uy = dy / distance;
  const half = halfDiagonal(to.radius);
  // Room for the round caps, so that an end rests on the mark's edge and not inside its letter.
  const start = Math.min(from.radius + 1.8, distance / 2);
  const end = Math.min(half / (Math.abs(ux) + Math.abs(uy)) + 1.8, distance / 2);
  return {
    x1: n(from.x + ux * start),
    y1: n(from.y + uy * start),
    x2: n(to.x - ux * end),
    y2: n(to.y - uy * end),
  };
}

function rank(link: Link): number {
  return link.kind === 'opposite' ? 180 - (link.hueDeg ?? 0) : link.deltaE00;
}
