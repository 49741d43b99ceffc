import type { Verdict } from '../model.ts';
import { findingsOf, type Lying } from './findings.ts';
import { inOrder, leading } from './in-order.ts';
import type { Arguable, Finding, Judged } from './model.ts';
import type { Portrait } from './portrait.ts';
import { verdictLimits } from './whole-thresholds.ts';

/**
 * Two sides judged as a whole. Every finding counts for or against by how far it holds, each at most one; the pair holds together
 * unless those against outweigh those for by more than a stated number, and pulls apart beyond a second.
 * Source: ours; the two limits were tuned on judged papers, leaving pictures out.
 */
export function judgeWhole(a: Portrait, b: Portrait, lying?: Lying): Judged {
  const findings = findingsOf(a, b, lying);
  const balance = findings.reduce((sum, finding) => sum + finding.counts, 0);
  const verdict = verdictAt(balance);
  const ordered = inOrder(findings, verdict);
  return {
    verdict,
    balance,
    arguable: arguableAt(balance, verdict, findings),
    all: findings,
    counted: findings
      .filter(({ counts }) => counts !== 0)
      .sort((p, q) => Math.abs(q.counts) - Math.abs(p.counts)),
    findings: ordered,
    leading: leading(ordered, verdict),
    roles: [a.role, b.role],
    portraits: [a, b],
  };
}

/** The verdict of a balance. Source: `verdict-rules`. */
export function verdictAt(balance: number): Verdict {
  if (balance >= verdictLimits.holdsFrom) return 'holds-together';
  return balance >= verdictLimits.bridgeFrom ? 'needs-a-bridge' : 'pulls-apart';
}

function arguableAt(balance: number, verdict: Verdict, findings: readonly Finding[]): Arguable | null {
  const { holdsFrom, bridgeFrom, close } = verdictLimits;
  const upper = Math.abs(balance - holdsFrom) <= Math.abs(balance - bridgeFrom);
  const border = upper ? holdsFrom : bridgeFrom;
  const by = Math.abs(balance - border);
  if (by > close) return null;
  const above = balance >= border;
  const instead = above ? verdictAt(border - close / 2) : verdictAt(border + close / 2);
  // Without the largest finding of that direction the balance would lie on the other side.
  const turning = findings
    .filter((f) => (above ? f.counts > by : -f.counts > by))
    .sort((p, q) => Math.abs(q.counts) - Math.abs(p.counts))[0];
  return instead === verdict ? null : { instead, by, turnedBy: turning?.name ?? null };
}
