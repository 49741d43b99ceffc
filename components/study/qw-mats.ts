import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import type { Wheel } from '../../src/colour/model.ts';
import type { NamedSide } from '../../src/drawing/model.ts';
import { gapIn } from '../../src/drawing/strip-gap.ts';
import { surroundTones } from '../../src/drawing/surround.ts';
import type { Distance } from '../../src/harmony/model.ts';
import type { Surround } from '../../src/notebook/model.ts';
import '../strip/qw-strip.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import '../wheel/qw-wheel.ts';
import { matsStyles } from './mats-styles.ts';
import './qw-mounted.ts';
import type { CandidateView, PaperView } from './study-view.ts';

/**
 * The mats on the chosen surround. On a study `shows` tells which: the papers, anchor on the left and candidate on the
 * right, touching or apart as they are judged; or the charts, wheel and strip beside each other. A paper that is looked at
 * by itself lies beside its wheel, with the strip below. While Quirewise keeps quiet only papers are shown.
 * @fires qw-turn-over - `{ as, index, side }` · qw-choose-paper - `{ as }` · qw-drop-paper - `{ key, as }`
 * @fires qw-rename-paper - `{ held, name }`
 */
@customElement('qw-mats')
export class QwMats extends QwElement {
  static override styles = [controls, matsStyles];

  @property({ attribute: false }) anchor: PaperView | null = null;
  @property({ attribute: false }) candidates: readonly CandidateView[] = [];
  /** Index (in the study) of the candidate that is drawn in full. */
  @property({ type: Number }) shown = -1;
  @property() wheel: Wheel = 'eye';
  @property() surround: Surround = 'grey';
  /** Touching: the two papers lie edge to edge, as they are judged. */
  @property() distance: Distance = 'apart';
  /** File names of pictures that are being read for it. */
  @property({ attribute: false }) reading: readonly string[] = [];
  @property({ attribute: false }) lit: readonly string[] = [];
  @property({ type: Boolean }) quiet = false;
  /** True where one paper is looked at by itself, with no place for a candidate. */
  @property({ type: Boolean, reflect: true }) alone = false;
  @property({ reflect: true }) shows: 'all' | 'papers' | 'charts' = 'all';

  override render() {
    const { anchor, surround } = this;
    const shown = this.candidates.find(({ index }) => index === this.shown) ?? null;
    const { mat, text, soft, line } = surroundTones(surround);
    const tones = { '--mat': mat, '--on-mat': text, '--on-mat-soft': soft, '--mat-line': line };
    if (this.shows === 'charts') return anchor ? this.charts(tones, anchor, shown) : nothing;
    const charts = anchor !== null && !this.quiet && this.shows === 'all';
    const meet = anchor !== null && !this.alone && this.distance === 'touching' ? 'meet' : '';
    return html`<div class="surround" style=${styleMap(tones)}>
      <div class="mats ${meet} ${charts ? '' : anchor ? 'papers-only' : 'place-only'}">
        ${this.mounted(anchor, 'anchor')}
        ${charts ? html`<figure class="wheel" aria-label="Hue wheel">${this.wheelOf(anchor, shown)}</figure>` : nothing}
        ${anchor && !this.alone ? this.mounted(shown, 'candidate') : nothing}
      </div>
      ${charts ? this.stripOf(anchor, shown) : nothing}
    </div>`;
  }

  private charts(tones: Readonly<Record<string, string>>, anchor: PaperView, shown: CandidateView | null) {
    return html`<div class="surround charts" style=${styleMap(tones)}>
      <figure class="wheel" aria-label="Hue wheel">${this.wheelOf(anchor, shown)}</figure>
      ${this.stripOf(anchor, shown)}
    </div>`;
  }

  private mounted(paper: PaperView | CandidateView | null, as: 'anchor' | 'candidate') {
    return html`<qw-mounted
      class=${as}
      as=${as}
      .paper=${paper}
      .index=${paper && 'index' in paper ? paper.index : -1}
      .surround=${this.surround}
      .lit=${this.lit}
      ?quiet=${this.quiet}
      ?alone=${this.alone}
      .reading=${paper ? '' : (this.reading[0] ?? '')}
    ></qw-mounted>`;
  }

  private wheelOf(anchor: PaperView, shown: CandidateView | null) {
    return html`<qw-wheel
      .anchor=${named(shown ? { ...anchor, side: shown.comparison.anchor } : anchor)}
      .candidate=${shown ? named(shown) : null}
      .others=${this.others()}
      .links=${shown?.comparison.links ?? []}
      .wheel=${this.wheel}
      .surround=${this.surround}
      .lit=${this.lit}
    ></qw-wheel>`;
  }

  private stripOf(anchor: PaperView, shown: CandidateView | null) {
    return html`<div class="strip">
      <qw-strip
        .anchor=${named(anchor)}
        .candidate=${shown ? named(shown) : null}
        .gap=${shown ? gapIn(shown.comparison.reasons) : null}
        .surround=${this.surround}
        .lit=${this.lit}
      ></qw-strip>
    </div>`;
  }

  private others(): readonly NamedSide[] {
    return this.candidates.filter(({ index }) => index !== this.shown).map(named);
  }
}

function named({ side, name }: PaperView): NamedSide {
  return { side, name };
}
