/** A round thing that wants to stand at (wantX, wantY) and may not cover another. */
export interface Body {
  readonly wantX: number;
  readonly wantY: number;
  readonly radius: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface SpreadOptions {
  /** Room that must stay free between two bodies, by their indices. */
  readonly gap: (i: number, j: number) => number;
  /** Bodies stay within these distances of the origin, edges included. */
  readonly inner: number;
  readonly outer: number;
}

const rounds = 320;

/**
 * Places near the wanted ones at which no two bodies overlap, around the origin. Deterministic: bodies that want
 * the same place part in a direction that follows from their order. In the last rounds nothing pulls back, so that
 * what can be parted is parted.
 */
export function spread(bodies: readonly Body[], options: SpreadOptions): Point[] {
  const xs = bodies.map((body) => body.wantX);
  const ys = bodies.map((body) => body.wantY);
  for (let round = 0; round < rounds; round += 1) {
    const pull = round < rounds * 0.6 ? 0.06 * (1 - round / (rounds * 0.6)) : 0;
    bodies.forEach((body, i) => {
      xs[i] = xs[i]! + (body.wantX - xs[i]!) * pull;
      ys[i] = ys[i]! + (body.wantY - ys[i]!) * pull;
    });
    let moved = false;
    for (let i = 0; i < bodies.length; i += 1) {
      for (let j = i + 1; j < bodies.length; j += 1) moved = part(i, j) || moved;
    }
    bodies.forEach((body, i) => {
      keepWithin(i, body);
    });
    if (!moved && pull === 0) break;
  }
  return xs.map((x, i) => ({ x, y: ys[i]! }));

  function part(i: number, j: number): boolean {
    const a = bodies[i]!;
    const b = bodies[j]!;
    const need = a.radius + b.radius + options.gap(i, j);
    let dx = xs[j]! - xs[i]!;
    let dy = ys[j]! - ys[i]!;
    let distance = Math.hypot(dx, dy);
    if (distance >= need) return false;
    if (distance < 1e-6) {
      const angle = (i * 7 + j) * 2.399963;
      dx = Math.cos(angle);
      dy = Math.sin(angle);
      distance = 1;
    }
    const push = need - Math.hypot(xs[j]! - xs[i]!, ys[j]! - ys[i]!) + 0.01;
    // The smaller one gives way more.
    const giveA = b.radius ** 2 / (a.radius ** 2 + b.radius ** 2);
    xs[i] = xs[i]! - (dx / distance) * push * giveA;
    ys[i] = ys[i]! - (dy / distance) * push * giveA;
    xs[j] = xs[j]! + (dx / distance) * push * (1 - giveA);
    ys[j] = ys[j]! + (dy / distance) * push * (1 - giveA);
    return true;
  }

  function keepWithin(i: number, body: Body): void {
    const distance = Math.hypot(xs[i]!, ys[i]!);
    const far = Math.max(0, options.outer - body.radius);
    const near = options.inner > 0 ? options.inner + body.radius : 0;
    const kept = Math.min(Math.max(distance, near), Math.max(near, far));
    if (kept === distance) return;
    const ux = distance > 1e-6 ? xs[i]! / distance : Math.cos(i);
    const uy = distance > 1e-6 ? ys[i]! / distance : Math.sin(i);
    xs[i] = ux * kept;
    ys[i] = uy * kept;
  }
}

/**
 * Places along a line at which spans of one width do not overlap, each as near to the wanted place as may be and
 * in the wanted order, within [from, to].
 */
export function spreadAlong(wants: readonly number[], width: number, from: number, to: number): number[] {
  const order = wants.map((_, i) => i).sort((a, b) => wants[a]! - wants[b]! || a - b);
  // Spans that touch form a block, which stands at the mean of what its members want.
  const blocks: { members: number[]; start: number }[] = [];
  for (const index of order) {
    blocks.push({ members: [index], start: clampStart(wants[index]! - width / 2, 1) });
    while (blocks.length > 1) {
      const last = blocks.at(-1)!;
      const before = blocks.at(-2)!;
      if (before.start + before.members.length * width <= last.start) break;
      const members = [...before.members, ...last.members];
      const wanted =
        members.reduce((sum, m, k) => sum + wants[m]! - width / 2 - k * width, 0) / members.length;
      blocks.splice(-2, 2, { members, start: clampStart(wanted, members.length) });
    }
  }
  const places = new Array<number>(wants.length).fill(0);
  for (const block of blocks) {
    block.members.forEach((member, k) => {
      places[member] = block.start + k * width + width / 2;
    });
  }
  return places;

  function clampStart(start: number, count: number): number {
    return Math.max(from, Math.min(start, to - count * width));
  }
}
