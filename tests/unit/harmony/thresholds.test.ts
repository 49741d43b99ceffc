import { describe, expect, it } from 'vitest';
import * as thresholds from '../../../src/harmony/thresholds.ts';

/**
 * The numbers that are our own choice (O), as they were tuned on the written trade cases. They are pinned here so that
 * none moves unnoticed: whoever moves one runs the trade cases, the kits and the steadiness test again and says why.
 */
describe('the numbers that judge', () => {
  it('stand as they were tuned', () => {
    expect({ ...thresholds }).toMatchInlineSnapshot(`
      {
        "adviceWeights": {
          "baseAgrees": 0.45,
          "baseApart": 0.1,
          "bothBusy": -0.25,
          "brightAlike": 0.15,
          "busyCalm": 0.2,
          "dominance": 0.05,
          "finishAlike": 0.12,
          "finishApart": -0.12,
          "flat": -0.2,
          "modelTouching": 0.15,
          "motifAlike": 0.06,
          "motifApart": 0,
          "otherEyes": -0.06,
          "range": 0.1,
          "scaleAlike": -0.15,
          "scaleApart": 0.15,
          "warmAlike": 0.12,
          "warmApart": -0.08,
        },
        "carriedShare": 0.03,
        "colourItGrid": {
          "chroma": [
            0.06,
            0.1,
            0.14,
            0.18,
          ],
          "hueStepDeg": 6,
          "lightness": [
            0.32,
            0.42,
            0.52,
            0.62,
            0.72,
            0.82,
          ],
          "nearDeltaE": 10,
        },
        "inkLimits": {
          "accentShare": 0.05,
          "clearOfNeutralsChroma": 48,
          "largeShare": 0.2,
          "nearNeutralDeltaE": [
            1.5,
            3,
            4.5,
          ],
          "quietChroma": 15,
          "speckFrom": 0.002,
          "speckFull": 0.01,
          "strayChroma": 25,
          "strayShare": 0.01,
          "tintFrom": 8,
          "tintFull": 20,
          "vividAtStray": 0.3,
          "vividFull": 70,
        },
        "kitLimits": {
          "papers": 40,
          "piecesToCut": 120,
        },
        "linkLimits": {
          "lightNeutralL": 80,
          "nearMissFromSteps": 1.5,
          "nearMissToSteps": 7,
          "neighbourToSteps": 17,
          "oppositeWithinSteps": 5,
          "repeatApart": 5,
          "repeatTouching": 3,
          "tonalValueSteps": 2,
          "whitesDeltaB": 4,
          "whitesDeltaEMax": 10,
          "whitesDeltaEMin": 3,
        },
        "matShare": 0.05,
        "neutralHexes": {
          "grey": "#9a9a98",
          "kraft": "#c9a878",
        },
        "pageLimits": {
          "busy": 0.4,
          "calm": 0.22,
          "dominant": 0.6,
          "dominantAhead": 0.05,
          "dominantSlack": 0.15,
          "flatRange": 40,
          "leaning": 0.15,
          "otherEyesFrom": 20,
          "otherEyesShare": 0.04,
          "otherEyesTo": 8,
          "ouLuoHigh": 0.4,
          "ouLuoLow": -0.4,
          "photoGap": 15,
          "thinGsm": 150,
          "tiesTold": 4,
        },
        "ramps": {
          "nearMissDeltaE": 3,
          "nearMissSteps": 0.5,
          "nearMissValue": 0.2,
          "straySteps": 5,
          "widenedDeltaE": 2,
          "widenedSteps": 2,
          "widenedValue": 0.3,
        },
        "remedyEffort": {
          "anchorExtra": 1.5,
          "carry": 2,
          "carryOwned": 1.8,
          "least": 2,
          "mat": 4,
          "most": 6,
          "pieces": 5,
          "punch": 3,
          "strip": 1,
          "swap": 0.5,
          "swapsTried": 12,
          "trim": 2.5,
          "trimFreePart": 0.25,
          "trimUpToShare": 0.05,
          "turn": 0.2,
        },
        "sameness": {
          "full": 2,
          "none": 6,
        },
        "tieWeights": {
          "neighbour": {
            "least": 0.35,
            "size": 0.15,
          },
          "neutral": {
            "least": 0.12,
            "size": 0.2,
          },
          "opposite": {
            "least": 0.38,
            "size": 0.17,
          },
          "repeat": {
            "atLimit": 0.6,
            "greyish": 0.6,
            "least": 0.55,
            "size": 0.35,
          },
          "tonal": {
            "least": 0.4,
            "size": 0.2,
          },
        },
        "troubleWeights": {
          "baseQuarrel": {
            "barePlain": 0.6,
            "fromDeltaB": 4,
            "full": 0.55,
            "fullDeltaB": 10,
            "least": 0.2,
          },
          "behindStrip": {
            "baseQuarrel": 0.6,
            "nearMiss": 0.45,
          },
          "brightMuted": {
            "fromChroma": 30,
            "fromSaturation": 0.3,
            "full": 0.48,
            "fullChroma": 55,
            "fullSaturation": 0.48,
            "least": 0.15,
          },
          "nearMiss": {
            "chromaFull": 30,
            "full": 0.85,
            "leastSize": 0.7,
            "sizeFull": 0.1,
          },
          "nearWhites": 0.25,
          "strayTied": 0.45,
          "strayTolerated": 0.3,
          "worthSaying": 0.05,
        },
        "verdictLimits": {
          "nearTie": 0.2,
          "serious": 0.6,
          "tie": 0.3,
          "trouble": 0.4,
        },
      }
    `);
  });

  it('leave room between a trouble and a serious one, and between a tie and nothing near one', () => {
    const { trouble, serious, tie, nearTie } = thresholds.verdictLimits;
    expect(trouble).toBeLessThan(serious);
    expect(nearTie).toBeLessThan(tie);
  });

  it('let every kind of tie of colour reach the limit that holds two papers, even small and at its border', () => {
    const { repeat, tonal, neighbour, opposite } = thresholds.tieWeights;
    const { tie } = thresholds.verdictLimits;
    expect(repeat.least * repeat.atLimit).toBeGreaterThanOrEqual(tie);
    for (const kind of [tonal, neighbour, opposite]) expect(kind.least).toBeGreaterThan(tie);
  });

  it('never let a quarrel of grounds, or brightness, alone pull papers apart', () => {
    const { baseQuarrel, brightMuted } = thresholds.troubleWeights;
    expect(baseQuarrel.full).toBeLessThan(thresholds.verdictLimits.serious);
    expect(brightMuted.full).toBeLessThan(thresholds.verdictLimits.serious);
  });

  it('let a bare plain, and a strip between, keep a quarrel of grounds below the limit', () => {
    const { baseQuarrel, behindStrip } = thresholds.troubleWeights;
    const { trouble } = thresholds.verdictLimits;
    expect(baseQuarrel.full * baseQuarrel.barePlain).toBeLessThan(trouble);
    expect(baseQuarrel.full * behindStrip.baseQuarrel).toBeLessThan(trouble);
    expect(thresholds.troubleWeights.nearMiss.full * behindStrip.nearMiss).toBeLessThan(trouble);
  });
});
