import type { Part, Plain, Sheet, SheetSide } from '../sheet/model.ts';

/** Everything the user owns or can buy. */
export interface Drawer {
  readonly sheets: readonly Sheet[];
  readonly plains: readonly Plain[];
  readonly parts: readonly Part[];
}

/** Points at something in the drawer that can be held against an anchor. */
export type Held =
  | { readonly kind: 'sheet'; readonly id: string; readonly side: SheetSide }
  | { readonly kind: 'plain'; readonly id: string }
  | { readonly kind: 'part'; readonly id: string };
