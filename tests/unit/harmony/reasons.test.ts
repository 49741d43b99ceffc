import { describe, expect, it } from 'vitest';
import { sourceById } from '../../../src/colour/sources.ts';
import { compare } from '../../../src/harmony/compare.ts';
import type { CompareOptions, Comparison, ReasonKind } from '../../../src/harmony/model.ts';
import { countWeights } from '../../../src/harmony/whole/whole-thresholds.ts';
import { bothWheels } from '../../../src/harmony/words/sentences.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

const judged = (a: HandSide, b: HandSide, options: CompareOptions = {}) =>
  compare(handSide(a), handSide(b), options);
const reason = (found: Comparison, kind: ReasonKind, nth = 0) =>
  found.reasons.filter((one) => one.kind === kind)[nth]!;

const all = tradeCases.flatMap(({ anchor, candidate }) =>
  (['apart', 'touching'] as const).map((distance) => judged(anchor, candidate, { distance })),
);

describe('every reason', () => {
  it('has a source that the list of sources holds, a figure, and a sentence', () => {
    for (const { reasons } of all) {
      for (const { kind, says, figure, source, sourceIds } of reasons) {
        expect(sourceIds.length, kind).toBeGreaterThan(0);
        for (const id of sourceIds) expect(sourceById(id), id).toBeDefined();
        expect(source).toBe(kind === 'opposites' ? bothWheels : sourceById(sourceIds[0]!)!.short);
        expect(figure.length, kind).toBeGreaterThan(2);
        expect(says, kind).toMatch(/^[A-Z].*\.$/);
        expect(says).not.toMatch(/undefined|NaN|\$\{/);
        expect(figure).not.toMatch(/undefined|NaN/);
      }
    }
  });

  it('names only inks that are there, anchor first, and every ink of its sentence by id', () => {
    for (const { reasons, anchor, candidate } of all) {
      const ids = new Set(
        [anchor, candidate].flatMap(({ base, inks }) => [base.id, ...inks.map(({ id }) => id)]),
      );
      for (const { inks, says, kind } of reasons) {
        for (const id of inks) expect(ids).toContain(id);
        expect([...inks].sort((x, y) => Number(x >= 'a') - Number(y >= 'a'))).toEqual(inks);
        for (const [, id] of says.matchAll(/\(([A-Za-z])\)/g)) expect(inks, `${kind}: ${says}`).toContain(id);
      }
    }
  });

  it('weighs between −1 and 1, with evidence that is finite numbers', () => {
    for (const { reasons } of all) {
      for (const { weighs, evidence } of reasons) {
        expect(Math.abs(weighs)).toBeLessThanOrEqual(1);
        for (const value of Object.values(evidence)) expect(Number.isFinite(value)).toBe(true);
      }
    }
  });
});

describe('the order of the reasons', () => {
  const counts = new Set<ReasonKind>(Object.keys(countWeights) as ReasonKind[]);

  it('is that of the findings, the one that carries the verdict first; notes follow and weigh nothing', () => {
    for (const { reasons, findings, verdict, decision } of all) {
      const told = reasons.slice(0, findings.length);
      expect(told.map(({ kind }) => kind).sort()).toEqual(findings.map(({ name }) => name).sort());
      for (const { weighs } of reasons.slice(findings.length)) expect(weighs).toBe(0);
      const sign = verdict === 'holds-together' ? 1 : -1;
      if (told.some(({ weighs }) => Math.sign(weighs) === sign))
        expect(Math.sign(told[0]!.weighs)).toBe(sign);
      for (const at of decision.turnedBy) expect(Math.sign(reasons[at]!.weighs)).toBe(sign);
    }
  });

  it('has one to three before “more”, no two of a kind', () => {
    for (const { decision, findings, reasons } of all) {
      expect(decision.leads).toBeLessThanOrEqual(3);
      expect(decision.leads! > 0).toBe(findings.length > 0);
      const kinds = reasons
        .slice(0, decision.leads)
        .map(({ kind }) => findings.find(({ name }) => name === kind)!.kind);
      expect(new Set(kinds).size).toBe(kinds.length);
    }
  });

  it('gives a weight to a finding that counts, and to nothing else', () => {
    for (const { reasons } of all)
      for (const { kind, weighs } of reasons) expect(weighs !== 0, kind).toBe(counts.has(kind));
  });
});

describe('what a reason says', () => {
  it('of areas: whether one colour leads', () => {
    const say = (one: HandSide, other: HandSide) => reason(judged(one, other), 'dominance').says;
    expect(say(onCream([c.navy, 0.35]), onCream([c.navy, 0.35]))).toContain('one colour leads');
    expect(say(onCream([c.navy, 0.1]), onCream([c.navy, 0.1]))).toContain('more than the usual 60');
    expect(say(onCream([c.navy, 0.3]), onWhite([c.navy, 0.3]))).toContain('no colour leads');
  });

  it('of other eyes: for whom two inks fall together', () => {
    const red = reason(judged(onWhite([c.red, 0.2]), onWhite([c.forest, 0.25])), 'other eyes');
    expect(red.says).toContain('see red weakly');
    expect(red.evidence.deltaE00Seen).toBeLessThan(8);
    expect(red.sourceIds).toEqual(['machado']);
    const blue = reason(judged(onWhite(['#5aa9d6', 0.3]), onWhite(['#5fb39b', 0.3])), 'other eyes');
    expect(blue.says).toContain('see blue weakly');
    expect(blue.sourceIds).toEqual(['brettel']);
  });

  it('of light: which sheets were read without a card', () => {
    const dim = (side: HandSide): HandSide => ({ ...side, lightKnown: false });
    expect(reason(judged(dim(onCream()), dim(onCream())), 'light unknown').says).toContain(
      'The anchor and the candidate were read without',
    );
    const named = judged(onCream(), dim(onCream()), {
      names: { anchor: 'the bunting', candidate: 'the ledger' },
    });
    expect(reason(named, 'light unknown').says).toContain('The ledger was read');
    expect(reason(named, 'light unknown').inks).toEqual(['a']);
  });
});
