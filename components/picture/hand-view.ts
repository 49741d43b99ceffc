import type { AsideReason, HandMade, Side } from '../../src/sheet/model.ts';
import type { Aside } from './qw-inks-by-hand.ts';

/** An id on screen of a correction that set an ink aside: the ink itself has none any more. */
const asidePrefix = 'aside-';

/** Which inks of a side are kept as they are, and which were set aside. */
export function handOf({ hand, side }: { readonly hand: readonly HandMade[]; readonly side: Side }): {
  readonly kept: readonly string[];
  readonly aside: readonly Aside[];
} {
  const inks = [side.base, ...side.inks];
  const kept = hand.flatMap(({ change, inks: named }) => {
    const hex = change.kind === 'keep' ? named[change.ink]?.hex : undefined;
    return inks.filter((ink) => ink.hex === hex).map((ink) => ink.id);
  });
  const aside = hand.flatMap(({ change, inks: named }, i) => {
    const ink = change.kind === 'set-aside' ? named[change.ink] : undefined;
    return ink ? [{ ink: { ...ink, id: `${asidePrefix}${i}` }, reason: reasonOf(change) }] : [];
  });
  return { kept, aside };
}

/** The correction that an id on screen stands for, as its index; null where the id is an ink's. */
export function asideIndex(id: string): number | null {
  return id.startsWith(asidePrefix) ? Number(id.slice(asidePrefix.length)) : null;
}

function reasonOf(change: HandMade['change']): AsideReason {
  return change.kind === 'set-aside' ? change.reason : 'not printed';
}
