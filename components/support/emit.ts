import type { QwEventName, QwEvents } from './events.ts';

/** Sends an event that leaves every shadow root on its way up, so that whoever holds the value can hear it. */
export function emit<Name extends QwEventName>(from: EventTarget, name: Name, detail: QwEvents[Name]): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
