import type { Planes } from './planes.ts';

/** Calls `each(index, meanL, meanA, meanB, spread)` for every full window of side 2·reach+1, from the top row by row. */
export function eachWindow(
  planes: Planes,
  reach: number,
  step: number,
  each: (index: number, l: number, a: number, b: number, spread: number) => void,
): void {
  const { width, height, l, a, b, on } = planes;
  const side = 2 * reach + 1;
  if (width < side || height < side) return;
  // Column sums over the window's rows, updated as the window moves down: four numbers and the count a column.
  const cl = new Float64Array(width);
  const ca = new Float64Array(width);
  const cb = new Float64Array(width);
  const cq = new Float64Array(width);
  const cn = new Int32Array(width);
  const addRow = (y: number, sign: number): void => {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const i = row + x;
      if (!on[i]) continue;
      const pl = l[i]!;
      const pa = a[i]!;
      const pb = b[i]!;
      cl[x]! += sign * pl;
      ca[x]! += sign * pa;
      cb[x]! += sign * pb;
      cq[x]! += sign * (pl * pl + pa * pa + pb * pb);
      cn[x]! += sign;
    }
  };
  for (let y = 0; y < side - 1; y++) addRow(y, 1);
  const full = side * side;
  for (let y = reach; y < height - reach; y++) {
    addRow(y + reach, 1);
    if ((y - reach) % step === 0) {
      let sl = 0;
      let sa = 0;
      let sb = 0;
      let sq = 0;
      let sn = 0;
      for (let x = 0; x < side - 1; x++) {
        sl += cl[x]!;
        sa += ca[x]!;
        sb += cb[x]!;
        sq += cq[x]!;
        sn += cn[x]!;
      }
      for (let x = reach; x < width - reach; x++) {
        const add = x + reach;
        sl += cl[add]!;
        sa += ca[add]!;
        sb += cb[add]!;
        sq += cq[add]!;
        sn += cn[add]!;
        if (sn === full && (x - reach) % step === 0) {
          const ml = sl / full;
          const ma = sa / full;
          const mb = sb / full;
          const variance = sq / full - ml * ml - ma * ma - mb * mb;
          each(y * width + x, ml, ma, mb, variance > 0 ? Math.sqrt(variance) : 0);
        }
        const drop = x - reach;
        sl -= cl[drop]!;
        sa -= ca[drop]!;
        sb -= cb[drop]!;
        sq -= cq[drop]!;
        sn -= cn[drop]!;
      }
    }
    addRow(y - reach, -1);
  }
}
