/** Numbers 0 up to 1 that look like chance and are the same every time for the same seed. Mulberry32 (public domain). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A number from `low` to `high`. */
export function between(next: () => number, low: number, high: number): number {
  return low + next() * (high - low);
}

/**
 * Smooth noise in the plane, 0–1, one wave a unit, that repeats after `period` units both ways.
 * @param period a power of two.
 */
export function smoothNoise(seed: number, period = 64): (x: number, y: number) => number {
  const next = chance(seed);
  const lattice = Float32Array.from({ length: period * period }, next);
  const mask = period - 1;
  return (x, y) => {
    const [x0, y0] = [Math.floor(x), Math.floor(y)];
    const [u, v] = [ease(x - x0), ease(y - y0)];
    const [left, right] = [x0 & mask, (x0 + 1) & mask];
    const [top, bottom] = [(y0 & mask) * period, ((y0 + 1) & mask) * period];
    const above = lattice[top + left]! + (lattice[top + right]! - lattice[top + left]!) * u;
    const below = lattice[bottom + left]! + (lattice[bottom + right]! - lattice[bottom + left]!) * u;
    return above + (below - above) * v;
  };
}

function ease(t: number): number {
  return t * t * (3 - 2 * t);
}
