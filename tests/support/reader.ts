import { type Browser, type BrowserContext, chromium, type Page } from 'playwright';
import { chromiumArgs, findChromium } from '../../.ci/chromium.mjs';

/** A reader at the built page: a browser of her own, and what she sees go wrong. */
export interface Reader {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Errors of the page and its console since it was opened. */
  readonly errors: string[];
  /** Every request, by its address. */
  readonly requests: string[];
  close(): Promise<void>;
}

export interface ReaderOptions {
  readonly width?: number;
  readonly height?: number;
  readonly theme?: 'light' | 'dark';
}

let browser: Promise<Browser> | undefined;

/** Opens the page in a fresh browser profile, and waits until a notebook is open. */
export async function readerAt(url: string, options: ReaderOptions = {}): Promise<Reader> {
  browser ??= chromium.launch({ executablePath: findChromium() ?? '/usr/bin/chromium', args: chromiumArgs });
  const context = await (await browser).newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 900 },
    colorScheme: options.theme ?? 'light',
    acceptDownloads: true,
  });
  const page = await context.newPage();
  const errors: string[] = [];
  const requests: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  context.on('request', (request) => requests.push(request.url()));
  await page.goto(url);
  await page.locator('qw-leaves').waitFor({ state: 'attached' });
  return { page, context, errors, requests, close: () => context.close() };
}

/** Shuts the browser that the readers shared. */
export async function shutBrowser(): Promise<void> {
  await (await browser)?.close();
  browser = undefined;
}

/** Drops files on the page, as from the desktop. */
export async function dropFiles(
  page: Page,
  files: readonly { name: string; type: string; bytes: Uint8Array }[],
): Promise<void> {
  const carried = files.map(({ name, type, bytes }) => ({
    name,
    type,
    text: Buffer.from(bytes).toString('base64'),
  }));
  await page.evaluate((all) => {
    const dataTransfer = new DataTransfer();
    for (const { name, type, text } of all) {
      const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      dataTransfer.items.add(new File([bytes], name, { type }));
    }
    for (const kind of ['dragover', 'drop']) {
      document.body.dispatchEvent(new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true }));
    }
  }, carried);
}

/** A reader who has cleared the demo and has an empty notebook before her. */
export async function emptyNotebook(url: string, options: ReaderOptions = {}): Promise<Reader> {
  const reader = await readerAt(url, options);
  await reader.page.getByRole('button', { name: 'Start your own notebook' }).click();
  await reader.page.locator('qw-empty').waitFor();
  return reader;
}
