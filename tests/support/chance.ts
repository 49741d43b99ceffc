import { deltaE2000 } from '../../src/colour/difference.ts';
import { hexFromOklch, isInSrgb } from '../../src/colour/gamut.ts';
import type { Lab } from '../../src/colour/model.ts';
import { labFromHex, oklchFromLab, tupleFromOklch } from '../../src/colour/spaces.ts';
import type { BaseKind, Ink, Side } from '../../src/sheet/model.ts';

/** Chance for tests: numbers 0–1 that are the same for the same seed. */
export function chanceOf(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** A colour of sRGB; one in three is weak in chroma. */
export function chanceLab(chance: () => number): Lab {
  for (;;) {
    const l = 10 + 85 * chance();
    const c = chance() < 0.3 ? chance() * 20 : chance() * 90;
    const h = chance() * 2 * Math.PI;
    const lab = { l, a: c * Math.cos(h), b: c * Math.sin(h) };
    if (isInSrgb(oklchFromLab(lab))) return lab;
  }
}

/** The colour moved by this many ΔE₀₀ in any direction. */
export function moved(lab: Lab, deltaE: number, chance: () => number): Lab {
  const turn = chance() * 2 * Math.PI;
  const tilt = Math.acos(2 * chance() - 1);
  const to = (size: number): Lab => ({
    l: lab.l + size * Math.cos(tilt),
    a: lab.a + size * Math.sin(tilt) * Math.cos(turn),
    b: lab.b + size * Math.sin(tilt) * Math.sin(turn),
  });
  let low = 0;
  let high = deltaE * 6;
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (deltaE2000(lab, to(middle)) > deltaE) high = middle;
    else low = middle;
  }
  return to(low);
}

/** An ink of a CIELAB colour. */
export function labInk(lab: Lab, share: number, id = 'x'): Ink {
  const oklch = oklchFromLab(lab);
  return {
    id,
    hex: hexFromOklch(oklch),
    oklch: tupleFromOklch(oklch),
    name: '',
    share,
    accent: share < 0.05,
  };
}

export const grounds: readonly (readonly [BaseKind, string])[] = [
  ['white', '#fbfaf7'],
  ['white', '#f4f8fd'],
  ['cream', '#f4e8cd'],
  ['kraft', '#c9a878'],
  ['dark', '#1f3a5f'],
];

/** A side of these inks on one of the grounds. */
export function labSide(labs: readonly Lab[], shares: readonly number[], ground = 0): Side {
  const [kind, hex] = grounds[ground]!;
  const rest = 1 - shares.reduce((sum, share) => sum + share, 0);
  return {
    base: { ...labInk(labFromHex(hex), rest, 'A'), kind, printed: null },
    inks: labs.map((lab, i) => labInk(lab, shares[i]!, `i${i}`)),
    print: { busyness: 0.2, repeatMm: null, scale: null },
    light: { known: true, note: '' },
  };
}

/** Two sides by chance; a third of the second's inks lie near one of the first's. */
export function chancePair(
  chance: () => number,
  most = 4,
): { labs: [Lab[], Lab[]]; of: (labs: readonly [readonly Lab[], readonly Lab[]]) => [Side, Side] } {
  const count = () => 1 + Math.floor(chance() * most);
  const first = Array.from({ length: count() }, () => chanceLab(chance));
  const second = Array.from({ length: count() }, () =>
    chance() < 0.35
      ? moved(first[Math.floor(chance() * first.length)]!, chance() * 8, chance)
      : chanceLab(chance),
  );
  const share = () => (chance() < 0.3 ? 0.01 + 0.03 * chance() : 0.05 + 0.15 * chance());
  const shares = [first.map(share), second.map(share)] as const;
  const ground = [Math.floor(chance() * grounds.length), Math.floor(chance() * grounds.length)] as const;
  return {
    labs: [first, second],
    of: ([one, other]) => [labSide(one, shares[0], ground[0]), labSide(other, shares[1], ground[1])],
  };
}
