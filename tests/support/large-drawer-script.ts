import { join } from 'node:path';
import type { BrowserContext } from 'playwright';
import { build } from 'vite';

/** Fills the shelf of a browser with the notebook of so many sheets, through a page of the same address as the built one. */
export async function fillShelf(
  context: BrowserContext,
  url: string,
  seed: string,
  count: number,
): Promise<void> {
  await context.route(`${url}seed.*`, (route) =>
    route.request().url().endsWith('.js')
      ? route.fulfill({ contentType: 'text/javascript', body: seed })
      : route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>seed</title>' }),
  );
  const filling = await context.newPage();
  await filling.goto(`${url}seed.html`);
  await filling.evaluate(
    async ([address, size]) => {
      const { putLargeDrawer } = await import(/* @vite-ignore */ address);
      await putLargeDrawer(size);
    },
    [`${url}seed.js`, count] as const,
  );
  await filling.close();
}

/** The seeding of the shelf as one module that a page can import. */
export async function seedScript(root: string): Promise<string> {
  const made = await build({
    root,
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: { entry: join(root, 'tests/support/large-drawer.ts'), formats: ['es'], fileName: () => 'seed.js' },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const [bundle] = Array.isArray(made) ? made : [made];
  const chunk = 'output' in bundle! ? bundle.output.find((part) => part.type === 'chunk') : undefined;
  if (chunk?.type !== 'chunk') throw new Error('The seeding could not be put together.');
  return chunk.code;
}
