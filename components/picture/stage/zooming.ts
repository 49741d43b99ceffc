import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { within } from './spots.ts';

/** How far a picture is enlarged at most, and by how much with each press. Ours. */
export const mostZoom = 8;
const step = 1.5;

type Host = ReactiveControllerHost & HTMLElement;

/**
 * Enlarges what lies in a frame that scrolls: by the wheel with Ctrl (in a dialog, where no page scrolls, by the wheel
 * alone), by two fingers, by + − and 0; what was under the pointer stays there. Enlarged, it is drawn about by a mouse.
 */
export class Zooming implements ReactiveController {
  /** 1 is the whole of it. */
  zoom = 1;
  /** True while the hand has just drawn it about: the click that follows means nothing else. */
  wasMoved = false;
  private readonly host: Host;
  private readonly parts: () => { readonly frame: HTMLElement; readonly picture: HTMLElement };
  private apart = 0;

  constructor(host: Host, parts: Zooming['parts']) {
    this.host = host;
    this.parts = parts;
    host.addController(this);
  }

  hostConnected(): void {
    this.host.addEventListener('wheel', this.onWheel, { passive: false });
    this.host.addEventListener('touchstart', this.onTouch, { passive: true });
    this.host.addEventListener('touchmove', this.onPinch, { passive: false });
    this.host.addEventListener('keydown', this.onKey);
  }

  hostDisconnected(): void {
    this.host.removeEventListener('wheel', this.onWheel);
    this.host.removeEventListener('touchstart', this.onTouch);
    this.host.removeEventListener('touchmove', this.onPinch);
    this.host.removeEventListener('keydown', this.onKey);
  }

  readonly in = (): void => this.by(step);
  readonly out = (): void => this.by(1 / step);

  /** Draws the picture about, where it is enlarged. */
  readonly move = (event: PointerEvent): void => {
    this.wasMoved = false;
    if (this.zoom === 1 || event.pointerType === 'touch' || event.button > 1) return;
    const { frame } = this.parts();
    const from = { x: event.clientX + frame.scrollLeft, y: event.clientY + frame.scrollTop };
    const start = { x: event.clientX, y: event.clientY };
    const moved = (now: PointerEvent) => {
      if (Math.hypot(now.clientX - start.x, now.clientY - start.y) > 4) this.wasMoved = true;
      frame.scrollTo(from.x - now.clientX, from.y - now.clientY);
    };
    const stop = () => {
      window.removeEventListener('pointermove', moved);
      window.removeEventListener('pointerup', stop);
      window.removeEventListener('pointercancel', stop);
    };
    window.addEventListener('pointermove', moved);
    window.addEventListener('pointerup', stop);
    window.addEventListener('pointercancel', stop);
  };

  private by(factor: number, at?: { clientX: number; clientY: number }): void {
    const { frame, picture } = this.parts();
    const to = within(this.zoom * factor, 1, mostZoom);
    if (to === this.zoom) return;
    const view = frame.getBoundingClientRect();
    const { clientX, clientY } = at ?? {
      clientX: view.left + view.width / 2,
      clientY: view.top + view.height / 2,
    };
    const before = picture.getBoundingClientRect();
    const [x, y] = [(clientX - before.left) / before.width, (clientY - before.top) / before.height];
    // Its frame stays as large as it was around the whole picture.
    if (this.zoom === 1) frame.style.height = `${view.height}px`;
    if (to === 1) frame.style.height = '';
    this.zoom = to;
    this.host.requestUpdate();
    void this.host.updateComplete.then(() => {
      const now = picture.getBoundingClientRect();
      frame.scrollBy(now.left + x * now.width - clientX, now.top + y * now.height - clientY);
    });
  }

  private readonly onWheel = (event: WheelEvent): void => {
    if (!this.isOver(event) || !(event.ctrlKey || inDialog(this.host))) return;
    // There is nothing more to see: what lies around may scroll.
    if (this.zoom === 1 && event.deltaY > 0 && !event.ctrlKey) return;
    event.preventDefault();
    this.by(Math.exp(-within(event.deltaY, -100, 100) / 300), event);
  };

  private readonly onTouch = (event: TouchEvent): void => {
    this.apart = event.touches.length === 2 ? distance(event.touches) : 0;
  };

  private readonly onPinch = (event: TouchEvent): void => {
    const { touches } = event;
    if (touches.length !== 2 || this.apart === 0 || !this.isOver(event)) return;
    event.preventDefault();
    const now = distance(touches);
    const [a, b] = [touches[0]!, touches[1]!];
    this.by(now / this.apart, { clientX: (a.clientX + b.clientX) / 2, clientY: (a.clientY + b.clientY) / 2 });
    this.apart = now;
  };

  private readonly onKey = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey || !this.isOver(event)) return;
    const factor = { '+': step, '=': step, '-': 1 / step, '−': 1 / step, '0': 1 / mostZoom }[event.key];
    if (factor === undefined) return;
    event.preventDefault();
    this.by(factor);
  };

  private isOver(event: Event): boolean {
    return event.composedPath().includes(this.parts().frame);
  }
}

function distance(touches: TouchList): number {
  const [a, b] = [touches[0]!, touches[1]!];
  return Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);
}

/** True for what stands in a dialog, through all shadow roots. */
function inDialog(element: Element): boolean {
  for (let at: Element | null = element; at; ) {
    if (at.closest('dialog')) return true;
    const root = at.getRootNode();
    at = root instanceof ShadowRoot ? root.host : null;
  }
  return false;
}
