import type { Family } from './model.ts';

/** The families with names of which no two are alike: a word that two share is told apart by what differs between them. */
export function namesThatDiffer(families: readonly Family[]): Family[] {
  const words = families.map((family) => family.trade ?? family.name);
  return families.map((family, i) => {
    const same = families.filter((_, k) => words[k] === words[i]);
    return { ...family, name: same.length > 1 ? `${apartFrom(family, same)} ${words[i]}` : words[i]! };
  });
}

/** The word for what one of like families is beside the others: its place from light to dark. */
function apartFrom(family: Family, same: readonly Family[]): string {
  const order = [...same].sort((p, q) => q.lab.l - p.lab.l);
  const at = order.indexOf(family);
  if (order.length === 2) return at === 0 ? 'light' : 'dark';
  if (order.length === 3) return ['light', 'middle', 'dark'][at]!;
  return `${['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'][at]}`;
}
