import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { DrawerFilter } from '../../../src/drawer/filter.ts';
import { heldKey } from '../../../src/drawer/held.ts';
import type { Wish } from '../../../src/drawer/look-through.ts';
import type { Drawer } from '../../../src/drawer/model.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { Ink } from '../../../src/sheet/model.ts';
import {
  type DrawerClient,
  type LookedThrough,
  startDrawerClient,
} from '../../../src/workbench/drawer-client.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import {
  type FindBy,
  type FindFilter,
  type FindView,
  noFilter,
  type PlaceView,
} from '../../drawer/find-view.ts';
import '../../drawer/qw-find.ts';
import type { CandidateView, PaperView } from '../../study/study-view.ts';
import { QwElement } from '../../support/element.ts';
import { drawerPaper } from './views.ts';

/** How many places are shown at first, and how many more each time. A first screen, as in the engine. */
const screenful = 24;

/** One for the page: it keeps what it knows of the drawer. */
let client: DrawerClient | null = null;

/**
 * The drawer looked through for the open study, off the page's thread. What is looked for is kept here, not in the
 * notebook.
 */
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
  @state() private found: LookedThrough | null = null;
  @state() private state: FindView['state'] = 'looking';
  private asked: Asked | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const asks = this.asks();
    if (asks === null || (this.asked !== null && isSameQuestion(asks, this.asked))) return;
    // What was found by another wish is no answer to this one; what a filter narrows stays until it is narrowed.
    if (this.asked?.wishKey !== asks.wishKey)
      this.found = this.found && { ...this.found, places: [], all: 0 };
    this.asked = asks;
    this.state = 'looking';
    void this.look(asks);
  }

  private async look(asks: Asked): Promise<void> {
    const { drawer, leaf, wish, filter, most } = asks;
    client ??= startDrawerClient();
    const found = await client.find(drawer, leaf, wish, wanted(filter), most).catch(() => null);
    if (this.asked !== asks) return;
    this.found = found ?? this.found;
    this.state = found === null ? 'stopped' : 'found';
  }

  /** What is looked for now; null where there is nothing to hold the drawer against. */
  private asks(): Asked | null {
    const { leaf, drawer, anchor, candidate, filter, most } = this;
    if (!leaf || !drawer || !anchor) return null;
    const by = this.by === 'bridge' && !candidate ? 'anchor' : this.by;
    const ink = this.inkWanted(anchor);
    const wish: Wish =
      by === 'ink' ? { by, ink } : by === 'bridge' ? { by, candidate: candidate!.held } : { by };
    const at = [leaf.id, leaf.anchor, leaf.distance, by === 'bridge' ? leaf.candidates : []];
    const wishKey = JSON.stringify([
      at,
      by,
      by === 'ink' ? ink.oklch : by === 'bridge' ? candidate!.held : '',
    ]);
    return { drawer, leaf, wish, wishKey, filter, most };
  }

  private inkWanted(anchor: PaperView): Ink {
    return this.inks(anchor).find(({ id }) => id === this.ink) ?? anchor.side.inks[0] ?? anchor.side.base;
  }

  private inks(anchor: PaperView): readonly Ink[] {
    const sides = [anchor.side, ...(this.candidate ? [this.candidate.side] : [])];
    return sides.flatMap(({ base, inks }) => [base, ...inks]);
  }

  override render() {
    const { session, leaf, anchor, candidate, found } = this;
    if (!session || !leaf || !anchor) return nothing;
    const by = this.by === 'bridge' && !candidate ? 'anchor' : this.by;
    const there = new Set(leaf.candidates.map(heldKey));
    const places = (found?.places ?? []).flatMap(
      ({ held, verdict, toCandidate = null, says, of }): PlaceView[] => {
        const paper = drawerPaper(session, held);
        return paper ? [{ paper, verdict, toCandidate, says, of, held: there.has(heldKey(held)) }] : [];
      },
    );
    return html`<qw-find
      .view=${{
        by,
        anchorName: anchor.name,
        candidateName: candidate?.name ?? null,
        inks: this.inks(anchor),
        ink: this.inkWanted(anchor).id,
        filter: this.filter,
        choices: found?.choices ?? noChoices,
        places,
        all: found?.all ?? 0,
        state: this.state,
      }}
      @qw-find-by=${({ detail }: CustomEvent<{ value: FindBy }>) => this.change({ by: detail.value })}
      @qw-find-ink=${({ detail }: CustomEvent<{ value: string }>) => this.change({ ink: detail.value })}
      @qw-find-filter=${({ detail }: CustomEvent<{ filter: FindFilter }>) => this.change(detail)}
      @qw-find-more=${() => (this.most += screenful)}
    ></qw-find>`;
  }

  private change({ by = this.by, ink = this.ink, filter = this.filter }: Change): void {
    Object.assign(this, { by, ink, filter, most: screenful });
  }
}

interface Change {
  readonly by?: FindBy;
  readonly ink?: string;
  readonly filter?: FindFilter;
}

/** A question that was put to the drawer. */
interface Asked {
  readonly drawer: Drawer;
  readonly leaf: StudyLeaf;
  readonly wish: Wish;
  readonly wishKey: string;
  readonly filter: FindFilter;
  readonly most: number;
}

/** A study may change in what has no bearing on what is found: its text, what is said of it. */
function isSameQuestion(one: Asked, other: Asked): boolean {
  return (
    one.drawer === other.drawer &&
    one.wishKey === other.wishKey &&
    one.filter === other.filter &&
    one.most === other.most
  );
}

const noChoices: FindView['choices'] = { bases: [], scales: [], motifs: [], mostCount: 1 };

function wanted({ kind, base, scale, motif, count }: FindFilter): DrawerFilter {
  return {
    ...(kind ? { kinds: [kind] } : {}),
    ...(base ? { bases: [base] } : {}),
    ...(scale ? { scales: [scale] } : {}),
    ...(motif ? { motifs: [motif] } : {}),
    ...(count > 0 ? { leastCount: count } : {}),
  };
}
