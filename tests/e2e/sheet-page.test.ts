import type { Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { labFromHex } from '../../src/colour/spaces.ts';
import type { Frame } from '../../src/sheet/model.ts';
import { troubles } from '../support/axe.ts';
import { onPhotograph, photographOf } from '../support/photographed.ts';
import {
  dropFiles,
  emptyNotebook,
  type Reader,
  type ReaderOptions,
  shutBrowser,
  startingFrom,
} from '../support/reader.ts';
import { settled } from '../support/settled.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

const atPair = startingFrom(url, async (options) => {
  const reader = await emptyNotebook(url, options);
  const { page } = reader;
  await dropFiles(page, [
    await photographOf('blossom-bough', 'bough.jpg', 800),
    await photographOf('press-ledger', 'ledger.jpg', 800),
  ]);
  await page.locator('qw-verdict h3').waitFor();
  // Both lay on a table, which is said where each of them is.
  for (const name of ['Bough', 'Ledger'])
    await page.getByRole('button', { name: `Cut out of its table: not right? ${name}` }).waitFor();
  return reader;
});

describe('the page of a sheet', () => {
  it('straightens a photograph, undoes its light by a card and takes both back', async () => {
    const reader = await atSheet();
    const { page } = reader;
    expect(await light(page)).toContain('unknown');
    await expectSquare(page);
    await open(page, 'straighten');
    await page.getByRole('button', { name: 'Leave it as it was taken' }).click();
    await page.locator('[data-tool=straighten]', { hasText: /as it was taken/ }).waitFor();
    await page.locator('qw-straighten .says', { hasText: /found against the table/ }).waitFor();
    const handles = page.locator('qw-straighten [role=slider]');
    for (const [i, { x, y }] of onPhotograph.corners.entries()) {
      const says = (await handles.nth(i).getAttribute('aria-valuetext')) ?? '';
      const [across = 0, down = 0] = [...says.matchAll(/([\d.]+) %/g)].map(([, n]) => Number(n) / 100);
      expect(Math.hypot(across - x, down - y)).toBeLessThan(0.02);
    }
    await page.getByRole('button', { name: 'Straighten the sheet' }).click();
    await page.locator('[data-tool=straighten]', { hasText: /straightened/ }).waitFor();
    await page.locator('qw-straighten .done', { hasText: 'Straightened: 12 × 12 in.' }).waitFor();
    await page.locator('qw-straighten img[alt$="straightened"]').waitFor();
    // What was the table is no ink any more.
    await expectSquare(page);
    const yellowed = await baseB(page);

    await open(page, 'light');
    await page.locator('qw-light').getByText('White card', { exact: true }).click();
    await frameOnCard(page);
    await page.getByRole('button', { name: 'Correct the light' }).click();
    await page.locator('qw-light img[alt$="under corrected light"]').waitFor();
    expect(await light(page)).toContain('Light corrected by the white card');
    expect(await baseB(page)).toBeLessThan(yellowed - 5);

    await page.reload();
    await lookCloser(page);
    expect(await light(page)).toContain('Light corrected by the white card');
    expect(await page.locator('[data-tool=light] small').textContent()).toBe('corrected');
    await open(page, 'light');
    await page.getByRole('button', { name: 'Undo the correction' }).click();
    await page.locator('qw-close-view figcaption .light', { hasText: /unknown/ }).waitFor();
    expect(await baseB(page)).toBeCloseTo(yellowed, -1);
    await undo(page);
    await page
      .locator('qw-close-view figcaption .light', { hasText: /corrected by the white card/ })
      .waitFor();
    expect(reader.errors).toEqual([]);
    await reader.close();
  }, 120_000);

  it('keeps what the hand corrected, through another reading and a reload', async () => {
    const reader = await atSheet();
    const { page } = reader;
    await open(page, 'inks');
    const inks = page.locator('qw-inks-by-hand li b');
    await inks.first().waitFor();
    const count = await inks.count();
    await page.getByRole('button', { name: /^Correct B, / }).click();
    await page.getByLabel('Name', { exact: true }).last().fill('quince');
    await page.keyboard.press('Tab');
    await page.locator('qw-sheet-leaf .inks', { hasText: 'quince' }).waitFor();
    await page.getByRole('button', { name: /^Correct A, / }).isVisible();
    await page.getByRole('button', { name: /^Correct C, / }).click();
    await page.getByRole('button', { name: 'Set aside' }).last().click();
    await page.getByRole('heading', { name: 'Set aside' }).waitFor();
    expect(await inks.count()).toBe(count - 1);

    await open(page, 'light');
    await page.locator('qw-light').getByText('White card', { exact: true }).click();
    await frameOnCard(page);
    await page.getByRole('button', { name: 'Correct the light' }).click();
    await page
      .locator('qw-close-view figcaption .light', { hasText: /corrected by the white card/ })
      .waitFor();
    await page.locator('qw-sheet-leaf .inks', { hasText: 'quince' }).waitFor();

    await saved(page);
    await page.reload();
    await lookCloser(page);
    await page.locator('qw-sheet-leaf .inks', { hasText: 'quince' }).waitFor();
    await open(page, 'inks');
    await page.getByRole('button', { name: /^Take it back/ }).click();
    await page.getByRole('heading', { name: 'Set aside' }).waitFor({ state: 'detached' });
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('cuts a part, which lies in the drawer, is held as a candidate and is there after a reload', async () => {
    const reader = await atSheet();
    const { page } = reader;
    await open(page, 'parts');
    await page.locator('qw-part').getByRole('button', { name: 'Lay a frame in the middle' }).click();
    await page.getByLabel('What to call it').first().fill('One block');
    await page.getByRole('button', { name: 'Keep this part' }).click();
    await page.locator('qw-sheet-tools .parts li', { hasText: 'One block' }).waitFor();

    await page.getByRole('button', { name: 'Done' }).click();
    await page.locator('qw-close-view').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /^Show One block/ }).click();
    await page.getByRole('button', { name: 'Hold it against the anchor: One block' }).click();
    await page.locator('qw-candidates .thumb[aria-label*="One block"]').waitFor();
    await saved(page);
    await page.reload();
    await page.locator('qw-candidates .thumb[aria-label*="One block"]').waitFor();
    await page.locator('qw-mounted.candidate img').waitFor();
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('keeps a weight with its grade, a count and tags, each as one step of undo', async () => {
    const reader = await atSheet();
    const { page } = reader;
    await open(page, 'details');
    await page.locator('qw-sheet-form').getByLabel('Weight').selectOption('pounds');
    await page.getByRole('spinbutton', { name: 'Pounds' }).fill('80');
    await page.keyboard.press('Tab');
    await page.locator('qw-close-view figcaption', { hasText: '216 g/m² (80 lb cover)' }).waitFor();
    await page.locator('qw-sheet-form').getByLabel('How many there are').fill('3');
    await page.keyboard.press('Tab');
    await page.locator('qw-sheet-form').getByLabel('floral').check();
    await undo(page);
    await expect.poll(() => page.locator('qw-sheet-form').getByLabel('floral').isChecked()).toBe(false);
    await saved(page);
    await page.reload();
    await lookCloser(page);
    await page.locator('qw-close-view figcaption', { hasText: '216 g/m² (80 lb cover)' }).waitFor();
    await open(page, 'details');
    expect(await page.locator('qw-sheet-form').getByLabel('How many there are').inputValue()).toBe('3');
    await reader.close();
  });

  it.each(['light', 'dark'] as const)(
    'has nothing for axe to find with every tool open, %s',
    async (theme) => {
      const reader = await atSheet({ theme });
      const { page } = reader;
      for (const id of ['', 'straighten', 'light', 'inks', 'parts', 'plain', 'details']) {
        await open(page, id);
        await settled(page);
        expect(await troubles(page), id).toEqual([]);
      }
      await reader.close();
    },
  );
});

describe('a sheet looked at closely', () => {
  it('lies over the study and adds no leaf; Escape, Done and the way back shut it, and the keyboard goes back', async () => {
    const reader = await atPair();
    const { page } = reader;
    const near = page.locator('qw-close-view');
    const opener = page.getByRole('button', { name: 'Look closer at Bough' });
    const leaves = await page.locator('qw-leaves a').count();
    const inHand = () => page.evaluate(labelInHand);
    const ways = [
      () => page.keyboard.press('Escape'),
      () => page.getByRole('button', { name: 'Done' }).click(),
      () => page.goBack(),
    ];
    for (const shut of ways) {
      await opener.focus();
      await page.keyboard.press('Enter');
      await near.locator('dialog[open]').waitFor();
      // Round and round: the page beneath is never reached.
      for (let i = 0; i < 40; i++) await page.keyboard.press('Tab');
      expect(
        await page.evaluate(() => document.querySelector('qw-app')?.shadowRoot?.activeElement?.localName),
      ).toMatch(/^qw-close-view$/);
      await shut();
      await near.waitFor({ state: 'detached' });
      await expect.poll(inHand).toBe('Look closer at Bough');
      await page.locator('qw-verdict h3').waitFor();
    }
    expect(await page.locator('qw-leaves a').count()).toBe(leaves);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });

  it('is enlarged by the wheel about the pointer, by keys and by buttons, and drawn about', async () => {
    const reader = await atSheet();
    const { page } = reader;
    const picture = page.locator('qw-near img');
    await picture.waitFor();
    const whole = (await picture.boundingBox())!;
    const at = { x: whole.x + whole.width * 0.25, y: whole.y + whole.height * 0.3 };
    await page.mouse.move(at.x, at.y);
    for (let i = 0; i < 4; i++) await page.mouse.wheel(0, -100);
    await expect.poll(async () => (await picture.boundingBox())!.width / whole.width).toBeGreaterThan(3);
    // What fits stays in the middle; what is larger stays where the pointer is.
    const large = (await picture.boundingBox())!;
    await page.mouse.wheel(0, -60);
    await expect.poll(async () => (await picture.boundingBox())!.width).toBeGreaterThan(large.width * 1.1);
    const larger = (await picture.boundingBox())!;
    expect((at.x - larger.x) / larger.width).toBeCloseTo((at.x - large.x) / large.width, 2);
    expect((at.y - larger.y) / larger.height).toBeCloseTo((at.y - large.y) / large.height, 2);

    await page.mouse.down();
    await page.mouse.move(at.x - 60, at.y - 40, { steps: 4 });
    await page.mouse.up();
    const moved = (await picture.boundingBox())!;
    expect(moved.x).toBeCloseTo(larger.x - 60, 0);
    expect(moved.y).toBeCloseTo(larger.y - 40, 0);

    await page.locator('qw-near .mat').focus();
    await page.keyboard.press('0');
    await expect.poll(async () => (await picture.boundingBox())!.width).toBeCloseTo(whole.width, 0);
    await page.keyboard.press('+');
    await expect.poll(async () => (await picture.boundingBox())!.width / whole.width).toBeCloseTo(1.5, 1);
    await page.locator('qw-near').getByRole('button', { name: 'Smaller' }).click();
    await page.locator('qw-near output', { hasText: 'whole picture' }).waitFor();
    await reader.close();
  });
});

describe('a paper on a table', () => {
  it('is put back and asked about where it was cut out wrongly; the verdict waits for one tap', async () => {
    const reader = await atPair();
    const { page } = reader;
    const notRight = page.getByRole('button', { name: 'Cut out of its table: not right? Bough' });
    await notRight.click();
    const question = page.getByRole('group', { name: 'Is this the paper?' });
    await question.waitFor();
    await settled(page);
    expect(await page.locator('qw-verdict').count()).toBe(0);
    expect(await troubles(page)).toEqual([]);
    await page.reload();
    await question.getByRole('button', { name: 'No, the whole picture is the paper' }).click();
    await page.locator('qw-verdict h3').waitFor();
    expect(await notRight.count()).toBe(0);
    await undo(page);
    await question.getByRole('button', { name: 'Yes, cut it out' }).click();
    await page.locator('qw-verdict h3').waitFor();
    await expectSquare(page);
    // She said so herself: nothing needs to be told.
    expect(await notRight.count()).toBe(0);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});

describe('a chart on a photograph', () => {
  it('undoes the light where the frame lies on its patches, and says what is left; elsewhere it says why not', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    await dropFiles(page, [
      await photographOf('blossom-bough', 'bough.jpg', 900, 'chart'),
      await photographOf('press-ledger', 'ledger.jpg', 300),
    ]);
    await page.locator('qw-verdict h3').waitFor();
    await lookCloser(page);
    const yellowed = await baseB(page);
    await open(page, 'light');
    await page.locator('qw-light').getByText('Chart of 24 patches', { exact: true }).click();
    const { chart } = onPhotograph;
    await drawFrame(page, { ...chart, x: 0.05, y: 0.05 });
    await page.getByRole('button', { name: 'Correct the light' }).click();
    const trouble = page.getByText('“Bough”: This frame does not lie on the 24 patches of a chart', {
      exact: false,
    });
    await trouble.first().waitFor();
    await drawFrame(page, chart);
    await page.getByRole('button', { name: 'Correct the light' }).click();
    await page.locator('qw-light img[alt$="under corrected light"]').waitFor();
    const said = await light(page);
    expect(said).toContain('Light corrected by the chart');
    expect(await trouble.count()).toBe(0);
    expect(Number(/ΔE₀₀ ([\d.]+) is left/.exec(said)?.[1])).toBeLessThan(3);
    expect(await baseB(page)).toBeLessThan(yellowed - 5);
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});

/** An empty notebook onto which two photographs were dropped, the first looked at closely. */
async function atSheet(options: ReaderOptions = {}): Promise<Reader> {
  const reader = await atPair(options);
  const { page } = reader;
  await page.locator('qw-verdict h3').waitFor();
  await lookCloser(page);
  return reader;
}

/** What the button says to a screen reader that has the keyboard, through all shadow roots. */
function labelInHand(): string {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at?.getAttribute('aria-label') ?? '';
}

/** Looks at the first sheet over the study. */
async function lookCloser(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Look closer at Bough' }).click();
  await page.locator('qw-sheet-tools').waitFor();
}

async function open(page: Page, id: string): Promise<void> {
  await page.locator(`qw-close-view [data-tool="${id}"]`).click();
}

async function undo(page: Page): Promise<void> {
  const near = page.locator('qw-close-view');
  const where = (await near.count()) > 0 ? near : page.locator('qw-upkeep');
  await where.getByRole('button', { name: 'Undo', exact: true }).click();
}

async function saved(page: Page): Promise<void> {
  await page.locator('.margin', { hasText: 'saved' }).first().waitFor();
}

async function light(page: Page): Promise<string> {
  return (await page.locator('qw-close-view qw-mounted figcaption .light').textContent()) ?? '';
}

/** CIELAB b* of the base as it is shown: how yellow it reads. */
async function baseB(page: Page): Promise<number> {
  const style = await page.locator('qw-sheet-leaf .inks li i').first().getAttribute('style');
  return labFromHex(/#[0-9a-f]{6}/i.exec(style ?? '')?.[0] ?? '#000000').b;
}

async function expectSquare(page: Page): Promise<void> {
  const image = page.locator('qw-mounted img').first();
  await expect
    .poll(() => image.evaluate((one: HTMLImageElement) => one.naturalWidth / one.naturalHeight))
    .toBeCloseTo(1, 1);
}

/** Draws a frame inside the card with the mouse. */
function frameOnCard(page: Page): Promise<void> {
  const { x, y, width, height } = onPhotograph.card;
  return drawFrame(page, {
    x: x + 0.15 * width,
    y: y + 0.15 * height,
    width: 0.7 * width,
    height: 0.7 * height,
  });
}

/** Draws a frame with the mouse, given in fractions of the picture. */
async function drawFrame(page: Page, { x, y, width, height }: Frame): Promise<void> {
  const image = page.locator('qw-light qw-framing img');
  await image.scrollIntoViewIfNeeded();
  const box = (await image.boundingBox())!;
  const at = (px: number, py: number) => [box.x + px * box.width, box.y + py * box.height] as const;
  await page.mouse.move(...at(x, y));
  await page.mouse.down();
  await page.mouse.move(...at(x + width, y + height), { steps: 4 });
  await page.mouse.up();
}
