import type { Page } from 'playwright';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { readerAt, shutBrowser } from '../support/reader.ts';
import { turnTo } from '../support/settled.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

/** Source: the design's own rules: zero chroma outside papers, inks and charts; targets of 44 px for a finger. */
describe('the look of the page', () => {
  it.each(['light', 'dark'] as const)('has no colour of its own in the %s look', async (theme) => {
    const reader = await readerAt(url, { theme });
    const { page } = reader;
    await page.locator('qw-leaves a', { hasText: 'candidates' }).first().click();
    await page.locator('qw-verdict h3').waitFor();
    const { seen, coloured } = await colours(page);
    expect(seen).toBeGreaterThan(200);
    expect(coloured).toEqual([]);
    await reader.close();
  });

  it.each([
    [1440, 900],
    [1024, 768],
    [390, 844],
  ])(
    'fits %i × %i without scrolling sideways, and everything that is pressed is large enough for a finger',
    async (width, height) => {
      const reader = await readerAt(url, { width, height });
      const { page } = reader;
      const ids = await page
        .locator('qw-leaves a')
        .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
      for (const hash of ids) {
        await turnTo(page, hash);
        expect(
          await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
        ).toBeLessThanOrEqual(0);
        expect(await smallTargets(page)).toEqual([]);
      }
      await reader.close();
    },
  );
});

/** Elements whose text, ground or edge has chroma, but for what shows an ink. */
function colours(page: Page): Promise<{ seen: number; coloured: string[] }> {
  return page.evaluate(() => {
    const shows = '.chip, svg *, i, s, qw-miniature *, .tag *, .swatch';
    const coloured: string[] = [];
    let seen = 0;
    const grey = (colour: string): boolean => {
      const numbers = colour.match(/-?[\d.]+(e-?\d+)?/g)?.map(Number) ?? [];
      if (/^okl(ch|ab)/.test(colour)) return Math.abs(numbers[1] ?? 0) < 0.001;
      return Math.max(...numbers.slice(0, 3)) - Math.min(...numbers.slice(0, 3)) < 0.001;
    };
    const visit = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot) visit(element.shadowRoot);
        if (element.matches(shows) || element.getRootNode() !== root) continue;
        const style = getComputedStyle(element);
        seen += 1;
        for (const paint of [style.color, style.backgroundColor, style.borderTopColor, style.outlineColor]) {
          if (!grey(paint)) coloured.push(`${element.tagName.toLowerCase()}.${element.className} ${paint}`);
        }
      }
    };
    visit(document);
    return { seen, coloured };
  });
}

/** Buttons, and what opens and ticks, that a finger 40 px across the middle would miss in height or width. */
function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const small: string[] = [];
    const visit = (root: Document | ShadowRoot): void => {
      for (const element of root.querySelectorAll<HTMLElement>('*')) {
        if (element.shadowRoot) visit(element.shadowRoot);
        if (!element.matches('button, summary, label:has(input), a.word, .entry a')) continue;
        element.scrollIntoView({ block: 'center' });
        const box = element.getBoundingClientRect();
        if (box.width === 0 || !element.checkVisibility()) continue;
        const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
        const reach = Math.min(box.width / 2 - 1, 21);
        const hits = [
          [0, -21],
          [0, 21],
          [-reach, 0],
          [reach, 0],
        ].every(([dx = 0, dy = 0]) => {
          const at = root.elementFromPoint(x + dx, y + dy);
          return at !== null && (element === at || element.contains(at));
        });
        if (!hits)
          small.push(`${element.tagName.toLowerCase()}.${element.className}: ${element.textContent?.trim()}`);
      }
    };
    visit(document);
    return small;
  });
}
