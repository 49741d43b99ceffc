import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { StudyLeaf, Surround } from '../../src/notebook/model.ts';
import { byHand } from '../support/by-finger.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import '../support/qw-title.ts';
import '../support/qw-writing.ts';
import './qw-candidates.ts';
import './qw-deciding.ts';
import './qw-mats.ts';
import './qw-opinion.ts';
import './qw-reasons.ts';
import './qw-remedies.ts';
import './qw-study-tools.ts';
import type { QwVerdict } from './qw-verdict.ts';
import './qw-verdict.ts';
import { studyStyles } from './study-styles.ts';
import { type CandidateView, keepsQuiet, type PaperView } from './study-view.ts';
import { verdictInSentence } from './words.ts';

/**
 * A study. Papers come first, then the verdict in one sentence, the two colours that decide, three reasons, what could
 * be done, and the charts. Pointing at an ink anywhere lights it up everywhere.
 * @fires qw-retitle - `{ title }`
 * @fires qw-write - `{ text }`
 * @fires qw-say - `{ opinion, index }`
 * @fires qw-set-distance, qw-set-wheel, qw-set-surround, qw-set-asks-first - `{ value }`
 * @fires qw-make-board - nothing
 * @fires qw-choose-paper - `{ as }` · qw-drop-paper - `{ key, as }` · qw-turn-over - `{ as, side }`
 * @fires qw-show-candidate, qw-remove-candidate - `{ index }`
 * @slot tried - stands below the remedies: what is tried, drawn
 * @slot what-if - stands below the ways to look further
 * @slot further - stands after the remedies: ways to look further
 */
@customElement('qw-study')
export class QwStudy extends QwElement {
  static override styles = [controls, ruled, studyStyles];

  @property({ attribute: false }) leaf: StudyLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  @property({ attribute: false }) anchor: PaperView | null = null;
  /** Best first. */
  @property({ attribute: false }) candidates: readonly CandidateView[] = [];
  @property() surround: Surround = 'grey';
  /** The pair as it would be, while something is tried: the charts are drawn of it. */
  @property({ attribute: false }) asIf: Pick<QwStudy, 'anchor' | 'candidates'> | null = null;
  /** File names of pictures that are being read for this study. */
  @property({ attribute: false }) reading: readonly string[] = [];
  @state() private lit: readonly string[] = [];

  /** True from her word until the verdict that it opens is drawn. */
  private waits = false;

  protected override updated(): void {
    if (!this.waits || !this.renderRoot.querySelector('qw-verdict')) return;
    this.waits = false;
    void this.reveal('nearest');
  }

  override render() {
    const { leaf } = this;
    if (!leaf) return nothing;
    const shown = this.candidates.find(({ index }) => index === leaf.shown) ?? this.candidates[0] ?? null;
    const quiet = shown !== null && keepsQuiet(leaf.asksFirst, shown);
    const told = shown !== null && !quiet;
    return html`<div class="page" @qw-point=${this.onPoint}>
      <div class="row head">
        <div class="margin">${this.margin.map((line) => html`<span>${line}</span>`)}</div>
        <div class="text top">
          <qw-title .value=${leaf.title} ?given=${isGiven(leaf.title, this.anchor, this.candidates)} empty="What do you want to know?"></qw-title>
        </div>
      </div>
      <qw-study-tools .leaf=${leaf} .surround=${this.surround} ?has-pair=${shown !== null && this.anchor !== null} ?quiet=${quiet}></qw-study-tools>
      ${this.papers(shown, quiet)}
      <div aria-live="polite" class="unseen">${told ? spoken(shown) : nothing}</div>
      ${shown ? (quiet ? this.question(shown) : this.answer(shown)) : this.invitation()}
      ${shown ? nothing : html`<slot name="further"></slot>`}
      <div class="row words">
        <div class="margin" aria-hidden="true"><b>your words</b></div>
        <div class="text">
          <qw-writing
            label="Your words on this study"
            prompt="Your own words: they go on the board too."
            .value=${leaf.text}
          ></qw-writing>
        </div>
      </div>
    </div>`;
  }

