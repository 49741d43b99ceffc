import type { Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { dotsFile, stripesFile } from '../support/drawn-papers.ts';
import { emptyNotebook, readerAt, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('with the keyboard alone', () => {
  it('a reader turns to a study, walks its wheel and reasons, changes the distance and opens the drawer', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.locator('qw-leaves .entry').nth(3).waitFor();
    await tabTo(page, 'a', /candidate/);
    await page.keyboard.press('Enter');
    await page.locator('qw-verdict h3').waitFor();

    await tabTo(page, 'summary', /How it is judged/);
    await page.keyboard.press('Enter');
    await tabTo(page, 'input', /apart/);
    expect(await page.locator('qw-mats .meet').count()).toBe(0);
    await page.keyboard.press('ArrowLeft');
    await page.locator('qw-mats .meet').waitFor();
    await page.keyboard.press('Escape');
    expect((await inHand(page)).text).toContain('How it is judged');

    await tabTo(page, '.mark', /./);
    const first = await inHand(page);
    await page.keyboard.press('ArrowRight');
    expect((await inHand(page)).label).not.toBe(first.label);
    expect(await page.locator('qw-wheel .mark.quiet').count()).toBeGreaterThan(0);

    await tabTo(page, '.dot', /(For|Against), weighs/);
    await page.keyboard.press('Enter');
    expect(await page.locator('.dot[aria-pressed=true]').count()).toBe(1);
    await page.locator('qw-mats qw-paper canvas.on').first().waitFor();

    await tabTo(page, '.pull', /Drawer/);
    await page.keyboard.press('Enter');
    await page.locator('qw-drawer .panel').waitFor();
    expect((await inHand(page)).text).toContain('Shut');
    await page.keyboard.press('Escape');
    expect((await inHand(page)).text).toContain('Drawer');
    await reader.close();
  });

  it('a reader starts a notebook, chooses two pictures, reads the verdict, says hers and makes a board', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    const chooser = page.waitForEvent('filechooser');
    await tabTo(page, 'button', /Choose pictures/);
    await page.keyboard.press('Enter');
    const papers = [await dotsFile(), await stripesFile()];
    await (await chooser).setFiles(
      papers.map(({ name, type, bytes }) => ({ name, mimeType: type, buffer: Buffer.from(bytes) })),
    );
    await page.locator('qw-verdict h3').waitFor();
    await comesTo(page, 'h2', /^Old dots with New stripes$/);

    await tabTo(page, 'button', /^\s*Pulls apart/);
    await page.keyboard.press('Enter');
    await page.locator('qw-opinion .found').waitFor();

    await tabTo(page, 'button', /Make a board/);
    await page.keyboard.press('Enter');
    await page.locator('qw-board img').waitFor();
    await tabTo(page, 'textarea', /./);
    await page.keyboard.type('For Sunday.');
    await tabTo(page, 'a', /study, 1 candidate/);
    await page.keyboard.press('Enter');
    await page.locator('qw-verdict h3').waitFor();
    await page.goBack();
    await page.locator('qw-board img').waitFor();
    expect(await page.locator('qw-board-leaf textarea').inputValue()).toBe('For Sunday.');
    await reader.close();
  });

  it('a reader is never left with nothing in hand: what she pressed is gone, and the keyboard goes to what came of it', async () => {
    const reader = await readerAt(url);
    const { page } = reader;
    await page.locator('qw-leaves .entry').nth(3).waitFor();
    const press = async (name: string | RegExp) => {
      await page.getByRole('button', { name }).first().focus();
      await page.keyboard.press('Enter');
    };
    const add = async (kind: RegExp) => {
      await press('Add a leaf');
      await press(kind);
    };
    await page.evaluate(() => (location.hash = 'bough-and-hearts'));
    for (const [kind, leaf] of [
      [/^Note/, 'qw-note'],
      [/^Kit/, 'qw-kit-leaf'],
      [/^Study/, 'qw-study'],
    ] as const) {
      await add(kind);
      await comesTo(page, '[role=textbox]', /^$/);
      await page.keyboard.type('Words of mine');
      await page.keyboard.press('Enter');
      await comesTo(page, 'h2', /Words of mine/);
      await page.locator('qw-leaves .current', { hasText: 'Words of mine' }).waitFor();
      expect(await page.locator(leaf).count()).toBe(1);
      await press(/^Take out/);
      await comesTo(page, '.current a', /./);
    }

    await page.evaluate(() => (location.hash = 'bough-and-hearts'));
    await add(/^Exercise/);
    await comesTo(page, '[role=textbox]', /Find the near miss/);
    // The given words are marked, so that hers take their place.
    await page.keyboard.type('Two reds');
    await page.keyboard.press('Enter');
    await comesTo(page, 'h2', /^Two reds$/);
    await press('There are none');
    await comesTo(page, 'h3', /Look again/);
    await press('Try again');
    await comesTo(page, '.asks', /near miss/);

    await page.evaluate(() => (location.hash = 'bough-and-hearts'));
    await press('Make a board');
    await comesTo(page, 'h2', /For the kitchen table/);
    await page.evaluate(() => (location.hash = 'bough-and-hearts'));
    await page.locator('qw-study-tools summary').focus();
    await page.keyboard.press('Enter');
    const asksFirst = page.getByRole('checkbox', { name: 'Let me answer first' });
    await asksFirst.focus();
    await page.keyboard.press('Space');
    await press(/^\s*Pulls apart/);
    await comesTo(page, 'h3', /bridge/);
    await page
      .locator('qw-remedies')
      .getByRole('button', { name: /^Try it/ })
      .first()
      .focus();
    await page.keyboard.press('Enter');
    await comesTo(page, 'h3', /./);
    await press(/^Keep it$/);
    await page.locator('qw-note').waitFor();
    await comesTo(page, 'h2', /./);

    // A way that leads off its own leaf, and a notebook that is cleared.
    await page.evaluate(() => (location.hash = 'bough-and-hearts'));
    await press(/^Look closer/);
    await comesTo(page, 'button', /^Done$/);
    await page.keyboard.press('Escape');
    await comesTo(page, 'button', /^look closer$/i);
    await page.locator('qw-upkeep summary').first().focus();
    await page.keyboard.press('Enter');
    await press('Start your own notebook');
    await page.locator('qw-empty').waitFor();
    await comesTo(page, 'button', /^Start your own notebook$/);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});

interface InHand {
  readonly tag: string;
  readonly label: string;
  readonly text: string;
}

/** What holds the keyboard now, through all shadow roots. */
function inHand(page: Page, selector = '*'): Promise<InHand & { fits: boolean }> {
  return page.evaluate((fitting) => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    const label = at?.getAttribute('aria-label') ?? '';
    const text = (at instanceof HTMLInputElement ? at.closest('label')?.textContent : at?.textContent) ?? '';
    return { tag: at?.tagName ?? '', label, text: text.trim(), fits: at?.matches(fitting) ?? false };
  }, selector);
}

/** Waits until what fits is in hand. @throws what is in hand in its place, after four seconds. */
async function comesTo(page: Page, selector: string, words: RegExp): Promise<void> {
  let at = await inHand(page, selector);
  for (let step = 0; step < 80 && !(at.fits && words.test(at.text)); step += 1) {
    await page.waitForTimeout(50);
    at = await inHand(page, selector);
  }
  expect(at).toMatchObject({ fits: true, text: expect.stringMatching(words) });
}

/** Presses Tab until what fits is in hand. @throws where it is not reached in 150 steps. */
async function tabTo(page: Page, selector: string, words: RegExp): Promise<void> {
  for (let step = 0; step < 150; step += 1) {
    const at = await inHand(page, selector);
    if (at.fits && (words.test(at.label) || words.test(at.text))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${selector} ${words}.`);
}
