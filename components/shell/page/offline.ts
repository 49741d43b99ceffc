/** Takes the newer page and loads it. */
export type TakeNewerPage = () => void;

/**
 * Keeps the whole page in the browser, so that it opens without a network. Only the built page has a keeper.
 * `onNewerPage` is called when a newer page lies ready; it is taken when that is asked for, or once all tabs are shut.
 */
export async function keepOffline(onNewerPage: (take: TakeNewerPage) => void): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const { registerSW } = await import('virtual:pwa-register');
  const take = registerSW({ immediate: true, onNeedRefresh: () => onNewerPage(() => void takeNow(take)) });
}

async function takeNow(take: (reload: boolean) => Promise<void>): Promise<void> {
  const { waiting } = await navigator.serviceWorker.ready;
  // Where no page had been opened from what was kept, the newer has taken its place already.
  if (!waiting) return location.reload();
  waiting.addEventListener('statechange', () => waiting.state === 'activated' && location.reload());
  await take(true);
}
