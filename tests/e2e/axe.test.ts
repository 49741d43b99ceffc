import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
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
      await page.evaluate((to) => (location.hash = to), hash);
      await page.waitForTimeout(300);
      found[hash] = await troubles(page);
    }
    await page.evaluate((to) => (location.hash = to), ids[1]!);
    await page.locator(width < 900 ? '.bar button:last-child' : 'qw-drawer .pull').click();
    await page.locator('qw-drawer .panel').waitFor();
    await page.waitForTimeout(250);
    found.drawer = await troubles(page);
    await page.keyboard.press('Escape');
    if (width < 900) {
      await page.locator('.bar button').first().click();
      found.leaves = await troubles(page);
      await page.keyboard.press('Escape');
    }
    await page.getByRole('button', { name: 'Start your own notebook' }).click();
    await page.locator('qw-empty').waitFor();
    found.empty = await troubles(page);
    expect(Object.entries(found).filter(([, list]) => list.length)).toEqual([]);
    await reader.close();
  });
});

/** The page's own policy lets no script in from outside, so axe is put in by the debugger. */
async function troubles(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run(): Promise<{ violations: Violation[] }> } };
    interface Violation {
      id: string;
      nodes: { target: unknown[] }[];
    }
    const { violations } = await axe.run();
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target }) => `${id}: ${target.flat().join(' → ')}`),
    );
  });
}
