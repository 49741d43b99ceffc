import type { Spot } from '../../../src/sheet/model.ts';
import { spotAt, within } from './spots.ts';

/**
 * Follows a pointer that has gone down on a handle until it lifts. What is dragged keeps its distance from the pointer,
 * so it does not jump. `end` says whether the hand let go (true) or was interrupted (false).
 */
export function follow(
  event: PointerEvent,
  box: DOMRect,
  start: Spot,
  move: (spot: Spot) => void,
  end: (done: boolean) => void,
): void {
  const handle = event.currentTarget as HTMLElement;
  const grabbed = spotAt(event, box);
  const offset = { x: start.x - grabbed.x, y: start.y - grabbed.y };
  const moved = (now: PointerEvent) => {
    if (now.pointerId !== event.pointerId) return;
    const { x, y } = spotAt(now, box);
    move({ x: within(x + offset.x), y: within(y + offset.y) });
  };
  const stop = (now: PointerEvent) => {
    if (now.pointerId !== event.pointerId) return;
    handle.removeEventListener('pointermove', moved);
    handle.removeEventListener('pointerup', stop);
    handle.removeEventListener('pointercancel', stop);
    end(now.type === 'pointerup');
  };
  handle.addEventListener('pointermove', moved);
  handle.addEventListener('pointerup', stop);
  handle.addEventListener('pointercancel', stop);
  hold(handle, event.pointerId);
}

/** A pointer that is already gone can't be held, and needn't be. */
function hold(handle: HTMLElement, pointerId: number): void {
  try {
    handle.setPointerCapture(pointerId);
  } catch {
    // Nothing to hold.
  }
}
