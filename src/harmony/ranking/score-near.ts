import { atA, atB, atChroma, atEye, atHue, atL, atNeutral, atPainter, lineWidth } from '../measure/fade.ts';
import { farDeltaE } from '../measure/link-kind.ts';
import { degreesPerStep } from '../measure/links.ts';
import { quickPainter } from '../measure/quick-colour.ts';
import { linkLimits } from '../thresholds.ts';
import type { Lines } from './score-lines.ts';
import { colourReach, offDeg, stepsApart } from './score-pair.ts';

/** How many of an anchor's inks have a bit; those beyond are always looked at. */
export const bits = 31;

/**
 * Which inks of an anchor an ink of another sheet may be linked with, as bits, looked up by where its colour lies. All
 * others are surely unrelated to it, and nothing asks how far. A ranking makes these tables once, and then passes over
 * three of four pairs without a look. They only ever err by letting through: a test holds them to the full rules.
 */
export class Near {
  private readonly neutral = new Int32Array(cells);
  private readonly coloured = new Int32Array(cells);
  private readonly byHue = new Int32Array(hues);
  private readonly byEye = new Int32Array(360);
  private readonly kinByHue = new Int32Array(hues);
  private readonly beyondByHue = new Int32Array(hues);
  private readonly kinByEye = new Int32Array(360);
  /** Of the inks told last, those that are surely neighbours or opposites, and neither a repeat nor a near miss. */
  kin = 0;

  constructor(anchor: Lines) {
    const { data } = anchor;
    for (let i = 0, o = 0; i < Math.min(bits, anchor.count); i++, o += lineWidth) {
      const bit = 1 << i;
      const isNeutral = data[o + atNeutral] !== 0;
      const { repeatApart } = linkLimits;
      this.markCells(
        bit,
        data,
        o,
        isNeutral ? farDeltaE : repeatApart,
        isNeutral ? repeatApart : colourReach,
      );
      if (!isNeutral) this.markHues(bit, data, o);
    }
  }

  /** The bits of those inks that an ink on a line may be linked with. */
  of(lines: Float64Array, o: number): number {
    const place = cellOf(lines[o + atL]!, lines[o + atA]!, lines[o + atB]!);
    this.kin = 0;
    if (place < 0) return all;
    if (lines[o + atNeutral] !== 0) return this.neutral[place]!;
    const hue = (lines[o + atHue]! * (hues / 100)) | 0;
    const eye = lines[o + atEye]! | 0;
    const near = this.coloured[place]!;
    this.kin = ~near & (this.kinByHue[hue]! | (this.beyondByHue[hue]! & this.kinByEye[eye]!));
    return near | this.byHue[hue]! | this.byEye[eye]!;
  }

  /**
   * Sets a bit in every cell that may hold a neutral, or a colour, within so many ΔE₀₀. The bound is that of
   * `surelyBeyond`, at its least within the cell.
   */
  private markCells(bit: number, data: Float64Array, o: number, toNeutral: number, toColour: number): void {
    const [l, a, b, chroma] = [data[o + atL]!, data[o + atA]!, data[o + atB]!, data[o + atChroma]!];
    const around = wide / Math.SQRT2;
    const most = Math.max(toNeutral, toColour);
    for (let level = 0; level < levels; level++) {
      const middleL = (level + 0.5) * high;
      const dL = Math.max(0, Math.abs(l - middleL) - high / 2 - slack);
      if (dL > 1.75 * most) continue;
      const light = 1 + 0.0075 * (Math.abs(l + middleL - 100) + high / 2);
      const lights = (dL / light) ** 2 - slack;
      for (let i = 0, place = level * across * across; i < across; i++)
        for (let j = 0; j < across; j++, place++) {
          const middleA = (i + 0.5 - across / 2) * wide;
          const middleB = (j + 0.5 - across / 2) * wide;
          const away = Math.sqrt((a - middleA) ** 2 + (b - middleB) ** 2) - around - slack;
          const tint = 1.27 + 0.0225 * (chroma + Math.sqrt(middleA ** 2 + middleB ** 2) + around);
          const turned = b + middleB - wide / 2 < 0 ? 7.5 : 1.1;
          const apart = lights + (away > 0 ? away ** 2 / (tint * tint * turned) : 0);
          if (apart <= toNeutral * toNeutral) this.neutral[place]! |= bit;
          if (apart <= toColour * toColour) this.coloured[place]! |= bit;
        }
    }
  }

  /** Hues near enough to be neighbours, and those near enough to be opposites on either wheel. */
  private markHues(bit: number, data: Float64Array, o: number): void {
    for (let n = 0; n < hues; n++) {
      const middle = ((n + 0.5) * 100) / hues;
      const steps = stepsApart(data[o + atHue]!, middle);
      const half = 50 / hues + slack;
      if (steps <= linkLimits.neighbourToSteps + half) this.byHue[n]! |= bit;
      if (steps <= linkLimits.nearMissToSteps + half) continue;
      this.beyondByHue[n]! |= bit;
      if (steps <= linkLimits.neighbourToSteps - half) this.kinByHue[n]! |= bit;
    }
    const within = linkLimits.oppositeWithinSteps * degreesPerStep;
    for (let deg = 0; deg < 360; deg++) {
      const eye = offDeg(data[o + atEye]!, deg + 0.5);
      const [one, other] = [quickPainter(deg), quickPainter(deg + 1)];
      const span = 180 - offDeg(one, other);
      const painter = Math.min(offDeg(data[o + atPainter]!, one), offDeg(data[o + atPainter]!, other));
      if (eye - 0.5 <= within + slack || painter - span <= within + slack) this.byEye[deg]! |= bit;
      if (eye + 0.5 <= within - slack || painter + span <= within - slack) this.kinByEye[deg]! |= bit;
    }
  }
}

const all = 0x7fffffff;
const slack = 1e-6;
/** Places around the Munsell circle. */
const hues = 200;
/** Cells of CIELAB: this high and this wide; colours beyond them are looked at. */
const high = 6;
const wide = 14;
const levels = 17;
const across = 18;
const cells = levels * across * across;

function cellOf(l: number, a: number, b: number): number {
  const x = a / wide + across / 2;
  const y = b / wide + across / 2;
  if (!(l >= 0 && l < high * levels && x >= 0 && x < across && y >= 0 && y < across)) return -1;
  return (((l / high) | 0) * across + (x | 0)) * across + (y | 0);
}
