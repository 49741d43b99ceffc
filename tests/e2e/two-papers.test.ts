import { afterAll, describe, expect, inject, it } from 'vitest';
import { badFiles, dotsFile, stripesFile } from '../support/drawn-papers.ts';
import { dropFiles, emptyNotebook, shutBrowser, startingFrom } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

const atPair = startingFrom(url, async (options) => {
  const reader = await emptyNotebook(url, options);
  await dropFiles(reader.page, [await dotsFile(), await stripesFile()]);
  await reader.page.locator('qw-verdict h3').waitFor();
  return reader;
});

describe('two papers dropped on an empty notebook', () => {
  it('become a study with a verdict, reasons that name their inks, and are still there after a reload', async () => {
    const reader = await atPair();
    const { page } = reader;
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

  it('make room for a third that is shown at once, and the same picture dropped again makes no fourth', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    const stripes = await stripesFile('IMG_2041.png');
    await dropFiles(page, [await dotsFile(), stripes]);
    await page.locator('qw-candidates .thumb').waitFor();
    await dropFiles(page, [await stripesFile('new-gingham.png', 360)]);
    await page.locator('qw-candidates .thumb.on[aria-label*="New gingham"]').waitFor();
    await dropFiles(page, [{ ...stripes, name: 'again.png' }]);
    await page.locator('qw-candidates .thumb.on[aria-label*="First paper"]').waitFor();
    await page.locator('qw-messages', { hasText: '“again.png” is already in your drawer' }).waitFor();
    expect(await page.locator('qw-candidates .thumb').count()).toBe(2);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('come back, with the leaf that they lay on, when what was put out or taken out is undone', async () => {
    const reader = await atPair();
    const { page } = reader;
    await page.locator('qw-verdict h3').waitFor();
    await page.getByRole('button', { name: 'Show New stripes in the drawer' }).click();
    await page.getByRole('button', { name: 'Take it out of the drawer: New stripes' }).click();
    await page.locator('qw-verdict').waitFor({ state: 'detached' });
    const told = page.locator('qw-messages', { hasText: 'off the leaf where it lay' });
    await told.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.locator('qw-verdict h3').waitFor();
    await page.keyboard.press('Escape');

    const leaves = await page.locator('qw-leaves .entry').count();
    await page.getByRole('button', { name: /^Take out/ }).click();
    await page
      .locator('qw-leaves .entry')
      .nth(leaves - 1)
      .waitFor({ state: 'detached' });
    await page.locator('qw-messages').getByRole('button', { name: 'Undo', exact: true }).click();
    await page
      .locator('qw-leaves .entry')
      .nth(leaves - 1)
      .waitFor();
    expect(await page.locator('qw-messages .told').count()).toBe(0);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('light up on both papers and in the charts when a reason is pointed at', async () => {
    const reader = await atPair();
    const { page } = reader;
    await page.locator('qw-verdict .said, qw-reasons li', { hasText: /navy/i }).first().hover();
    await page.locator('qw-mounted qw-paper canvas.on').nth(1).waitFor();
    expect(await page.locator('qw-wheel .mark.quiet').count()).toBeGreaterThan(0);
    await page.locator('qw-title').first().hover();
    await page.locator('qw-mounted qw-paper canvas.on').first().waitFor({ state: 'detached' });
    await reader.close();
  });
});

describe('files that cannot be read', () => {
  it('each get a sentence that names them, and nothing that was there is lost', async () => {
    const reader = await atPair();
    const { page } = reader;
    await page.locator('qw-verdict h3').waitFor();
    const verdict = await page.locator('qw-verdict h3').textContent();
    for (const bad of await badFiles()) {
      await dropFiles(page, [bad]);
      const told = page.locator('qw-messages [role=alert]', { hasText: bad.name });
      await told.waitFor();
      expect((await told.textContent())?.trim()).toMatch(/^[^{}[\]]{15,240}[.!]$/);
    }
    expect(await page.locator('qw-verdict h3').textContent()).toBe(verdict);
    expect(await page.locator('qw-candidates .thumb').count()).toBe(1);
    await page
      .getByRole('button', { name: /^Put away/ })
      .first()
      .click();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});
