import type { Outline } from './raster.ts';

/** Outlines of simple shapes, in millimetres. Angles in degrees, clockwise from the right as pages have y downward. */

export function circle(x: number, y: number, radius: number): Outline {
  return ellipse(x, y, radius, radius, 0);
}

export function ellipse(x: number, y: number, rx: number, ry: number, angle: number): Outline {
  return placed(
    around(28, (t) => [rx * Math.cos(t), ry * Math.sin(t)]),
    x,
    y,
    angle,
  );
}

/** A circle that a hand drew: its radius wavers by the given share. */
export function wobblyCircle(x: number, y: number, radius: number, waver: number, phase: number): Outline {
  const at = (t: number): number =>
    radius * (1 + waver * (0.6 * Math.sin(2 * t + phase) + 0.4 * Math.sin(3 * t + 2.3 * phase)));
  return placed(
    around(32, (t) => [at(t) * Math.cos(t), at(t) * Math.sin(t)]),
    x,
    y,
    0,
  );
}

export function rectangle(x: number, y: number, width: number, height: number): Outline {
  return [x, y, x + width, y, x + width, y + height, x, y + height];
}

/** A leaf or petal from (x, y) outward: pointed at both ends; `belly` says where it is widest, 0–1. */
export function leaf(
  x: number,
  y: number,
  angle: number,
  length: number,
  width: number,
  belly = 0.5,
): Outline {
  const half: number[] = [];
  const steps = 12;
  const power = Math.log(0.5) / Math.log(belly);
  for (let i = 0; i <= steps; i += 1) {
    const t = i / steps;
    half.push(t * length, (width / 2) * Math.sin(Math.PI * t ** power) ** 0.85);
  }
  return placed(mirrored(half), x, y, angle);
}

/** A rounded petal from (x, y) outward with a small notch in its end. */
export function petal(x: number, y: number, angle: number, length: number, width: number): Outline {
  const half: number[] = [];
  const steps = 14;
  for (let i = 0; i <= steps; i += 1) {
    const t = i / steps;
    const along = length * (Math.sin((t * Math.PI) / 2) - 0.1 * Math.max(0, t - 0.75) * 4);
    half.push(along, (width / 2) * Math.sin(Math.PI * t ** 0.9) ** 0.7 * (t < 1 ? 1 : 0));
  }
  return placed(mirrored(half), x, y, angle);
}

export function heart(x: number, y: number, size: number, angle: number): Outline {
  const shape = around(40, (t) => {
    const across = 16 * Math.sin(t) ** 3;
    const down = -(13 * Math.cos(t) - 5 * Math.cos(2 * t) - 2 * Math.cos(3 * t) - Math.cos(4 * t));
    return [(across / 34) * size, (down / 34) * size];
  });
  return placed(shape, x, y, angle);
}

export function star(
  x: number,
  y: number,
  radius: number,
  points: number,
  angle: number,
  inner = 0.45,
): Outline {
  const shape: number[] = [];
  for (let i = 0; i < points * 2; i += 1) {
    const [t, r] = [(i * Math.PI) / points - Math.PI / 2, i % 2 ? radius * inner : radius];
    shape.push(r * Math.cos(t), r * Math.sin(t));
  }
  return placed(shape, x, y, angle);
}

export function polygon(...corners: readonly (readonly [number, number])[]): Outline {
  return corners.flat();
}

/** Turns an outline about the origin and then moves it. */
export function placed(outline: Outline, x: number, y: number, angle: number): Outline {
  const turn = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const moved: number[] = [];
  for (let i = 0; i < outline.length; i += 2) {
    moved.push(x + outline[i]! * cos - outline[i + 1]! * sin, y + outline[i]! * sin + outline[i + 1]! * cos);
  }
  return moved;
}

function around(steps: number, at: (t: number) => readonly [number, number]): number[] {
  return Array.from({ length: steps }, (_, i) => at((i * 2 * Math.PI) / steps)).flat();
}

function mirrored(half: readonly number[]): number[] {
  const whole = [...half];
  for (let i = half.length - 4; i >= 2; i -= 2) whole.push(half[i]!, -half[i + 1]!);
  return whole;
}
