import type { Page } from 'playwright';

/** Waits until every element that is seen is defined and drawn and nothing moves, over a few frames; at most five seconds. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const isBusy = (root: Document | ShadowRoot): boolean =>
      root.getAnimations().some(({ playState }) => playState === 'running') ||
      [...root.querySelectorAll('*')].some(
        (element) =>
          // What lies folded away is fetched when it is opened.
          (element.matches(':not(:defined)') && element.checkVisibility()) ||
          (element as { isUpdatePending?: boolean }).isUpdatePending === true ||
          (element.shadowRoot !== null && isBusy(element.shadowRoot)),
      );
    const end = performance.now() + 5_000;
    let calm = 0;
    while (calm < 3 && performance.now() < end) {
      await new Promise(requestAnimationFrame);
      await new Promise((next) => setTimeout(next));
      calm = isBusy(document) ? 0 : calm + 1;
    }
  });
}

/** Turns to the leaf at an address and waits until it is drawn. */
export async function turnTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await settled(page);
}
