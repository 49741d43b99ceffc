import { between, chance, smoothNoise } from '../chance.ts';
import { colours } from '../colours.ts';
import { lightOf, type Outline, print, type Raster, sideMm } from '../raster.ts';
import { rectangle, wobblyCircle } from '../shapes.ts';

/** Rain over the orchard: aqua let run into blue, paler where the brush was wet, with a few drops thrown on. */
export function rainWash(raster: Raster): void {
  const { px, light } = raster;
  const [aqua, deep] = [lightOf(colours.aqua), lightOf('#3f7fae')];
  const [broad, fine] = [smoothNoise(101), smoothNoise(102)];
  for (let y = 0; y < px; y += 1) {
    for (let x = 0; x < px; x += 1) {
      const [u, v] = [x / px, y / px];
      const bend = broad(u * 2.5, v * 2.5);
      const height = v + (bend - 0.5) * 0.5 + (broad(u * 7 + 9, v * 7) - 0.5) * 0.14;
      const wet = clamp01((height - 0.16) / 0.7);
      const pools = fine(u * 40, v * 40) * 0.5 + fine(u * 93, v * 93) * 0.5;
      // Pigment settles in the hollows of the paper, and thins towards the top of the wash.
      const strength = wet ** 0.75 * (0.86 + 0.2 * (pools - 0.5)) * 0.96;
      const depth = clamp01((height - 0.5) / 0.4);
      const at = (y * px + x) * 3;
      for (let k = 0; k < 3; k += 1) {
        const ink = aqua[k]! + (deep[k]! - aqua[k]!) * depth;
        light[at + k] = light[at + k]! + (ink - light[at + k]!) * strength;
      }
    }
  }
  const next = chance(103);
  const drops: Outline[] = [];
  for (let i = 0; i < 60; i += 1) {
    const [x, y, size] = [next() * sideMm, next() * sideMm, next()];
    drops.push(wobblyCircle(x, y, 0.9 + 3.2 * size ** 3, 0.12, between(next, 0, 6)));
  }
  print(raster, drops, colours.navy, 0.9);
}

/** Weathered planks: grain drawn out along each board, a gap between them, two nails at either end. */
export function barnDoor(raster: Raster): void {
  const { px, light } = raster;
  const [pale, dark] = [lightOf('#c9a579'), lightOf('#8d6844')];
  const noise = smoothNoise(111);
  const board = px / 5;
  for (let x = 0; x < px; x += 1) {
    const plank = Math.floor(x / board);
    const across = x / board - plank;
    const tone = [0.42, 0.2, 0.5, 0.3, 0.38][plank] ?? 0.3;
    for (let y = 0; y < px; y += 1) {
      const along = y / px + plank * 7.3;
      const bend = noise(across * 1.5 + plank * 13, along * 2.2) * 1.6;
      const ring = noise((across + bend * 0.35) * 15 + plank * 5, along * 1.3);
      const fibre = noise(across * 55 + plank * 31, along * 9);
      const mix = clamp01(tone + (ring - 0.5) * 1.1 + (fibre - 0.5) * 0.3);
      const at = (y * px + x) * 3;
      for (let k = 0; k < 3; k += 1) light[at + k] = pale[k]! + (dark[k]! - pale[k]!) * mix;
    }
  }
  const [gaps, nails]: Outline[][] = [[], []];
  for (let i = 0; i <= 5; i += 1) gaps!.push(rectangle(i * 61 - 0.9, 0, 1.8, sideMm));
  for (let i = 0; i < 5; i += 1) {
    for (const y of [14, 152, 291])
      for (const dx of [14, 47]) nails!.push(wobblyCircle(i * 61 + dx, y, 1.7, 0.1, i));
  }
  print(raster, gaps!, '#4a3524');
  print(raster, nails!, colours.charcoal);
}

function clamp01(value: number): number {
  return Math.min(1, Math.max(0, value));
}
