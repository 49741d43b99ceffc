import type { Drawer, Held } from '../../drawer/model.ts';

/** SHA-256 of a file's bytes as hex, by which the same picture is known again; null where it cannot be had. */
export async function digestOf(bytes: ArrayBuffer): Promise<string | null> {
  // Pages that are not served safely have no digests; then every picture is a new one.
  const subtle = globalThis.crypto?.subtle;
  if (!subtle || bytes.byteLength === 0) return null;
  try {
    const digest = new Uint8Array(await subtle.digest('SHA-256', bytes));
    return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  } catch {
    return null;
  }
}

/** The side in the drawer that was read from a file with this digest, or null. */
export function heldOfDigest(drawer: Drawer, digest: string | null): Held | null {
  if (digest === null) return null;
  for (const { id, sides } of drawer.sheets) {
    if (sides.A.digest === digest) return { kind: 'sheet', id, side: 'A' };
    if (sides.B?.digest === digest) return { kind: 'sheet', id, side: 'B' };
  }
  return null;
}
