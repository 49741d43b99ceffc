import { afterAll, describe, expect, inject, it } from 'vitest';
import { readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('a study that asks first', () => {
  it('shows nothing of its verdict until the reader has said hers, then says whether they agree', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    const leaves = page.locator('qw-leaves a', { hasText: 'candidate' });
    await leaves.first().waitFor();
    for (let place = 0; place < (await leaves.count()); place += 1) {
      await leaves.nth(place).click();
      await page.locator('qw-opinion').first().waitFor();
      if (await page.locator('qw-opinion[first]').count()) break;
    }
    await page.locator('qw-opinion[first]').waitFor();
    expect(await page.locator('qw-verdict, qw-reasons, qw-remedies, qw-wheel').count()).toBe(0);
    expect(await page.locator('qw-candidates .thumb').getAttribute('aria-label')).toContain('you say first');

    // A board would tell what the reading found.
    expect(await page.getByRole('button', { name: 'Make a board' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Add a leaf' }).click();
    expect(await page.getByRole('button', { name: /^Board/ }).isDisabled()).toBe(true);
    await page.keyboard.press('Escape');

    await page.locator('qw-opinion').getByRole('button', { name: 'Holds together' }).click();
    expect(await page.getByRole('button', { name: 'Make a board' }).isEnabled()).toBe(true);
    const verdict = (await page.locator('qw-verdict h3').textContent())?.toLowerCase().replace('.', '');
    expect(await page.locator('qw-reasons li').count()).toBeGreaterThan(0);
    const found = await page.locator('qw-opinion .found').textContent();
    expect(found).toMatch(
      verdict === 'holds together' ? /agree/ : new RegExp(`the reading says it ${verdict}`),
    );

    await page.reload();
    await page.locator('qw-verdict h3').waitFor();
    expect(await page.locator('qw-opinion .held').textContent()).toContain('Holds together');
    await reader.close();
  });
});
