import { afterAll, describe, expect, inject, it } from 'vitest';
import { dotsFile, stripesFile } from '../support/drawn-papers.ts';
import { beginOwn, dropFiles, emptyNotebook, readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('a reader’s own papers, from the demo on', () => {
  it('dropped anywhere, are in a study in a notebook of her own, which she names; the demo stays as it was', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.getByText('Do these two papers belong together, and why?').waitFor();
    expect(await page.getByRole('button', { name: 'Try two of your own' }).isVisible()).toBe(true);
    await dropFiles(page, [await dotsFile(), await stripesFile()]);
    await page.locator('qw-leaves a[aria-current=page]', { hasText: 'Old dots with New stripes' }).waitFor();
    await page.locator('qw-verdict h3').waitFor();
    expect(await page.locator('qw-leaves .entry').count()).toBe(1);
    expect(await page.locator('qw-drawer .mini').count()).toBe(2);
    await page.getByRole('textbox', { name: 'Name of your new notebook' }).fill('Sea album');
    await page.getByRole('button', { name: 'Done' }).click();
    await page.getByRole('textbox', { name: 'Title of this notebook' }).getByText('Sea album').waitFor();
    expect(await page.locator('.demo').count()).toBe(0);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('that cannot be read leave the demo open, with a sentence', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    const leaves = page.locator('qw-leaves .entry');
    await leaves.nth(3).waitFor();
    const before = await leaves.count();
    await dropFiles(page, [{ name: 'letter.png', type: 'image/png', bytes: new Uint8Array([1, 2]) }]);
    await page.locator('qw-messages .trouble', { hasText: 'letter.png' }).waitFor();
    await leaves.nth(before - 1).waitFor();
    expect(await leaves.count()).toBe(before);
    await page.getByRole('button', { name: 'Try two of your own' }).waitFor();
    await reader.close();
  });

  it('stay in this browser when another notebook is begun, and are opened again from where it is kept', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await beginOwn(page);
    await page.locator('qw-empty').waitFor();
    await dropFiles(page, [await dotsFile(), await stripesFile()]);
    await page.locator('qw-verdict h3').waitFor();
    await page.locator('qw-study .margin', { hasText: 'saved' }).waitFor();
    await page.locator('qw-upkeep summary').first().click();
    await page.getByRole('button', { name: 'Start your own notebook' }).click();
    await page.locator('qw-empty').waitFor();
    await page
      .getByRole('button', { name: /^Open My notebook/ })
      .first()
      .click();
    await page.locator('qw-verdict h3').waitFor();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('dropped one alone on a note, are told of, and a study is started with it; the page’s last line is not covered', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    await dropFiles(page, [await dotsFile(), await stripesFile()]);
    await page.locator('qw-verdict h3').waitFor();
    await page.getByRole('button', { name: 'Add a leaf' }).click();
    await page.getByRole('button', { name: /^Note/ }).click();
    await page.locator('qw-note').waitFor();
    const other = await dotsFile();
    await dropFiles(page, [{ name: 'letter.png', type: 'image/png', bytes: new Uint8Array([1, 2]) }]);
    await page.locator('qw-messages .trouble', { hasText: 'letter.png' }).waitFor();
    await dropFiles(page, [other]);
    const told = page.locator('qw-messages .told', { hasText: 'already in your drawer, as Old dots' });
    await told.waitFor();
    expect(await page.locator('qw-messages .trouble').count()).toBe(0);
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    const [end, top] = await Promise.all([page.locator('main .leaf').boundingBox(), told.boundingBox()]);
    expect(end!.y + end!.height).toBeLessThanOrEqual(top!.y);
    await told.getByRole('button', { name: 'Start a study with it' }).click();
    await page.locator('qw-study').waitFor();
    await page.getByRole('textbox', { name: 'Name of this paper' }).getByText('Old dots').waitFor();
    expect(await page.locator('qw-messages .told').count()).toBe(0);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('can be joined by a plain, typed in the drawer, that is still there after a reload', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.locator('qw-drawer .pull').click();
    await page.getByText('Add a plain: cardstock, ink, thread').click();
    await page.getByLabel('What it is').selectOption('ink pad');
    await page.getByLabel('What to call it').fill('Cider press');
    await page.getByLabel('Colour', { exact: true }).fill('5R 4/10');
    await page.locator('qw-typed-colour', { hasText: 'Munsell 5R 4/10' }).waitFor();
    await page.getByRole('button', { name: 'Put it in the drawer' }).click();
    await page.getByRole('button', { name: /^Cider press/ }).waitFor();
    await page.locator('.margin', { hasText: 'saved' }).first().waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Show Cider press in the drawer' }).waitFor();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});
