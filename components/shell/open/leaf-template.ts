import { html, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import type { Leaf, LeafKind, LeafOf } from '../../../src/notebook/model.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import '../../notebook/qw-empty.ts';
import '../../notebook/qw-note.ts';
import type { Place } from '../page/route.ts';
import type { PlacesShelf } from './places-shelf.ts';
import { studyTemplate } from './study-template.ts';
import type { Supposing } from './supposing.ts';

/** What the open leaf is drawn from. */
export interface LeafScene {
  readonly session: Session;
  readonly shelf: PlacesShelf;
  /** Null in a notebook without leaves, or while the sources are open. */
  readonly leaf: Leaf | null;
  readonly place: Place;
  readonly supposing: Supposing;
  /** Ways to look further that are open. */
  readonly further: readonly string[];
  /** The side that a sheet's page opens on next, by the sheet's id. */
  readonly faces: Map<string, 'A' | 'B'>;
}

/**
 * The open leaf, by its kind. A new leaf gets new elements, so that nothing half-written moves to another leaf.
 * Sources, boards and sheets are fetched when they are first opened.
 */
export function leafTemplate(scene: LeafScene): TemplateResult {
  const { session, leaf, place } = scene;
  if (place.at === 'sources') void import('./qw-open-sources.ts');
  if (place.at === 'differences') void import('./qw-open-differences.ts');
  if (place.at === 'sources') return html`<qw-open-sources .current=${place.id}></qw-open-sources>`;
  if (place.at === 'differences')
    return html`<qw-open-differences .session=${session} .notebook=${session.state.notebook}></qw-open-differences>`;
  if (!leaf) return html`<qw-empty></qw-empty>`;
  const { fetch, draw } = kinds[leaf.kind] as DrawnKind<LeafKind>;
  void fetch?.();
  return html`${bothTexts(leaf, session)}${keyed(leaf.id, draw(leaf, marginOf(leaf, session), scene))}`;
}

/** How a leaf of a kind is drawn. */
interface DrawnKind<Kind extends LeafKind> {
  /** Its elements, where they are fetched when first needed. */
  readonly fetch?: () => Promise<unknown>;
  readonly draw: (leaf: LeafOf[Kind], margin: readonly string[], scene: LeafScene) => TemplateResult;
}

const kinds: { readonly [Kind in LeafKind]: DrawnKind<Kind> } = {
  study: { draw: studyTemplate },
  note: {
    draw: (leaf, margin, { session }) =>
      html`<qw-note .leaf=${leaf} .margin=${margin} .picture=${leaf.picture ? session.storedUrl(leaf.picture.pictureId) : null}></qw-note>`,
  },
  sheet: {
    fetch: () => import('./qw-open-sheet.ts'),
    draw: (leaf, margin, { session, shelf, faces }) =>
      html`<qw-open-sheet .faces=${faces} .sheetId=${leaf.sheetId} .leaf=${leaf} .margin=${margin} .session=${session} .shelf=${shelf} .book=${session.state} .placed=${shelf.version}></qw-open-sheet>`,
  },
  kit: {
    fetch: () => import('./qw-open-kit.ts'),
    draw: (leaf, margin, { session }) =>
      html`<qw-open-kit .leaf=${leaf} .margin=${margin} .session=${session} .drawer=${session.state.notebook.drawer} .pictures=${session.state.pictures}></qw-open-kit>`,
  },
  board: {
    fetch: () => import('./qw-open-board.ts'),
    draw: (leaf, margin, { session }) =>
      html`<qw-open-board .leaf=${leaf} .margin=${margin} .session=${session} .notebook=${session.state.notebook} .pictures=${session.state.pictures} .surround=${session.state.look.surround}></qw-open-board>`,
  },
  exercise: {
    fetch: () => import('./qw-open-exercise.ts'),
    draw: (leaf, margin, { session, shelf }) =>
      html`<qw-open-exercise .leaf=${leaf} .margin=${margin} .session=${session} .shelf=${shelf} .book=${session.state} .placed=${shelf.version}></qw-open-exercise>`,
  },
};

/** What of this leaf was written in two tabs at once. */
function bothTexts(leaf: Leaf, { state }: Session) {
  const open = state.choices.filter(({ leafId }) => leafId === leaf.id);
  if (open.length > 0) void import('../../notebook/qw-both-texts.ts');
  return open.map(({ id, of, other }) => {
    const here = of === 'title' ? leaf.title : leaf.kind === 'board' ? leaf.words : leaf.text;
    return html`<qw-both-texts .value=${{ id, of, here, other }}></qw-both-texts>`;
  });
}

function marginOf(leaf: Leaf, session: Session): readonly string[] {
  const { notebook, saving } = session.state;
  const says = { saved: 'saved', saving: 'saving…', failed: 'not saved' };
  return [`leaf ${notebook.leaves.findIndex(({ id }) => id === leaf.id) + 1}`, says[saving.status]];
}
