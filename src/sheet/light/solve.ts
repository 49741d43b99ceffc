/** Solves the symmetric positive system `matrix` · x = `right` (row-major, n × n) by Cholesky; a little ridge keeps it well posed. Null where it is singular. */
export function solveSymmetric(
  matrix: Float64Array,
  right: Float64Array,
  n: number,
  ridge = 0,
): Float64Array | null {
  const low = Float64Array.from(matrix);
  for (let i = 0; i < n; i++) low[i * n + i]! += ridge;
  for (let j = 0; j < n; j++) {
    for (let i = j; i < n; i++) {
      let sum = low[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= low[i * n + k]! * low[j * n + k]!;
      if (i === j) {
        if (!(sum > 1e-14)) return null;
        low[j * n + j] = Math.sqrt(sum);
      } else low[i * n + j] = sum / low[j * n + j]!;
    }
  }
  const x = Float64Array.from(right);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= low[i * n + k]! * x[k]!;
    x[i]! /= low[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= low[k * n + i]! * x[k]!;
    x[i]! /= low[i * n + i]!;
  }
  return x;
}
