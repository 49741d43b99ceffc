import type { MeasuredInk } from '../measure/measured.ts';
import type { Verdict } from '../model.ts';
import type { Trouble } from '../rules/verdict.ts';
import { portraitOf } from '../whole/portrait.ts';
import { type Measured, type PlacedPair, sheetPairs } from './kit-members.ts';

/**
 * What is found of a kit. Its pairs are judged as a study judges them; a pair that does not hold is bridged where a third
 * member that rests holds with both and can lie between.
 */
export interface KitJudgement {
  readonly verdict: Verdict;
  readonly rule: KitRule;
  /** Pairs that do not hold and that nothing bridges, the worst first. */
  readonly open: readonly PlacedPair[];
  /** Pairs that do not hold, and the place of the member that bridges each. */
  readonly bridged: ReadonlyMap<PlacedPair, number>;
  /** What counts against the open pairs, weightiest first. */
  readonly troubles: readonly Trouble[];
  /** Strong colours of one member that no other member has, nor anything near. */
  readonly lonely: readonly MeasuredInk[];
  /** A member that holds with no other, or null. */
  readonly outcast: number | null;
}

/** `outcast`: a member pulls apart from all others. `open`: two do not hold, and nothing bridges them. `holds`: neither. */
export type KitRule = 'outcast' | 'open' | 'holds';

export function judgeKit(kit: Measured): KitJudgement {
  const pairs = sheetPairs(kit);
  const loose = pairs.filter(({ told }) => told.judgement.verdict !== 'holds-together');
  const bridged = new Map<PlacedPair, number>();
  for (const placed of loose) {
    const by = bridgeOf(kit, pairs, placed);
    if (by !== null) bridged.set(placed, by);
  }
  const open = loose
    .filter((placed) => !bridged.has(placed))
    .sort((one, other) => balanceOf(one) - balanceOf(other));
  const outcast =
    kit.sheets.length < 2
      ? null
      : (kit.sheets.find((at) =>
          pairs
            .filter(({ one, other }) => one === at || other === at)
            .every((placed) => placed.told.judgement.verdict === 'pulls-apart' && !bridged.has(placed)),
        ) ?? null);
  const rule = outcast !== null ? 'outcast' : open.length > 0 ? 'open' : 'holds';
  const troubles = open
    .flatMap(({ told }) => told.judgement.troubles)
    .sort((one, other) => other.weight - one.weight);
  return { verdict: verdictOf[rule], rule, open, bridged, troubles, lonely: lonelyIn(kit), outcast };
}

const verdictOf: Readonly<Record<KitRule, Verdict>> = {
  outcast: 'pulls-apart',
  open: 'needs-a-bridge',
  holds: 'holds-together',
};

const balanceOf = ({ told }: PlacedPair): number => told.judgement.whole.balance;

/** A third member at rest that holds with both, or null. */
function bridgeOf(kit: Measured, pairs: readonly PlacedPair[], { one, other }: PlacedPair): number | null {
  const holds = (a: number, b: number): boolean =>
    pairs.some(
      (placed) =>
        placed.told.judgement.verdict === 'holds-together' &&
        ((placed.one === a && placed.other === b) || (placed.one === b && placed.other === a)),
    );
  const third = kit.sheets.find(
    (at) =>
      at !== one &&
      at !== other &&
      portraitOf(kit.sides[at]!.side).role === 'rests' &&
      holds(at, one) &&
      holds(at, other),
  );
  return third ?? null;
}

/** Strong colours that no other member has anything near. */
function lonelyIn(kit: Measured): MeasuredInk[] {
  if (kit.sheets.length < 2) return [];
  return kit.sheets.flatMap((at) =>
    kit.sides[at]!.inks.filter((ink) => kit.isStrong(ink)).filter((ink) =>
      sheetPairs(kit)
        .filter(({ one, other }) => one === at || other === at)
        .every(({ pair }) =>
          pair.tied
            .filter(({ a, b }) => a.id === ink.id || b.id === ink.id)
            .every(({ link }) => link.kind === 'unrelated'),
        ),
    ),
  );
}
