/**
 * Path of a chip torn along its lower edge: straight above, ragged below. The tear depends on the seed alone, so
 * the same ink always tears the same way. Depth is how far the tear wanders, in the drawing's units.
 */
export function tornChipPath(box: TornBox, seed: string): string {
  const { x, y, width, height, depth = 5.5, step = 5 } = box;
  const random = seeded(seed);
  const steps = Math.max(3, Math.round(width / step));
  let d = `M${n(x)} ${n(y)}H${n(x + width)}`;
  for (let i = 0; i <= steps; i += 1) {
    const px = x + width - (width * i) / steps;
    d += `L${n(px)} ${n(y + height + depth * (random() - 0.35))}`;
  }
  return `${d}Z`;
}

export interface TornBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly depth?: number;
  readonly step?: number;
}

/** Numbers 0–1 that follow from a text: FNV-1a to seed, then mulberry32. Deterministic everywhere. */
export function seeded(text: string): () => number {
  let state = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) {
    state = Math.imul(state ^ text.charCodeAt(i), 0x01000193);
  }
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A coordinate to two decimals, without a negative zero. */
export function n(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}
