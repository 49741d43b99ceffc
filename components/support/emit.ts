/** Sends an event that leaves every shadow root on its way up, so that whoever holds the value can hear it. */
export function emit<Detail>(from: EventTarget, name: string, detail: Detail): void {
  from.dispatchEvent(new CustomEvent<Detail>(name, { detail, bubbles: true, composed: true }));
}
