import { css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { inksOf, inkWords, shareWords } from '../../../src/drawing/words/says.ts';
import type { Change, Role } from '../../../src/harmony/model.ts';
import type { Ink } from '../../../src/sheet/model.ts';
import { controls } from '../../support/controls.ts';
import { QwElement } from '../../support/element.ts';
import { emit } from '../../support/emit.ts';
import '../../support/qw-choice.ts';
import type { Pickable } from '../../support/qw-pick-ink.ts';
import '../../support/qw-pick-ink.ts';
import '../../support/qw-range.ts';
import type { Material, WhatIfView } from './what-if-view.ts';

type Way = 'cover' | 'trim' | 'recolour' | 'add' | 'strip';

/**
 * What can be tried on a pair: the way, the ink that it touches, and how far.
 * @fires qw-try-change - `{ change, settled }`, while something is dragged and when it is let go
 */
@customElement('qw-what-if-knobs')
export class QwWhatIfKnobs extends QwElement {
  static override styles = [controls, styles()];

  @property({ attribute: false }) view: WhatIfView | null = null;
  /** An ink of an OKLCH colour, named. */
  @property({ attribute: false }) inkOf: ((l: number, c: number, h: number) => Ink) | null = null;
  @state() private way: Way = 'cover';
  @state() private picked = '';
  @state() private of: Role = 'candidate';
  @state() private laid = '';

  override render() {
    if (!this.view) return nothing;
    const { plains } = this.view;
    const offered = ways.filter(
      ({ value }) =>
        (value !== 'add' || plains.length > 0) && (value !== 'strip' || this.neutrals().length > 0),
    );
    return html`<qw-choice label="What to try" .choices=${offered} .value=${this.way} @qw-choose=${this.onWay}></qw-choice>
      <div class="knobs">
        ${this.knobs(this.view)}
        ${
          (this.way === 'add' || this.way === 'strip') && plains.some(({ usual }) => usual)
            ? html`<p class="soft">Your drawer has no plain neutral yet; cardstocks that most have stand in for one.</p>`
            : nothing
        }
      </div>`;
  }

  private knobs(view: WhatIfView): TemplateResult {
    switch (this.way) {
      case 'cover':
        return this.withInk(view, false, (ink, of) => this.cover(view, ink, of));
      case 'trim':
        return this.withInk(view, false, (ink, of) => this.trim(view, ink, of));
      case 'recolour':
        return this.withInk(view, true, (ink, of) => this.recolour(view, ink, of));
      case 'add':
        return this.add(view);
      case 'strip':
        return html`<qw-pick-ink label="A strip between them, of" .inks=${this.neutrals().map(ofPlain)} @qw-pick=${this.onStrip}></qw-pick-ink>`;
    }
  }

  /** First the ink, of either paper; then what is done with it. */
  private withInk(view: WhatIfView, bases: boolean, next: (ink: Ink, of: Role) => TemplateResult) {
    const row = (of: Role) => {
      const inks = inksOf(view.from[of]).filter((_, place) => bases || place > 0);
      return inks.length
        ? html`<qw-pick-ink label="An ink of ${view.names[of]}" .inks=${inks.map(ofInk)} .value=${this.picked} @qw-pick=${this.onInk(of)}></qw-pick-ink>`
        : nothing;
    };
    const ink = inksOf(view.from[this.of]).find(({ id }) => id === this.picked);
    return html`${row('candidate')} ${row('anchor')} ${ink ? next(ink, this.of) : html`<p class="soft">Pick the ink.</p>`}`;
  }

  private cover(view: WhatIfView, ink: Ink, of: Role) {
    const others = inksOf(view.from[of]).filter(({ id }) => id !== ink.id);
    const across = inksOf(view.from[of === 'anchor' ? 'candidate' : 'anchor']);
    const given = new Map<string, Ink>([
      ...[...others, ...across].map((one): [string, Ink] => [`ink ${one.id}`, one]),
      ...view.plains.map(({ id, ink: plain }): [string, Ink] => [`plain ${id}`, plain]),
    ]);
    const choices = [
      ...[...others, ...across].map((one) => ({ ...ofInk(one), value: `ink ${one.id}` })),
      ...view.plains.map((plain) => ({ ...ofPlain(plain), value: `plain ${plain.id}` })),
    ];
    const done = view.changes.at(-1);
    const with_ = done?.kind === 'cover' && done.ink === ink.id ? done.with : null;
    const value = [...given].find(([, one]) => one === with_)?.[0] ?? '';
    const onPick = (event: CustomEvent<{ value: string }>) => {
      const cover = given.get(event.detail.value);
      if (cover) this.tell({ kind: 'cover', of, ink: ink.id, with: cover });
    };
    return html`<qw-pick-ink label="Cover ${inkWords(ink)} with" .inks=${choices} .value=${value} @qw-pick=${onPick}></qw-pick-ink>`;
  }

  private trim(view: WhatIfView, ink: Ink, of: Role) {
    const done = view.changes.at(-1);
    const share = done?.kind === 'trim' && done.ink === ink.id ? (done.toShare ?? 0) : ink.share;
    return html`<qw-range
      label="What is left of ${inkWords(ink)}"
      min="0"
      .max=${ink.share * 100}
      step="0.1"
      .value=${share * 100}
      says=${share === 0 ? 'none' : shareWords(share)}
      @qw-slide=${({ detail }: Slide) => this.tell({ kind: 'trim', of, ink: ink.id, toShare: detail.value / 100 }, detail.settled)}
    ></qw-range>`;
  }

  private recolour(view: WhatIfView, ink: Ink, of: Role) {
    const done = view.changes.at(-1);
    const now = done?.kind === 'recolour' && done.ink === ink.id ? done.to : ink;
    const [l, c, h] = now.oklch;
    const hue = h ?? ink.oklch[2] ?? 0;
    const slide = (to: (value: number) => [number, number, number]) => (event: Slide) => {
      const { value, settled } = event.detail;
      const mixed = this.inkOf?.(...to(value));
      if (mixed) this.tell({ kind: 'recolour', of, ink: ink.id, to: mixed }, settled);
    };
    return html`<qw-range label="Darker – lighter" min="10" max="98" .value=${Math.round(l * 100)} says="L ${l.toFixed(2)}" @qw-slide=${slide((value) => [value / 100, c, hue])}></qw-range>
      <qw-range label="Muted – bright" min="0" max="30" step="0.5" .value=${c * 100} says="C ${c.toFixed(3)}" @qw-slide=${slide((value) => [l, value / 100, hue])}></qw-range>
      <qw-range label="Round the wheel" min="0" max="360" .value=${Math.round(hue)} says="hue ${Math.round(hue)}°" @qw-slide=${slide((value) => [l, c, value % 360])}></qw-range>
      <p class="soft">As mist, ink or paint would change it. Now it is ${inkWords(now)} (${now.hex}).</p>`;
  }

  private add(view: WhatIfView) {
    const plain = view.plains.find(({ id }) => id === this.laid);
    const done = view.changes.at(-1);
    const share = done?.kind === 'add' && done.ink.hex === plain?.ink.hex ? done.share : 0.05;
    const lay = (ink: Ink, to: number, settled: boolean) =>
      this.tell({ kind: 'add', of: this.of, ink, share: to }, settled);
    return html`<qw-choice label="Onto" shows-label .choices=${[
      { value: 'candidate', label: view.names.candidate },
      { value: 'anchor', label: view.names.anchor },
    ]} .value=${this.of} @qw-choose=${this.onSide}></qw-choice>
      <qw-pick-ink
        label="Lay on"
        .inks=${view.plains.map(ofPlain)}
        .value=${this.laid}
        @qw-pick=${(event: CustomEvent<{ value: string }>) => {
          event.stopPropagation();
          this.laid = event.detail.value;
          const chosen = view.plains.find(({ id }) => id === this.laid);
          if (chosen) lay(chosen.ink, 0.05, true);
        }}
      ></qw-pick-ink>
      ${
        plain
          ? html`<qw-range label="How much of the sheet" min="0.5" max="40" step="0.5" .value=${share * 100} says=${shareWords(share)} @qw-slide=${({ detail }: Slide) => lay(plain.ink, detail.value / 100, detail.settled)}></qw-range>`
          : nothing
      }`;
  }

  private neutrals(): readonly Material[] {
    return this.view?.plains.filter(({ neutral }) => neutral) ?? [];
  }

  private tell(change: Change, settled = true): void {
    emit(this, 'qw-try-change', { change, settled });
  }

  private onWay(event: CustomEvent<{ value: Way }>): void {
    event.stopPropagation();
    this.way = event.detail.value;
  }

  private onSide(event: CustomEvent<{ value: Role }>): void {
    event.stopPropagation();
    this.of = event.detail.value;
    this.laid = '';
  }

  private onInk(of: Role) {
    return (event: CustomEvent<{ value: string }>): void => {
      event.stopPropagation();
      this.of = of;
      this.picked = event.detail.value;
    };
  }

  private onStrip(event: CustomEvent<{ value: string }>): void {
    event.stopPropagation();
    const plain = this.view?.plains.find(({ id }) => id === event.detail.value);
    if (plain) this.tell({ kind: 'strip', ink: plain.ink });
  }
}

type Slide = CustomEvent<{ value: number; settled: boolean }>;

const ways: readonly { readonly value: Way; readonly label: string }[] = [
  { value: 'cover', label: 'Cover an ink' },
  { value: 'trim', label: 'Cut it down' },
  { value: 'recolour', label: 'Recolour' },
  { value: 'add', label: 'Lay on a plain' },
  { value: 'strip', label: 'Strip between' },
];

function ofInk(ink: Ink): Pickable {
  return { value: ink.id, hex: ink.hex, words: inkWords(ink), letter: ink.id };
}

function ofPlain({ id, name, ink }: Material): Pickable {
  return { value: id, hex: ink.hex, words: name, letter: '' };
}

function styles() {
  return css`
    qw-choice {
      margin-bottom: 6px;
    }
    .knobs {
      display: grid;
      gap: 10px;
      min-height: 120px;
      align-content: start;
    }
    .soft {
      color: var(--qw-soft);
      font: 14px/1.4 var(--qw-sans);
    }
  `;
}
