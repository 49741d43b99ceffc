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
