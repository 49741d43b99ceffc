import type { Distance } from '../../harmony/model.ts';

/** A box in units of one paper's width. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How two papers lie, with what lies between or under them. */
export interface PairLayout {
  readonly width: number;
  readonly height: number;
  readonly anchor: Box;
  readonly candidate: Box;
  /** The strip between the two, where there is one. */
  readonly strip: Box | null;
  /** The mat that shows round the candidate, where it is mounted. */
  readonly mat: Box | null;
}

export interface PairLies {
  /** Heights of the two, in widths. */
  readonly anchor: number;
  readonly candidate: number;
  readonly distance: Distance;
  /** What lies between: a strip, or a mat under the candidate that shows all round. */
  readonly between: 'strip' | 'mat' | null;
}

/** Of a paper's width; ours. A strip of 10 mm on 12 in would be 0.033: drawn a little wider, so that it is seen when small. */
const stripWidth = 0.05;
const gapWidth = 0.07;

/** Two papers beside each other, as wide as each other, touching or apart; with something between they meet it. */
export function pairLayout({ anchor, candidate, distance, between }: PairLies): PairLayout {
  const height = Math.max(anchor, candidate + (between === 'mat' ? 2 * stripWidth : 0));
  const gap = between !== null ? stripWidth : distance === 'touching' ? 0 : gapWidth;
  const apart = between === 'mat' && distance === 'apart' ? gapWidth : 0;
  const left = 1 + gap + apart;
  const top = between === 'mat' ? stripWidth : 0;
  return {
    width: left + 1 + (between === 'mat' ? stripWidth : 0),
    height,
    anchor: { x: 0, y: 0, width: 1, height: anchor },
    candidate: { x: left, y: top, width: 1, height: candidate },
    strip: between === 'strip' ? { x: 1, y: 0, width: stripWidth, height } : null,
    mat:
      between === 'mat'
        ? { x: left - stripWidth, y: 0, width: 1 + 2 * stripWidth, height: candidate + 2 * stripWidth }
        : null,
  };
}
