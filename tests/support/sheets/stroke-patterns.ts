import type { Dice } from './dice.ts';
import type { LabelCanvas } from './label-canvas.ts';

/** A thin line: its label, and its width in samples. */
interface Line {
  readonly label: number;
  readonly width: number;
}

interface Desk {
  readonly on: LabelCanvas;
  /** Labels of broad places beside the ground, which is 0. */
  readonly fills: readonly number[];
  readonly lines: readonly Line[];
  /** Samples a pixel. */
  readonly px: number;
  readonly roll: Dice;
}

/** A family of papers with thin strokes: how many broad inks and how many strokes it takes, and how it is drawn. */
export interface StrokePattern {
  readonly broad: readonly [number, number];
  readonly thin: readonly [number, number];
  readonly draw: (desk: Desk) => void;
}

/** A length in samples; on every other sheet a whole, even number of pixels, as what is drawn on a screen has. */
function spacing(roll: Dice, px: number, low: number, high: number): number {
  return roll.next() < 0.5
    ? 2 * px * roll.whole(Math.ceil(low / 2), high >> 1)
    : px * roll.between(low, high);
}

const ruled: StrokePattern = {
  broad: [0, 0],
  thin: [1, 3],
  draw({ on, lines, px, roll }) {
    const step = spacing(roll, px, 18, 44);
    const [first, ...margins] = lines;
    for (let y = roll.between(0, step); y < on.height; y += step)
      on.rect(0, y, on.width, first!.width, first!.label);
    for (const [n, line] of margins.entries()) {
      const apart = roll.between(150, 260) * px;
      for (let x = (40 + 70 * n) * px; x < on.width; x += apart)
        on.rect(x, 0, line.width, on.height, line.label);
    }
  },
};

const graph: StrokePattern = {
  broad: [0, 0],
  thin: [1, 2],
  draw({ on, lines, px, roll }) {
    const fifth = lines[1] ?? lines[0]!;
    // Lines that cover more than the paper does would themselves be the ground.
    const step = Math.max(spacing(roll, px, 14, 36), 4 * lines[0]!.width);
    const [left, top] = [roll.between(0, step), roll.between(0, step)];
    const each = (fine: boolean): void => {
      for (let n = 0; n * step < on.width; n++) {
        if ((n % 5 === 0) === fine) continue;
        const line = fine ? lines[0]! : fifth;
        on.rect(left + n * step, 0, line.width, on.height, line.label);
        on.rect(0, top + n * step, on.width, line.width, line.label);
      }
    };
    each(true);
    each(false);
  },
};

const pinstripe: StrokePattern = {
  broad: [0, 0],
  thin: [1, 4],
  draw({ on, lines, px, roll }) {
    const step = spacing(roll, px, 12, 40);
    const turn = roll.next() < 0.3 ? roll.between(0.2, 1) : 0;
    const upright = roll.next() < 0.5;
    const all = step * lines.length;
    const shift = roll.between(0, all);
    const slant = Math.hypot(1, turn);
    for (let y = 0; y < on.height; y++)
      for (let x = 0; x < on.width; x++) {
        const at = (shift + (upright ? x + turn * y : y + turn * x)) % all;
        const line = lines[Math.floor(at / step)]!;
        if (at % step < line.width * slant) on.labels[y * on.width + x] = line.label;
      }
  },
};

