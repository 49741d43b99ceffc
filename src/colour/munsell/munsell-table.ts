import { packedRenotation } from '../../../reference-data/munsell-renotation/renotation.ts';
import { labResponse } from '../cielab.ts';
import { whites } from '../illuminants.ts';
import { munsellLuminance } from './munsell-value.ts';

/**
 * The renotation as polar coordinates in CIELAB under its own illuminant C, where its lines run nearly straight.
 * Built once, when a Munsell colour is first asked for.
 * Source: Newhall, Nickerson, Judd, JOSA 33(7):385–418 (1943).
 */
export interface MunsellTable {
  /** C*ab at hue 0–39, value 1–9, chroma step 1… (2 a step), flat; see `at`. */
  readonly radius: Float64Array;
  /** Angle in radians, −π…π, at the same place. */
  readonly angle: Float64Array;
  /** How many chroma steps stand at [hue × 9 + value − 1]. */
  readonly steps: Uint8Array;
}

export const hueCount = 40;
export const valueCount = 9;
/** Steps of chroma kept for each hue and value; the longest row of the table has 19. */
export const stepCount = 20;

/** Index into `radius` and `angle`: hue 0–39, value 1–9, step 1–19. */
export function at(hue: number, value: number, step: number): number {
  return (hue * valueCount + value - 1) * stepCount + step;
}

let kept: MunsellTable | undefined;

export function munsellTable(): MunsellTable {
  kept ??= build();
  return kept;
}

function build(): MunsellTable {
  const size = hueCount * valueCount * stepCount;
  const table = {
    radius: new Float64Array(size),
    angle: new Float64Array(size),
    steps: new Uint8Array(hueCount * valueCount),
  };
  for (let hue = 0; hue < hueCount; hue++) {
    const rows = packedRenotation[hue]!.split('|');
    for (let value = 1; value <= valueCount; value++) {
      const y = munsellLuminance(value);
      const numbers = rows[value - 1]!.split(' ').map(Number);
      table.steps[hue * valueCount + value - 1] = numbers.length / 2;
      let cx = 0;
      let cy = 0;
      for (let step = 1; step <= numbers.length / 2; step++) {
        cx += numbers[2 * step - 2]!;
        cy += numbers[2 * step - 1]!;
        const [a, b] = abUnderC(cx / 10000, cy / 10000, y);
        const i = at(hue, value, step);
        table.radius[i] = Math.hypot(a, b);
        table.angle[i] = Math.atan2(b, a);
      }
    }
  }
  return table;
}

/** a* and b* under illuminant C of a chromaticity and CIE luminance 0–1. */
function abUnderC(x: number, y: number, luminance: number): readonly [number, number] {
  const fy = labResponse(luminance);
  return [
    500 * (labResponse(((x / y) * luminance) / whites.C.x) - fy),
    200 * (fy - labResponse((((1 - x - y) / y) * luminance) / whites.C.z)),
  ];
}
