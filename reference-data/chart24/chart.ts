/**
 * The 24 patches of the colour rendition chart in reading order: name, then x, y, Y (0–1) under illuminant C, CIE 1931 2°:
 * the same numbers as chart24-xyY-C-1976.csv (a test says so).
 * Source: McCamy, Marcus, Davidson, J. Appl. Photographic Engineering 2(3):95–99 (1976). See SOURCE.md.
 */
export const chart24: readonly (readonly [name: string, x: number, y: number, luminance: number])[] = [
  ['dark skin', 0.4002, 0.3504, 0.1005],
  ['light skin', 0.3773, 0.3446, 0.3582],
  ['blue sky', 0.247, 0.2514, 0.1933],
  ['foliage', 0.3372, 0.422, 0.1329],
  ['blue flower', 0.2651, 0.24, 0.2427],
  ['bluish green', 0.2608, 0.343, 0.4306],
  ['orange', 0.506, 0.407, 0.3005],
  ['purplish blue', 0.211, 0.175, 0.12],
  ['moderate red', 0.4533, 0.3058, 0.1977],
  ['purple', 0.2845, 0.202, 0.0656],
  ['yellow green', 0.38, 0.4887, 0.4429],
  ['orange yellow', 0.4729, 0.4375, 0.4306],
  ['blue', 0.1866, 0.1285, 0.0611],
  ['green', 0.3046, 0.4782, 0.2339],
  ['red', 0.5385, 0.3129, 0.12],
  ['yellow', 0.448, 0.4703, 0.591],
  ['magenta', 0.3635, 0.2325, 0.1977],
  ['cyan', 0.1958, 0.2519, 0.1977],
  ['white 9.5 (.05 D)', 0.3101, 0.3163, 0.9001],
  ['neutral 8 (.23 D)', 0.3101, 0.3163, 0.591],
  ['neutral 6.5 (.44 D)', 0.3101, 0.3163, 0.362],
  ['neutral 5 (.70 D)', 0.3101, 0.3163, 0.1977],
  ['neutral 3.5 (1.05 D)', 0.3101, 0.3163, 0.09],
  ['black 2 (1.5 D)', 0.3101, 0.3163, 0.0313],
];
