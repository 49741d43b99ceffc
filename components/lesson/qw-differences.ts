import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Comparison, Reason, Verdict } from '../../src/harmony/model.ts';
import { chipStyle } from '../study/chip-style.ts';
import { inksSpokenOf, withChips } from '../study/sentence.ts';
import { verdictMark } from '../study/verdict-mark.ts';
import { verdictInSentence } from '../study/words.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { withSubscript } from '../support/subscript.ts';

export interface DifferenceView {
  readonly studyId: string;
  /** "Blossom bough and Pip hearts". */
  readonly pair: string;
  readonly hers: Verdict;
  readonly likes: boolean | null;
  readonly comparison: Comparison;
  readonly reason: Reason | null;
}

/** Where the reader's verdicts and the reading's differ, for her to read. Nothing is tuned by it. */
@customElement('qw-differences')
export class QwDifferences extends QwElement {
  static override styles = [controls, ruled, chipStyle, styles()];

  @property({ type: Number }) said = 0;
  @property({ type: Number }) agreed = 0;
  @property({ attribute: false }) differ: readonly DifferenceView[] = [];
  @property({ attribute: false }) patterns: readonly string[] = [];

  override render() {
    return html`<div class="row head">
        <div class="margin"></div>
        <div class="text">
          <h2>Where you and the reading differ</h2>
          <p class="lede">${this.lede()}</p>
        </div>
      </div>
      ${this.patterns.length ? html`<section class="row" aria-label="What returns"><div class="margin" aria-hidden="true"><b>what returns</b></div><ul class="text patterns">${this.patterns.map((line) => html`<li>${line}</li>`)}</ul></section>` : nothing}
      <ol>${this.differ.map((one) => this.difference(one))}</ol>
      <div class="row">
        <div class="margin"></div>
        <p class="text soft">This page is for you to read. The reading does not change by what you say; one of you has seen something that the other has not.</p>
      </div>`;
  }

  private lede(): string {
    const { said, agreed } = this;
    if (said === 0)
      return 'Say your own verdict under a study’s reasons, and this page compares it with the reading.';
    const pairs = said === 1 ? 'one pair' : `${said} pairs`;
    const each = said === 1 ? '' : ' each time';
    if (agreed === said) return `You have said your verdict of ${pairs}, and agree with the reading${each}.`;
    if (agreed === 0) return `You have said your verdict of ${pairs}; the reading says otherwise${each}.`;
    return `You have said your verdict of ${pairs}; of ${agreed === 1 ? 'one' : agreed} of them you and the reading say the same.`;
  }

  private difference({ studyId, pair, hers, likes, comparison, reason }: DifferenceView) {
    const table = inksSpokenOf(comparison);
    return html`<li class="row">
      <div class="margin">${reason ? html`<b>${withSubscript(reason.figure)}</b><span>${reason.source}</span>` : nothing}</div>
      <div class="text">
        <h3><a href="#${studyId}">${pair}</a></h3>
        <p class="two">
          <span>${verdictMark(hers, 34)} you: ${verdictInSentence(hers)}${likes === null ? '' : likes ? ', and you like it' : ', and you don’t like it'}</span>
          <span>${verdictMark(comparison.verdict, 34)} the reading: ${verdictInSentence(comparison.verdict)}</span>
        </p>
        ${reason ? html`<p>${withChips(reason.says, reason.inks, table)}</p>` : nothing}
      </div>
    </li>`;
  }
}

function styles() {
  return css`
    :host {
      padding: 34px 0 60px;
    }
    h2 {
      font: 500 31px/1.16 var(--qw-serif);
      letter-spacing: -0.012em;
    }
    .lede {
      margin: 6px 0 18px;
      max-width: 36em;
      font-size: 18px;
    }
    .patterns li {
      max-width: 38em;
      padding: 2px 0 8px;
      font: 500 19px/1.4 var(--qw-serif);
    }
    ol > li {
      padding: 14px 0;
    }
    h3 {
      font: 600 17px/1.3 var(--qw-serif);
    }
    .two {
      display: flex;
      flex-wrap: wrap;
      gap: 6px 26px;
      padding: 6px 0 4px;
      font: 14.5px/1.3 var(--qw-sans);
    }
    .two span {
      display: inline-flex;
      align-items: center;
      gap: 10px;
    }
    li p {
      max-width: 40em;
    }
    .soft {
      margin-top: 12px;
      max-width: 38em;
      color: var(--qw-soft);
      font-style: italic;
    }
    @container (max-width: 620px) {
      :host {
        padding-top: 18px;
      }
    }
  `;
}
