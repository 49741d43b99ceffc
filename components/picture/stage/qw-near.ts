import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { controls } from '../../support/controls.ts';
import { PictureStage } from './picture-stage.ts';
import { stageStyles } from './stage-styles.ts';

/** A paper's picture to look at, as near as one likes. */
@customElement('qw-near')
export class QwNear extends PictureStage {
  static override styles = [controls, stageStyles];

  override render() {
    const ground = html`<div class="ground" @pointerdown=${this.zooming.move}></div>`;
    return this.stage(ground, `Picture of ${this.name}`);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-near': QwNear;
  }
}
