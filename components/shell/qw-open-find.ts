import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { DrawerFilter } from '../../src/drawer/filter.ts';
import { heldKey } from '../../src/drawer/find.ts';
import type { Drawer } from '../../src/drawer/model.ts';
import type { StudyLeaf } from '../../src/notebook/model.ts';
import { filterChoices, findPlaces, type Wish } from '../../src/workbench/drawer-rank.ts';
import type { Session } from '../../src/workbench/session-types.ts';
import { type FindBy, type FindFilter, noFilter, type PlaceView } from '../drawer/find-view.ts';
import '../drawer/qw-find.ts';
import type { CandidateView, PaperView } from '../study/study-view.ts';
import { QwElement } from '../support/element.ts';
import { drawerPaper } from './views.ts';

/** How many places are shown at first, and how many more each time. A first screen, as in the engine. */
const screenful = 24;

/** The drawer looked through for the open study. What is looked for is kept here, not in the notebook. */
@customElement('qw-open-find')
export class QwOpenFind extends QwElement {
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) leaf: StudyLeaf | null = null;
  @property({ attribute: false }) drawer: Drawer | null = null;
  @property({ attribute: false }) anchor: PaperView | null = null;
  @property({ attribute: false }) candidate: CandidateView | null = null;
  /** Grows when pictures arrive. */
  @property({ type: Number }) pictures = 0;
  @state() private by: FindBy = 'anchor';
  @state() private ink = '';
  @state() private filter: FindFilter = noFilter;
  @state() private most = screenful;

  override render() {
    const { session, leaf, drawer, anchor, candidate } = this;
    if (!session || !leaf || !drawer || !anchor) return nothing;
    const inks = [anchor.side, ...(candidate ? [candidate.side] : [])].flatMap(({ base, inks: own }) => [
      base,
      ...own,
    ]);
    const ink = inks.find(({ id }) => id === this.ink) ?? anchor.side.inks[0] ?? anchor.side.base;
    const by = this.by === 'bridge' && !candidate ? 'anchor' : this.by;
    const wish: Wish =
      by === 'ink' ? { by, ink } : by === 'bridge' ? { by, candidate: candidate!.held } : { by };
    const found = findPlaces(drawer, leaf, wish, wanted(this.filter), this.most);
    const there = new Set(leaf.candidates.map(heldKey));
    const places = found.places.flatMap(({ held, verdict, toCandidate = null, says, of }): PlaceView[] => {
      const paper = drawerPaper(session, held);
      return paper ? [{ paper, verdict, toCandidate, says, of, held: there.has(heldKey(held)) }] : [];
    });
    return html`<qw-find
      .view=${{
        by,
        anchorName: anchor.name,
        candidateName: candidate?.name ?? null,
        inks,
        ink: ink.id,
        filter: this.filter,
        choices: filterChoices(drawer),
        places,
        all: found.all,
      }}
      @qw-find-by=${({ detail }: CustomEvent<{ value: FindBy }>) => this.look({ by: detail.value })}
      @qw-find-ink=${({ detail }: CustomEvent<{ value: string }>) => this.look({ ink: detail.value })}
      @qw-find-filter=${({ detail }: CustomEvent<{ filter: FindFilter }>) => this.look(detail)}
      @qw-find-more=${() => (this.most += screenful)}
    ></qw-find>`;
  }

  private look({ by = this.by, ink = this.ink, filter = this.filter }: Look): void {
    Object.assign(this, { by, ink, filter, most: screenful });
  }
}

interface Look {
  readonly by?: FindBy;
  readonly ink?: string;
  readonly filter?: FindFilter;
}

function wanted({ kind, base, scale, motif, count }: FindFilter): DrawerFilter {
  return {
    ...(kind ? { kinds: [kind] } : {}),
    ...(base ? { bases: [base] } : {}),
    ...(scale ? { scales: [scale] } : {}),
    ...(motif ? { motifs: [motif] } : {}),
    ...(count > 0 ? { leastCount: count } : {}),
  };
}
