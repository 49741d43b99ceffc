import { afterAll, describe, expect, inject, it } from 'vitest';
import { troubles } from '../support/axe.ts';
import { beginOwn, readerAt, shutBrowser } from '../support/reader.ts';
import { settled, turnTo } from '../support/settled.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

/** Every leaf of the demo, the open drawer, the sources, the empty notebook: what axe finds on each. */
describe('axe', () => {
  it.each([
    ['a desk, light', 'light', 1440, 900],
    ['a desk, dark', 'dark', 1440, 900],
    ['a phone, dark', 'dark', 390, 844],
  ] as const)('finds nothing on any leaf, on %s', async (_place, theme, width, height) => {
    const reader = await readerAt(url, { theme, width, height });
    const { page } = reader;
    await page.locator('qw-leaves .entry').nth(3).waitFor({ state: 'attached' });
    const found: Record<string, string[]> = {};
    const ids = await page
      .locator('qw-leaves a')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
    for (const hash of [...ids, '#sources']) {
      await turnTo(page, hash);
      found[hash] = await troubles(page);
    }
    await turnTo(page, ids[1]!);
    await page.locator(width < 900 ? '.bar button:last-child' : 'qw-drawer .pull').click();
    await page.locator('qw-drawer .panel').waitFor();
    await settled(page);
    found.drawer = await troubles(page);
    await page.keyboard.press('Escape');
    if (width < 900) {
      await page.locator('.bar button').first().click();
      await settled(page);
      found.leaves = await troubles(page);
      await page.keyboard.press('Escape');
    }
    await beginOwn(page);
    await page.locator('qw-empty').waitFor();
    found.empty = await troubles(page);
    expect(Object.entries(found).filter(([, list]) => list.length)).toEqual([]);
    await reader.close();
  });
});
