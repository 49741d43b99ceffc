import { flatness } from '../inks/flatness.ts';
import { eachWindowRow } from '../inks/windows.ts';
import { type Planes, soften } from '../planes.ts';
import { numbers } from '../reading-limits.ts';

/** How far around a place that is more than a rosette the picture stays as it is, in pixels. */
const reach = 2;

/**
 * Takes rosettes out, in place: two screens make a pattern about twice as coarse as themselves, which the averaging of dots
 * leaves. Where the picture softened by `variance` more (in pixels²) is flat, and hardly another, the softer one stands.
 */
export function withoutRosettes(planes: Planes, variance: number): void {
  const { width, height } = planes;
  const wide = softer(planes, variance);
  const { limit } = flatness(wide);
  const bands = limit.length;
  const drawn = strayed(planes, wide);
  widen(drawn, width, height);
  eachWindowRow(wide, 1, (y, { l, spread }) => {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      if (spread[x]! < 0 || drawn[i]) continue;
      if (spread[x]! > limit[Math.min(bands - 1, Math.max(0, (l[x]! * bands) | 0))]!) continue;
      planes.l[i] = wide.l[i]!;
      planes.a[i] = wide.a[i]!;
      planes.b[i] = wide.b[i]!;
    }
  });
}

function softer(planes: Planes, variance: number): Planes {
  const [r, g, b] = [planes.l.slice(), planes.a.slice(), planes.b.slice()];
  const times = Math.ceil(2 * variance);
  soften({ ...planes, r, g, b }, times, variance / (2 * times));
  return { ...planes, l: r, a: g, b };
}

/** Marks where the softer picture is another by more than a rosette makes. */
function strayed(planes: Planes, wide: Planes): Uint8Array {
  const { rosette, rosetteFadesFrom, rosetteLeast } = numbers;
  const { l, a, b } = planes;
  const marks = new Uint8Array(l.length);
  for (let i = 0; i < marks.length; i++) {
    const light = wide.l[i]!;
    const most = rosette * Math.min(1, Math.max(rosetteLeast, 1 - 2 * (light - rosetteFadesFrom)));
    const dl = l[i]! - light;
    const da = a[i]! - wide.a[i]!;
    const db = b[i]! - wide.b[i]!;
    if (dl * dl + da * da + db * db > most * most) marks[i] = 1;
  }
  return marks;
}

/** Widens what is marked to both sides, then up and down, in place. */
function widen(marks: Uint8Array, width: number, height: number): void {
  for (const [lines, along, step, across] of [
    [height, width, 1, width],
    [width, height, width, 1],
  ] as const)
    for (let line = 0; line < lines; line++) {
      // How many places there are still to go to where what was last met ends.
      let left = 0;
      for (let k = -reach, i = line * across - reach * step; k < along; k++, i += step) {
        const met = k + reach < along && marks[i + reach * step] === 1;
        left = met ? 2 * reach + 1 : left - 1;
        if (k >= 0 && left > 0 && marks[i] === 0) marks[i] = 2;
      }
      for (let k = 0, i = line * across; k < along; k++, i += step) if (marks[i]) marks[i] = 1;
    }
}
