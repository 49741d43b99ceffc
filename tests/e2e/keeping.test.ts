import { readFile } from 'node:fs/promises';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { dotsFile, stripesFile } from '../support/drawn-papers.ts';
import { dropFiles, emptyNotebook, readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('a backup', () => {
  it('is one file, and brings back leaves, verdict and pictures in another browser', async () => {
    const giver = await emptyNotebook(url);
    await dropFiles(giver.page, [await dotsFile(), await stripesFile()]);
    await giver.page.locator('qw-verdict h3').waitFor();
    const verdict = await giver.page.locator('qw-verdict h3').textContent();
    await giver.page.getByText('Back up or start over').click();
    const coming = giver.page.waitForEvent('download');
    await giver.page.getByRole('button', { name: 'Save a backup' }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toMatch(/^[a-z0-9-]+\.quire$/);
    const bytes = await readFile(await download.path());
    await giver.page.getByText(/^Last backup:/).waitFor();
    await giver.close();

    const taker = await emptyNotebook(url);
    const { page } = taker;
    await page.getByText('Back up or start over').click();
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open a backup' }).click();
    await (await chooser).setFiles({
      name: download.suggestedFilename(),
      mimeType: 'application/zip',
      buffer: bytes,
    });
    await page.locator('qw-verdict h3').waitFor();
    expect(await page.locator('qw-verdict h3').textContent()).toBe(verdict);
    await page.locator('qw-mounted img').nth(1).waitFor();
    expect(taker.errors).toEqual([]);
    await taker.close();
  });
});

describe('a reason', () => {
  it('leads to its entry among the sources, and the way back leads to the study', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.locator('qw-leaves a', { hasText: 'candidates' }).first().click();
    const link = page.locator('qw-verdict .margin a').first();
    await link.waitFor();
    const short = await link.textContent();
    await link.click();
    const entry = page.locator('qw-sources .current');
    await entry.waitFor();
    expect(await entry.locator('b').first().textContent()).toBe(short);
    await page.goBack();
    await page.locator('qw-verdict h3').waitFor();
    await reader.close();
  });
});

describe('a paper from the drawer', () => {
  it('is held against the anchor, and putting it back can be undone', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.locator('qw-leaves a', { hasText: 'study, 1 candidate' }).first().click();
    const tabs = page.locator('qw-candidates .thumb');
    await tabs.first().waitFor();
    const before = await tabs.count();
    await page.getByRole('button', { name: 'Drop or choose a paper' }).click();
    await page.locator('qw-drawer .one', { hasText: 'cardstock' }).first().click();
    await tabs.nth(before).waitFor();
    await page.locator('qw-mounted.candidate summary', { hasText: 'more' }).click();
    await page.getByRole('button', { name: /^Put .* back$/ }).click();
    await tabs.nth(before).waitFor({ state: 'detached' });
    await page.keyboard.press('Control+z');
    await tabs.nth(before).waitFor();
    await reader.close();
  });
});
