import { afterAll, describe, expect, inject, it } from 'vitest';
import { beginOwn, readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('the page on its first start', () => {
  it('opens the demo: a note, studies with a verdict and reasons, papers in the drawer', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.locator('qw-leaves .entry').nth(3).waitFor();
    expect(await page.locator('qw-drawer .mini').count()).toBeGreaterThanOrEqual(12);
    await page.locator('qw-leaves a', { hasText: 'candidate' }).first().click();
    await page.locator('qw-verdict h3').waitFor();
    expect(await page.locator('qw-verdict h3').textContent()).toMatch(
      /^(Holds together|Needs a bridge|Pulls apart)\.$/,
    );
    expect(await page.locator('qw-reasons li').count()).toBeGreaterThanOrEqual(3);
    expect(await page.title()).toMatch(/ – Quirewise$/);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('sends no request beyond the machine', async () => {
    const reader = await readerAt(url, { keepsOffline: true });
    await reader.page.locator('qw-leaves a', { hasText: 'candidate' }).first().click();
    await reader.page.locator('qw-verdict h3').waitFor();
    await reader.page.waitForTimeout(1000);
    const outside = reader.requests.filter(
      (address) => !address.startsWith(url) && !/^(blob|data):/.test(address),
    );
    expect(reader.requests.length).toBeGreaterThan(3);
    expect(outside).toEqual([]);
    await reader.close();
  });

  it('is cleared in one step that can be undone, and the demo can be opened again', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    const leaves = page.locator('qw-leaves .entry');
    await leaves.nth(3).waitFor();
    const before = await leaves.count();
    await beginOwn(page);
    await page.getByText('Drop two photographs of paper here, or choose them.').waitFor();
    expect(await leaves.count()).toBe(0);
    await page.keyboard.press('Control+z');
    await leaves.nth(before - 1).waitFor();
    await page.keyboard.press('Control+Shift+z');
    await page.getByRole('button', { name: 'Look at the demo' }).click();
    await leaves.nth(before - 1).waitFor();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});
