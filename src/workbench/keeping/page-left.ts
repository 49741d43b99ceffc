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
