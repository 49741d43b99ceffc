import type { Verdict } from '../model.ts';
import { type Finding, type FindingName, findingKinds } from './model.ts';
import { telling, tellingWeights } from './whole-thresholds.ts';

/**
 * The findings as they are told: first the one that carries the verdict most, by how far it holds and how much people go by its
 * kind; then the others by the same. Ties stand in the order in which practitioners ask.
 */
export function inOrder(findings: readonly Finding[], verdict: Verdict): Finding[] {
  const carries = carrying(verdict);
  const told = (f: Finding): number => toldBy(f, verdict);
  const sorted = findings
    .filter((f) => f.size >= telling.least)
    .filter((f, _, all) => !isOutweighed(f, all))
    .sort((p, q) => told(q) - told(p) || findingKinds.indexOf(p.kind) - findingKinds.indexOf(q.kind));
  const first = sorted.find((f) => f.speaks === carries);
  return first ? [first, ...sorted.filter((f) => f !== first)] : sorted;
}

/** Two findings that would say opposite things of a pair: the one that holds less is counted, and not told. */
const opposed: readonly (readonly [FindingName, FindingName])[] = [
  ['few colours', 'many hues'],
  ['one rests', 'hard beside hard'],
  ['one rests', 'strong contrast of colour'],
  ['soft beside loose', 'hard beside hard'],
  ['comes back', 'nothing shared'],
  ['no step', 'light-dark step'],
];

function isOutweighed({ name, size, families }: Finding, all: readonly Finding[]): boolean {
  const byName = opposed.some(([one, other]) => {
    const against = name === one ? other : name === other ? one : null;
    const found = all.find((f) => f.name === against);
    return found !== undefined && (found.size > size || (found.size === size && name === other));
  });
  // Of two families that nearly miss, or quarrel, nothing friendly is said.
  const [a, b] = [families[0][0], families[1][0]];
  const friendly = name === 'tone on tone' || name === 'comes back';
  return (
    byName ||
    (friendly &&
      all.some(
        (f) =>
          (f.name === 'near miss' || f.name === 'one is greyed' || f.name === 'hues far apart') &&
          f.families[0][0] === a &&
          f.families[1][0] === b &&
          (name === 'tone on tone' || f.size > size),
      ))
  );
}

/** Those of ordered findings that are told before "more": three at most, each of another kind, and after the first only clear ones. */
export function leading(ordered: readonly Finding[], verdict: Verdict): Finding[] {
  const out: Finding[] = [];
  for (const finding of ordered) {
    if (out.length === 3) break;
    if (out.some(({ kind }) => kind === finding.kind)) continue;
    if (out.length === 0 || toldBy(finding, verdict) >= telling.clear) out.push(finding);
  }
  return out;
}

function toldBy({ size, name, speaks }: Finding, verdict: Verdict): number {
  const contrary = speaks !== 'neither' && speaks !== carrying(verdict);
  return size ** telling.bySize * tellingWeights[name] * (contrary ? telling.contrary : 1);
}

function carrying(verdict: Verdict): 'for' | 'against' {
  return verdict === 'holds-together' ? 'for' : 'against';
}
