import { isMultiple, type Lattice, lattices, sameLattice, strongestLattice } from './lattice.ts';
import type { Frame, PixelImage } from './model.ts';
import { type Spectra, spectraOf, tile } from './spectrum.ts';

/** Coarser dots than this are motifs. Pixels. */
const longestPeriod = 11;
/** A lattice that all channels share is a screen only where it is finer than this: else it is a texture or a print of dots. Pixels. */
const longestSharedPeriod = 4.6;
/** … and this strong beside the coarse contrast of its tiles, summed over them. */
const leastSharedPower = 0.02;
/** One of two that are turned against each other must be this strong: what is weaker does no harm as it is. */
const leastTurnedPower = 0.008;
/** The screens of two inks are turned against each other by this much, in degrees: 30 but for what a tile can tell. Common practice, no source. */
const [leastTurn, mostTurn] = [25.5, 34.5];
/** … are as fine as each other, but for this many cycles a tile, … */
const evenlyFine = 0.6;
/** … and one shows more in red, the other in green: by this factor of power, one ratio over the other. */
const otherChannel = 2;

/**
 * Period in pixels of the printing screen that a picture shows, or null. Looks for peaks in the spectra of small tiles that recur
 * over the frame, a square lattice for each channel: four-colour printing turns each ink's screen by another angle, which
 * neither a paper's texture nor a print of dots does. Coarse dots on small motifs are looked for once more in larger tiles.
 */
export function screenPeriod(image: PixelImage, frame: Frame): number | null {
  const fine = spectraOf(image, frame, 1, 16, 9);
  if (!fine) return null;
  const period = ofStrongest(fine);
  if (period !== null) return period;
  const coarse = spectraOf(image, frame, 2, 10, 4);
  return coarse && ofTurned(coarse, 2);
}

/** By the strongest lattice of each channel. */
function ofStrongest(spectra: Spectra): number | null {
  const peaks = spectra.map(strongestLattice).filter((p) => p !== null);
  if (!peaks.length) return null;
  const period = Math.max(...peaks.map((p) => tile / Math.hypot(p.fx, p.fy)));
  if (period > longestPeriod) return null;
  // One ink's screen may lie along the rows, but never all of them: what does is drawn.
  if (peaks.every(alongRows)) return null;
  const shared = peaks.every((p) => sameLattice(p, peaks[0]!));
  if (shared && (period > longestSharedPeriod || peaks.every((p) => p.power < leastSharedPower))) return null;
  return period;
}

/** By two lattices that are alike but for their inks and a turn, which may then be weak. */
function ofTurned(spectra: Spectra, pixels: number): number | null {
  const found = lattices(spectra);
  // Neither does a drawn grid's multiple count, which may lie askew.
  const all = found.filter((p) => !alongRows(p) && !found.some((q) => isMultiple(p, q)));
  // A screen shows at its multiples too: it is the longest.
  let longest: number | null = null;
  for (const [n, p] of all.entries())
    for (const q of all.slice(n + 1)) {
      if (Math.max(p.power, q.power) < leastTurnedPower || !turned(p, q)) continue;
      const period = (2 * tile * pixels) / (Math.hypot(p.fx, p.fy) + Math.hypot(q.fx, q.fy));
      if (period <= longestPeriod && period > (longest ?? 0)) longest = period;
    }
  return longest;
}

function alongRows({ fx, fy }: Lattice): boolean {
  return Math.min(Math.abs(fx), Math.abs(fy)) < 0.06 * Math.hypot(fx, fy);
}

function turned(p: Lattice, q: Lattice): boolean {
  if (Math.abs(Math.hypot(p.fx, p.fy) - Math.hypot(q.fx, q.fy)) > evenlyFine) return false;
  const degrees = (Math.abs(Math.atan2(p.fy, p.fx) - Math.atan2(q.fy, q.fx)) * 180) / Math.PI;
  const turn = Math.min(degrees % 90, 90 - (degrees % 90));
  if (turn < leastTurn || turn > mostTurn) return false;
  const ratio = (p.channels[0]! * q.channels[1]!) / (p.channels[1]! * q.channels[0]!);
  return ratio > otherChannel || ratio < 1 / otherChannel;
}
