import type { Frame, PixelImage } from '../model.ts';
import {
  alongDiagonals,
  alongRows,
  evenlyFine,
  frequencyOf,
  isMultiple,
  type Lattice,
  lattices,
  sameLattice,
  strongestLattice,
} from './lattice.ts';
import { atScreenAngle, mirrors, type ScreenPair, strongestPair } from './screen-pair.ts';
import { type Spectra, spectraOf, tile } from './spectrum.ts';

/** Coarser dots than this are motifs. Pixels. */
const longestPeriod = 11;
/** Dots finer than two pixels show as coarser and weaker ones: averaging over this much is enough. Pixels. */
const aliasedPeriod = 2.5;
/** A lattice that all channels share is a screen only where it is finer than this: else it is a texture or a print of dots. Pixels. */
const longestSharedPeriod = 4.6;
/** … and this strong beside the coarse contrast of its tiles, summed over them. */
const leastSharedPower = 0.02;
/** What is weaker than the strongest channel's lattice by this factor does not say how fine the screen is. */
const muchWeaker = 10;
/** A lattice that stands for itself, with a multiple, must be this strong, … */
const leastPowerAlone = 0.008;
/** … and show more in one channel than in the other by this factor. */
const oneChannel = 3;
/** How far off the mirror a twin may lie, of a lattice known by one of its peaks. Degrees. */
const twinOffMirror = 3;
/** Two periods this near, in parts of one, are the same. */
const sameFineness = 0.05;

/**
 * Period in pixels of the printing screen that a picture shows, or null. Looks for peaks in the spectra of small tiles that recur
 * over the frame, a square lattice for each channel: four-colour printing turns each ink's screen by another angle, which
 * neither a paper's texture nor a print of dots does. Coarse dots on small motifs are looked for once more in larger tiles.
 */
export function screenPeriod(image: PixelImage, frame: Frame): number | null {
  const fine = spectraOf(image, frame, 1, 16, 9);
  if (!fine) return null;
  const all = lattices(fine);
  const strongest = ofStrongest(fine, all);
  const pair = strongestPair(all, longestPeriod);
  if (pair?.aliased && !(strongest && strongest.power > muchWeaker * pair.power))
    return ofCoarser(all, tile / pair.frequency) ?? aliasedPeriod;
  if (
    strongest?.askew &&
    !(pair && Math.abs(tile / pair.frequency - strongest.period) < sameFineness * strongest.period)
  )
    return Math.min(aliasedPeriod, strongest.period);
  if (strongest) return ofCoarser(all, strongest.period) ?? strongest.period;
  const coarse = spectraOf(image, frame, 2, 10, 4);
  const wide = coarse ? lattices(coarse) : [];
  const wider = strongestPair(wide, longestPeriod / 2);
  // A faint pair of fine ones may be all that edges leave to see of coarse dots in small tiles.
  if (pair) {
    const period = periodOf(pair, 1);
    const repeats = wider && !wider.aliased && wider.power > pair.power && periodOf(wider, 2) > period;
    return repeats ? periodOf(wider, 2) : (ofCoarser(all, period) ?? period);
  }
  return wider ? periodOf(wider, 2) : ofOne(wide, 2);
}

function periodOf({ frequency, aliased }: ScreenPair, pixels: number): number {
  return aliased ? aliasedPeriod : (pixels * tile) / frequency;
}

/** What the strongest lattices tell. */
interface Strongest {
  readonly period: number;
  readonly power: number;
  /** None lies at an angle that screens have. */
  readonly askew: boolean;
}

/** By the strongest lattice of each channel. */
function ofStrongest(spectra: Spectra, all: readonly Lattice[]): Strongest | null {
  const found = spectra
    .map((power, channel) => {
      const p = strongestLattice(power);
      return p && !all.some((q) => isTwin(p, q, channel)) ? p : null;
    })
    .filter((p) => p !== null);
  if (!found.length) return null;
  // Where two screens meet they make a coarser lattice, the rosette, which is weaker.
  const most = Math.max(...found.map((p) => p.power));
  const peaks = found.filter((p) => p.power > most / muchWeaker);
  const period = Math.max(...peaks.map((p) => tile / frequencyOf(p)));
  if (period > longestPeriod) return null;
  // One ink's screen may lie along the rows, but never all of them: what does is drawn.
  if (peaks.every(alongRows)) return null;
  const shared = peaks.every((p) => sameLattice(p, peaks[0]!));
  if (shared && (period > longestSharedPeriod || peaks.every((p) => p.power < leastSharedPower))) return null;
  return { period, power: most, askew: !shared && !peaks.some(atScreenAngle) };
}

/** Whether a lattice mirrors another, as strong in the same channel: a print that was drawn so, for a screen has one angle an ink. */
function isTwin(p: Lattice, q: Lattice, channel: number): boolean {
  return mirrors(p, q, twinOffMirror) && q.channels[channel]! > p.power / 2;
}

/** Period of a coarser and stronger lattice that what was found only repeats, or null. */
function ofCoarser(all: readonly Lattice[], period: number): number | null {
  const alike = all.filter((p) => Math.abs(frequencyOf(p) - tile / period) < evenlyFine);
  const most = Math.max(...alike.map((p) => p.power));
  const found = alike.filter((p) => p.power > most / 3);
  const periods = all
    .filter((q) => !alongRows(q) && q.power > most && found.some((p) => isMultiple(p, q)))
    .map((q) => tile / frequencyOf(q))
    .filter((coarser) => coarser <= longestPeriod);
  return periods.length ? Math.max(...periods) : null;
}

/** By a single lattice of one ink that lies askew and shows at a multiple, too. */
function ofOne(all: readonly Lattice[], pixels: number): number | null {
  for (const p of all) {
    const [first, second] = p.channels as [number, number];
    const period = (pixels * tile) / frequencyOf(p);
    if (p.power < leastPowerAlone || period > longestPeriod || alongRows(p) || alongDiagonals(p)) continue;
    if (Math.max(first / second, second / first) < oneChannel) continue;
    if (all.some((q) => isMultiple(q, p)) && !all.some((q) => isMultiple(p, q))) return period;
  }
  return null;
}
