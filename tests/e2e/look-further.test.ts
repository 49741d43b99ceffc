import type { Locator, Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { troubles } from '../support/axe.ts';
import { type Reader, readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

async function atHearts(options: Parameters<typeof readerAt>[1] = {}): Promise<Reader> {
  const reader = await readerAt(`${url}#bough-and-hearts`, options);
  await reader.page.locator('qw-verdict h3').waitFor();
  return reader;
}

/** The whole of it is on the screen. */
async function expectInView(page: Page, what: Locator): Promise<void> {
  const box = (await what.boundingBox())!;
  expect(box.y).toBeGreaterThanOrEqual(0);
  expect(box.y + box.height).toBeLessThanOrEqual(page.viewportSize()!.height);
}

const verdictOf = (page: Page) => page.locator('qw-verdict h3').textContent();

describe('a pair that needs a bridge', () => {
  it('is mended on screen by a remedy that is tried, comes back in one step, and is kept only as a note', async () => {
    const reader = await atHearts();
    const { page } = reader;
    expect(await verdictOf(page)).toBe('Needs a bridge.');
    await page
      .locator('qw-remedies li', { hasText: 'then: holds together' })
      .getByRole('button', { name: /^Try it/ })
      .first()
      .click();
    const tried = page.locator('qw-before-after');
    await tried.locator('.after', { hasText: 'Holds together.' }).waitFor();
    expect(await tried.locator('.before').textContent()).toContain('Needs a bridge.');
    expect(await verdictOf(page)).toBe('Needs a bridge.');
    for (const canvas of await tried.locator('canvas').all()) await expectInView(page, canvas);
    await tried.getByRole('button', { name: 'Change something else too' }).click();
    await page.getByRole('button', { name: 'One step back' }).click();
    await tried.waitFor({ state: 'detached' });

    const knobs = page.locator('qw-what-if-knobs');
    await knobs.getByText('Cut it down').click();
    await knobs.getByText('crimson').first().click();
    await knobs.locator('input[type=range]').fill('0');
    await page.locator('qw-what-if li', { hasText: 'crimson (b) is cut away' }).waitFor();
    await page.getByRole('button', { name: 'Keep it', exact: true }).click();
    await page.locator('qw-note img[alt*="as they are"]').waitFor();
    expect(await page.locator('qw-note textarea').inputValue()).toContain(
      'As it is, the pair needs a bridge',
    );

    await page.evaluate(() => (location.hash = 'bough-and-hearts'));
    await page.locator('qw-verdict h3').waitFor();
    expect(await verdictOf(page)).toBe('Needs a bridge.');
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('finds another paper in the drawer, best first, which becomes a candidate', async () => {
    const reader = await atHearts();
    const { page } = reader;
    await page.getByRole('button', { name: 'What else have I?' }).click();
    const first = page.locator('qw-find ol > li').first();
    await first.waitFor();
    expect(await first.textContent()).toContain('holds together');
    const tabs = await page.locator('qw-candidates .thumb').count();
    await page
      .getByRole('button', { name: /^Hold against it/ })
      .first()
      .click();
    await page.locator('qw-candidates .thumb').nth(tabs).waitFor();
    await page.locator('qw-find').getByText('What repeats an ink').click();
    await page.locator('qw-find ol', { hasText: 'repeats the ink' }).waitFor();
    await page.locator('qw-find').getByText('What holds with').click();
    await page.locator('qw-find ol', { hasText: 'holds together' }).waitFor();
    await page.locator('qw-find select').first().selectOption('plain');
    await page.locator('qw-find ol > li small', { hasText: 'cardstock' }).first().waitFor();
    expect(await page.locator('qw-find ol > li small', { hasText: /^sheet$|^side/ }).count()).toBe(0);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('shades the parts of a sheet, and tells where a colour would tie most', async () => {
    const reader = await atHearts();
    const { page } = reader;
    await page.getByRole('button', { name: 'Which parts?' }).click();
    await page.locator('qw-parts canvas').waitFor();
    expect(await page.locator('qw-parts .says').textContent()).toMatch(/crimson/);
    await page.getByRole('button', { name: 'Colour it yourself' }).click();
    await page.locator('qw-colour-it .says').waitFor();
    expect(await page.locator('qw-parts').count()).toBe(0);
    expect(await page.locator('qw-colour-it .says').textContent()).toMatch(/\.$/);
    await page.getByRole('button', { name: 'Close: Colour it yourself' }).click();
    await page.locator('qw-colour-it').waitFor({ state: 'detached' });
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});

describe('a kit', () => {
  it('is made of papers from the drawer, judged as a whole, cut on paper, and still there after a reload', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.getByRole('button', { name: 'Add a leaf' }).click();
    await page.getByRole('button', { name: /^Kit/ }).click();
    await page.getByRole('button', { name: 'Choose from the drawer' }).click();
    for (const name of ['Blossom bough', 'Morning quilt', 'Kraft cardstock']) {
      await page.locator('qw-drawer .one', { hasText: name }).first().click();
    }
    await page.keyboard.press('Escape');
    await page.locator('qw-kit-matrix button').nth(2).waitFor();
    await page.locator('qw-kit-pieces summary').first().click();
    const [width, height, count] = await page.locator('qw-kit-size').first().locator('input').all();
    await width!.fill('5');
    await height!.fill('7');
    await count!.fill('4');
    await count!.blur();
    await page.locator('qw-cut-list figcaption', { hasText: 'with stopped cuts' }).waitFor();
    await page.locator('qw-kit-leaf .margin', { hasText: 'saved' }).first().waitFor();
    const verdict = await verdictOf(page);

    await page.reload();
    await page.locator('qw-cut-list .piece').nth(3).waitFor();
    expect(await verdictOf(page)).toBe(verdict);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});

describe('an exercise', () => {
  it('keeps its answer until she has pointed at two inks, and a verdict of hers is set beside the reading’s', async () => {
    const reader = await atHearts();
    const { page } = reader;
    await page.getByRole('button', { name: 'Add a leaf' }).click();
    await page.getByRole('button', { name: /^Exercise/ }).click();
    const inks = page.locator('qw-exercise-leaf qw-pick-ink');
    await inks.nth(1).waitFor();
    expect(await page.locator('qw-exercise-leaf qw-wheel').count()).toBe(0);
    await inks.nth(0).getByText('coral').click();
    await inks.nth(1).getByText('crimson').click();
    await page.getByRole('button', { name: 'These two' }).click();
    await page.locator('qw-exercise-leaf h3', { hasText: 'That is it.' }).waitFor();

    await page.evaluate(() => (location.hash = 'bough-and-hearts'));
    await page.locator('qw-opinion').getByRole('button', { name: 'Holds together' }).click();
    await page.getByText('Where you and the reading differ').click();
    await page.locator('qw-differences h3', { hasText: 'Pip hearts' }).waitFor();
    expect(await page.locator('qw-differences .two').textContent()).toMatch(
      /you: holds together.*the reading: needs a bridge/s,
    );
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});

describe.each([
  ['a desk', 1440, 900, 'light'],
  ['a phone', 390, 844, 'dark'],
] as const)('on %s', (_place, width, height, theme) => {
  it('axe finds nothing whichever way to look further is open', async () => {
    const reader = await atHearts({ width, height, theme });
    const { page } = reader;
    for (const [name, panel, shown] of [
      ['What else have I?', 'qw-find', 'ol > li'],
      ['Which parts?', 'qw-parts', 'canvas'],
      ['Colour it yourself', 'qw-colour-it', '.says'],
      ['What if?', 'qw-what-if', 'h3'],
    ] as const) {
      await page.locator('qw-further').getByRole('button', { name }).click();
      await page.locator(panel).locator(shown).first().waitFor();
      // What lies about the panel is there without it too, and is asked on every leaf elsewhere.
      expect(await troubles(page, page.locator(panel))).toEqual([]);
    }
    // A pair that is being tried out changes the study about it.
    expect(await troubles(page, page.locator('qw-study'))).toEqual([]);
    // Nothing pushes the page wider than the screen.
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await reader.close();
  });
});
