import type { Wheel } from '../colour/model.ts';
import type { ColourRegion } from '../harmony/model.ts';
import type { SceneNode } from './model.ts';
import { type StripLook, stripTop } from './strip-look.ts';
import type { SurroundTones } from './surround.ts';
import { n } from './torn.ts';
import { polar, type WheelLayout, wheelAngleDeg } from './wheel-places.ts';
import { regionSays } from './words/region-says.ts';

/** Stretches of colour on the wheel, as dashed outlines around its centre: nothing is filled, no colour is proposed. */
export function regionsOnWheel(
  regions: readonly ColourRegion[],
  layout: WheelLayout,
  wheel: Wheel,
  tones: SurroundTones,
): SceneNode[] {
  return regions.map((region) => {
    const hues = huesOf(region);
    const along = (chroma: number, list: readonly number[]) =>
      list.map((hue) => {
        const { x, y } = polar(wheelAngleDeg(hue, wheel), layout.radiusFromChroma(chroma));
        return `${n(x)} ${n(y)}`;
      });
    const [least, most] = region.chroma;
    const outline = [...along(most, hues), ...along(least, hues.toReversed())];
    return {
      type: 'path',
      className: 'region',
      d: `M${outline.join('L')}Z`,
      ...paint(tones),
      mark: { kind: 'region', inks: [], label: regionSays(region) },
    };
  });
}

/** The same stretches on the strip, over all its lanes. */
export function regionsOnStrip(
  regions: readonly ColourRegion[],
  bottom: number,
  { tones, x }: StripLook,
): SceneNode[] {
  return regions.map((region): SceneNode => {
    const [from, to] = region.lightness.map(x) as [number, number];
    return {
      type: 'rect',
      className: 'region',
      x: n(Math.min(from, to) - 2),
      y: stripTop,
      width: n(Math.abs(to - from) + 4),
      height: bottom - stripTop,
      ...paint(tones),
      mark: { kind: 'region', inks: [], label: regionSays(region) },
    };
  });
}

function paint({ text }: SurroundTones) {
  return { fill: 'none', stroke: text, strokeWidth: 1.8, dash: [5, 4] } as const;
}

/** Every few degrees from one end to the other, upwards over 360. */
function huesOf({ hueDeg: [from, to] }: ColourRegion): number[] {
  const width = (((to - from) % 360) + 360) % 360 || 360;
  const steps = Math.max(2, Math.ceil(width / stepDeg));
  return Array.from({ length: steps + 1 }, (_, i) => (from + (width * i) / steps) % 360);
}

/** Fine enough for an arc to look round, in degrees. */
const stepDeg = 4;
