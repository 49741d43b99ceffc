import { steadyAngle } from '../../colour/steady.ts';
import { alongRows, evenlyFine, frequencyOf, isMultiple, type Lattice } from './lattice.ts';
import { tile } from './spectrum.ts';

/** Two lattices that are alike but for their inks and their angles: the screens of two inks. They may then be weak. */
export interface ScreenPair {
  /** Cycles a tile. */
  readonly frequency: number;
  /** The dots are finer than two pixels, and only show as these coarser ones. */
  readonly aliased: boolean;
  /** Geometric mean of theirs. */
  readonly power: number;
}

/** The screens of two inks are turned against each other by this much, in degrees: 30 but for what a tile can tell. Common practice, no source. */
const [leastTurn, mostTurn] = [25.5, 34.5];
/** One of two such must be this strong: what is weaker may be chance. */
const leastTurnedPower = 0.008;
/** Angles of cyan's and magenta's screens, from the rows or from the columns, in degrees: common practice, no source. What lies otherwise shows dots that are finer than the pixels. */
const screenAngle = 15;
const mostOffAngle = 3;
/** Their first multiples lie 45° further. */
const multipleAngle = 30;
const mostOffMultiple = 1.5;
/** They mirror each other, and so does what is left of them where they are finer than the pixels. Degrees. */
const mostOffMirror = 1;
const leastMirrorTurn = 5;
/** One shows more in red, the other in green: by this factor of power, one ratio over the other. */
const otherChannel = { turned: 2, mirrored: 3 } as const;

/** The strongest pair of screens among lattices, none coarser than `longestPeriod` samples. */
export function strongestPair(list: readonly Lattice[], longestPeriod: number): ScreenPair | null {
  // A drawn grid does not count, nor its multiples, which may lie askew.
  const all = list.filter((p) => !alongRows(p) && !list.some((q) => isMultiple(p, q)));
  let found: ScreenPair | null = null;
  for (const [n, p] of all.entries())
    for (const q of all.slice(n + 1)) {
      const frequency = (frequencyOf(p) + frequencyOf(q)) / 2;
      if (Math.abs(frequencyOf(p) - frequencyOf(q)) > evenlyFine || tile / frequency > longestPeriod)
        continue;
      const kind = kindOf(p, q);
      if (!kind) continue;
      const aliased = kind === 'mirrored';
      const power = p.power * q.power;
      if (power > (found?.power ?? 0) ** 2) found = { frequency, aliased, power: Math.sqrt(power) };
    }
  return found;
}

function kindOf(p: Lattice, q: Lattice): 'turned' | 'mirrored' | null {
  const [first, second] = [angleOf(p), angleOf(q)];
  const turn = fromSquare(first - second);
  const ratio = (p.channels[0]! * q.channels[1]!) / (p.channels[1]! * q.channels[0]!);
  const other = Math.max(ratio, 1 / ratio);
  const isMirror = mirrors(p, q);
  if (isMirror && other > otherChannel.mirrored)
    return atScreenAngle(p) || atMultipleAngle(p) ? 'turned' : 'mirrored';
  const strong = Math.max(p.power, q.power) > leastTurnedPower && other > otherChannel.turned;
  return strong && turn >= leastTurn && turn <= mostTurn ? 'turned' : null;
}

/** Whether a lattice lies as a screen of cyan or magenta does. */
export function atScreenAngle(p: Lattice): boolean {
  return Math.abs(fromSquare(angleOf(p)) - screenAngle) < mostOffAngle;
}

/** Whether it lies as a screen's first multiple does, which may be all that is seen of coarse dots. */
function atMultipleAngle(p: Lattice): boolean {
  return Math.abs(fromSquare(angleOf(p)) - multipleAngle) < mostOffMultiple;
}

/** Whether two lattices that are as fine as each other mirror each other, and neither itself. */
export function mirrors(p: Lattice, q: Lattice, off: number = mostOffMirror): boolean {
  const [first, second] = [angleOf(p), angleOf(q)];
  return (
    Math.abs(frequencyOf(p) - frequencyOf(q)) < evenlyFine &&
    fromSquare(first + second) < off &&
    fromSquare(first - second) > leastMirrorTurn
  );
}

const angleOf = ({ fx, fy }: Lattice): number => (steadyAngle(fy, fx) * 180) / Math.PI;

/** How far an angle lies from a whole number of quarter turns, in degrees. */
function fromSquare(degrees: number): number {
  const rest = Math.abs(degrees) % 90;
  return Math.min(rest, 90 - rest);
}
