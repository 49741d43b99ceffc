import type { Places, Plain, Side } from '../../sheet/model.ts';
import type { Comparison, Remedy } from '../model.ts';

/** A comparison with what could mend it. */
export interface Advised extends Comparison {
  readonly remedies: readonly Remedy[];
}

/** What there is to mend a pair with. Nothing of it changes the comparison. */
export interface MendOptions {
  readonly owned?: Owned;
  /** The other side of the candidate, where there is one: makes 'turn' possible. */
  readonly otherSide?: Side;
  /** Where the inks lie, where that is known: a colour can be cut away only where enough of the sheet is without it. */
  readonly places?: { readonly anchor?: Places; readonly candidate?: Places };
}

/** What the person has to mend with; harmony does not know the drawer and gets it as this value. */
export interface Owned {
  readonly plains: readonly Plain[];
  /** Other sheets: a name and the sides they could show. */
  readonly sheets: readonly OwnedSheet[];
}

export interface OwnedSheet {
  readonly id: string;
  readonly name: string;
  /** Side A, and side B where there is one. */
  readonly sides: readonly Side[];
}
