import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { Session } from '../../src/workbench/session.ts';
import type { Look, PictureTarget, SessionState } from '../../src/workbench/session-types.ts';
import '../drawer/qw-drawer.ts';
import '../notebook/qw-leaves.ts';
import '../notebook/qw-messages.ts';
import { byHand } from '../support/by-finger.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import '../support/qw-title.ts';
import { ownTurn } from '../support/turn.ts';
import type { AppHost, Opened } from './app-host.ts';
import { Commands } from './commands/commands.ts';
import { kitOn, readIntoKit } from './commands/kit-commands.ts';
import { leafEntries, leafKinds } from './open/leaf-kinds.ts';
import { leafTemplate } from './open/leaf-template.ts';
import { PlacesShelf } from './open/places-shelf.ts';
import { Supposing } from './open/supposing.ts';
import { drawerPapers } from './open/views.ts';
import { appStyles } from './page/app-styles.ts';
import { DropZone } from './page/drop-zone.ts';
import { askForFiles, pictureTypes } from './page/files.ts';
import { FootRoom } from './page/foot-room.ts';
import { FocusKeeper } from './page/keep-focus.ts';
import { Keys } from './page/keys.ts';
import { NewerPage } from './page/newer-page.ts';
import { Route } from './page/route.ts';
import { keptLines, upkeepOf } from './page/upkeep-of.ts';

/** The page: leaves, the open leaf, the drawer. The one element that knows the session. */
@customElement('qw-app')
export class QwApp extends QwElement implements AppHost {
  static override styles = [controls, appStyles];

  @state() private book: SessionState | null = null;
  @state() opened: Opened = null;
  /** What a study has asked a paper for; the drawer shows it. */
  @state() wanted: AppHost['wanted'] = null;
  @state() kept: AppHost['kept'] = [];
  @state() further: readonly string[] = [];
  @state() near: AppHost['near'] = null;
  session: Session | null = null;
  private shelf: PlacesShelf | null = null;
  readonly route: Route = new Route(this, () => this.turn());
  readonly supposing: Supposing = new Supposing(this);
  readonly newer: NewerPage = new NewerPage(this);
  readonly keyboard: FocusKeeper = new FocusKeeper(this);
  readonly faces: Map<string, 'A' | 'B'> = new Map();
  private readonly zone = new DropZone(this, (files) => this.read(files));

  constructor() {
    super();
    new Keys(this);
    new Commands(this);
    new FootRoom(this);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.start();
  }

  private async start(): Promise<void> {
    // Not in the task in which the scripts are read, which is long as it is.
    await ownTurn();
    // Neither holds up the leaf that is open: the panel is shut at first, and a study asks for its own.
    void import('../notebook/qw-upkeep.ts');
    void import('./open/study-elements.ts');
    const session = await Session.open();
    this.session = session;
    this.shelf = new PlacesShelf(
      (held) => session.places(held),
      () => this.requestUpdate(),
    );
    // The address goes before what was open last.
    this.turn();
    session.subscribe((book) => this.take(book));
    this.take(session.state);
  }

  /** Reads pictures onto the open leaf, or to where they were asked for. */
  read(files: readonly File[], target?: PictureTarget): void {
    if (!this.session) return;
    if (!target && kitOn(this.session)) void readIntoKit(this.session, files);
    else void this.session.addPictures(files, target);
  }

