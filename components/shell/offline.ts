/** Keeps the whole page in the browser, so that it opens without a network. Only the built page has a keeper. */
export async function keepOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  const { registerSW } = await import('virtual:pwa-register');
  registerSW({ immediate: true });
}
