import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import { repeat } from 'lit/directives/repeat.js';
import { styleMap } from 'lit/directives/style-map.js';
import { placeAfter } from '../support/arrows.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { type Line, LongList } from '../support/long-list.ts';
import { paperType } from '../support/paper-type.ts';
import { ownTurn } from '../support/turn.ts';
import { drawerStyles } from './drawer-styles.ts';
import type { DrawerPaper } from './drawer-view.ts';
import { foundInWords, leavesInWords, papersNamed, shows, wantedWords } from './drawer-words.ts';
import './qw-miniature.ts';

/** What a paper can be taken out for. */
export type TakeAs = 'anchor' | 'candidate' | 'piece' | 'look';

interface Listed {
  readonly found: readonly DrawerPaper[];
  readonly picked: DrawerPaper | undefined;
  readonly rest: readonly DrawerPaper[];
}

/** Papers beside each other in the open drawer. */
const abreast = 3;

/**
 * The drawer: a rail of miniature papers, and the open drawer that slides over the page. Papers can be dragged
 * from both; Escape shuts it, and the arrows go from paper to paper. Of many papers only those in view are drawn.
 * @slot new - further ways to put something in, in the open drawer
 * @fires qw-drawer - `{ open }`, it wants to be opened or shut
 * @fires qw-take - `{ key, as }`, a paper is taken out
 * @fires qw-put-out - `{ key }`, a paper is taken out of the drawer for good
 * @fires qw-look-further - `{ way: 'drawer' }`, the drawer is to be held against the study's anchor
 * @fires qw-add-pictures - `{ as }`, pictures are to be chosen from the device
 */
@customElement('qw-drawer')
export class QwDrawer extends QwElement {
  static override styles = [controls, drawerStyles];

  @property({ attribute: false }) papers: readonly DrawerPaper[] = [];
  @property({ type: Boolean, reflect: true }) open = false;
  /** What the next paper is wanted for, where a study or a kit has asked. */
  @property() wanted: 'anchor' | 'candidate' | 'piece' | null = null;
  /** True where the open leaf is a study, so that papers can be held against its anchor. */
  @property({ type: Boolean, attribute: 'on-study' }) onStudy = false;
  /** True where the open leaf is a kit. */
  @property({ type: Boolean, attribute: 'on-kit' }) onKit = false;
  /** Grows when pictures arrive: papers are asked for theirs anew. */
  @property({ type: Number }) pictures = 0;
  /** The leaves that papers lie on; another value says that this may have changed. */
  @property({ attribute: false }) leaves: unknown = null;
  @state() private sought = '';
  @state() private picked: string | null = null;
  /** Place of the paper that has the keyboard, among those that are listed. */
  @state() private inHand: number | null = null;
  /** How high the head of the open drawer is, in CSS pixels. */
  @state() private headHeight = 0;
  @query('.shut') private shut!: HTMLButtonElement | null;
  /** Addresses of the pictures that are drawn, by paper. */
  private shown: ReadonlyMap<string, string> = new Map();
  private showing = new Map<string, string>();
  /** What takes the keyboard once it is drawn. */
  private next: string | null = null;

