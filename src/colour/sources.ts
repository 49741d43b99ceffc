import { colourSources } from './sources-colour.ts';
import { tradeSources } from './sources-trade.ts';

/** One formula, table or rule in use, and where it comes from. */
export interface Source {
  /** Stable key: reasons hold it, and comments cite it as "Source: `id`". */
  readonly id: string;
  /** Stands beside a sentence: "Sharma et al. 2005". */
  readonly short: string;
  /** Author, year, title, where. */
  readonly full: string;
  readonly doi?: string;
  /** Published; common practice of the trade without a source; or our own choice. */
  readonly kind: 'published' | 'trade' | 'ours';
  /** What the workbench takes from it, one plain sentence. */
  readonly what: string;
}

/** Every formula and table in use, in the order in which the page lists them. */
export const sources: readonly Source[] = [...colourSources, ...tradeSources];

/** The entry with this id, or undefined. */
export function sourceById(id: string): Source | undefined {
  return sources.find((source) => source.id === id);
}
