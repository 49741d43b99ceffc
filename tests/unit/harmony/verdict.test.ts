import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/harmony/compare.ts';
import type { Comparison } from '../../../src/harmony/model.ts';
import type { Trouble } from '../../../src/harmony/rules/troubles.ts';
import {
  counted,
  ruleFor,
  verdictOfRule,
  verdictOrder,
  type Weighed,
} from '../../../src/harmony/rules/verdict.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c, onWhite } from './trade-colours.ts';

const calm: Weighed = { worst: 0, second: 0, quiet: false, tie: 0.5, near: () => ({ any: 1, same: 1 }) };
const near = (any: number, same: number) => () => ({ any, same });

describe('the rules of the verdict', () => {
  it('hold two papers that a colour ties and nothing troubles', () => {
    expect(ruleFor(calm)).toBe('tied');
    expect(ruleFor({ ...calm, tie: 0.3 })).toBe('tied');
    expect(ruleFor({ ...calm, tie: 0.2999 })).toBe('untied');
    expect(ruleFor({ ...calm, worst: 0.3999 })).toBe('tied');
  });

  it('hold a quiet paper with anything, unless a trouble stands', () => {
    expect(ruleFor({ ...calm, quiet: true, tie: 0 })).toBe('quiet');
    expect(ruleFor({ ...calm, quiet: true, tie: 0, worst: 0.4 })).toBe('trouble');
    expect(ruleFor({ ...calm, quiet: true, worst: 0.9, near: near(0, 0) })).toBe('trouble');
  });

  it('ask for a bridge where one trouble stands, whatever ties the two', () => {
    expect(ruleFor({ ...calm, worst: 0.4 })).toBe('trouble');
    expect(ruleFor({ ...calm, worst: 0.9, second: 0.9 })).toBe('trouble');
    expect(ruleFor({ ...calm, worst: 0.9, near: near(0.2, 0) })).toBe('trouble');
  });

  it('pull apart where a serious trouble stands and nothing comes near to tying the two', () => {
    expect(ruleFor({ ...calm, worst: 0.6, near: near(0.1999, 0) })).toBe('apart');
    expect(ruleFor({ ...calm, worst: 0.5999, near: near(0, 0) })).toBe('trouble');
  });

  it('pull apart where two serious troubles stand and no colour comes near to being on both', () => {
    expect(ruleFor({ ...calm, worst: 0.8, second: 0.6, near: near(0.5, 0.1999) })).toBe('strangers');
    expect(ruleFor({ ...calm, worst: 0.8, second: 0.5999, near: near(0.5, 0) })).toBe('trouble');
    expect(ruleFor({ ...calm, worst: 0.8, second: 0.6, near: near(0.5, 0.2) })).toBe('trouble');
  });

  it('ask how near a tie is only where that can decide', () => {
    const asked = () => {
      throw new Error('asked');
    };
    expect(ruleFor({ ...calm, near: asked })).toBe('tied');
    expect(ruleFor({ ...calm, worst: 0.5, near: asked })).toBe('trouble');
  });

  it('give each rule its verdict, in the order from best to worst', () => {
    expect(verdictOrder).toEqual(['holds-together', 'needs-a-bridge', 'pulls-apart']);
    expect(verdictOfRule).toEqual({
      apart: 'pulls-apart',
      strangers: 'pulls-apart',
      trouble: 'needs-a-bridge',
      untied: 'needs-a-bridge',
      quiet: 'holds-together',
      tied: 'holds-together',
    });
  });

  it('do not count an ink’s being alone beside its own near miss', () => {
    const miss = { kind: 'near miss', weight: 0.8 } as Trouble;
    const alone = { kind: 'stray', weight: 0.7, misses: {} } as Trouble;
    const stray = { kind: 'stray', weight: 0.6, misses: null } as Trouble;
    expect(counted([miss, alone, stray])).toEqual([miss, stray]);
  });
});

const judged = (a: HandSide, b: HandSide): Comparison => compare(handSide(a), handSide(b));

describe('how a verdict was decided', () => {
  it('names the rule, its limit, and the reason that turned it', () => {
    const found = judged(onWhite([c.coral, 0.3]), onWhite([c.raspberry, 0.3]));
    expect(found.verdict).toBe('pulls-apart');
    expect(found.decision.rule).toBe(
      'A trouble of 0.85 stands (near miss; 0.60 is serious), and no colour comes near to tying the two: that pulls apart.',
    );
    expect(found.decision.turnedBy.map((i) => found.reasons[i]!.kind)).toEqual(['near miss']);
    expect(found.decision.summary).toBe(
      'The coral and the crimson are what the eye trips over. And no colour is there to tie them.',
    );
  });

  it('is one or two reasons where one turned it, and none where it was their lack', () => {
    for (const { anchor, candidate } of tradeCases) {
      const { decision, reasons, verdict } = judged(anchor, candidate);
      expect(decision.turnedBy.length).toBeLessThanOrEqual(2);
      for (const i of decision.turnedBy) {
        expect(reasons[i]).toBeDefined();
        expect(Math.sign(reasons[i]!.weighs)).toBe(verdict === 'holds-together' ? 1 : -1);
      }
      expect(decision.summary).toMatch(/^[A-Z].*\.$/);
      expect(decision.rule).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('says what ties the two and what the eye trips over', () => {
    const ledger = tradeCases.find(({ name }) => name.startsWith('raspberry dots'))!;
    expect(judged(ledger.anchor, ledger.candidate).decision.summary).toBe(
      'Aqua, navy and cream tie them. The coral and the crimson are what the eye trips over.',
    );
    const summary = (name: string) => {
      const found = tradeCases.find((one) => one.name.startsWith(name))!;
      return judged(found.anchor, found.candidate).decision.summary;
    };
    expect(summary('plain grey')).toBe('The candidate is quiet: it lets the other speak.');
    expect(summary('kraft printed in black')).toBe('The anchor is quiet: it lets the other speak.');
    expect(summary('plain cream cardstock on')).toContain('The white and the cream grounds do not agree.');
    expect(summary('neon pink')).toContain('The candidate outshouts the anchor');
    expect(summary('orange against violet')).toContain('finds no partner');
    expect(summary('red and green')).toContain('Red with forest green');
    expect(summary('plain navy')).toBe('Navy ties them, and what little quarrels does not part them.');
  });

  it('says that nothing ties two papers that do not quarrel either', () => {
    const found = judged(onWhite(['#b38a7e', 0.3]), onWhite(['#92a77d', 0.3]));
    expect(found.verdict).toBe('needs-a-bridge');
    expect(found.decision.turnedBy).toEqual([]);
    expect(found.decision.summary).toContain('nothing ties them');
  });

  it('says of an uneasy pair that nothing ties both what is uneasy and that', () => {
    const found = judged(onWhite([c.aqua, 0.25]), onWhite(['#8a6fae', 0.05]));
    expect(found.verdict).toBe('needs-a-bridge');
    expect(found.decision.summary).toMatch(/finds no partner\. And nothing ties the two\./);
  });

  it('names both troubles where two serious ones part papers that share no colour', () => {
    const found = judged(
      onWhite([c.coral, 0.25], [c.lime, 0.25]),
      onWhite([c.raspberry, 0.25], [c.violet, 0.25], [c.royal, 0.25]),
    );
    expect(found.verdict).toBe('pulls-apart');
    expect(found.decision.rule).toContain('Two troubles of');
    expect(found.decision.turnedBy).toHaveLength(2);
    expect(found.decision.summary).toContain('And no colour is on both sheets.');
  });
});
