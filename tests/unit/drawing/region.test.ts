import { expect, test } from 'vitest';
import { veilOf } from '../../../src/drawing/parts-veil.ts';
import { regionsOnStrip, regionsOnWheel } from '../../../src/drawing/region.ts';
import { lightnessStrip } from '../../../src/drawing/strip.ts';
import { surroundTones } from '../../../src/drawing/surround.ts';
import { hueWheel } from '../../../src/drawing/wheel.ts';
import { wheelPlaces } from '../../../src/drawing/wheel-places.ts';
import { regionSays } from '../../../src/drawing/words/region-says.ts';
import { cellStates } from '../../../src/harmony/further/judge-parts.ts';
import type { ColourRegion } from '../../../src/harmony/model.ts';
import { bunting, ledger } from '../../support/hand-made.ts';

const region: ColourRegion = { hueDeg: [350, 20], lightness: [40, 60], chroma: [0.1, 0.15] };
const tones = surroundTones('grey');
const layout = wheelPlaces({ anchor: bunting, candidate: ledger });

function pointsOf(wheel: 'eye' | 'painter'): { x: number; y: number }[] {
  const [node] = regionsOnWheel([region], layout, wheel, tones);
  if (node?.type !== 'path') throw new Error('no path');
  return node.d
    .replace(/[MZ]/g, '')
    .split('L')
    .map((pair) => pair.split(' ').map(Number))
    .map(([x, y]) => ({ x: x!, y: y! }));
}

test('a stretch of colour lies on the wheel between its chromas and its hues, over 0° too', () => {
  const [least, most] = region.chroma.map((chroma) => layout.radiusFromChroma(chroma)) as [number, number];
  for (const { x, y } of pointsOf('eye')) {
    const radius = Math.hypot(x, y);
    expect(Math.min(Math.abs(radius - least), Math.abs(radius - most))).toBeLessThan(0.1);
    const hue = (Math.atan2(-y, x) * 180) / Math.PI;
    expect(hue).toBeGreaterThan(-10.2);
    expect(hue).toBeLessThan(20.2);
  }
});

test('on the painter’s wheel it lies where that wheel has its hues', () => {
  expect(pointsOf('painter')[0]).not.toEqual(pointsOf('eye')[0]);
});

test('a stretch is an outline in grey, never filled, and says its numbers', () => {
  const look = { width: 700, tones, x: (l: number) => l * 6 };
  for (const node of [
    ...regionsOnWheel([region], layout, 'eye', tones),
    ...regionsOnStrip([region], 100, look),
  ]) {
    expect(node).toMatchObject({ fill: 'none', stroke: tones.text });
    expect(node.mark?.label).toBe(regionSays(region));
  }
  expect(regionSays(region)).toBe('Any colour in here: hue 350–20°, L* 40–60, chroma 0.10–0.15.');
  expect(regionsOnStrip([region], 100, look)[0]).toMatchObject({ x: 238, width: 124 });
});

test('wheel and strip draw the stretches that they are given, and none without', () => {
  const papers = { anchor: { side: bunting, name: 'a' }, candidate: { side: ledger, name: 'b' } };
  const drawn = (drawing: object) => JSON.stringify(drawing).split('"className":"region"').length - 1;
  expect(drawn(hueWheel({ ...papers, regions: [region, region] }))).toBe(2);
  expect(drawn(lightnessStrip({ ...papers, regions: [region] }))).toBe(1);
  expect(drawn(hueWheel(papers)) + drawn(lightnessStrip(papers))).toBe(0);
});

test('the veil is clear where a colour holds, thin where it rests, thick where it is alone or not read', () => {
  const cells = Uint8Array.from([cellStates.holds, cellStates.rests, cellStates.alone, cellStates.nothing]);
  const [holds, rests, alone, nothing] = veilOf({ width: 4, height: 1, cells, squares: [], says: [] });
  expect(holds).toBe(0);
  expect(rests).toBeGreaterThan(0);
  expect(alone).toBeGreaterThan(rests!);
  expect(nothing).toBe(alone);
});
