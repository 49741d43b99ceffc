import { afterAll, describe, expect, inject, it } from 'vitest';
import { badFiles, dotsFile, stripesFile } from '../support/drawn-papers.ts';
import { dropFiles, emptyNotebook, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('two papers dropped on an empty notebook', () => {
  it('become a study with a verdict, reasons that name their inks, and are still there after a reload', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    await dropFiles(page, [await dotsFile(), await stripesFile()]);
    await page.locator('qw-verdict h3').waitFor();
    const verdict = await page.locator('qw-verdict h3').textContent();
    const reasons = await page.locator('qw-reasons li p').allTextContents();
    expect(reasons.join(' ')).toMatch(/navy/i);
    expect(await page.locator('qw-reasons .chip').count()).toBeGreaterThan(1);
    await page.locator('qw-study .margin', { hasText: 'saved' }).waitFor();

    await page.reload();
    await page.locator('qw-verdict h3').waitFor();
    expect(await page.locator('qw-verdict h3').textContent()).toBe(verdict);
    expect(await page.locator('qw-reasons li p').allTextContents()).toEqual(reasons);
    await page.locator('qw-mounted img').nth(1).waitFor();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('light up on both papers and in the charts when a reason is pointed at', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    await dropFiles(page, [await dotsFile(), await stripesFile()]);
    await page.locator('qw-reasons li', { hasText: /navy/i }).first().hover();
    await page.locator('qw-paper canvas.on').nth(1).waitFor();
    expect(await page.locator('qw-wheel .mark.quiet').count()).toBeGreaterThan(0);
    await page.locator('qw-title').first().hover();
    await page.locator('qw-paper canvas.on').first().waitFor({ state: 'detached' });
    await reader.close();
  });
});

describe('files that cannot be read', () => {
  it('each get a sentence that names them, and nothing that was there is lost', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    await dropFiles(page, [await dotsFile(), await stripesFile()]);
    await page.locator('qw-verdict h3').waitFor();
    const verdict = await page.locator('qw-verdict h3').textContent();
    for (const bad of await badFiles()) {
      await dropFiles(page, [bad]);
      const told = page.locator('qw-messages [role=alert]', { hasText: bad.name });
      await told.waitFor();
      expect((await told.textContent())?.trim()).toMatch(/^[^{}[\]]{15,240}[.!]$/);
    }
    expect(await page.locator('qw-verdict h3').textContent()).toBe(verdict);
    expect(await page.locator('qw-candidates .tab').count()).toBe(1);
    await page
      .getByRole('button', { name: /^Put away/ })
      .first()
      .click();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});
