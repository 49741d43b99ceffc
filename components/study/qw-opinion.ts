import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Verdict } from '../../src/harmony/model.ts';
import type { Opinion } from '../../src/notebook/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { verdictMark } from './verdict-mark.ts';
import { verdictInSentence, verdicts, verdictWords } from './words.ts';

/**
 * What the reader says of a pair, kept apart from what the reading says: her verdict, and whether she likes it.
 * With `first` it asks before anything is shown.
 * @fires qw-say - `{ opinion }`, what has changed of her opinion
 */
@customElement('qw-opinion')
export class QwOpinion extends QwElement {
  static override styles = [controls, ruled, styles()];

  @property({ attribute: false }) opinion: Opinion = { verdict: null, likes: null };
  /** The reading's verdict; not used while `first` holds. */
  @property() reading: Verdict | null = null;
  /** True while the reading waits for her. */
  @property({ type: Boolean }) first = false;

  override render() {
    const { first, opinion } = this;
    return html`<section class="row" aria-labelledby="head">
      <div class="margin" aria-hidden="true">${first ? html`<b>you first</b><span>then the reading</span>` : html`<b>yours</b><span>kept apart</span>`}</div>
      <div class="text">
        <h3 id="head">${first ? 'Look first: do they belong together?' : 'And what do you say?'}</h3>
        ${first ? html`<p class="ask">Say what you see. The verdict, its reasons and what could mend it come after.</p>` : nothing}
        <div class="answers" role="group" aria-label="Your verdict">${verdicts.map((verdict) => this.answer(verdict))}</div>
        <div aria-live="polite">${first || !opinion.verdict ? nothing : this.agreement(opinion.verdict)}</div>
        ${first || !opinion.verdict ? nothing : html`<a class="word" href="#differences"><span>Where you and the reading differ</span></a>`}
        ${first ? nothing : this.liking()}
      </div>
    </section>`;
  }

  private answer(verdict: Verdict) {
    const held = this.opinion.verdict === verdict;
    return html`<button
      type="button"
      class="slip ${held ? 'held' : ''}"
      aria-pressed=${held}
      @click=${() => this.say({ verdict: held && !this.first ? null : verdict })}
    >
      ${verdictMark(verdict, 34)} ${verdictWords[verdict]}
    </button>`;
  }

  private agreement(mine: Verdict) {
    if (!this.reading) return nothing;
    return mine === this.reading
      ? html`<p class="found">You and the reading agree: it ${says[mine]}.</p>`
      : html`<p class="found">
          You say it ${says[mine]}; the reading says it ${says[this.reading]}. Look at the weightiest reasons: one of
          you has seen something that the other has not.
        </p>`;
  }

  private liking() {
    const { likes } = this.opinion;
    const button = (value: boolean, words: string) => html`<button
      type="button"
      class="slip ${likes === value ? 'held' : ''}"
      aria-pressed=${likes === value}
      @click=${() => this.say({ likes: likes === value ? null : value })}
    >
      ${words}
    </button>`;
    return html`<div class="answers" role="group" aria-label="Whether you like it">
      ${button(true, 'I like it')} ${button(false, 'I don’t like it')}
    </div>`;
  }

  private say(opinion: Partial<Opinion>): void {
    emit(this, 'qw-say', { opinion });
  }
}

const says: Readonly<Record<Verdict, string>> = {
  'holds-together': verdictInSentence('holds-together'),
  'needs-a-bridge': verdictInSentence('needs-a-bridge'),
  'pulls-apart': verdictInSentence('pulls-apart'),
};

function styles() {
  return css`
    section {
      padding: 14px 0 6px;
    }
    .margin {
      padding-top: 4px;
    }
    h3 {
      font: 600 17px/1.3 var(--qw-serif);
      margin-bottom: 8px;
    }
    :host([first]) h3 {
      font: 500 27px/1.15 var(--qw-serif);
      letter-spacing: -0.01em;
    }
    .ask {
      margin-bottom: 14px;
      color: var(--qw-soft);
      font-style: italic;
    }
    .answers {
      display: flex;
      flex-wrap: wrap;
      gap: 10px;
      margin-bottom: 10px;
    }
    :host([first]) .slip {
      min-height: 64px;
      font-size: 16px;
    }
    .held {
      border-color: var(--qw-ink);
      box-shadow: inset 0 0 0 1.5px var(--qw-ink);
      font-weight: 600;
    }
    @container (max-width: 620px) {
      .slip {
        flex: 1 1 auto;
      }
      :host([first]) .slip {
        flex-basis: 100%;
        justify-content: flex-start;
      }
    }
    a.word {
      text-decoration: none;
    }
    .found {
      margin: 0 0 12px;
      max-width: 39em;
    }
  `;
}
