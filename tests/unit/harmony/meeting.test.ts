import { describe, expect, it } from 'vitest';
import {
  type Meeting,
  missSizeOf,
  nearMissOf,
  seenOf,
  sizeOf,
  tieOf,
} from '../../../src/harmony/measure/link-kind.ts';
import { farMeeting } from '../../support/meetings.ts';

describe('what a tie weighs', () => {
  it('is most for a repeat, then tone on tone, opposites, neighbours; nothing for the rest', () => {
    const weights = (['repeat', 'tonal', 'opposite', 'neighbour'] as const).map((kind) =>
      tieOf({ ...farMeeting, deltaE00: 0 }, kind, 5),
    );
    expect(weights).toEqual([0.9, 0.6000000000000001, 0.55, 0.5]);
    expect(tieOf(farMeeting, 'unrelated', 5)).toBe(0);
    expect(tieOf(farMeeting, 'near miss', 5)).toBe(0);
  });

  it('fades for a repeat from 2 ΔE₀₀ to three fifths at 5, and in proportion where edges touch', () => {
    const at = (deltaE00: number, limit = 5) => tieOf({ ...farMeeting, deltaE00 }, 'repeat', limit);
    expect(at(2)).toBeCloseTo(0.9, 12);
    expect(at(3.5)).toBeCloseTo(0.72, 12);
    expect(at(5)).toBeCloseTo(0.54, 12);
    expect(at(1.2, 3)).toBeCloseTo(0.9, 12);
    expect(at(3, 3)).toBeCloseTo(0.54, 12);
  });

  it('grows with size and falls with what is not seen', () => {
    expect(tieOf({ ...farMeeting, size: 0 }, 'tonal', 5)).toBeCloseTo(0.4, 12);
    expect(tieOf({ ...farMeeting, size: 0.5 }, 'neighbour', 5)).toBeCloseTo(0.425, 12);
    expect(tieOf({ ...farMeeting, seen: 0.5 }, 'opposite', 5)).toBeCloseTo(0.275, 12);
    expect(tieOf({ ...farMeeting, tint: 0.5 }, 'tonal', 5)).toBeCloseTo(0.3, 12);
  });

  it('keeps three fifths for a repeat whose hue hardly counts, and little for a neutral', () => {
    expect(tieOf({ ...farMeeting, deltaE00: 0, tint: 0 }, 'repeat', 5)).toBeCloseTo(0.54, 12);
    expect(tieOf({ ...farMeeting, deltaE00: 0, tint: 0.5 }, 'repeat', 5)).toBeCloseTo(0.72, 12);
    expect(tieOf({ ...farMeeting, deltaE00: 0, chromatic: false }, 'repeat', 5)).toBeCloseTo(0.32, 12);
    expect(
      tieOf({ ...farMeeting, deltaE00: 0, chromatic: false, size: 0, seen: 0.5 }, 'repeat', 5),
    ).toBeCloseTo(0.06, 12);
  });
});

describe('what a near miss weighs', () => {
  const miss = { ...farMeeting, deltaE00: 12, hueSteps: 4 };

  it('is 0.85 in the midst of its band, and grows from nothing at every border', () => {
    const at = (more: Partial<Meeting>) => nearMissOf({ ...miss, ...more }, 5);
    expect(at({})).toBeCloseTo(0.85, 12);
    expect(at({ deltaE00: 5 })).toBe(0);
    expect(at({ deltaE00: 6.5 })).toBeCloseTo(0.425, 12);
    expect(at({ deltaE00: 8 })).toBeCloseTo(0.85, 12);
    expect(at({ hueSteps: 1.5 })).toBe(0);
    expect(at({ hueSteps: 1.75 })).toBeCloseTo(0.425, 12);
    expect(at({ hueSteps: 2 })).toBeCloseTo(0.85, 12);
    expect(at({ hueSteps: 7 })).toBe(0);
    expect(at({ hueSteps: 6.75 })).toBeCloseTo(0.425, 12);
    expect(at({ hueSteps: 6.5 })).toBeCloseTo(0.85, 12);
    expect(at({ valueSteps: 2 })).toBe(0);
    expect(at({ valueSteps: 1.9 })).toBeCloseTo(0.425, 12);
    expect(at({ valueSteps: 1.8 })).toBeCloseTo(0.85, 12);
  });

  it('falls with weak chroma and with what is not seen, and to seven tenths with size', () => {
    expect(nearMissOf({ ...miss, strong: 0.5 }, 5)).toBeCloseTo(0.425, 12);
    expect(nearMissOf({ ...miss, seen: 0.5 }, 5)).toBeCloseTo(0.425, 12);
    expect(nearMissOf({ ...miss, missSize: 0 }, 5)).toBeCloseTo(0.595, 12);
  });

  it('is a quarter at most for two whites', () => {
    expect(nearMissOf({ ...miss, chromatic: false, missSize: 0.5, seen: 0.5 }, 5)).toBeCloseTo(0.0625, 12);
  });
});

describe('what a share and a chroma give', () => {
  it('is size by the square root, whole at a fifth (a tenth for a near miss)', () => {
    expect([0, 0.05, 0.2, 0.9].map(sizeOf)).toEqual([0, 0.5, 1, 1]);
    expect([0, 0.025, 0.1, 0.9].map(missSizeOf)).toEqual([0, 0.5, 1, 1]);
  });

  it('is being seen from 0.2 % to 1 %', () => {
    expect([0.002, 0.006, 0.01, 0.5].map(seenOf)).toEqual([0, 0.5, 1, 1].map((v) => expect.closeTo(v, 9)));
  });
});
