/** Calls `leave` whenever the page is hidden or left. @returns what stops that */
export function whenPageIsLeft(leave: () => void): () => void {
  if (typeof window === 'undefined') return () => {};
  const hidden = () => document.visibilityState === 'hidden' && leave();
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', hidden);
  return () => {
    window.removeEventListener('pagehide', leave);
    document.removeEventListener('visibilitychange', hidden);
  };
}

/**
 * Has the browser ask before the page is left, while that is set and no longer: a page that listens all the time is
 * not kept for the way back by some browsers.
 */
export function askBeforeLeaving(): { set(asks: boolean): void } {
  let isAsking = false;
  const ask = (event: Event) => event.preventDefault();
  return {
    set(asks) {
      if (asks === isAsking || typeof window === 'undefined') return;
      isAsking = asks;
      if (asks) window.addEventListener('beforeunload', ask);
      else window.removeEventListener('beforeunload', ask);
    },
  };
}
