import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { paperType } from '../support/paper-type.ts';
import { ownTurn } from '../support/turn.ts';
import { drawerStyles } from './drawer-styles.ts';
import type { DrawerPaper } from './drawer-view.ts';
import './qw-miniature.ts';

/** What a paper can be taken out for. */
export type TakeAs = 'anchor' | 'candidate' | 'piece' | 'look';

/**
 * The drawer: a rail of miniature papers, and the open drawer that slides over the page. Papers can be dragged
 * from both; Escape shuts it.
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
  @state() private sought = '';
  @state() private picked: string | null = null;
  @query('.shut') private shut!: HTMLButtonElement | null;

  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await ownTurn();
    super.scheduleUpdate();
  }

  override render() {
    return html`<aside aria-label="Drawer" @keydown=${this.onKey}>
      ${this.open ? this.panel() : this.rail()}
    </aside>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('open')) return;
    if (this.open) (this.renderRoot.querySelector<HTMLElement>('.picked .one') ?? this.shut)?.focus();
    else if (changed.get('open') === true) {
      this.picked = null;
      this.renderRoot.querySelector<HTMLButtonElement>('.pull')?.focus();
    }
  }

  private rail() {
    return html`<div class="rail">
      <button type="button" class="pull" aria-expanded="false" @click=${() => this.ask(true)}><span>Drawer</span></button>
      <ul>
        ${repeat(
          this.papers,
          ({ key }) => key,
          (paper) =>
            html`<li>
              <button
                type="button"
                class="mini"
                title=${paper.name}
                aria-label=${shows(paper)}
                draggable="true"
                @dragstart=${(event: DragEvent) => carry(event, paper.key)}
                @click=${() => this.pick(paper.key)}
              >
                <qw-miniature .paper=${paper}></qw-miniature>
              </button>
            </li>`,
        )}
      </ul>
    </div>`;
  }

  private panel() {
    const sought = this.sought.trim().toLowerCase();
    const found = this.papers.filter(({ name, about }) => `${name} ${about}`.toLowerCase().includes(sought));
    return html`<div class="panel">
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
      ${this.papers.length && !found.length ? html`<p class="empty">No paper of that name.</p>` : nothing}
      <ul class="grid">
        ${repeat(
          found,
          ({ key }) => key,
          (paper) => this.paper(paper),
        )}
      </ul>
    </div>`;
  }

  private paper(paper: DrawerPaper) {
    const picked = this.picked === paper.key;
    return html`<li class=${picked ? 'picked' : ''}>
      <button
        type="button"
        class="one"
        draggable="true"
        aria-expanded=${this.wanted ? nothing : picked}
        @dragstart=${(event: DragEvent) => carry(event, paper.key)}
        @click=${() => this.onPaper(paper.key)}
      >
        <qw-miniature .paper=${paper}></qw-miniature>
        <b>${paper.name}</b><small>${paper.about}</small>
      </button>
      ${picked && !this.wanted ? this.ways(paper) : nothing}
    </li>`;
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
    if (this.wanted) emit(this, 'qw-take', { key, as: this.wanted });
    else this.picked = this.picked === key ? null : key;
  }

  private pick(key: string): void {
    this.picked = key;
    this.ask(true);
  }

  private onSeek(event: Event): void {
    this.sought = (event.target as HTMLInputElement).value;
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key !== 'Escape' || !this.open) return;
    event.stopPropagation();
    this.ask(false);
  }

  private ask(open: boolean): void {
    emit(this, 'qw-drawer', { open });
  }
}

const wantedWords = {
  anchor: 'Choose the anchor',
  candidate: 'Choose a candidate',
  piece: 'Choose pieces',
} as const;

/** A miniature opens the drawer at its paper; the two sides of a sheet have one name. */
function shows({ name, about }: DrawerPaper): string {
  return `Show ${name}${about.startsWith('side') ? `, ${about},` : ''} in the drawer`;
}

/** "“Hearts” and 2 more leaves"; a leaf without a title is only counted. */
function leavesInWords(titles: readonly string[]): string {
  const named = titles.find((title) => title !== '');
  const others = titles.length - (named === undefined ? 0 : 1);
  const counted = (more: string) => `${others}${more} ${others === 1 ? 'leaf' : 'leaves'}`;
  if (named === undefined) return counted('');
  return others === 0 ? `“${named}”` : `“${named}” and ${counted(' more')}`;
}

function carry(event: DragEvent, key: string): void {
  event.dataTransfer?.setData(paperType, key);
  if (event.dataTransfer) event.dataTransfer.effectAllowed = 'copy';
}
