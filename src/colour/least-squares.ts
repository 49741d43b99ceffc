import { inverse, type Matrix, product, type Triple } from './matrix.ts';

/**
 * The 3×3 matrix M that makes Σ |M·from − to|² smallest.
 * @throws RangeError where the colours lie in one plane and do not fix it, or fewer than three are given.
 */
export function leastSquares(from: readonly Triple[], to: readonly Triple[]): Matrix {
  return product(sumOfProducts(to, from), inverse(sumOfProducts(from, from)));
}

/** Σ a·bᵀ. */
function sumOfProducts(as: readonly Triple[], bs: readonly Triple[]): Matrix {
  const sum = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  as.forEach((a, n) => {
    for (let i = 0; i < 9; i++) sum[i]! += a[Math.floor(i / 3)]! * bs[n]![i % 3]!;
  });
  return sum as unknown as Matrix;
}
