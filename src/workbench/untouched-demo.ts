import type { Leaf, Notebook } from '../notebook/model.ts';

/**
 * True for a demo in which nothing is the reader's own: what is in it is what a fresh one holds. What only changes how
 * a study is looked at (which candidate, how far apart, on which wheel) is nobody's work. A demo that an older page
 * drew differs from a fresh one, and counts as hers: better one too many than one that is missed.
 */
export async function isUntouchedDemo(notebook: Notebook): Promise<boolean> {
  if (!notebook.id.startsWith('demo-')) return false;
  const { default: fresh } = await import('virtual:demo-notebook');
  return isSame(writing(notebook), writing(fresh));
}

/** All that could be hers. */
function writing({ title, leaves, drawer }: Notebook): unknown {
  return { title, leaves: leaves.map(withoutView), drawer };
}

function withoutView(leaf: Leaf): unknown {
  if (leaf.kind !== 'study') return leaf;
  const { shown: _, distance: __, wheel: ___, ...rest } = leaf;
  return rest;
}

/** Whatever the order of the fields. */
function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && isSame(one[key], other[key]))
  );
}
