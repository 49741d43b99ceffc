import { deltaEOk } from '../../colour/difference.ts';
import { oklabFromOklch, oklchFromTuple } from '../../colour/spaces.ts';
import type { HandMade, Ink } from '../../sheet/model.ts';
import { inkFromHex } from '../../sheet/plain.ts';

/** How near an ink that a correction names must lie to one that was read, to be that one; OKLab. As the hand itself has it. */
const same = 0.12;

/**
 * Corrections as they are under another light. `colours` are read from the picture under the new light: first at the
 * spots of `spotted`, then one for each of `inks`, which are the inks as they were read before. What a correction read
 * at its spot is read anew, and inks that it names look as they do now, so that they are known again.
 */
export function underLight(
  hand: readonly HandMade[],
  spotted: readonly HandMade[],
  inks: readonly Ink[],
  colours: readonly string[],
): readonly HandMade[] {
  const now = (was: Ink): Ink => {
    const far = inks.map((ink) => deltaEOk(labOf(ink), labOf(was)));
    const nearest = far.indexOf(Math.min(...far));
    const hex = (far[nearest] ?? 1) <= same ? colours[spotted.length + nearest] : undefined;
    if (hex === undefined) return was;
    const { oklch, name } = inkFromHex(hex);
    return { ...was, hex, oklch, name };
  };
  return hand.map((made) => {
    const at = spotted.indexOf(made);
    const hex = at < 0 ? undefined : colours[at];
    return {
      ...made,
      inks: Object.fromEntries(Object.entries(made.inks).map(([id, ink]) => [id, now(ink)])),
      ...(hex === undefined ? {} : { hex }),
    };
  });
}

function labOf({ oklch }: Ink) {
  return oklabFromOklch(oklchFromTuple(oklch));
}