/** Broad stripes with thin ones where they meet, and thin ones within them. */
const ticking: StrokePattern = {
  broad: [1, 2],
  thin: [1, 3],
  draw({ on, fills, lines, px, roll }) {
    const upright = roll.next() < 0.5;
    const stripe = (x: number, w: number, label: number): void => {
      if (upright) on.rect(x, 0, w, on.height, label);
      else on.rect(0, x, on.width, w, label);
    };
    const broad = fills.map(() => spacing(roll, px, 24, 70));
    // The ground is the widest: which of two equal ones lies behind, nobody can say.
    const clear = Math.max(...broad) * roll.between(1.1, 1.8);
    const within = roll.between(0.25, 0.4);
    for (let x = -roll.between(0, 60) * px, n = 0; x < on.width; n++) {
      const k = n % fills.length;
      stripe(x, broad[k]!, fills[k]!);
      // The first lies between two grounds, the others on one of them.
      for (const [i, line] of lines.entries()) {
        if (i === 0) {
          stripe(x - line.width, line.width, line.label);
          stripe(x + broad[k]!, line.width, line.label);
        } else if (i === 1) stripe(x + broad[k]! + within * clear, line.width, line.label);
        else stripe(x + broad[k]! * 0.5, line.width, line.label);
      }
      x += broad[k]! + clear;
    }
  },
};

/** Discs, petals and boxes, filled and drawn around. */
const outlines: StrokePattern = {
  broad: [1, 3],
  thin: [1, 2],
  draw({ on, fills, lines, px, roll }) {
    const count = roll.whole(45, 80);
    for (let n = 0; n < count; n++) {
      const line = lines[n % lines.length]!;
      const fill = fills[n % fills.length]!;
      const [x, y] = [roll.between(0, on.width), roll.between(0, on.height)];
      const [rx, ry] = [px * roll.between(22, 60), px * roll.between(18, 44)];
      const kind = roll.whole(0, 2);
      if (kind === 2) {
        on.rect(x, y, rx * 1.6, ry * 1.6, line.label);
        on.rect(x + line.width, y + line.width, rx * 1.6 - 2 * line.width, ry * 1.6 - 2 * line.width, fill);
        continue;
      }
      const t = roll.between(0, 2 * Math.PI);
      on.ellipse(x, y, rx, kind ? rx : ry, t, line.label);
      on.ellipse(x, y, rx - line.width, (kind ? rx : ry) - line.width, t, fill);
    }
  },
};

/** Broad bands both ways, with thin lines over all. */
const windowpane: StrokePattern = {
  broad: [1, 2],
  thin: [1, 2],
  draw({ on, fills, lines, px, roll }) {
    const step = spacing(roll, px, 70, 150);
    const wide = step * roll.between(0.2, 0.3);
    const [left, top] = [roll.between(0, step), roll.between(0, step)];
    for (let n = -1; n * step < on.width; n++) {
      on.rect(left + n * step, 0, wide, on.height, fills[0]!);
      if (fills[1]) on.rect(0, top + n * step, on.width, wide, fills[1]);
    }
    for (let n = -1; n * step < on.width; n++)
      for (const [i, line] of lines.entries()) {
        const at = step * (i ? 0.72 : 0.15);
        on.rect(left + n * step + at, 0, line.width, on.height, line.label);
        on.rect(0, top + n * step + at, on.width, line.width, line.label);
      }
  },
};

/** Curls and letters of a pen. */
const pen: StrokePattern = {
  broad: [0, 1],
  thin: [1, 3],
  draw({ on, fills, lines, px, roll }) {
    for (let n = 0; fills.length && n < 14; n++) {
      const r = px * roll.between(20, 50);
      on.ellipse(roll.between(0, on.width), roll.between(0, on.height), r, r, 0, fills[0]!);
    }
    const count = lines.length * 60;
    for (let n = 0; n < count; n++) {
      const line = lines[n % lines.length]!;
      let [x, y, t] = [roll.between(0, on.width), roll.between(0, on.height), roll.between(0, 2 * Math.PI)];
      const curl = roll.between(-0.25, 0.25);
      for (let k = 0; k < 16; k++) {
        const [u, v] = [x + 8 * px * Math.cos(t), y + 8 * px * Math.sin(t)];
        on.line(x, y, u, v, line.width, line.label);
        [x, y] = [u, v];
        t += curl;
      }
    }
  },
};

export const strokePatterns: Readonly<Record<string, StrokePattern>> = {
  ruled,
  graph,
  pinstripe,
  ticking,
  outlines,
  windowpane,
  pen,
};
