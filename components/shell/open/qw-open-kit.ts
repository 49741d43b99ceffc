import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { heldKey } from '../../../src/drawer/held.ts';
import type { Drawer } from '../../../src/drawer/model.ts';
import type { KitLeaf } from '../../../src/notebook/model.ts';
import { findKit, type KitFound } from '../../../src/workbench/kit.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import type { KitView } from '../../kit/kit-view.ts';
import '../../notebook/qw-kit-leaf.ts';
import { QwElement } from '../../support/element.ts';
import { drawerPaper } from './views.ts';

/** A kit leaf with what was found of it, worked out anew when the leaf or the drawer changes. */
@customElement('qw-open-kit')
export class QwOpenKit extends QwElement {
  @property({ attribute: false }) leaf: KitLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) drawer: Drawer | null = null;
  /** Grows when pictures arrive. */
  @property({ type: Number }) pictures = 0;
  private found: KitFound | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!this.leaf || !this.drawer) return;
    const before = changed.get('leaf');
    const sameKit = this.found && !changed.has('drawer') && before?.pieces === this.leaf.pieces;
    if (!this.found || (!sameKit && (changed.has('leaf') || changed.has('drawer')))) {
      this.found = findKit(this.drawer, this.leaf);
    }
  }

  override render() {
    const { leaf, session, drawer, found } = this;
    if (!leaf || !session || !drawer || !found) return nothing;
    return html`<qw-kit-leaf .leaf=${leaf} .margin=${this.margin} .view=${viewOf(session, drawer, found)}></qw-kit-leaf>`;
  }
}

function viewOf(session: Session, drawer: Drawer, { there, kit, cuts }: KitFound): KitView {
  const pieces = there.flatMap(({ piece, index }) => {
    const paper = drawerPaper(session, piece.held);
    if (!paper) return [];
    const { sizeMm = null, count = 1, mat = null } = piece;
    return [
      {
        index,
        paper: { ...paper, key: `${heldKey(piece.held)} ${index}` },
        isPhoto: piece.role === 'photo',
        canBePhoto: piece.held.kind === 'sheet',
        sizeMm,
        count,
        mat,
      },
    ];
  });
  const mats = drawer.plains.filter(({ kind }) => kind === 'cardstock').map(({ id, name }) => ({ id, name }));
  return { pieces, kit, cuts, mats };
}
