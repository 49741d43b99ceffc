import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { handOf } from './hand-view.ts';
import type { ColourOf } from './known-colour.ts';
import './qw-inks-by-hand.ts';
import './qw-light.ts';
import './stage/qw-near.ts';
import './qw-part.ts';
import './qw-plain-form.ts';
import './qw-sheet-form.ts';
import { wholePicture } from './qw-straighten.ts';
import { sheetToolsStyles } from './sheet-tools-styles.ts';
import type { SheetView } from './sheet-view.ts';
import { toolStyles } from './stage/stage-styles.ts';

/**
 * What can be done to a sheet's picture and reading, one calm line each; a tool is there once its line is opened.
 *
 * @fires qw-look-for - `{ what }`, `corners` or `blocks`, when a tool that wants them is opened
 * @fires qw-leave-straight - when the straightening is to be taken back
 * @fires qw-take - `{ key, as: 'anchor' }`, when a study is to be started with a part
 * @fires qw-remove-part - `{ key }`
 * @fires qw-corners, qw-card, qw-card-undo, qw-hand, qw-spot, qw-part, qw-plain, qw-sheet-details, qw-other-side - as the tools say
 */
@customElement('qw-sheet-tools')
export class QwSheetTools extends QwElement {
  static override styles = [controls, ruled, toolStyles, sheetToolsStyles];

  @property({ attribute: false }) view: SheetView | null = null;
  @property({ attribute: false }) colourOf: ColourOf = () => undefined;
  /** Over another leaf: one tool at a time on a picture that is as large as can be, in place of one line each. */
  @property({ type: Boolean, reflect: true }) near = false;
  /** The tool that is open, where it is one at a time; '' to look only. */
  @property() tool = '';
  private readonly opened = new Set<string>();

  override render() {
    const { view } = this;
    if (!view) return nothing;
    const name = `${view.sheet.name}, side ${view.face}`;
    const lines: readonly Line[] = [
      {
        id: 'straighten',
        title: 'Straighten and crop',
        says: view.straightened ? 'straightened' : 'as it was taken',
        tool: () => this.straighten(view, name),
      },
      {
        id: 'light',
        title: 'Light',
        says: view.side.light.known ? (view.light ? 'corrected' : 'known') : 'unknown',
        tool: () => this.light(view, name),
      },
      {
        id: 'inks',
        title: 'Inks by hand',
        says: view.hand.length === 0 ? 'as they were read' : counted(view.hand.length, 'correction'),
        tool: () => this.inks(view, name),
      },
      {
        id: 'parts',
        title: 'Parts',
        says: view.parts.length === 0 ? 'none cut' : counted(view.parts.length, 'part'),
        tool: () => this.parts(view),
      },
      {
        id: 'plain',
        title: 'A plain from this picture',
        says: 'one tap reads its colour',
        tool: () =>
          html`<qw-plain-form .colourOf=${this.colourOf} .picture=${view.picture} .spotReads=${view.spotReads}></qw-plain-form>`,
      },
      {
        id: 'details',
        title: 'Details',
        says: ['size', 'weight', 'how many', 'tags'].join(', '),
        tool: () => html`<qw-sheet-form .sheet=${view.sheet} .weightSays=${view.weightSays}></qw-sheet-form>`,
      },
    ];
    if (this.near) return this.oneOf(view, name, lines);
    return html`<div class="row">
      <div class="margin" aria-hidden="true"><b>this picture</b><span>side ${view.face}</span></div>
      <div class="text">${lines.map((line) => this.line(line))}</div>
    </div>`;
  }

  private oneOf(view: SheetView, name: string, lines: readonly Line[]) {
    const look = () => html`<qw-near .picture=${view.picture} .name=${name}></qw-near>`;
    const all: readonly Line[] = [
      { id: '', title: 'Look', says: 'as near as you like', tool: look },
      ...lines,
    ];
    const open = all.find(({ id }) => id === this.tool) ?? all[0]!;
    return html`<div class="near">
      <div class="tabs" role="group" aria-label="What to do with this picture">
        ${all.map(
          ({ id, title, says }) =>
            html`<button type="button" data-tool=${id} aria-pressed=${open.id === id} @click=${() => this.choose(id)}>
              <b>${title}</b><small>${says}</small>
            </button>`,
        )}
      </div>
      <div class="tool">${keyed(open.id, open.tool())}</div>
    </div>`;
  }

