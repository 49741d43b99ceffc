import { readsAsNeutral } from '../../colour/neutral.ts';
import { labFromHex } from '../../colour/spaces.ts';
import type { Ink } from '../../sheet/model.ts';
import type { Comparison, DecidingColours, Reason } from '../model.ts';

/**
 * The first colour of either paper that the reason names which turned the verdict, one with a hue before neutrals; where none
 * names two colours, those of the first reason told that weighs the way the verdict went, then of any. Null where no reason
 * told names a colour of each.
 */
export function decidingColours(comparison: Comparison): DecidingColours | null {
  const { reasons, decision, verdict } = comparison;
  const sides = [comparison.anchor, comparison.candidate];
  const table = new Map(sides.flatMap(({ base, inks }) => [base, ...inks]).map((ink) => [ink.id, ink]));
  const told = reasons.slice(0, decision.leads ?? reasons.length).filter(({ weighs }) => weighs !== 0);
  const way = verdict === 'holds-together' ? 1 : -1;
  const isColoured = ({ inks }: Reason) => inks.every((id) => !isNeutral(table.get(id)));
  const turned = decision.turnedBy.flatMap((index) => reasons[index] ?? []);
  const order = [
    ...turned.filter(isColoured),
    ...turned,
    ...told.filter(({ weighs }) => weighs * way > 0),
    ...told,
  ];
  for (const reason of order) {
    const named = reason.inks.flatMap((id) => table.get(id) ?? []);
    const one = named.find(({ id }) => isAnchors(id));
    const other = named.find(({ id }) => !isAnchors(id));
    if (one && other) return [one, other];
  }
  return null;
}

function isAnchors(id: string): boolean {
  return id[0]! < 'a';
}

function isNeutral(ink: Ink | undefined): boolean {
  return ink !== undefined && readsAsNeutral(labFromHex(ink.hex));
}
