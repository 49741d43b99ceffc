import { pairNames } from '../drawer/held.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { veilOf } from '../drawing/parts-veil.ts';
import { judgeParts } from '../harmony/further/judge-parts.ts';
import type { Comparison, JudgedParts } from '../harmony/model.ts';
import type { Places, SizeMm } from '../sheet/model.ts';

/** Which parts of the candidate hold with the anchor, with how thickly each place is veiled, 0–255. */
export function findParts(
  drawer: Drawer,
  pair: { readonly anchor: Held; readonly candidate: Held },
  { anchor, candidate, distance }: Comparison,
  places: Places,
): { readonly shading: JudgedParts; readonly veil: Uint8ClampedArray } {
  const names = pairNames(drawer, pair.anchor, pair.candidate);
  const size = sizeOf(drawer, pair.candidate);
  const sheetMm = size ? { sheetMm: Math.max(size.width, size.height) } : {};
  const shading = judgeParts(anchor, { side: candidate, places }, { distance, names, ...sheetMm });
  return { shading, veil: veilOf(shading) };
}

function sizeOf({ sheets, parts }: Drawer, { kind, id }: Held): SizeMm | null {
  if (kind === 'plain') return null;
  return (kind === 'sheet' ? sheets : parts).find((one) => one.id === id)?.sizeMm ?? null;
}