  private choose(id: string): void {
    this.tool = id;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (this.near && (changed.has('tool') || changed.has('near'))) this.lookFor(this.tool);
  }

  private line({ id, title, says, tool }: Line) {
    return html`<details id=${id} @toggle=${(event: Event) => this.onToggle(event, id)}>
      <summary><b>${title}</b><small>${says}</small></summary>
      <div class="tool">${this.opened.has(id) ? tool() : nothing}</div>
    </details>`;
  }

  private straighten(view: SheetView, name: string) {
    if (view.taken === null) return none;
    return html`<qw-straighten
        .picture=${view.taken}
        .name=${name}
        .corners=${view.corners ?? wholePicture}
        .sizeMm=${view.straightSize}
        .done=${view.straightened ? { picture: view.picture, sizeMm: view.sheet.sizeMm } : null}
        .note=${view.cornersSay}
      ></qw-straighten>
      ${
        view.straightened
          ? html`<button type="button" class="word" @click=${() => emit(this, 'qw-leave-straight', {})}>
            <span>Leave it as it was taken</span>
          </button>`
          : nothing
      }`;
  }

  private light(view: SheetView, name: string) {
    if (view.taken === null) return none;
    return html`<qw-light
      .picture=${view.taken}
      .corrected=${view.light ? view.picture : null}
      .name=${name}
      .kind=${view.light?.kind ?? 'none'}
      .frame=${view.light?.frame ?? null}
      .reflectance=${view.light && 'reflectance' in view.light ? view.light.reflectance : null}
      ?known=${view.side.light.known}
      .says=${view.side.light.note}
    ></qw-light>`;
  }

  private inks(view: SheetView, name: string) {
    const { kept, aside } = handOf(view);
    return html`<qw-inks-by-hand
      .side=${view.side}
      .picture=${view.picture}
      .name=${name}
      .spots=${view.spots}
      .kept=${kept}
      .aside=${aside}
      .spotReads=${view.spotReads}
      .colourOf=${this.colourOf}
    ></qw-inks-by-hand>`;
  }

  private parts(view: SheetView) {
    return html`${
      view.parts.length > 0
        ? html`<ul class="parts">
          ${view.parts.map(
            ({ key, name, size }) =>
              html`<li>
                <span><b>${name}</b><small>${size}</small></span>
                <button type="button" class="word" aria-label="Start a study with ${name}" @click=${() => emit(this, 'qw-take', { key, as: 'anchor' })}>
                  <span>Start a study with it</span>
                </button>
                <button type="button" class="word" aria-label="Take away ${name}" @click=${() => emit(this, 'qw-remove-part', { key })}>
                  <span>Take it away</span>
                </button>
              </li>`,
          )}
        </ul>
        <p class="hint">Parts lie in the drawer: on a study they can be held against the anchor like any paper.</p>`
        : nothing
    }
      ${
        view.picture === null
          ? none
          : html`<qw-part .picture=${view.picture} .name=${view.sheet.name} .sizeMm=${view.sheet.sizeMm} .offers=${view.blocks}></qw-part>`
      }`;
  }

  private onToggle(event: Event, id: string): void {
    if (!(event.target as HTMLDetailsElement).open || this.opened.has(id)) return;
    this.opened.add(id);
    this.requestUpdate();
    this.lookFor(id);
  }

  private lookFor(id: string): void {
    if (id === 'straighten') emit(this, 'qw-look-for', { what: 'corners' });
    if (id === 'parts') emit(this, 'qw-look-for', { what: 'blocks' });
  }
}

interface Line {
  readonly id: string;
  readonly title: string;
  /** How things stand, in a few words. */
  readonly says: string;
  readonly tool: () => TemplateResult;
}

const none = html`<p class="hint">There is no picture of this side.</p>`;

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-sheet-tools': QwSheetTools;
  }
}
