import { bothChromatic, type Tied } from '../measure/links.ts';
import type { Pair } from '../measure/pair.ts';
import type { LinkKind } from '../model.ts';
import type { Tie } from '../rules/verdict.ts';
import { tieWeight } from '../rules/weights.ts';

/**
 * The ties of one kind worth a sentence each: strongest first, no ink used twice, and no ink that a stronger kind
 * already speaks for on both ends.
 */
export function tiesOf(pair: Pair, kind: LinkKind, chromatic = true): Tie[] {
  const spoken = new Set(
    stronger(kind)
      .flatMap((k) => bestOf(pair, k, true))
      .flatMap(ends),
  );
  return bestOf(pair, kind, chromatic).filter(({ tied }) => !ends({ tied }).every((id) => spoken.has(id)));
}

const kept = new WeakMap<Pair, Map<string, readonly Tie[]>>();

/** Strongest first, each ink in one tie at most. Several reasons ask for the same. */
function bestOf(pair: Pair, kind: LinkKind, chromatic: boolean): readonly Tie[] {
  const of = kept.get(pair) ?? new Map<string, readonly Tie[]>();
  kept.set(pair, of);
  const name = `${kind} ${chromatic}`;
  const ties = of.get(name) ?? sorted(pair, kind, chromatic);
  of.set(name, ties);
  return ties;
}

function sorted(pair: Pair, kind: LinkKind, chromatic: boolean): Tie[] {
  const used = new Set<string>();
  return pair.tied
    .filter(({ link, a, b }) => link.kind === kind && bothChromatic(a, b) === chromatic)
    .map((tied) => ({ tied, weight: tieWeight(tied, pair.distance) }))
    .filter(({ weight }) => weight > 0)
    .sort((one, other) => other.weight - one.weight || one.tied.link.deltaE00 - other.tied.link.deltaE00)
    .filter((tie) => {
      if (ends(tie).some((id) => used.has(id))) return false;
      for (const id of ends(tie)) used.add(id);
      return true;
    });
}

const ends = ({ tied }: { readonly tied: Tied }): string[] => [tied.a.id, tied.b.id];

const strength: readonly LinkKind[] = ['repeat', 'tonal', 'opposite', 'neighbour'];
const stronger = (kind: LinkKind): readonly LinkKind[] =>
  strength.slice(0, Math.max(0, strength.indexOf(kind)));
