import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Found {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { target: unknown[] }[] }[];
}

/**
 * What axe finds wrong on the page as it is, or on one part of it, each as "rule: where". Every rule that is on by
 * default is asked; what is well, or does not apply, is not described at length. Sheets of style are not fetched beside
 * the page's own: only a rule that is off by default asks for them.
 */
export async function troubles(page: Page, part?: Locator): Promise<string[]> {
  // The page's own policy lets no script in from outside, so axe is put in by the debugger.
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(source);
  return (part ?? page.locator(':root')).evaluate(async (of) => {
    const { axe } = globalThis as unknown as { axe: { run(of: Node, how: object): Promise<Found> } };
    const { violations } = await axe.run(of === document.documentElement ? document : of, {
      resultTypes: ['violations'],
      preload: false,
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target }) => `${id}: ${target.flat().join(' → ')}`),
    );
  });
}
