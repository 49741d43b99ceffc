import type { Verdict } from '../../../../src/harmony/model.ts';
import { type Finding, findingKinds } from './model.ts';
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
    .sort((p, q) => told(q) - told(p) || findingKinds.indexOf(p.kind) - findingKinds.indexOf(q.kind));
  const first = sorted.find((f) => f.speaks === carries);
  return first ? [first, ...sorted.filter((f) => f !== first)] : sorted;
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
