import { css, html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Held } from '../../src/drawer/model.ts';
import type { Corners } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { emit } from '../support/emit.ts';
import { PictureStage } from './stage/picture-stage.ts';
import { stageStyles, toolStyles } from './stage/stage-styles.ts';

/**
 * A photograph with an outline drawn where its paper may lie, and the question whether it does.
 * @fires qw-paper-is - `{ held, is }`, `cut out` or `whole`
 * @fires qw-look-closer - `{ held, tool }`, where the outline is not quite right
 */
@customElement('qw-is-paper')
export class QwIsPaper extends PictureStage {
  static override styles = [
    controls,
    stageStyles,
    toolStyles,
    css`
      :host {
        --tall: 46vh;
      }
      h3 {
        margin-top: 12px;
        font: 600 18px/1.25 var(--qw-serif);
      }
    `,
  ];

  @property({ attribute: false }) held: Held | null = null;
  @property({ attribute: false }) corners: Corners | null = null;
  @state() private isSaid = false;

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('corners')) this.isSaid = false;
  }

  override render() {
    const { corners, held } = this;
    if (!corners || !held) return nothing;
    return html`${this.stage(this.outline(corners), `Photograph of ${this.name}, with an outline where the paper may lie`)}
      <h3 id="asks">Is this the paper?</h3>
      <div class="fields" role="group" aria-labelledby="asks">
        <button type="button" class="slip main" ?disabled=${this.isSaid} @click=${() => this.say(held, 'cut out')}>Yes, cut it out</button>
        <button type="button" class="slip" ?disabled=${this.isSaid} @click=${() => this.say(held, 'whole')}>No, the whole picture is the paper</button>
        <button type="button" class="word" ?disabled=${this.isSaid} @click=${() => emit(this, 'qw-look-closer', { held, tool: 'straighten' })}><span>Move its corners</span></button>
      </div>`;
  }

  private outline(corners: Corners) {
    const d = `M${corners.map(({ x, y }) => `${x * 100} ${y * 100}`).join('L')}Z`;
    return html`<svg class="over" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
      ${svg`<path class="veil" d="M0 0H100V100H0Z${d}" /><path class="edge under" d=${d} /><path class="edge upper" d=${d} />`}
    </svg>`;
  }

  private say(held: Held, is: 'cut out' | 'whole'): void {
    this.isSaid = true;
    emit(this, 'qw-paper-is', { held, is });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-is-paper': QwIsPaper;
  }
}
