import { labFromBytes, oklabFromBytes } from '../../src/colour/batch.ts';
import { activePassive, heavyLight, warmCool } from '../../src/colour/emotion.ts';
import { mapToSrgb } from '../../src/colour/gamut.ts';
import { ouLuo } from '../../src/colour/harmony-two.ts';
import { labFromMunsell, munsellFromLab } from '../../src/colour/munsell/munsell.ts';
import { isccNumberOfMunsell } from '../../src/colour/naming/names.ts';
import { tradeWord } from '../../src/colour/naming/trade-words.ts';
import { neutralKind } from '../../src/colour/neutral.ts';
import { oklchFromOklab } from '../../src/colour/spaces.ts';
import { seenBy } from '../../src/colour/vision.ts';
import { hueFromPainter, painterFromHue } from '../../src/colour/wheels.ts';

/**
 * Every one of the 16,777,216 colours through everything that is computed of one colour: nothing may come out as NaN or
 * outside its range, and round trips must close. Not part of the tests, for it takes minutes:
 * `node tests/bench/all-24-bit.mjs`.
 * Prints what it found; comes back with the number of faults.
 */
export async function all24Bit(print: (line: string) => void, from = 0, to = 256): Promise<number> {
  const faults = new Map<string, { count: number; first: string }>();
  const names = new Set<number>();
  let worstMunsell = 0;
  let worstWheel = 0;
  const bytes = new Uint8Array(256 * 256 * 3);
  const fault = (what: string, hex: string) => {
    const known = faults.get(what);
    if (known) known.count++;
    else faults.set(what, { count: 1, first: hex });
  };

  for (let r = from; r < to; r++) {
    for (let i = 0; i < 65_536; i++) bytes.set([r, i >> 8, i & 255], 3 * i);
    const oklabs = oklabFromBytes(bytes, 3);
    const labs = labFromBytes(bytes, 3);
    for (let i = 0; i < 65_536; i++) {
      const hex = `#${((r << 16) | i).toString(16).padStart(6, '0')}`;
      const check = (what: string, v: number, min: number, max: number) => {
        if (!(v >= min && v <= max)) fault(`${what} outside ${min}…${max}`, hex);
      };
      const lab = { l: labs[3 * i]!, a: labs[3 * i + 1]!, b: labs[3 * i + 2]! };
      const oklch = oklchFromOklab({ l: oklabs[3 * i]!, a: oklabs[3 * i + 1]!, b: oklabs[3 * i + 2]! });
      check('L*', lab.l, -1e-9, 100 + 1e-9);
      check('a*', lab.a, -87, 99);
      check('b*', lab.b, -108, 95);
      check('OKLCH lightness', oklch.l, 0, 1 + 1e-9);
      check('OKLCH chroma', oklch.c, 0, 0.3226);
      if (oklch.h !== null) {
        check('hue', oklch.h, 0, 359.999999999999);
        const place = painterFromHue(oklch.h);
        const apart = Math.abs(hueFromPainter(place) - oklch.h);
        worstWheel = Math.max(worstWheel, Math.min(apart, 360 - apart));
      }
      const mapped = mapToSrgb(oklch);
      if (mapped.mapped || mapped.hex !== hex) fault('a colour of the screen was mapped', hex);

      const munsell = munsellFromLab(lab);
      check('Munsell value', munsell.value, 0, 10);
      check('Munsell chroma', munsell.chroma, 0, 45);
      if (munsell.hue !== null) check('Munsell hue', munsell.hue, 0, 99.9999999999999);
      const back = labFromMunsell(munsell);
      worstMunsell = Math.max(worstMunsell, Math.hypot(lab.l - back.l, lab.a - back.a, lab.b - back.b));
      names.add(isccNumberOfMunsell(munsell));

      check('warm–cool', warmCool(lab), -4, 4);
      check('heavy–light', heavyLight(lab), -3, 3);
      check('active–passive', activePassive(lab), -2.2, 6);
      check('two-colour harmony with white', ouLuo(lab, { l: 100, a: 0, b: 0 }).ch, -1.5, 1.8);
      neutralKind(lab);
      tradeWord(oklch);
      const rgb = { r: r / 255, g: (i >> 8) / 255, b: (i & 255) / 255 };
      for (const kind of ['protan', 'deutan', 'tritan'] as const) {
        const seen = seenBy(rgb, kind, 1);
        check(kind, Math.min(seen.r, seen.g, seen.b), 0, 1);
        check(kind, Math.max(seen.r, seen.g, seen.b), 0, 1);
      }
    }
  }

  print(`${(to - from) * 65_536} colours, ${names.size} of 267 names in use`);
  print(
    `Munsell and back: worst ${worstMunsell.toExponential(1)} in CIELAB; painter’s wheel and back: worst ${worstWheel.toExponential(1)}°`,
  );
  for (const [what, { count, first }] of faults) print(`fault: ${what}: ${count}, first ${first}`);
  if (worstMunsell > 0.02) print('fault: a Munsell round trip does not close');
  if (worstWheel > 0.01) print('fault: a round trip of the painter’s wheel does not close');
  return (
    [...faults.values()].reduce((sum, { count }) => sum + count, 0) +
    (worstMunsell > 0.02 ? 1 : 0) +
    (worstWheel > 0.01 ? 1 : 0)
  );
}
