import { seenNumbers } from './seen-numbers.ts';

/**
 * How exactly a side comes back on itself, 0–1, and after how many mm: L*, a* and b* of lines against the same lines moved
 * along by 1, 2, 3 … squares, along rows and along columns. The regularity fades where the way is longer than a small print's.
 */
export function regularityOf(
  channels: readonly Float64Array[],
  width: number,
  height: number,
  mm: number,
): { regular: number; repeatMm: number | null } {
  const found = [true, false]
    .map((across) => topOf(agreementOf(channels, width, height, across, mm), mm))
    .filter((top) => top !== null);
  if (!found.length) return { regular: 0, repeatMm: null };
  const best = found.reduce((p, q) => (q.regular > p.regular ? q : p));
  return { regular: best.regular, repeatMm: Math.round(best.wayMm * 10) / 10 };
}

interface Top {
  readonly regular: number;
  readonly wayMm: number;
}

/** Agreement at each shift, 1 at none. Every fifth line tells as much. */
function agreementOf(
  channels: readonly Float64Array[],
  width: number,
  height: number,
  across: boolean,
  mm: number,
): number[] {
  const [along, lines] = across ? [width, height] : [height, width];
  const [step, next] = across ? [1, width] : [width, 1];
  const most = Math.min(Math.floor(along / 2), Math.ceil(seenNumbers.repeatMm[1] / mm) + 1);
  const means = channels.map((plane) => plane.reduce((s, v) => s + v, 0) / plane.length);
  const out: number[] = [];
  for (let shift = 0; shift <= most; shift++) {
    let sum = 0;
    let n = 0;
    for (let line = 0; line < lines; line += 5)
      for (let i = 0, p = line * next; i + shift < along; i++, p += step) {
        for (let c = 0; c < channels.length; c++) {
          const d = (channels[c]![p]! - means[c]!) * (channels[c]![p + shift * step]! - means[c]!);
          // Colour counts half, as in the contrast.
          sum += c === 0 ? d : d / 4;
        }
        n++;
      }
    out.push(n ? sum / n : 0);
  }
  const whole = out[0]!;
  return out.map((v) => (whole > 1e-9 ? v / whole : 0));
}

/** The best agreement after a dip: the shortest way among those as good. */
function topOf(agree: readonly number[], mm: number): Top | null {
  let low = 1;
  let best: Top | null = null;
  for (let shift = 1; shift < agree.length - 1; shift++) {
    const here = agree[shift]!;
    low = Math.min(low, here);
    const [before, after] = [agree[shift - 1]!, agree[shift + 1]!];
    if (shift * mm < seenNumbers.repeatMm[0] || here < before || here < after) continue;
    // The top lies between squares: through the three highest, a parabola.
    const bend = before - 2 * here + after;
    const wayMm = mm * (shift + (bend < 0 ? (0.5 * (before - after)) / bend : 0));
    const height = ramp(here, seenNumbers.regularFrom, seenNumbers.regularFull);
    const dip = ramp(here - low, 0.1, 0.3);
    const short = 1 - ramp(wayMm, seenNumbers.shortFullMm, seenNumbers.shortNoneMm);
    const regular = height * dip * short;
    if (regular > 0 && (best === null || regular > best.regular + 0.1)) best = { regular, wayMm };
  }
  return best;
}

function ramp(v: number, from: number, to: number): number {
  return Math.min(1, Math.max(0, (v - from) / (to - from)));
}
