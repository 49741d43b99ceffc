/** A 3×3 matrix, row by row. */
export type Matrix = readonly [number, number, number, number, number, number, number, number, number];
/** Three numbers. */
export type Triple = readonly [number, number, number];

/** Matrix times column. */
export function times(m: Matrix, v: Triple): Triple {
  return [
    m[0] * v[0] + m[1] * v[1] + m[2] * v[2],
    m[3] * v[0] + m[4] * v[1] + m[5] * v[2],
    m[6] * v[0] + m[7] * v[1] + m[8] * v[2],
  ];
}

/** Matrix times matrix: the second acts first. */
export function product(m: Matrix, n: Matrix): Matrix {
  const columns = [0, 1, 2].map((i) => times(m, [n[i]!, n[i + 3]!, n[i + 6]!]));
  const [p, q, r] = columns as [Triple, Triple, Triple];
  return [p[0], q[0], r[0], p[1], q[1], r[1], p[2], q[2], r[2]];
}

/**
 * The matrix that undoes another.
 * @throws RangeError where it has none.
 */
export function inverse(m: Matrix): Matrix {
  const [a, b, c, d, e, f, g, h, i] = m;
  const det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  if (!Number.isFinite(1 / det)) throw new RangeError(`Matrix without an inverse: ${m.join(' ')}`);
  const s = 1 / det;
  return [
    s * (e * i - f * h),
    s * (c * h - b * i),
    s * (b * f - c * e),
    s * (f * g - d * i),
    s * (a * i - c * g),
    s * (c * d - a * f),
    s * (d * h - e * g),
    s * (b * g - a * h),
    s * (a * e - b * d),
  ];
}
