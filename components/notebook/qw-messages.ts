import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';

/** Something to tell; trouble at once. */
export interface Told {
  readonly id: string;
  readonly kind: 'trouble' | 'note';
  readonly says: string;
  /** What it is about, one line each. */
  readonly list?: readonly string[];
  /** What can be done about it. */
  readonly offers?: 'undo' | 'reload' | 'study' | 'backup';
  /** What a study is offered with. */
  readonly key?: string;
}

/** A picture that is being read. */
export interface Underway {
  readonly id: string;
  readonly fileName: string;
  /** What is being done: "reading". */
  readonly stage: string;
  /** 0–1. */
  readonly fraction: number;
}

/**
 * What the notebook has to tell, and the pictures that are being read, each of which can be stopped.
 * @fires qw-dismiss - `{ id }`, a message is put away
 * @fires qw-undo - nothing, what a message tells of is undone
 * @fires qw-take - `{ key, as: 'anchor' }`, a study is to be started with what it tells of
 * @fires qw-save-backup - nothing, a backup is to be saved now
 * @fires qw-reload - nothing, the page is to be loaded anew
 * @fires qw-stop-reading - `{ id }`
 */
@customElement('qw-messages')
export class QwMessages extends QwElement {
  static override styles = [controls, styles()];

  @property({ attribute: false }) messages: readonly Told[] = [];
  @property({ attribute: false }) readings: readonly Underway[] = [];

  override render() {
    return html`<div role="status" aria-label="Messages">
        ${repeat(
          this.messages,
          ({ id }) => id,
          (message) => this.message(message),
        )}
      </div>
      ${
        this.readings.length
          ? html`<ul aria-label="Pictures being read">${
              this.readings.length > 1
                ? this.together(this.readings)
                : repeat(
                    this.readings,
                    ({ id }) => id,
                    (one) => this.underway(one),
                  )
            }</ul>`
          : nothing
      }`;
  }

  private message({ id, kind, says, list, offers, key }: Told) {
    const act = () => {
      if (offers === 'study' && key !== undefined) emit(this, 'qw-take', { key, as: 'anchor' });
      else if (offers === 'backup') emit(this, 'qw-save-backup', {});
      else if (offers === 'undo' || offers === 'reload') emit(this, `qw-${offers}`, {});
    };
    return html`<div class="told ${kind}">
      <div>
        <p role=${kind === 'trouble' ? 'alert' : 'note'}>${says}</p>
        ${list ? html`<ul>${list.map((line) => html`<li>${line}</li>`)}</ul>` : nothing}
      </div>
      ${offers ? html`<button type="button" class="word" @click=${act}><span>${offerWords[offers]}</span></button>` : nothing}
      <button type="button" class="word" aria-label="Put away: ${says}" @click=${() => emit(this, 'qw-dismiss', { id })}>
        <span>Put away</span>
      </button>
    </div>`;
  }

  /** Several pictures as one card: how many, which one now, how far all of them are. */
  private together(readings: readonly Underway[]) {
    const now = readings.find(({ stage }) => stage !== 'waiting') ?? readings[0]!;
    const percent = Math.round(
      (100 * readings.reduce((sum, { fraction }) => sum + fraction, 0)) / readings.length,
    );
    const stop = () => {
      for (const { id } of readings) emit(this, 'qw-stop-reading', { id });
    };
    return html`<li class="told">
      <p>
        <label for="all">${readings.length} pictures to read. ${now.fileName}: ${now.stage}</label>
        <progress id="all" max="100" value=${percent}>${percent} %</progress>
      </p>
      <button type="button" class="word" aria-label="Stop reading all of them" @click=${stop}><span>Stop</span></button>
    </li>`;
  }

  private underway({ id, fileName, stage, fraction }: Underway) {
    const percent = Math.round(fraction * 100);
    return html`<li class="told">
      <p>
        <label for="p-${id}">${fileName}: ${stage}</label>
        <progress id="p-${id}" max="100" value=${percent}>${percent} %</progress>
      </p>
      <button type="button" class="word" aria-label="Stop reading ${fileName}" @click=${() => emit(this, 'qw-stop-reading', { id })}>
        <span>Stop</span>
      </button>
    </li>`;
  }
}

const offerWords = {
  undo: 'Undo',
  reload: 'Reload',
  study: 'Start a study with it',
  backup: 'Save a backup now',
} as const;

function styles() {
  return css`
    :host {
      font: 14.5px/1.35 var(--qw-sans);
    }
    .told {
      display: flex;
      align-items: center;
      gap: 16px;
      margin-top: 8px;
      padding: 6px 16px;
      background: var(--qw-leaf);
      border: 1px solid var(--qw-hair);
      border-radius: 3px;
      box-shadow: 0 2px 10px var(--qw-lift);
    }
    .trouble {
      border: 2px solid var(--qw-ink);
    }
    .told > div,
    .told > p {
      flex: 1;
      min-width: 0;
      overflow-wrap: anywhere;
    }
    .told ul {
      max-height: 30vh;
      margin: 4px 0;
      padding-left: 16px;
      overflow-y: auto;
      list-style: disc;
    }
    progress {
      display: block;
      width: 100%;
      height: 8px;
      margin-top: 6px;
      appearance: none;
      border: 1px solid var(--qw-hair);
      background: transparent;
    }
    progress::-webkit-progress-bar {
      background: transparent;
    }
    progress::-webkit-progress-value {
      background: var(--qw-ink);
    }
    progress::-moz-progress-bar {
      background: var(--qw-ink);
    }
  `;
}
