import { css, html, nothing } from 'lit';
import type { FamilySide } from '../../src/harmony/model.ts';
import type { Ink, Side } from '../../src/sheet/model.ts';

/** A paper's colours opened to the inks that were read, for each that holds several; nothing where each is one ink. */
export function inksInside(side: Side | FamilySide) {
  if (!('families' in side)) return nothing;
  const several = side.families.filter(({ inks }) => inks.length > 1);
  if (several.length === 0) return nothing;
  const inks = new Map(side.within.map((ink) => [ink.id, ink]));
  return html`<details class="inside">
    <summary class="word"><span>The inks in each colour</span></summary>
    <ul>
      ${several.map(
        ({ id, name, inks: ids }) => html`<li>
          <span>${name} (${id})</span>
          ${ids.map((ink) => row(inks.get(ink)!))}
        </li>`,
      )}
    </ul>
  </details>`;
}

function row({ id, hex, share, name, trade }: Ink) {
  const part = share < 0.01 ? 'under 1 %' : `${Math.round(100 * share)} %`;
  return html`<span class="ink"><i style="background:${hex}"></i>${id} ${trade ?? name}, ${part}</span>`;
}

export const inksInsideStyles = css`
  .inside {
    margin-block: 6px;
    font: 14px/1.4 var(--qw-sans);
  }
  .inside ul {
    margin: 4px 0 0;
    padding: 0;
    list-style: none;
  }
  .inside li {
    margin-bottom: 8px;
  }
  .inside .ink {
    display: flex;
    align-items: center;
    gap: 8px;
    margin-top: 3px;
  }
  .inside i {
    flex: none;
    width: 26px;
    height: 18px;
  }
`;
