import type { Planes } from '../planes.ts';
import { numbers } from '../reading-limits.ts';
import { ColourCells } from './cells.ts';
import { type Explained, explain, explainMore, pixelCells } from './explain.ts';
import type { Flatness } from './flatness.ts';
import { sifted, withoutSpecks } from './kept-inks.ts';
import { countLabels } from './label-counts.ts';
import { type Mode, modesOf } from './modes.ts';
import { ramped } from './ramps.ts';
import { residualModes } from './residue.ts';
import { apart, mergeNear } from './settled-inks.ts';
import { type Softness, softnessOf } from './softness.ts';
import { strokeSoftness } from './stroke-softness.ts';
import { unblurred } from './unblur.ts';
import { eachWindowRow } from './windows.ts';

/** The colours a sheet is printed in, and where each lies. */
export interface Found extends Explained {
  readonly colours: readonly Mode[];
  /** Numbers of the colours of each wash, lightest first. */
  readonly ramps: readonly (readonly number[])[];
}

/** Finds the inks by what flat places say, then what those leave unexplained; drops what is only a mixture or a rim. `known` is how soft the edges are, where that need not be measured. */
export function findInks(planes: Planes, flat: Flatness, known: Softness | null = null): Found {
  const votes = flatVotes(planes, flat.limit);
  const cells = pixelCells(planes);
  const near = Math.max(numbers.explainedNear, numbers.explainedTimesNoise * flat.noise);
  let colours = mergeNear(modesOf(votes).filter((m) => m.votes >= numbers.leastVotes * votes.total));
  votes.done();
  let explained = explain(planes, cells, colours, near);
  let whole = true;
  for (let turn = 0; turn < 3; turn++) {
    const fresh = newModes(planes, colours, explained);
    if (!fresh.length) break;
    colours = [...colours, ...fresh];
    explained = explainMore(planes, explained, colours, near);
    whole = false;
  }
  for (let turn = 0; turn < 6; turn++) {
    const keep = sifted(colours, explained, planes);
    if (whole && keep.length === colours.length) break;
    colours = keep;
    explained = explain(planes, cells, colours, near);
    whole = true;
  }
  const wash = ramped(planes, colours, explained.labels, flat);
  if (wash) {
    const whole = explain(planes, cells, wash.colours, near);
    return { colours: wash.colours, ramps: wash.ramps, ...whole };
  }
  const sharp = sharpened(planes, colours, explained, known);
  if (sharp) {
    const before = explained.amounts;
    const whole = explain(planes, cells, sharp, near);
    // A colour that then explains next to nothing was made too strong: it stays as it shows itself.
    const lost = (k: number): boolean => whole.amounts[k]! < numbers.lostShare * before[k]!;
    const kept = sharp.length === colours.length && sharp.some((_, k) => lost(k));
    colours = kept ? sharp.map((mode, k) => (lost(k) ? colours[k]! : mode)) : sharp;
    explained = kept ? explain(planes, cells, colours, near) : whole;
  }
  const drawn = withoutSpecks(colours, explained, planes);
  if (drawn.length && drawn.length < colours.length) {
    colours = drawn;
    explained = explain(planes, cells, colours, near);
  }
  return { colours, ramps: [], ...explained };
}

/** The colours with those of thin inks as they are without blur; null where none changes. */
function sharpened(
  planes: Planes,
  colours: readonly Mode[],
  { labels, amounts }: Explained,
  known: Softness | null,
): Mode[] | null {
  const { area, inside } = countLabels(labels, planes.width, planes.height, colours.length);
  const byEdges = known ?? softnessOf(planes, colours, labels);
  const softness = byEdges ?? byStrokes();
  if (!softness || softness.colour < numbers.softFrom) return null;
  function byStrokes(): Softness | null {
    const thin = colours.flatMap((_, k) => (inside[k]! <= numbers.solidInside * area[k]! ? [k] : []));
    const found = strokeSoftness(planes, colours, labels, thin);
    // What a JPEG alone has blurred, in colour and not in lightness, strokes are too narrow to tell.
    return found && found.light >= numbers.strokesSoft ? found : null;
  }
  const plain = known !== null || byEdges === null || softness.light > numbers.plainlySoft;
  const out = colours.slice();
  let changed = false;
  for (let k = 0; k < colours.length; k++) {
    const trust = trusted(inside[k]! / Math.max(1, area[k]!), plain);
    if (trust === 0 || amounts[k]! > 0.3 * planes.count) continue;
    const next = between(out[k]!, unblurred(planes, out, labels, k, softness), trust);
    if (apart(next, colours[k]!) > 0.004) changed = true;
    out[k] = next;
  }
  return changed ? mergeNear(out) : null;
}

/** How far an ink's colour without blur is taken rather than the one it shows, 0–1. `plain`: how soft the edges are is beyond doubt. */
function trusted(inside: number, plain: boolean): number {
  if (plain) return inside > numbers.solidInside ? 0 : 1;
  const [none, whole] = numbers.solidInsideMeasured;
  return Math.min(1, Math.max(0, (none - inside) / (none - whole)));
}

function between(p: Mode, q: Mode, part: number): Mode {
  const on = (from: number, to: number): number => from + part * (to - from);
  return { l: on(p.l, q.l), a: on(p.a, q.a), b: on(p.b, q.b), votes: p.votes };
}

function newModes(planes: Planes, colours: readonly Mode[], explained: Explained): Mode[] {
  const fresh: Mode[] = [];
  for (const mode of residualModes(planes, explained)) {
    if (mode.votes < numbers.leastHearts * planes.count) break;
    if ([...colours, ...fresh].every((c) => apart(c, mode) > 0.08)) fresh.push(mode);
    if (fresh.length === 4) break;
  }
  return fresh;
}

function flatVotes(planes: Planes, limit: Float64Array): ColourCells {
  const cells = new ColourCells();
  const step = planes.count > numbers.everyOther ? 2 : 1;
  const bands = limit.length;
  eachWindowRow(planes, step, (y, { l, a, b, spread }) => {
    for (let x = 1, n = y; x < planes.width - 1; x += step > 1 ? step - 1 + (n++ % 3) : 1) {
      const s = spread[x]!;
      if (s < 0) continue;
      const band = (l[x]! * bands) | 0;
      if (s <= limit[band < 0 ? 0 : band >= bands ? bands - 1 : band]!) cells.add(l[x]!, a[x]!, b[x]!);
    }
  });
  // Nothing flat at all (a picture of a few pixels): every pixel speaks.
  if (cells.total === 0)
    for (let i = 0; i < planes.l.length; i++)
      if (planes.on[i]) cells.add(planes.l[i]!, planes.a[i]!, planes.b[i]!);
  return cells;
}
