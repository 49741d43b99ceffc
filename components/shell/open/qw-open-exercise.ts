import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { heldKey, pairNames } from '../../../src/drawer/held.ts';
import type { ExerciseLeaf } from '../../../src/notebook/model.ts';
import { asks, mark, questions } from '../../../src/notebook/words/exercise.ts';
import type { Session, SessionState } from '../../../src/workbench/session-types.ts';
import type { ExerciseView } from '../../lesson/exercise-view.ts';
import '../../notebook/qw-exercise-leaf.ts';
import { QwElement } from '../../support/element.ts';
import { pairsOf } from './exercise-pairs.ts';
import type { PlacesShelf } from './places-shelf.ts';
import { paperView } from './views.ts';

/** An exercise leaf with its pair and, once it is answered, what the engine found. */
@customElement('qw-open-exercise')
export class QwOpenExercise extends QwElement {
  @property({ attribute: false }) leaf: ExerciseLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) shelf: PlacesShelf | null = null;
  @property({ attribute: false }) book: SessionState | null = null;
  /** Grows when places arrive. */
  @property({ type: Number }) placed = 0;

  override render() {
    const { leaf, session, shelf, book } = this;
    if (!leaf || !session || !shelf || !book) return nothing;
    return html`<qw-exercise-leaf
      .leaf=${leaf}
      .margin=${this.margin}
      .view=${viewOf(leaf, session, shelf)}
      .surround=${book.look.surround}
    ></qw-exercise-leaf>`;
  }
}

function viewOf(leaf: ExerciseLeaf, session: Session, shelf: PlacesShelf): ExerciseView | null {
  const { notebook } = session.state;
  const pairs = pairsOf(notebook);
  const ofStudy = pairs.filter(({ study }) => study.id === leaf.studyId);
  const key = leaf.candidate && heldKey(leaf.candidate);
  const pair = ofStudy.find(({ candidate }) => heldKey(candidate) === key) ?? ofStudy[0];
  if (!pair) return null;
  const comparison = session.compare(pair.anchor, pair.candidate, pair.study.distance);
  const anchor = paperView(session, shelf, pair.anchor, 'anchor');
  const candidate = paperView(session, shelf, pair.candidate, 'candidate');
  if (!comparison || !anchor || !candidate) return null;
  const ask = leaf.ask ?? 'verdict';
  return {
    leaf,
    ask,
    asks: questions[ask].asks,
    questions: asks.map((one) => ({ ask: one, title: questions[one].title })),
    pairs: pairs.map((one) => {
      const names = pairNames(notebook.drawer, one.anchor, one.candidate);
      return { key: one.key, name: `${names.anchor} and ${names.candidate}`, on: one === pair };
    }),
    anchor,
    candidate,
    comparison,
    answered: leaf.answered,
    pointed: leaf.pointed ?? null,
    marked: mark(leaf, comparison),
  };
}
