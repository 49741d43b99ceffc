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
  /** True while the panel is open with which changes are made by hand; a remedy is tried without it. */
  byHand = false;
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

  /** Supposes changes of a pair, or, where none are given, opens the panel for it; what is needed is fetched the first time. */
  async open(study: StudyLeaf, held: Held, changes: Changes | null = null): Promise<void> {
    const [engine] = await Promise.all([
      import('../../../src/workbench/what-if.ts'),
      import('../../study/tried/qw-what-if.ts'),
      import('../../study/tried/qw-before-after.ts'),
    ]);
    this.engine = engine;
    if (!this.isOf(study, held)) this.forget();
    this.pair = pairKey(study, held);
    if (changes === null) this.byHand = true;
    else this.suppose(changes, true);
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

  /** Keeps what is supposed as a note, with the picture of it. @returns its id, or null where nothing is supposed. */
  async keep(
    study: StudyLeaf,
    candidate: Held,
    from: Comparison,
    picture: Blob | null,
  ): Promise<string | null> {
    const supposed = this.of(study, candidate, from);
    const { session } = this.app;
    if (!supposed || !session || !this.engine) return null;
    const { noteOfSupposed } = this.engine;
    const pictureId = picture && (await session.keepPicture(picture));
    const leaf = noteOfSupposed(session.newId('leaf'), from, supposed, pictureId);
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
    this.byHand = false;
    this.changes = [];
    this.steps = [];
    this.dragging = false;
    this.known = null;
  }
}

function pairKey({ id, anchor, distance }: StudyLeaf, held: Held): string {
  return `${id}|${anchor ? heldKey(anchor) : ''}|${heldKey(held)}|${distance}`;
}
