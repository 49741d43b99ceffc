import { emptyNotebook } from '../../notebook/empty.ts';
import type { Choice } from '../../storage/choice.ts';
import type { SetAside } from '../../storage/records/records.ts';
import type { Kept } from '../../storage/shelf.ts';
import type { Written } from '../../storage/written.ts';

/** What this tab knows of each notebook that was open in it, and which of them is shown. */
export interface KnownNotebooks {
  /** One that was never heard of is empty, at revision 0. */
  of(id: string): KnownNotebook;
  has(id: string): boolean;
  change(id: string, change: Partial<KnownNotebook>): void;
  /** As it was taken from the shelf. */
  keep(kept: Kept): void;
  /** This is the open one: what is kept beside it is told. */
  show(id: string): void;
  readonly shownId: string | null;
  /** What of a notebook that is about to be opened from a file could not be read: stored with it the first time. */
  brought(id: string, setAside: readonly SetAside[]): void;
  /** What came with it in a file and is not stored yet. */
  broughtWith(id: string): readonly SetAside[];
  storedBrought(id: string): void;
}

export interface KnownNotebook {
  readonly revision: number;
  /** Its state when it was last looked at: what is noted ahead differs from it. */
  readonly written: Written;
  readonly setAside: readonly SetAside[];
  /** Tabs that are gone, and the number of their last change in it. */
  readonly from: Readonly<Record<string, number>>;
}

export interface Beside {
  readonly choices: readonly Choice[];
  readonly setAside: readonly SetAside[];
}

export function knowNotebooks(onBeside: (beside: Beside) => void): KnownNotebooks {
  const all = new Map<string, KnownNotebook>();
  const brought = new Map<string, readonly SetAside[]>();
  let shownId: string | null = null;

  const broughtWith = (id: string) => brought.get(id) ?? [];
  const of = (id: string): KnownNotebook =>
    all.get(id) ?? {
      revision: 0,
      written: { notebook: emptyNotebook(id, ''), choices: [] },
      setAside: broughtWith(id),
      from: {},
    };
  const change = (id: string, to: Partial<KnownNotebook>): void => void all.set(id, { ...of(id), ...to });

  return {
    of,
    has: (id) => all.has(id),
    change,
    keep: ({ notebook, choices, revision, setAside }) =>
      change(notebook.id, { revision, setAside, written: { notebook, choices } }),
    show(id) {
      shownId = id;
      const { written, setAside } = of(id);
      onBeside({ choices: written.choices, setAside });
    },
    get shownId() {
      return shownId;
    },
    brought: (id, setAside) => void (setAside.length > 0 && brought.set(id, setAside)),
    broughtWith,
    storedBrought: (id) => void brought.delete(id),
  };
}
