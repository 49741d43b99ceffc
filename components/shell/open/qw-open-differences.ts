import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { pairNames } from '../../../src/drawer/held.ts';
import type { Notebook } from '../../../src/notebook/model.ts';
import { findDifferences } from '../../../src/notebook/words/differences.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import '../../lesson/qw-differences.ts';
import { QwElement } from '../../support/element.ts';

/** The page of differences, gathered from every study of the notebook. */
@customElement('qw-open-differences')
export class QwOpenDifferences extends QwElement {
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) notebook: Notebook | null = null;

  override render() {
    const { session, notebook } = this;
    if (!session || !notebook) return nothing;
    const found = findDifferences(notebook, (anchor, candidate, distance) =>
      session.compare(anchor, candidate, distance),
    );
    const differ = found.differ.map(({ study, candidate, hers, likes, comparison, reason }) => {
      const names = pairNames(notebook.drawer, study.anchor!, candidate);
      const pair = `${names.anchor} and ${names.candidate}`;
      return { studyId: study.id, pair, hers, likes, comparison, reason };
    });
    return html`<qw-differences .said=${found.said} .agreed=${found.agreed} .differ=${differ} .patterns=${found.patterns}></qw-differences>`;
  }
}
