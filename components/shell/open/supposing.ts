import type { ReactiveController } from 'lit';
import { heldKey } from '../../../src/drawer/held.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type { Change, Comparison } from '../../../src/harmony/model.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { Supposed } from '../../../src/workbench/what-if.ts';
import type { AppHost } from '../app-host.ts';

type Engine = typeof import('../../../src/workbench/what-if.ts');
type Changes = readonly Change[];

/** What is only supposed of the pair on the open study: kept here, never in the notebook. */
export class Supposing implements ReactiveController {
  changes: Changes = [];
  /** What held before each step. */
  steps: readonly Changes[] = [];
  private pair = '';
  private dragging = false;
  private engine: Engine | null = null;
  private known: { from: Comparison; changes: Changes; supposed: Supposed } | null = null;
  private readonly app: AppHost;

  constructor(app: AppHost) {
    this.app = app;
    app.addController(this);
  }

  hostConnected(): void {}

  /** Opens the panel for a pair; what is needed is fetched the first time. `changes`: a remedy that is to be tried. */
  async open(study: StudyLeaf, held: Held, changes: Changes = []): Promise<void> {
    const [engine] = await Promise.all([
      import('../../../src/workbench/what-if.ts'),
      import('../../study/qw-what-if.ts'),
    ]);
    this.engine = engine;
    if (!this.isOf(study, held)) this.forget();
    this.pair = pairKey(study, held);
    if (changes.length) this.suppose(changes, true);
    this.app.requestUpdate();
  }

  isOf(study: StudyLeaf, held: Held): boolean {
    return this.engine !== null && this.pair === pairKey(study, held);
  }

  /** A step that is still being dragged is one step, however often it changes. */
  suppose(changes: Changes, settled: boolean): void {
    if (!this.dragging) this.steps = [...this.steps, this.changes];
    this.dragging = !settled;
    this.changes = changes;
    this.app.requestUpdate();
  }

  /** Takes the last step back. @returns whether there was one, on the pair that is looked at. */
  back(): boolean {
    const before = this.steps.at(-1);
    if (before === undefined || !this.isOpen()) return false;
    this.steps = this.steps.slice(0, -1);
    this.changes = before;
    this.dragging = false;
    this.app.requestUpdate();
    return true;
  }

  leave(): void {
    this.forget();
    this.app.requestUpdate();
  }

  /** The pair as it would be, or null where nothing is supposed. */
  of(study: StudyLeaf, candidate: Held, from: Comparison): Supposed | null {
    const { engine, changes, known } = this;
    if (!engine || !study.anchor || !changes.length || !this.isOf(study, candidate)) return null;
    if (known?.from === from && known.changes === changes) return known.supposed;
    const { drawer } = this.app.session!.state.notebook;
    const supposed = engine.supposeOn(drawer, { anchor: study.anchor, candidate }, from, changes);
    this.known = { from, changes, supposed };
    return supposed;
  }

  /** Keeps what is supposed as a note. @returns its id, or null where nothing is supposed. */
  keep(study: StudyLeaf, candidate: Held, from: Comparison): string | null {
    const supposed = this.of(study, candidate, from);
    const { session } = this.app;
    if (!supposed || !session || !this.engine) return null;
    const leaf = this.engine.noteOfSupposed(session.newId('leaf'), from, supposed);
    const at = session.state.notebook.leaves.findIndex(({ id }) => id === study.id) + 1;
    session.dispatch({ do: 'add leaf', leaf, at });
    return leaf.id;
  }

  inkOf = (l: number, c: number, h: number) => this.engine!.supposedInk(l, c, h);

  private isOpen(): boolean {
    const { session } = this.app;
    const leaf = session?.leaf(session.state.leafId ?? '');
    const held = leaf?.kind === 'study' ? leaf.candidates[leaf.shown] : undefined;
    return leaf?.kind === 'study' && held !== undefined && this.isOf(leaf, held);
  }

  private forget(): void {
    this.pair = '';
    this.changes = [];
    this.steps = [];
    this.dragging = false;
    this.known = null;
  }
}

function pairKey({ id, anchor, distance }: StudyLeaf, held: Held): string {
  return `${id}|${anchor ? heldKey(anchor) : ''}|${heldKey(held)}|${distance}`;
}
