import { sideMm } from './raster.ts';

/**
 * Calls back with the centre of every place of a repeating print, also of those that hang over the sheet's edge.
 * @param width, height of the repeat in millimetres.
 * @param shift by which every second row is moved, as a share of the width: 0.5 is a half-drop laid on its side.
 */
export function tiled(
  width: number,
  height: number,
  shift: number,
  at: (x: number, y: number, column: number, row: number) => void,
): void {
  const rows = Math.ceil(sideMm / height) + 1;
  const columns = Math.ceil(sideMm / width) + 1;
  for (let row = -1; row <= rows; row += 1) {
    const moved = row % 2 === 0 ? 0 : shift * width;
    for (let column = -1; column <= columns; column += 1) {
      at((column + 0.5) * width + moved, (row + 0.5) * height, column, row);
    }
  }
}