  override render() {
    const { book, session, shelf } = this;
    if (!book || !session || !shelf) return html`<slot></slot>`;
    const leaf = this.route.place.at === 'leaf' && book.leafId ? session.leaf(book.leafId) : null;
    return html`<div
      class="table ${book.look.hand} ${this.opened ? `opened-${this.opened}` : ''}"
    >
      <header class="bar">
        <button type="button" class="word" aria-expanded=${this.opened === 'leaves'} @click=${() => this.open('leaves')}>
          <span>Leaves</span>
        </button>
        <h1>Quirewise</h1>
        <button type="button" class="word" aria-expanded=${this.opened === 'drawer'} @click=${() => this.open('drawer')}>
          <span>Drawer</span>
        </button>
      </header>
      <section class="side" aria-label="This notebook">
        <h1>Quirewise</h1>
        <qw-title
          plain
          label="Title of this notebook"
          empty="A notebook"
          .value=${book.notebook.title}
          @qw-retitle=${this.renameNotebook}
        ></qw-title>
        <qw-leaves
          .leaves=${leafEntries(book.notebook)}
          .kinds=${leafKinds(book.notebook, leaf?.id ?? null)}
          .current=${leaf?.id ?? ''}
        ></qw-leaves>
        <qw-upkeep .value=${upkeepOf(book)} .kept=${keptLines(this.kept)}></qw-upkeep>
      </section>
      <main tabindex="-1">
        <div ?inert=${this.opened !== null && this.isNarrow()}>
        ${
          book.isDemo
            ? html`<div class="demo">
                <p><b>Do these two papers belong together, and why?</b> ${byHand('Drop photographs of your own here.', '')}</p>
                <button type="button" class="slip" @click=${this.chooseTwo}>Try two of your own</button>
              </div>`
            : book.isUnnamed
              ? html`<div class="demo name">
                  <p>Name your own notebook:</p>
                  <qw-title
                    plain
                    given
                    label="Name of your new notebook"
                    empty="A notebook"
                    .value=${book.notebook.title}
                    @qw-retitle=${this.renameNotebook}
                    @keydown=${(event: KeyboardEvent) => event.key === 'Enter' && session.named()}
                  ></qw-title>
                  <button type="button" class="slip" @click=${() => session.named()}>Done</button>
                </div>`
              : nothing
        }
        <div class="leaf ${leaf?.kind ?? this.route.place.at}">
          ${leafTemplate({ session, shelf, leaf, place: this.route.place, supposing: this.supposing, further: this.further, faces: this.faces })}
        </div>
        </div>
      </main>
      <qw-drawer
        .papers=${drawerPapers(session)}
        .pictures=${book.pictures}
        .leaves=${book.notebook.leaves}
        .wanted=${this.wanted}
        ?open=${this.opened === 'drawer'}
        ?on-study=${leaf?.kind === 'study'}
        ?on-kit=${leaf?.kind === 'kit'}
      >
        <details slot="new" class="new" @toggle=${() => import('./open/qw-open-plain.ts')}>
          <summary class="word"><span>Add a plain: cardstock, ink, thread…</span></summary>
          <qw-open-plain></qw-open-plain>
        </details>
      </qw-drawer>
      ${this.near ? this.closeView(this.near, book, shelf) : this.told(book)}
      ${this.zone.over ? html`<div class="zone" aria-hidden="true"><p>Let go: the pictures are read here, and stay on this device.</p></div>` : nothing}
    </div>`;
  }

  private told(book: SessionState) {
    return html`<qw-messages .messages=${[...book.messages, ...this.newer.messages]} .readings=${book.readings}></qw-messages>`;
  }

  /** What is told stands in it: what lies under it can't be reached meanwhile. */
  private closeView({ sheetId, tool }: NonNullable<AppHost['near']>, book: SessionState, shelf: PlacesShelf) {
    void import('./open/qw-close-view.ts');
    return html`<qw-close-view .sheetId=${sheetId} .tool=${tool} .faces=${this.faces} .session=${this.session} .shelf=${shelf} .book=${book} .placed=${shelf.version}>
      ${this.told(book)}
    </qw-close-view>`;
  }

  open(what: Opened): void {
    this.opened = this.opened === what ? null : what;
    if (this.opened !== 'drawer') this.wanted = null;
  }

  private take(book: SessionState): void {
    if (this.book !== null && this.book.leafId !== book.leafId) void this.keyboard.keep(false);
    this.book = book;
    showLook(book.look);
    if (this.route.place.at === 'leaf' && book.leafId !== null && book.leafId !== this.route.place.id) {
      this.route.go(book.leafId, true);
    }
    const leaf = book.leafId ? this.session?.leaf(book.leafId) : null;
    document.title = leaf?.title ? `${leaf.title} – Quirewise` : 'Quirewise';
  }

  /** Follows the address: turns to the leaf that it names, where there is one. */
  private turn(): void {
    const { place } = this.route;
    const { session } = this;
    if (!session) return;
    void this.keyboard.keep(false);
    if (place.at === 'leaf' && session.leaf(place.id)) session.turnTo(place.id);
    else if (place.at === 'leaf') this.route.go(session.state.leafId ?? '', true);
    // A kit is filled from the drawer, so there it stays open.
    const onKit = place.at === 'leaf' && session.leaf(place.id)?.kind === 'kit';
    if (this.opened === 'leaves' || (this.opened === 'drawer' && !onKit)) this.open(null);
    this.further = [];
    this.near = null;
    window.scrollTo(0, 0);
  }

  /** Her first papers get a study of their own, whatever leaf of the demo is open. */
  private async chooseTwo(): Promise<void> {
    const files = await askForFiles(pictureTypes, true);
    if (files.length > 0) this.read(files, { to: 'new study' });
  }

  private renameNotebook(event: CustomEvent<{ title: string }>): void {
    // The same event from a leaf's title goes on to the commands; this one stops here.
    event.stopPropagation();
    this.session?.dispatch({ do: 'rename notebook', title: event.detail.title });
  }

  private isNarrow(): boolean {
    return window.matchMedia('(max-width: 900px)').matches;
  }
}

/** Puts the page into light or dark, or leaves it to the device. */
function showLook({ theme }: Look): void {
  if (theme === 'system') delete document.documentElement.dataset.look;
  else document.documentElement.dataset.look = theme;
}
