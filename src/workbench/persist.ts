let isAsked = false;

/**
 * Asks the browser, once and after something that the user did, not to drop what is stored when room is short. Some
 * browsers ask the user in turn, so nothing waits for the answer.
 */
export function askToPersist(): void {
  if (isAsked || typeof navigator === 'undefined') return;
  isAsked = true;
  navigator.storage?.persist?.().catch(() => {});
}
