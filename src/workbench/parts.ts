import { pairNames } from '../drawer/find.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { veilOf } from '../drawing/shading.ts';
import { shadeParts } from '../harmony/further/other-shade.ts';
import type { Comparison, Shading } from '../harmony/model.ts';
import type { Places, SizeMm } from '../sheet/model.ts';

/** Which parts of the candidate hold with the anchor, with how thickly each place is veiled, 0–255. */
export function findParts(
  drawer: Drawer,
  pair: { readonly anchor: Held; readonly candidate: Held },
  { anchor, candidate, distance }: Comparison,
  places: Places,
): { readonly shading: Shading; readonly veil: Uint8ClampedArray } {
  const names = pairNames(drawer, pair.anchor, pair.candidate);
  const size = sizeOf(drawer, pair.candidate);
  const sheetMm = size ? { sheetMm: Math.max(size.width, size.height) } : {};
  const shading = shadeParts(anchor, { side: candidate, places }, { distance, names, ...sheetMm });
  return { shading, veil: veilOf(shading) };
}

function sizeOf({ sheets, parts }: Drawer, { kind, id }: Held): SizeMm | null {
  if (kind === 'plain') return null;
  return (kind === 'sheet' ? sheets : parts).find((one) => one.id === id)?.sizeMm ?? null;
}
