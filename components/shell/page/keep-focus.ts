import type { QwTitle } from '../../support/qw-title.ts';
import type { AppHost } from '../app-host.ts';

/** Turns of the screen that are waited for a leaf whose elements are fetched when they are first needed. */
const patience = 180;

/** Keeps the keyboard on the page. */
export class FocusKeeper {
  private readonly app: AppHost;
  /** True while a title is on its way into the hand, to be written. */
  private isWriting = false;

  constructor(app: AppHost) {
    this.app = app;
  }

  /**
   * Where what was pressed has gone, the keyboard goes to the heading of the open leaf; `writes` takes it there in any
   * case, to write the title (not with a finger, whose keyboard would come up over the leaf).
   */
  async keep(writes: boolean): Promise<void> {
    const before = inHand();
    if (before === null || this.isWriting) return;
    this.isWriting = writes;
    await follow(this.app, writes, before).finally(() => {
      if (writes) this.isWriting = false;
    });
  }
}

async function follow(app: AppHost, writes: boolean, before: Element): Promise<void> {
  await app.updateComplete;
  for (let turn = 0; turn < patience; turn += 1) {
    // An element that is hidden gives the keyboard up only when the page is next drawn.
    await new Promise(requestAnimationFrame);
    if (turn < 2) continue;
    const now = inHand();
    if (now !== null && (!writes || now !== before)) return;
    const over = app.renderRoot.querySelector('qw-close-view')?.shadowRoot ?? null;
    const title = titleIn(over ?? app.renderRoot.querySelector('.leaf'));
    if (title === null) {
      if (turn < patience - 1 && !app.renderRoot.querySelector('qw-empty')) continue;
      return app.renderRoot.querySelector('main')?.focus({ preventScroll: true });
    }
    await title.updateComplete;
    if (writes && !matchMedia('(pointer: coarse)').matches) title.focus({ preventScroll: true });
    else title.focusHeading();
    return;
  }
}

/** What holds the keyboard, through all shadow roots; null where nothing does. */
function inHand(): Element | null {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at === document.body || at?.localName === 'qw-app' ? null : at;
}

/** The first title in an element or in the shadow roots of what is in it. */
function titleIn(root: ParentNode | null): QwTitle | null {
  for (const element of root?.querySelectorAll<HTMLElement>('*') ?? []) {
    const found = element.localName === 'qw-title' ? (element as QwTitle) : titleIn(element.shadowRoot);
    if (found !== null) return found;
  }
  return null;
}
