import type { ReactiveController } from 'lit';
import type { AppHost } from '../app-host.ts';

/** Keys that hold everywhere: undo and redo (but not in a field, which has its own), Escape shuts what is open. */
export class Keys implements ReactiveController {
  private readonly app: AppHost;

  constructor(app: AppHost) {
    this.app = app;
    app.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('keydown', this.onKey);
  }

  hostDisconnected(): void {
    window.removeEventListener('keydown', this.onKey);
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && this.app.opened) this.app.open(null);
    if (!(event.ctrlKey || event.metaKey) || event.altKey || writes(event)) return;
    const key = event.key.toLowerCase();
    if (key !== 'z' && key !== 'y') return;
    event.preventDefault();
    if (key === 'y' || event.shiftKey) this.app.session?.redo();
    else if (!this.app.supposing.back()) this.app.session?.undo();
  };
}

/** True where the key goes to a place to write; a title that nothing was written in yet has nothing to undo. The path reaches into shadow roots. */
function writes(event: KeyboardEvent): boolean {
  const target = event.composedPath()[0];
  return (
    target instanceof HTMLElement &&
    ((target.isContentEditable && !target.classList.contains('fresh')) ||
      target instanceof HTMLTextAreaElement ||
      (target instanceof HTMLInputElement && !['radio', 'checkbox'].includes(target.type)))
  );
}
