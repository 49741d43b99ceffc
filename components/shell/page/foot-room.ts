import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Leaves as much room at the foot of the page as the messages take that lie over it: its last line can be read. */
export class FootRoom implements ReactiveController {
  private readonly host: ReactiveControllerHost & HTMLElement;
  private seen: Element | null = null;
  private readonly watch = new ResizeObserver(([entry]) => {
    const height = entry?.contentRect.height ?? 0;
    this.host.style.setProperty('--foot', height === 0 ? '0px' : `${Math.ceil(height) + 32}px`);
  });

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.host = host;
    host.addController(this);
  }

  hostUpdated(): void {
    const messages = this.host.shadowRoot?.querySelector('qw-messages') ?? null;
    if (messages === this.seen) return;
    this.watch.disconnect();
    this.seen = messages;
    if (messages) this.watch.observe(messages);
  }

  hostDisconnected(): void {
    this.watch.disconnect();
    this.seen = null;
  }
}
