import { afterAll, describe, expect, inject, it } from 'vitest';
import { readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('the page without a network', () => {
  it('opens again after its first visit, with its notebook, and still compares', async () => {
    const reader = await readerAt(url, { keepsOffline: true });
    const { page, context } = reader;
    await page.locator('qw-leaves .entry').nth(3).waitFor();
    await page.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready;
      if (active?.state === 'activated') return;
      await new Promise<void>((done) => {
        active?.addEventListener('statechange', () => active.state === 'activated' && done());
      });
    });
    await context.setOffline(true);
    await page.reload();
    await page.locator('qw-leaves a', { hasText: 'candidate' }).first().click();
    await page.locator('qw-verdict h3').waitFor();
    expect(await page.evaluate(() => navigator.onLine)).toBe(false);
    expect(await page.evaluate(() => document.fonts.check('16px "Literata Variable"'))).toBe(true);
    await reader.close();
  });
});
