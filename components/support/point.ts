/** What `qw-point` carries: the ids of the inks pointed at; none when nothing is. */
export interface PointDetail {
  readonly inks: readonly string[];
}

/** The event that every chart sends when something in it is pointed at or focused, or no longer is. */
export function pointEvent(inks: readonly string[]): CustomEvent<PointDetail> {
  return new CustomEvent<PointDetail>('qw-point', { detail: { inks }, bubbles: true, composed: true });
}

/**
 * How a mark stands while `lit` inks are lit: 'lit', 'quiet', or '' where nothing is lit. A mark of one ink is lit with
 * its ink; a link is lit with both of its inks, or with either where that ink alone is lit.
 */
export function standing(inks: readonly string[], lit: readonly string[]): '' | 'lit' | 'quiet' {
  if (lit.length === 0) return '';
  const met = inks.filter((id) => lit.includes(id)).length;
  if (inks.length > 1) return met === inks.length || (lit.length === 1 && met === 1) ? 'lit' : 'quiet';
  return met > 0 ? 'lit' : 'quiet';
}

declare global {
  interface HTMLElementEventMap {
    'qw-point': CustomEvent<PointDetail>;
  }
}
