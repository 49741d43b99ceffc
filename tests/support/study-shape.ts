import { expect } from 'vitest';
import { deltaE76, deltaE2000 } from '../../src/colour/difference.ts';
import type { OklchTuple } from '../../src/colour/model.ts';
import { sourceById } from '../../src/colour/sources.ts';
import { labFromHex, labFromOklch, oklchFromTuple } from '../../src/colour/spaces.ts';
import type { Advised, Link, Reason, Remedy } from '../../src/harmony/model.ts';
import type { Ink, Side } from '../../src/sheet/model.ts';

/** Checks of the shapes that DEVELOPERS.md and the terminal promise; each throws where a value is out of shape. */

const baseKinds = ['white', 'cream', 'kraft', 'tinted', 'dark'];
const linkKinds = ['repeat', 'near miss', 'tonal', 'neighbour', 'opposite', 'unrelated'];
const remedyKinds = ['cover', 'trim', 'carry', 'buffer', 'turn', 'swap', 'mount', 'leave'];
const verdicts = ['holds-together', 'needs-a-bridge', 'pulls-apart'];

/** @param first the id of its base: 'A' or 'a'. */
export function expectSide(side: Side, first: 'A' | 'a'): void {
  expect(baseKinds).toContain(side.base.kind);
  expect([true, false, null]).toContain(side.base.printed);
  const all = [side.base, ...side.inks];
  all.forEach((ink, i) => {
    expectInk(ink);
    expect(ink.id).toBe(String.fromCharCode(first.charCodeAt(0) + i));
  });
  expect(all.reduce((sum, ink) => sum + ink.share, 0)).toBeCloseTo(1, 9);
  expect(side.print.busyness).toBeGreaterThanOrEqual(0);
  expect(side.print.busyness).toBeLessThanOrEqual(1);
  if (side.print.repeatMm !== null) expect(side.print.repeatMm).toBeGreaterThan(0);
  expect(['small', 'medium', 'large', null]).toContain(side.print.scale);
  expect(typeof side.light.known).toBe('boolean');
  expect(side.light.note).toMatch(/\S.*\.$/);
}

function expectInk({ hex, oklch, name, share, accent }: Ink): void {
  expect(hex).toMatch(/^#[0-9a-f]{6}$/);
  const [l, c, h] = oklch;
  expect(l).toBeGreaterThanOrEqual(0);
  expect(l).toBeLessThanOrEqual(1.0001);
  expect(c).toBeGreaterThanOrEqual(0);
  if (h === null) expect(c).toBeLessThanOrEqual(4e-6);
  else expect(h >= 0 && h < 360).toBe(true);
  // The hex is the colour that is computed with, to the nearest step of 8 bits (inside sRGB).
  expect(deltaE76(labFromHex(hex), labOf(oklch))).toBeLessThan(2);
  expect(name).toMatch(/^[a-z]+( [a-z]+)*$/);
  expect(share).toBeGreaterThan(0);
  expect(share).toBeLessThanOrEqual(1);
  expect(typeof accent).toBe('boolean');
}

export type Judged = Pick<Advised, 'verdict' | 'links' | 'reasons' | 'remedies'>;

export function expectComparison(comparison: Judged, anchor: Side, candidate: Side): void {
  const inks = new Map(
    [anchor.base, ...anchor.inks, candidate.base, ...candidate.inks].map((ink) => [ink.id, ink]),
  );
  expect(verdicts).toContain(comparison.verdict);
  for (const link of comparison.links) expectLink(link, inks);
  for (const reason of comparison.reasons) expectReason(reason, inks);
  for (const remedy of comparison.remedies) expectRemedy(remedy, inks);
  if (comparison.verdict !== 'holds-together') expect(comparison.remedies.length).toBeGreaterThanOrEqual(2);
}

function expectLink(link: Link, inks: ReadonlyMap<string, Ink>): void {
  expect(linkKinds).toContain(link.kind);
  const [a, b] = [inks.get(link.anchorInk)!, inks.get(link.candidateInk)!];
  expect(link.anchorInk).toMatch(/^[A-Z]/);
  expect(link.candidateInk).toMatch(/^[a-z]/);
  const [labA, labB] = [labOf(a.oklch), labOf(b.oklch)];
  expect(link.deltaE00).toBeCloseTo(deltaE2000(labA, labB), 2);
  expect(link.dL).toBeCloseTo(labB.l - labA.l, 2);
  expect(link.dC).toBeCloseTo(Math.hypot(labB.a, labB.b) - Math.hypot(labA.a, labA.b), 2);
  if (link.hueDeg !== null) expect(link.hueDeg >= 0 && link.hueDeg <= 180).toBe(true);
}

function expectReason(reason: Reason, inks: ReadonlyMap<string, Ink>): void {
  expect(reason.weighs >= -1 && reason.weighs <= 1).toBe(true);
  expect(reason.says).toMatch(/^\S.*[.!?]$/s);
  for (const id of reason.inks) expect(inks.has(id), `${reason.kind} speaks of ${id}`).toBe(true);
  for (const [name, value] of Object.entries(reason.evidence)) {
    expect(Number.isFinite(value), `${reason.kind}: ${name} is ${value}`).toBe(true);
  }
  expect(reason.source).not.toBe('');
  for (const id of reason.sourceIds)
    expect(sourceById(id), `${reason.kind} names the source ${id}`).toBeTruthy();
}

function expectRemedy(remedy: Remedy, inks: ReadonlyMap<string, Ink>): void {
  expect(remedyKinds).toContain(remedy.kind);
  expect(remedy.says).toMatch(/^\S.*[.!?]$/s);
  expect(verdicts).toContain(remedy.verdictAfter);
  for (const id of remedy.inks) expect(inks.has(id), `${remedy.kind} speaks of ${id}`).toBe(true);
}

function labOf(oklch: OklchTuple): ReturnType<typeof labFromOklch> {
  return labFromOklch(oklchFromTuple(oklch));
}
