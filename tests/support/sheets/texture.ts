import { dice } from './dice.ts';
import type { DrawnSheet } from './draw-sheet.ts';
import { LabelCanvas } from './label-canvas.ts';
import { linearOf, type Rgb3 } from './truth-colour.ts';

export type Texture = 'felt' | 'linen' | 'laid' | 'embossed' | 'flecked';

/** A plain, one-colour paper with a surface: light falls unevenly on it, or it is strewn with fibres of other colours. */
export function texturedPlain(
  seed: number,
  rgb: Rgb3,
  texture: Texture,
  width = 700,
  baseKind: DrawnSheet['truth']['baseKind'] = 'white',
): DrawnSheet {
  const roll = dice(seed * 104729 + 5);
  const height = width;
  const lin = linearOf(rgb);
  const relief = reliefOf(texture, width, height, seed);
  const linear = new Float32Array(width * height * 3);
  for (let i = 0; i < width * height; i++)
    for (let c = 0; c < 3; c++) linear[i * 3 + c] = lin[c]! * relief[i]!;
  if (texture === 'flecked') {
    const flecks: Rgb3[] = [
      [120, 84, 52],
      [70, 62, 58],
      [176, 140, 96],
    ];
    for (let n = 0; n < width * height * 0.0009; n++) {
      const colour = linearOf(roll.pick(flecks));
      let x = roll.between(0, width);
      let y = roll.between(0, height);
      let t = roll.between(0, 2 * Math.PI);
      const length = roll.between(1, 9);
      for (let k = 0; k < length; k++) {
        const at = Math.floor(y) * width + Math.floor(x);
        if (x >= 0 && y >= 0 && x < width && y < height)
          for (let c = 0; c < 3; c++) linear[at * 3 + c] = 0.35 * linear[at * 3 + c]! + 0.65 * colour[c]!;
        t += roll.between(-0.4, 0.4);
        x += Math.cos(t);
        y += Math.sin(t);
      }
    }
  }
  return {
    width,
    height,
    linear,
    labels: new Uint8Array(width * height),
    repaint: () => linear,
    canvas: new LabelCanvas(width, height),
    samples: 1,
    colours: [rgb],
    truth: { pattern: `plain ${texture}`, baseKind, inks: [{ rgb, share: 1, accent: false, label: 0 }] },
  };
}

/** How much light each pixel gets, about 1 on the whole. */
export function reliefOf(texture: Texture, width: number, height: number, seed: number): Float32Array {
  const roll = dice(seed * 613 + 11);
  const out = new Float32Array(width * height);
  const depth = roll.between(0.05, 0.14);
  const period = roll.between(4, 9);
  const grain = new Float32Array(width * height).map(() => roll.normal());
  const rowJitter = Float32Array.from({ length: Math.max(width, height) + 1 }, () => roll.normal());
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const wave = (v: number): number => Math.sin((2 * Math.PI * v) / period);
      let relief = 0;
      if (texture === 'linen')
        relief = 0.5 * wave(x + 0.6 * rowJitter[x]!) + 0.5 * wave(y + 0.6 * rowJitter[y]!) + 0.4 * grain[i]!;
      else if (texture === 'laid')
        relief = 0.6 * wave(y) + (x % Math.round(period * 12) < 2 ? -1 : 0) + 0.3 * grain[i]!;
      else if (texture === 'embossed')
        relief = wave(x * 0.4 + 3 * wave(y * 0.11)) * wave(y * 0.4) * 1.3 + 0.2 * grain[i]!;
      else if (texture === 'felt')
        relief = 0.6 * grain[i]! + 0.8 * (grain[Math.max(0, i - 1)]! + grain[Math.max(0, i - width)]!) * 0.5;
      else relief = 0.25 * grain[i]!;
      out[i] = Math.max(0.2, 1 + depth * relief);
    }
  return out;
}
