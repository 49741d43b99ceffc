import type { Oklch } from './model.ts';

/** One word that crafters and printers use, and the region of OKLCH it is used for. Hue runs upwards from its first angle. */
export interface TradeWord {
  readonly word: string;
  readonly l: readonly [number, number];
  readonly c: readonly [number, number];
  readonly h: readonly [number, number];
}

/**
 * The trade word that fits an OKLCH colour best, or null where none does. Where regions overlap, the one whose
 * middle is nearest wins.
 * Source: trade usage; the regions are ours.
 */
export function tradeWord({ l, c, h }: Oklch): string | null {
  let best: string | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const entry of tradeWords) {
    const byLightness = off(l, entry.l);
    if (byLightness > 1 || byLightness >= bestDistance) continue;
    const byChroma = off(c, entry.c);
    if (byChroma > 1 || byChroma >= bestDistance) continue;
    const distance = Math.max(byLightness, byChroma, h === null ? hueless(entry) : offHue(h, entry.h));
    if (distance <= 1 && distance < bestDistance) {
      best = entry.word;
      bestDistance = distance;
    }
  }
  return best;
}

/** Every trade word with its region: L 0–1, OKLCH chroma, hue in degrees. */
export const tradeWords: readonly TradeWord[] = [
  word('ivory', [0.955, 1], [0.012, 0.03], [85, 115]),
  word('cream', [0.9, 0.985], [0.022, 0.065], [68, 110]),
  word('kraft', [0.56, 0.76], [0.055, 0.095], [60, 84]),
  word('tan', [0.74, 0.84], [0.045, 0.085], [62, 84]),
  word('taupe', [0.46, 0.68], [0.016, 0.045], [45, 90]),
  word('charcoal', [0.26, 0.42], [0, 0.03], [0, 360]),
  word('slate', [0.45, 0.65], [0.02, 0.05], [225, 270]),
  word('navy', [0.16, 0.37], [0.045, 0.2], [252, 286]),
  word('denim', [0.42, 0.6], [0.05, 0.1], [245, 268]),
  word('cobalt', [0.36, 0.52], [0.13, 0.22], [252, 270]),
  word('sky blue', [0.74, 0.88], [0.06, 0.12], [215, 245]),
  word('powder blue', [0.82, 0.93], [0.025, 0.06], [200, 245]),
  word('periwinkle', [0.65, 0.87], [0.06, 0.12], [270, 293]),
  word('indigo', [0.3, 0.42], [0.1, 0.18], [273, 294]),
  word('turquoise', [0.68, 0.87], [0.1, 0.16], [178, 196]),
  word('teal', [0.36, 0.6], [0.05, 0.12], [183, 215]),
  word('aqua', [0.61, 0.9], [0.055, 0.125], [188, 213]),
  word('mint', [0.83, 0.95], [0.035, 0.12], [145, 174]),
  word('sage', [0.6, 0.82], [0.022, 0.07], [112, 152]),
  word('olive', [0.4, 0.62], [0.06, 0.13], [98, 117]),
  word('moss', [0.48, 0.7], [0.07, 0.13], [116, 131]),
  word('forest green', [0.3, 0.5], [0.05, 0.15], [138, 166]),
  word('emerald', [0.52, 0.76], [0.1, 0.19], [148, 172]),
  word('lime', [0.77, 0.93], [0.15, 0.25], [116, 134]),
  word('chartreuse', [0.78, 0.93], [0.14, 0.22], [107, 117]),
  word('lemon', [0.89, 0.98], [0.1, 0.21], [97, 110]),
  word('mustard', [0.62, 0.8], [0.1, 0.165], [76, 94]),
  word('ochre', [0.56, 0.72], [0.1, 0.15], [58, 77]),
  word('caramel', [0.52, 0.68], [0.085, 0.13], [54, 70]),
  word('peach', [0.82, 0.93], [0.05, 0.1], [45, 72]),
  word('apricot', [0.77, 0.87], [0.085, 0.14], [48, 72]),
  word('tangerine', [0.68, 0.8], [0.14, 0.21], [46, 66]),
  word('coral', [0.63, 0.77], [0.125, 0.195], [22, 43]),
  word('salmon', [0.68, 0.83], [0.08, 0.15], [22, 44]),
  word('terracotta', [0.54, 0.68], [0.085, 0.14], [35, 53]),
  word('rust', [0.43, 0.58], [0.1, 0.18], [34, 52]),
  word('brick', [0.42, 0.55], [0.1, 0.17], [22, 35]),
  word('scarlet', [0.53, 0.67], [0.185, 0.265], [24, 38]),
  word('crimson', [0.47, 0.62], [0.17, 0.25], [13, 25]),
  word('raspberry', [0.42, 0.6], [0.135, 0.225], [357, 374]),
  word('burgundy', [0.26, 0.42], [0.06, 0.16], [0, 24]),
  word('maroon', [0.26, 0.42], [0.07, 0.17], [22, 37]),
  word('blush', [0.82, 0.94], [0.02, 0.065], [8, 46]),
  word('rose', [0.64, 0.8], [0.07, 0.15], [355, 379]),
  word('hot pink', [0.59, 0.76], [0.175, 0.27], [346, 367]),
  word('fuchsia', [0.51, 0.66], [0.19, 0.28], [334, 351]),
  word('magenta', [0.46, 0.6], [0.17, 0.25], [346, 359]),
  word('plum', [0.34, 0.5], [0.055, 0.14], [330, 360]),
  word('aubergine', [0.2, 0.34], [0.03, 0.1], [312, 347]),
  word('mauve', [0.54, 0.71], [0.04, 0.1], [322, 357]),
  word('lilac', [0.69, 0.86], [0.045, 0.1], [312, 334]),
  word('lavender', [0.68, 0.89], [0.035, 0.1], [292, 313]),
  word('grape', [0.32, 0.46], [0.09, 0.17], [304, 323]),
  word('chocolate', [0.26, 0.42], [0.028, 0.085], [36, 64]),
];

function word(
  name: string,
  l: readonly [number, number],
  c: readonly [number, number],
  h: readonly [number, number],
): TradeWord {
  return { word: name, l, c, h };
}

/** Distance from the middle of a range, 1 at its ends. */
function off(v: number, range: readonly [number, number]): number {
  return Math.abs(2 * v - range[0] - range[1]) / (range[1] - range[0]);
}

function offHue(h: number, range: readonly [number, number]): number {
  return range[1] - range[0] >= 360 ? 0 : Math.min(off(h, range), off(h + 360, range));
}

/** A colour without hue fits only a word that takes every hue. */
function hueless({ h }: TradeWord): number {
  return h[1] - h[0] >= 360 ? 0 : Number.POSITIVE_INFINITY;
}
