import type { Dice } from './dice.ts';
import type { LabelCanvas } from './label-canvas.ts';

/** Draws one family of pattern. Label 0 is the ground, 1…inks the main inks, and `accent` (if any) a label above them. `u` is the canvas's width / 100. */
export type Pattern = (on: LabelCanvas, inks: number, roll: Dice) => void;

const tau = 2 * Math.PI;

const dots: Pattern = (c, inks, roll) => {
  const step = (c.width / 100) * roll.between(5, 14);
  const r = step * roll.between(0.2, 0.38);
  let n = roll.whole(0, 5);
  for (let y = step / 2, row = 0; y < c.height + step; y += step * 0.87, row++)
    for (let x = row % 2 ? 0 : step / 2; x < c.width + step; x += step)
      c.ellipse(x, y, r, r, 0, 1 + (n++ % inks));
};

const stripe: Pattern = (c, inks, roll) => {
  // The ground lies between all of them, and is the widest.
  const widths = Array.from(
    { length: 2 * inks },
    (_, k) => (c.width / 100) * (k % 2 ? roll.between(1.2, 5) : roll.between(2.5, 6)),
  );
  const upright = roll.next() < 0.5;
  const turn = roll.next() < 0.3 ? roll.between(0.2, 0.9) : 0;
  const total = widths.reduce((s, w) => s + w, 0);
  for (let y = 0; y < c.height; y++)
    for (let x = 0; x < c.width; x++) {
      let at = ((upright ? x : y) + turn * (upright ? y : x)) % total;
      let k = 0;
      while (at >= widths[k]!) at -= widths[k++]!;
      c.labels[y * c.width + x] = k % 2 ? (k + 1) / 2 : 0;
    }
};

const chevron: Pattern = (c, inks, roll) => {
  const wide = (c.width / 100) * roll.between(6, 14);
  const band = (c.width / 100) * roll.between(2.5, 6);
  for (let y = 0; y < c.height; y++)
    for (let x = 0; x < c.width; x++) {
      const zig = Math.abs((x % (2 * wide)) - wide) * 0.8;
      const n = Math.floor((y + zig) / band);
      // Every other band is the ground, as on paper.
      c.labels[y * c.width + x] = n % 2 ? 1 + (((n - 1) >> 1) % inks) : 0;
    }
};

const grid: Pattern = (c, inks, roll) => {
  const step = (c.width / 100) * roll.between(5, 11);
  const line = (c.width / 100) * roll.between(0.7, 1.6);
  for (let i = 0, x = step / 2; x < c.width; x += step, i++) c.rect(x, 0, line, c.height, 1 + (i % inks));
  for (let i = 1, y = step / 2; y < c.height; y += step, i++) c.rect(0, y, c.width, line, 1 + (i % inks));
};

const floral: Pattern = (c, inks, roll) => {
  const u = c.width / 100;
  const count = roll.whole(25, 70);
  for (let i = 0; i < count; i++) {
    const x = roll.between(0, c.width);
    const y = roll.between(0, c.height);
    const r = u * roll.between(2.2, 6);
    const petal = 1 + (i % inks);
    const turn = roll.between(0, tau);
    if (inks > 1) {
      const leaf = 1 + ((i + 1) % inks);
      for (let k = 0; k < 2; k++) {
        const t = turn + k * roll.between(1, 3);
        c.ellipse(x + Math.cos(t) * r * 1.5, y + Math.sin(t) * r * 1.5, r * 0.8, r * 0.32, t, leaf);
      }
    }
    const petals = roll.whole(5, 7);
    for (let k = 0; k < petals; k++) {
      const t = turn + (k * tau) / petals;
      c.ellipse(x + Math.cos(t) * r * 0.6, y + Math.sin(t) * r * 0.6, r * 0.55, r * 0.34, t, petal);
    }
    c.ellipse(x, y, r * 0.28, r * 0.28, 0, 1 + ((i + 2) % inks));
  }
};

