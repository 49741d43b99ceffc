import { appendFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { beginOwn, readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('the page without a network', () => {
  it('opens again after its first visit, with its notebook, and still compares', async () => {
    const reader = await readerAt(url, { keepsOffline: true });
    const { page, context } = reader;
    await page.locator('qw-leaves .entry').nth(3).waitFor();
    await isKept(page);
    await context.setOffline(true);
    await page.reload();
    await page.locator('qw-leaves a', { hasText: 'candidate' }).first().click();
    await page.locator('qw-verdict h3').waitFor();
    expect(await page.evaluate(() => navigator.onLine)).toBe(false);
    expect(await page.evaluate(() => document.fonts.check('16px "Literata Variable"'))).toBe(true);
    await reader.close();
  });
});

describe('a newer page', () => {
  it('is told of when it is ready, and taken when the reader asks for it, with all that she wrote', async () => {
    const reader = await readerAt(url, { keepsOffline: true });
    const { page } = reader;
    await isKept(page);
    await beginOwn(page);
    await page.locator('qw-empty').waitFor();
    // From here on the page comes from what is kept, as on every later visit.
    await page.reload();
    await page.locator('qw-empty').waitFor();
    // What the browser compares is the file that keeps the page, byte for byte.
    appendFileSync(join(inject('pageFolder'), 'sw.js'), '\n// newer');
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    const told = page.locator('qw-messages .told', { hasText: 'A newer Quirewise is ready' });
    await told.waitFor();
    const loaded = page.waitForEvent('load');
    await told.getByRole('button', { name: 'Reload', exact: true }).click();
    await loaded;
    await page.locator('qw-empty').waitFor();
    expect(await told.count()).toBe(0);
    expect(await page.evaluate(async () => (await navigator.serviceWorker.ready).waiting)).toBeNull();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});

/** Waits until the page is kept in this browser. */
function isKept(page: Page): Promise<void> {
  return page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active?.state === 'activated') return;
    await new Promise<void>((done) => {
      active?.addEventListener('statechange', () => active.state === 'activated' && done());
    });
  });
}
