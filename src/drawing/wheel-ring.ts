import { hexFromOklch } from '../colour/gamut.ts';
import type { Wheel } from '../colour/model.ts';
import { hueFromPainter } from '../colour/wheels.ts';
import { hueNames } from './hue-names.ts';
import type { SceneNode } from './model.ts';
import type { SurroundTones } from './surround.ts';
import { textWidth } from './text.ts';
import { n } from './torn.ts';
import { polar, type WheelLayout, wheelAngleDeg } from './wheel-places.ts';

/** Rings of even chroma, the hub, thin ticks in the hues, and their names; around the origin. */
export function wheelRing(layout: WheelLayout, wheel: Wheel, tones: SurroundTones): SceneNode[] {
  return [...rings(layout, tones), ...ticks(layout.ring, wheel), ...names(layout.ring, wheel, tones)];
}

/** How far a wheel with its names reaches left and right of its centre. */
export function wheelReach(ring: number, wheel: Wheel): { readonly left: number; readonly right: number } {
  let left = ring + 16;
  let right = ring + 16;
  for (const { name, x, anchor } of namePlaces(ring, wheel)) {
    const width = textWidth(name, nameStyle);
    if (anchor === 'end') left = Math.max(left, width - x);
    if (anchor === 'start') right = Math.max(right, width + x);
  }
  return { left, right };
}

function rings(layout: WheelLayout, tones: SurroundTones): SceneNode[] {
  const nodes: SceneNode[] = [];
  const steps = Math.round(layout.largestChroma / 0.05);
  for (let step = 1; step <= steps; step += 1) {
    nodes.push({
      type: 'circle',
      cx: 0,
      cy: 0,
      r: n(layout.radiusFromChroma(step * 0.05)),
      fill: 'none',
      stroke: tones.line,
      strokeWidth: 1,
    });
  }
  nodes.push({
    type: 'circle',
    cx: 0,
    cy: 0,
    r: n(layout.hubRadius),
    fill: tones.veil,
    stroke: tones.line,
    strokeWidth: 1,
    className: 'hub',
  });
  return nodes;
}

function ticks(ring: number, wheel: Wheel): SceneNode[] {
  return Array.from({ length: 72 }, (_, i): SceneNode => {
    const deg = i * 5;
    // Ticks stand evenly on the drawing, so on the painter's wheel their hue is looked up from the angle.
    const hue = wheel === 'eye' ? deg : hueFromPainter(90 - deg);
    const long = deg % 30 === 0;
    const inner = polar(deg, ring + 7);
    const outer = polar(deg, ring + (long ? 16 : 12));
    return {
      type: 'line',
      x1: n(inner.x),
      y1: n(inner.y),
      x2: n(outer.x),
      y2: n(outer.y),
      stroke: hexFromOklch({ l: 0.66, c: 0.13, h: hue }),
      strokeWidth: long ? 2.4 : 1.4,
    };
  });
}

function names(ring: number, wheel: Wheel, tones: SurroundTones): SceneNode[] {
  return namePlaces(ring, wheel).map(
    ({ name, x, y, anchor }): SceneNode => ({
      type: 'text',
      x: n(x),
      y: n(y + 4.2),
      text: name,
      anchor,
      fill: tones.text,
      ...nameStyle,
    }),
  );
}

const nameStyle = { size: 12.5, face: 'sans' } as const;

interface NamePlace {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

function namePlaces(ring: number, wheel: Wheel): NamePlace[] {
  return hueNames(wheel).map(({ name, deg }) => {
    const at = polar(wheelAngleDeg(deg, wheel), ring + 25);
    return { name, ...at, anchor: Math.abs(at.x) < 20 ? 'middle' : at.x > 0 ? 'start' : 'end' };
  });
}