  private readonly rail = new LongList(this, {
    scroller: () => this.renderRoot.querySelector('.rail .papers'),
    lineHeight: 60,
    gap: 10,
    around: 6,
  });
  private readonly grid = new LongList(this, {
    scroller: () => this.renderRoot.querySelector('.panel'),
    lineHeight: 152,
    gap: 16,
    around: 3,
  });
  private readonly head = new ResizeObserver(([entry]) => {
    const height = entry?.borderBoxSize[0]?.blockSize ?? 0;
    // In the next frame: a new height inside the same one would be reported as a loop.
    if (height > 0) requestAnimationFrame(() => (this.headHeight = Math.round(height)));
  });

  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await ownTurn();
    super.scheduleUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('open')) return;
    this.inHand = null;
    this.grid.rewind();
  }

  override render() {
    this.showing = new Map();
    return html`<aside aria-label="Drawer" @keydown=${this.onKey} @focusin=${this.onFocus} @focusout=${this.onFocus}>
      ${this.open ? this.panel() : this.shutRail()}
    </aside>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    this.shown = this.showing;
    if (this.next !== null) this.renderRoot.querySelector<HTMLElement>(this.next)?.focus();
    this.next = null;
    if (!changed.has('open')) return;
    if (this.open) (this.renderRoot.querySelector<HTMLElement>('.picked .one') ?? this.shut)?.focus();
    else if (changed.get('open') === true) {
      this.picked = null;
      this.renderRoot.querySelector<HTMLButtonElement>('.pull')?.focus();
    }
  }

  private shutRail() {
    const { papers } = this;
    const lines = this.rail.lines(papers.length, 0, this.inHand);
    return html`<div class="rail">
      <button type="button" class="pull" aria-expanded="false" @click=${() => this.ask(true)}><span>Drawer</span></button>
      <div class="papers">
        <ul style=${styleMap({ 'min-height': `${this.rail.height()}px` })}>
          ${repeat(
            lines,
            ({ index }) => papers[index]!.key,
            ({ index, above }) => this.mini(papers[index]!, index, above),
          )}
        </ul>
      </div>
    </div>`;
  }

  private mini(paper: DrawerPaper, index: number, above: number) {
    return html`<li aria-setsize=${this.papers.length} aria-posinset=${index + 1} style=${styleMap({ 'margin-top': `${above}px` })}>
      <button
        type="button"
        class="mini"
        data-at=${index}
        title=${paper.name}
        aria-label=${shows(paper)}
        draggable="true"
        @dragstart=${(event: DragEvent) => carry(event, paper.key)}
        @click=${() => this.pick(paper.key)}
      >
        <qw-miniature .picture=${this.pictureOf(paper)} .bands=${paper.bands}></qw-miniature>
      </button>
    </li>`;
  }

  /** Kept: thousands of papers are not gone through for every step of a scroll. */
  private lastListed: (Listed & { readonly of: readonly unknown[] }) | null = null;

  /** What is listed in the open drawer, and the paper that was picked, which lies above the others. */
  private listed(): Listed {
    const { papers, sought, wanted, picked: key } = this;
    const of = [papers, sought, wanted, key];
    if (this.lastListed?.of.every((one, i) => one === of[i])) return this.lastListed;
    const found = papersNamed(papers, sought);
    const picked = wanted ? undefined : found.find((paper) => paper.key === key);
    const rest = picked ? found.filter((paper) => paper !== picked) : found;
    this.lastListed = { of, found, picked, rest };
    return this.lastListed;
  }

  private panel() {
    const { found, picked, rest } = this.listed();
    const row = this.inHand === null ? null : Math.floor(this.inHand / abreast);
    const lines = this.grid.lines(Math.ceil(rest.length / abreast), this.headHeight, row);
    return html`<div class="panel">
      <div class="head" ${ref(this.onHead)}>
        <div class="top">
          <h2>${this.wanted ? wantedWords[this.wanted] : 'Drawer'}</h2>
          <button type="button" class="word shut" @click=${() => this.ask(false)}><span>Shut</span></button>
        </div>
        <div class="find">
          ${
            this.papers.length > 6
              ? html`<input class="field" type="search" aria-label="Find a paper by name" placeholder="Find by name" .value=${this.sought} @input=${this.onSeek} />`
              : nothing
          }
          <button type="button" class="slip" @click=${() => emit(this, 'qw-add-pictures', { as: this.wanted })}>
            Add pictures of papers
          </button>
          ${
            this.onStudy && this.papers.length > 1
              ? html`<button type="button" class="word" @click=${() => emit(this, 'qw-look-further', { way: 'drawer' })}><span>Best first against the anchor</span></button>`
              : nothing
          }
        </div>
        <slot name="new"></slot>
        ${this.papers.length === 0 ? html`<p class="empty">Nothing here yet: photograph a paper, and drop the picture on the page.</p>` : nothing}
        <p class=${found.length || !this.papers.length ? 'unseen' : 'empty'} aria-live="polite">${this.sought.trim() ? foundInWords(found.length) : nothing}</p>
        ${picked ? html`<div class="picked">${this.one(picked, null)} ${this.ways(picked)}</div>` : nothing}
      </div>
      <div class="grid" role="list" aria-label="Papers" style=${styleMap({ 'min-height': `${this.grid.height()}px` })}>
        ${repeat(
          lines,
          ({ slot }) => slot,
          (line) => this.row(rest, line),
        )}
      </div>
    </div>`;
  }

  private row(papers: readonly DrawerPaper[], { index, above, measure }: Line) {
    const from = index * abreast;
    return html`<div class="row" role="presentation" data-index=${index} style=${styleMap({ 'margin-top': `${above}px` })} ${ref(measure)}>
      ${papers
        .slice(from, from + abreast)
        .map(
          (paper, i) =>
            html`<div role="listitem" aria-setsize=${papers.length} aria-posinset=${from + i + 1}>${this.one(paper, from + i)}</div>`,
        )}
    </div>`;
  }

  private one(paper: DrawerPaper, at: number | null) {
    return html`<button
      type="button"
      class="one"
      data-at=${at ?? nothing}
      draggable="true"
      aria-expanded=${this.wanted ? nothing : at === null}
      @dragstart=${(event: DragEvent) => carry(event, paper.key)}
      @click=${() => this.onPaper(paper.key)}
    >
      <qw-miniature .picture=${this.pictureOf(paper)} .bands=${paper.bands}></qw-miniature>
      <b>${paper.name}</b><small>${paper.about}</small>
    </button>`;
  }

  /**
   * The address of its picture. While papers pass by, only those that are drawn already have theirs: what nobody can look
   * at need not be fetched, and thousands of pictures would have to be cleared away again.
   */
  private pictureOf(paper: DrawerPaper): string | null {
    const isPassing = (this.open ? this.grid : this.rail).isMoving();
    const address = isPassing ? (this.shown.get(paper.key) ?? null) : paper.picture;
    if (address !== null) this.showing.set(paper.key, address);
    return address;
  }

  private ways({ key, name, liesOn = [] }: DrawerPaper) {
    const way = (as: TakeAs, words: string) =>
      html`<button type="button" class="word" aria-label="${words}: ${name}" @click=${() => emit(this, 'qw-take', { key, as })}>
        <span>${words}</span>
      </button>`;
    return html`<div class="ways">
      ${this.onKit ? way('piece', 'Put it into the kit') : nothing}
      ${this.onStudy ? [way('candidate', 'Hold it against the anchor'), way('anchor', 'Make it the anchor')] : way('anchor', 'Start a study with it')}
      ${way('look', 'Look at it alone')}
      <button type="button" class="word out" aria-label="Take it out of the drawer: ${name}" @click=${() => emit(this, 'qw-put-out', { key })}>
        <span>Take it out of the drawer</span>
      </button>
      ${liesOn.length ? html`<p class="lies">It lies on ${leavesInWords(liesOn)}.</p>` : nothing}
    </div>`;
  }

  private onPaper(key: string): void {
    if (this.wanted) {
      emit(this, 'qw-take', { key, as: this.wanted });
      return;
    }
    const isPicked = this.picked === key;
    this.picked = isPicked ? null : key;
    if (isPicked) this.handTo(papersNamed(this.papers, this.sought).findIndex((paper) => paper.key === key));
    else this.next = '.picked .one';
  }

  private pick(key: string): void {
    this.picked = key;
    this.ask(true);
  }

  private onSeek(event: Event): void {
    this.sought = (event.target as HTMLInputElement).value;
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key === 'Escape' && this.open) {
      event.stopPropagation();
      this.ask(false);
      return;
    }
    const at = placeOf(event.target);
    if (at === null || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const last = (this.open ? this.listed().rest : this.papers).length - 1;
    const to = placeAfter(event.key, at, last, this.open ? abreast : 1);
    if (to === null) return;
    event.preventDefault();
    this.handTo(to);
  }

  /** The keyboard goes to the paper at this place, wherever it stands. */
  private handTo(at: number): void {
    this.inHand = at;
    this.next = `.papers [data-at='${at}'], .grid [data-at='${at}']`;
  }

  /** The paper that has the keyboard stays drawn, however far it is scrolled away. */
  private onFocus(event: FocusEvent): void {
    this.inHand = placeOf(event.type === 'focusin' ? event.target : event.relatedTarget);
  }

  private readonly onHead = (head: Element | undefined): void => {
    this.head.disconnect();
    if (head) this.head.observe(head);
  };

  private ask(open: boolean): void {
    emit(this, 'qw-drawer', { open });
  }
}

function placeOf(target: EventTarget | null): number | null {
  const at = target instanceof HTMLElement ? target.dataset.at : undefined;
  return at === undefined ? null : Number(at);
}

function carry(event: DragEvent, key: string): void {
  event.dataTransfer?.setData(paperType, key);
  if (event.dataTransfer) event.dataTransfer.effectAllowed = 'copy';
}