  /** The papers come first, as large as the leaf allows, with the candidates in small beside them. */
  private papers(shown: CandidateView | null, quiet: boolean) {
    return html`<div class="wide ${this.anchor ? 'laid' : ''}">
      ${this.mats(shown, quiet)}
      ${
        this.anchor
          ? html`<qw-candidates .candidates=${this.candidates} .shown=${shown?.index ?? -1} ?asks-first=${this.leaf!.asksFirst} .surround=${this.surround}></qw-candidates>`
          : nothing
      }
    </div>`;
  }

  private mats(shown: CandidateView | null, quiet: boolean) {
    return html`<qw-mats
      shows="papers"
      .anchor=${this.anchor}
      .candidates=${this.candidates}
      .shown=${shown?.index ?? -1}
      .distance=${this.leaf!.distance}
      .reading=${this.reading}
      .surround=${this.surround}
      .lit=${this.lit}
      ?quiet=${quiet}
    ></qw-mats>`;
  }

  /** Wheel and strip, of what is tried while something is. */
  private charts(shown: CandidateView) {
    const { anchor, candidates } = this.asIf ?? this;
    return html`<qw-mats
      shows="charts"
      .anchor=${anchor}
      .candidates=${candidates}
      .shown=${shown.index}
      .wheel=${this.leaf!.wheel}
      .surround=${this.surround}
      .lit=${this.lit}
    ></qw-mats>`;
  }

  private question(shown: CandidateView) {
    return html`<qw-opinion first .opinion=${shown.opinion} @qw-say=${this.withIndex(shown.index, true)}></qw-opinion>`;
  }

  private answer(shown: CandidateView) {
    const { comparison } = shown;
    return html`<qw-verdict tells .comparison=${comparison}></qw-verdict>
      <div class="wide deciding"><qw-deciding .anchor=${this.anchor} .candidate=${shown} .surround=${this.surround}></qw-deciding></div>
      <qw-reasons without-turned .comparison=${comparison} .lit=${this.lit}></qw-reasons>
      <qw-remedies .comparison=${comparison} .remedies=${shown.remedies ?? []}></qw-remedies>
      <slot name="tried"></slot>
      <slot name="further"></slot>
      <slot name="what-if"></slot>
      <div class="wide">${this.charts(shown)}</div>
      <qw-opinion
        .opinion=${shown.opinion}
        .reading=${comparison.verdict}
        @qw-say=${this.withIndex(shown.index)}
      ></qw-opinion>`;
  }

  private invitation() {
    return html`<div class="row">
      <div class="margin" aria-hidden="true"></div>
      <p class="text invitation">
        ${
          this.anchor
            ? byHand(
                'Now hold another paper against it: drop a picture on the page, or choose one from the drawer.',
                'Now hold another paper against it: choose one from the drawer, or a picture of one.',
              )
            : byHand(
                'Start with the sheet that everything else has to answer: drop its picture on the page, or choose it from the drawer.',
                'Start with the sheet that everything else has to answer: choose it from the drawer, or a picture of it.',
              )
        }
      </p>
    </div>`;
  }

  /** What she pressed to see the verdict is gone when it is shown, so the keyboard goes on to the verdict. */
  private async reveal(block: 'start' | 'nearest'): Promise<void> {
    await this.updateComplete;
    const verdict = this.renderRoot.querySelector<QwVerdict>('qw-verdict');
    await verdict?.updateComplete;
    verdict?.scrollIntoView({ block });
    verdict?.focus({ preventScroll: true });
  }

  private onPoint(event: CustomEvent<{ inks: readonly string[] }>): void {
    this.lit = event.detail.inks;
  }

  /** An opinion says what; only the study knows of which candidate. */
  private withIndex(index: number, first = false) {
    return (event: CustomEvent<{ opinion: object }>): void => {
      event.stopPropagation();
      // The verdict is drawn once the notebook has taken what she said.
      this.waits = first;
      emit(this, 'qw-say', { ...event.detail, index });
    };
  }
}

/** True of a title that pictures gave: the anchor's name, alone or with what lay beside it. */
function isGiven(title: string, anchor: PaperView | null, candidates: readonly CandidateView[]): boolean {
  if (anchor === null || !title.startsWith(anchor.name)) return false;
  const rest = title.slice(anchor.name.length);
  return (
    rest === '' || /^ with \d+ others$/.test(rest) || candidates.some(({ name }) => rest === ` with ${name}`)
  );
}

function spoken({ name, comparison }: CandidateView): string {
  return `${name}: ${verdictInSentence(comparison.verdict)}. ${comparison.decision.summary}`;
}