const text: Pattern = (c, inks, roll) => {
  const u = c.width / 100;
  const size = u * roll.between(2.5, 5);
  const stroke = size * roll.between(0.16, 0.26);
  let row = 0;
  for (let y = size; y < c.height; y += size * 1.7, row++) {
    const label = 1 + (row % inks);
    for (let x = size * roll.between(0.2, 1); x < c.width; x += size * roll.between(0.75, 1.05)) {
      if (roll.next() < 0.15) continue;
      const kind = roll.whole(0, 3);
      const h = size * roll.between(0.7, 1);
      if (kind !== 1) c.line(x, y, x, y + h, stroke, label);
      if (kind !== 0) c.line(x, y + h, x + size * 0.5, y + h * roll.between(0.8, 1), stroke, label);
      if (kind > 1) c.line(x, y + h * 0.4, x + size * 0.5, y + h * 0.5, stroke, label);
    }
  }
};

const checker: Pattern = (c, inks, roll) => {
  const step = (c.width / 100) * roll.between(5, 13);
  for (let y = 0, j = 0; y < c.height; y += step, j++)
    for (let x = 0, i = 0; x < c.width; x += step, i++)
      if ((i + j) % 2) c.rect(x, y, step, step, 1 + ((((i + j) >> 1) + i) % inks));
};

const confetti: Pattern = (c, inks, roll) => {
  const u = c.width / 100;
  for (let i = 0; i < 260; i++) {
    const x = roll.between(0, c.width);
    const y = roll.between(0, c.height);
    const r = u * roll.between(1, 2.8);
    const t = roll.between(0, tau);
    const at = (k: number): [number, number] => [x + r * Math.cos(t + k), y + r * Math.sin(t + k)];
    const corners = roll.whole(3, 5);
    c.polygon(
      Array.from({ length: corners }, (_, k) => at((k * tau) / corners)),
      1 + (i % inks),
    );
  }
};

const scallop: Pattern = (c, inks, roll) => {
  const r = (c.width / 100) * roll.between(4, 9);
  let row = 0;
  for (let y = -r; y < c.height + 2 * r; y += r * 0.9, row++) {
    const label = 1 + (row % inks);
    for (let x = row % 2 ? 0 : r; x < c.width + r; x += 2 * r) {
      c.ellipse(x, y, r, r, 0, 0);
      c.ellipse(x, y, r * 0.7, r * 0.7, 0, label);
    }
  }
};

const leaves: Pattern = (c, inks, roll) => {
  const u = c.width / 100;
  for (let i = 0; i < 60; i++) {
    const x = roll.between(0, c.width);
    const y = roll.between(0, c.height);
    const t = roll.between(0, tau);
    const r = u * roll.between(3, 8);
    const label = 1 + (i % inks);
    c.line(x, y, x + Math.cos(t) * r * 2, y + Math.sin(t) * r * 2, u * roll.between(0.35, 0.7), label);
    for (let k = 0; k < 4; k++) {
      const side = k % 2 ? 0.7 : -0.7;
      const at = 0.4 + 0.4 * k;
      c.ellipse(
        x + Math.cos(t) * r * at + Math.cos(t + side) * r * 0.4,
        y + Math.sin(t) * r * at + Math.sin(t + side) * r * 0.4,
        r * 0.42,
        r * 0.16,
        t + side,
        label,
      );
    }
  }
};

export const patterns: Readonly<Record<string, Pattern>> = {
  dots,
  stripe,
  chevron,
  grid,
  floral,
  text,
  checker,
  confetti,
  scallop,
  leaves,
};

/** Small things strewn over the sheet until they cover about `share` of it: the accent. Its features are `size` across. */
export function strew(c: LabelCanvas, label: number, share: number, size: number, roll: Dice): void {
  const goal = share * c.labels.length;
  const shape = roll.whole(0, 2);
  let covered = 0;
  for (let tries = 0; covered < goal && tries < 5000; tries++) {
    const x = roll.between(0, c.width);
    const y = roll.between(0, c.height);
    const r = (size / 2) * roll.between(0.85, 1.2);
    if (shape === 0) covered += c.ellipse(x, y, r, r, 0, label);
    else if (shape === 1) covered += c.rect(x - r * 0.9, y - r * 0.9, r * 1.8, r * 1.8, label);
    else covered += c.line(x, y, x + roll.between(-4, 4) * r, y + roll.between(-4, 4) * r, size * 0.6, label);
  }
}
