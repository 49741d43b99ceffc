import { hexFromOklch } from '../colour/gamut.ts';
import type { Wheel } from '../colour/model.ts';
import { hueFromPainter } from '../colour/wheels.ts';
import { hueNames } from './hue-names.ts';
import type { SceneNode } from './model.ts';
import type { SurroundTones } from './surround.ts';
import { n } from './torn.ts';
import { polar, ringRadius, type WheelLayout, wheelAngleDeg } from './wheel-places.ts';

/** Rings of even chroma, the hub, thin ticks in the hues, and their names; around the origin. */
export function wheelRing(layout: WheelLayout, wheel: Wheel, tones: SurroundTones): SceneNode[] {
  return [...rings(layout, tones), ...ticks(wheel), ...names(wheel, tones)];
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

function ticks(wheel: Wheel): SceneNode[] {
  return Array.from({ length: 72 }, (_, i): SceneNode => {
    const deg = i * 5;
    // Ticks stand evenly on the drawing, so on the painter's wheel their hue is looked up from the angle.
    const hue = wheel === 'eye' ? deg : hueFromPainter(90 - deg);
    const long = deg % 30 === 0;
    const inner = polar(deg, ringRadius + 7);
    const outer = polar(deg, ringRadius + (long ? 16 : 12));
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

function names(wheel: Wheel, tones: SurroundTones): SceneNode[] {
  return hueNames(wheel).map(({ name, deg }): SceneNode => {
    const at = polar(wheelAngleDeg(deg, wheel), ringRadius + 25);
    const side = Math.abs(at.x) < 20 ? 'middle' : at.x > 0 ? 'start' : 'end';
    return {
      type: 'text',
      x: n(at.x),
      y: n(at.y + 4.2),
      text: name,
      size: 12.5,
      face: 'sans',
      anchor: side,
      fill: tones.text,
    };
  });
}
