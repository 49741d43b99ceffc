import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { sheetById } from '../../../src/drawer/by-id.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type { SheetLeaf } from '../../../src/notebook/model.ts';
import { sizeOfCorners } from '../../../src/sheet/sold-sizes.ts';
import type { Session, SessionState } from '../../../src/workbench/session-types.ts';
import '../../notebook/qw-sheet-leaf.ts';
import type { KnownColour } from '../../picture/known-colour.ts';
import '../../picture/qw-is-paper.ts';
import '../../picture/qw-sheet-tools.ts';
import { QwElement } from '../../support/element.ts';
import type { QwEvent } from '../../support/events.ts';
import { askForFiles, pictureTypes } from '../page/files.ts';
import { colourOfText, knownColour } from './known-colours.ts';
import { studiesWith } from './lies-on.ts';
import type { PlacesShelf } from './places-shelf.ts';
import { type Deed, sheetDeeds } from './sheet-deeds.ts';
import { type SeenOnPictures, sheetView } from './sheet-views.ts';
import { paperView } from './views.ts';

const unknown: SeenOnPictures = { corners: undefined, blocks: [] };

/** A sheet's page with everything that can be done to it. */
@customElement('qw-open-sheet')
export class QwOpenSheet extends QwElement {
  /** The side that is asked for, by the sheet's id; taken out once it is open. */
  @property({ attribute: false }) faces: Map<string, 'A' | 'B'> = new Map();
  @property() sheetId = '';
  /** Its own leaf; null where it lies over another. */
  @property({ attribute: false }) leaf: SheetLeaf | null = null;
  /** Looked at closely, over another leaf; `tool` is open then. */
  @property({ type: Boolean }) near = false;
  @property() tool = '';
  @property({ attribute: false }) margin: readonly string[] = [];
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) shelf: PlacesShelf | null = null;
  /** The newest snapshot: what is shown follows it. */
  @property({ attribute: false }) book: SessionState | null = null;
  /** Grows when it becomes known where inks lie. */
  @property({ type: Number }) placed = 0;
  @state() private face: 'A' | 'B' = 'A';
  @state() private found: SeenOnPictures = unknown;
  @state() private spotReads: KnownColour | null = null;
  private looked = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    for (const name of Object.keys(sheetDeeds)) this.addEventListener(name, this.hear);
    this.addEventListener('qw-look-for', this.onLookFor);
    this.addEventListener('qw-spot', this.onSpot);
    this.addEventListener('qw-turn-over', this.onTurn);
    this.addEventListener('qw-other-side', this.onOtherSide);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('sheetId')) {
      this.face = this.faces.get(this.sheetId) ?? 'A';
      this.faces.delete(this.sheetId);
    }
  }

  override render() {
    const { session, shelf, leaf, book, sheetId } = this;
    if (!session || !shelf || !book) return nothing;
    const held = this.held();
    const paper = paperView(session, shelf, held, 'alone');
    const view = sheetView(session, sheetId, held.side, this.found, paper?.places ?? null);
    return html`${
      paper?.asks && this.tool === ''
        ? html`<qw-is-paper .held=${held} .name=${paper.name} .picture=${paper.picture} .corners=${paper.asks}></qw-is-paper>`
        : nothing
    }<qw-sheet-leaf ?near=${this.near} .leaf=${leaf} .margin=${this.margin} .paper=${paper} .studies=${studiesWith(book.notebook, sheetId)} .surround=${book.look.surround}>
      <qw-sheet-tools
        slot="tools"
        ?near=${this.near}
        .tool=${this.tool}
        .view=${view && { ...view, spotReads: this.spotReads }}
        .colourOf=${colourOfText}
      ></qw-sheet-tools>
    </qw-sheet-leaf>`;
  }

  /** The side that is looked at; A where there is no B (any more). */
  private held(): Extract<Held, { kind: 'sheet' }> {
    const { sheetId } = this;
    const drawer = this.session?.state.notebook.drawer;
    const sheet = drawer && sheetById(drawer, sheetId);
    return { kind: 'sheet', id: sheetId, side: sheet?.sides.B ? this.face : 'A' };
  }

  private readonly hear = (event: Event): void => {
    if (!this.session) return;
    event.stopPropagation();
    const deed = (sheetDeeds as Readonly<Record<string, Deed | undefined>>)[event.type];
    void deed?.(this.session, this.held(), (event as CustomEvent).detail);
  };

  private readonly onLookFor = async (event: Event): Promise<void> => {
    event.stopPropagation();
    const { what } = (event as QwEvent<'qw-look-for'>).detail;
    if (!this.session) return;
    const turn = ++this.looked;
    const { corners, blocks, ratio } = await this.session.lookOn(this.sheetId, this.held().side, what);
    // Turned over meanwhile: the answer is of the other side.
    if (turn !== this.looked && what === 'corners') return;
    if (what === 'blocks') this.found = { ...this.found, blocks };
    else
      this.found = { ...this.found, corners, ...(corners ? { sizeMm: sizeOfCorners(corners, ratio) } : {}) };
  };

  private readonly onSpot = async (event: Event): Promise<void> => {
    event.stopPropagation();
    if (!this.session) return;
    const { spot } = (event as QwEvent<'qw-spot'>).detail;
    const read = await this.session.colourAt(this.held(), spot);
    this.spotReads = read && knownColour(read.hex);
  };

  private readonly onTurn = (event: Event): void => {
    // Only what is looked at changes; no paper of the notebook is turned.
    event.stopPropagation();
    this.face = this.face === 'A' ? 'B' : 'A';
    this.found = unknown;
    this.spotReads = null;
    this.looked++;
  };

  private readonly onOtherSide = async (event: Event): Promise<void> => {
    event.stopPropagation();
    const { session, sheetId } = this;
    if (!session) return;
    const [file] = await askForFiles(pictureTypes, false);
    if (!file) return;
    await session.addPictures([file], { to: 'other side', sheetId });
    this.face = 'B';
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-open-sheet': QwOpenSheet;
  }
}
