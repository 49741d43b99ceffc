import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Tells an element how wide it stands on the page, in CSS pixels, whenever that changes. */
export class RoomController implements ReactiveController {
  private readonly host: ReactiveControllerHost & Element;
  private readonly tell: (width: number) => void;
  private watcher: ResizeObserver | undefined;

  constructor(host: ReactiveControllerHost & Element, tell: (width: number) => void) {
    this.host = host;
    this.tell = tell;
    host.addController(this);
  }

  hostConnected(): void {
    this.watcher = new ResizeObserver(([entry]) => {
      const width = Math.round(entry?.contentRect.width ?? 0);
      // In the next frame: a new height inside the same one would be reported as a loop.
      if (width > 0) requestAnimationFrame(() => this.tell(width));
    });
    this.watcher.observe(this.host);
  }

  hostDisconnected(): void {
    this.watcher?.disconnect();
    this.watcher = undefined;
  }
}
