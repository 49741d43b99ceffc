import { sideOfHeld } from '../drawer/held.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import type { Comparison, Remedy } from '../harmony/model.ts';
import { goesByPlaces } from '../harmony/remedies/remedies.ts';
import type { Notebook } from '../notebook/model.ts';
import type { Places, Side } from '../sheet/model.ts';
import { ownTurn } from '../storage/own-turn.ts';
import type { Comparisons, HeldPair } from './comparisons.ts';

/** Sheets of a drawer beside which remedies are worked out while the study is drawn. Ours: above it that holds up the hand. */
const soonTried = 300;

/**
 * What could mend a pair. It goes by where the inks lie, so it is told once that is known of both papers and not
 * before: nothing that is looked at meanwhile changes it.
 */
export interface Advice {
  /** Null until it is known where the inks of both lie; `arrived` is called when it is known of one. */
  now(notebook: Notebook, pair: HeldPair): readonly Remedy[] | null;
  whenKnown(notebook: Notebook, pair: HeldPair): Promise<readonly Remedy[]>;
}

export function startAdvice(
  comparisons: Comparisons,
  placesOf: (notebook: Notebook, held: Held) => Promise<Places | null>,
  arrived: () => void,
): Advice {
  /** Null where there is no picture to tell it from. */
  const lying = new WeakMap<Side, Places | null>();
  const asked = new WeakMap<Side, Promise<void>>();
  const told = new WeakMap<Comparison, readonly Remedy[]>();
  const underway = new WeakSet<Comparison>();
  let queue: Promise<void> = Promise.resolve();

  const ask = (notebook: Notebook, held: Held, reading: Side): Promise<void> => {
    const before = asked.get(reading);
    if (before !== undefined) return before;
    const answer = placesOf(notebook, held)
      .catch(() => null)
      .then((places) => {
        lying.set(reading, places);
        arrived();
      });
    asked.set(reading, answer);
    return answer;
  };
  /** The papers of which it is not known yet where their inks lie. */
  const unknown = (drawer: Drawer, { anchor, candidate }: HeldPair) =>
    [anchor, candidate].flatMap((held) => {
      const reading = held.kind === 'plain' ? null : sideOfHeld(drawer, held);
      return reading === null || lying.has(reading) ? [] : [{ held, reading }];
    });
  const lies = (drawer: Drawer, held: Held): Places | null => {
    const reading = held.kind === 'plain' ? null : sideOfHeld(drawer, held);
    return reading === null ? null : (lying.get(reading) ?? null);
  };
  const remedies = (drawer: Drawer, pair: HeldPair, comparison: Comparison): readonly Remedy[] => {
    const before = told.get(comparison);
    if (before !== undefined) return before;
    const [anchor, candidate] = [lies(drawer, pair.anchor), lies(drawer, pair.candidate)];
    const found = comparisons.remedies(drawer, pair, {
      ...(anchor ? { anchor } : {}),
      ...(candidate ? { candidate } : {}),
    });
    told.set(comparison, found);
    return found;
  };
  /** At once beside a drawer that is soon looked through; beside a large one each pair in a task of its own. */
  const atOnce = (drawer: Drawer, pair: HeldPair, comparison: Comparison): readonly Remedy[] | null => {
    if (told.has(comparison) || drawer.sheets.length <= soonTried) return remedies(drawer, pair, comparison);
    if (!underway.has(comparison)) {
      underway.add(comparison);
      queue = queue
        .then(ownTurn)
        .then(() => {
          remedies(drawer, pair, comparison);
          arrived();
        })
        // One that can't be worked out must not keep the next from it.
        .catch(() => {});
    }
    return null;
  };
  const compared = ({ drawer }: Notebook, { anchor, candidate, distance }: HeldPair) =>
    comparisons.of(drawer, anchor, candidate, distance);

  return {
    now(notebook, pair) {
      const comparison = compared(notebook, pair);
      if (comparison === null) return [];
      const missing = goesByPlaces(comparison) ? unknown(notebook.drawer, pair) : [];
      if (missing.length === 0) return atOnce(notebook.drawer, pair, comparison);
      for (const { held, reading } of missing) void ask(notebook, held, reading);
      return null;
    },
    async whenKnown(notebook, pair) {
      const comparison = compared(notebook, pair);
      if (comparison === null) return [];
      const missing = goesByPlaces(comparison) ? unknown(notebook.drawer, pair) : [];
      await Promise.all(missing.map(({ held, reading }) => ask(notebook, held, reading)));
      return remedies(notebook.drawer, pair, comparison);
    },
  };
}
