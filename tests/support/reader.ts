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
  /** What her browser holds before she comes. Default: nothing. */
  readonly holds?: Held;
  /** True where the page is to be kept for use without a network, which takes a browser as long as opening it. */
  readonly keepsOffline?: boolean;
}

/** What a browser holds of the page: its database, as Playwright hands it over. */
export type Held = Awaited<ReturnType<BrowserContext['storageState']>>;

let browser: Promise<Browser> | undefined;

/** Opens the page in a fresh browser profile, and waits until a notebook is open. */
export async function readerAt(url: string, options: ReaderOptions = {}): Promise<Reader> {
  browser ??= chromium.launch({ executablePath: findChromium() ?? '/usr/bin/chromium', args: chromiumArgs });
  const context = await (await browser).newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 900 },
    colorScheme: options.theme ?? 'light',
    acceptDownloads: true,
    serviceWorkers: options.keepsOffline ? 'allow' : 'block',
    ...(options.holds ? { storageState: options.holds } : {}),
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

/** Begins an empty notebook, from where notebooks are kept. */
export async function beginOwn(page: Page): Promise<void> {
  const leaves = page.getByRole('button', { name: 'Leaves', exact: true });
  const narrow = await leaves.isVisible();
  if (narrow) await leaves.click();
  await page.locator('qw-upkeep summary').first().click();
  await page.getByRole('button', { name: 'Start your own notebook' }).click();
  await page.locator('qw-upkeep summary').first().click();
  if (narrow) await leaves.click();
}

/** A reader who has cleared the demo and has an empty notebook before her. */
export async function emptyNotebook(url: string, options: ReaderOptions = {}): Promise<Reader> {
  const reader = await readerAt(url, options);
  await beginOwn(reader.page);
  await reader.page.locator('qw-empty').waitFor();
  return reader;
}

/**
 * Readers who all begin from one place. `make` brings the first of them there; what her browser then holds is what the
 * browsers of the others hold when they open the page, so that nothing is drawn and read again for each.
 */
export function startingFrom(
  url: string,
  make: (options: ReaderOptions) => Promise<Reader>,
): (options?: ReaderOptions) => Promise<Reader> {
  let held: Held | undefined;
  return async (options = {}) => {
    if (held !== undefined) return readerAt(url, { ...options, holds: held });
    const reader = await make(options);
    await reader.page.locator('.margin', { hasText: 'saved' }).first().waitFor();
    held = newestOnly(await reader.context.storageState({ indexedDB: true }));
    return reader;
  };
}

/** The newest notebook and the pictures that it names: the demo's need not be carried along. */
function newestOnly({ cookies, origins }: Held): Held {
  interface Records {
    readonly name: string;
    readonly records: readonly { readonly value?: unknown }[];
  }
  const told = (one: unknown) => JSON.stringify(one);
  const pruned = (stores: readonly Records[]): readonly Records[] => {
    const heads = stores.find(({ name }) => name === 'heads')?.records ?? [];
    const savedAt = (one: unknown) => /"savedAt":"([^"]+)"/.exec(told(one))?.[1] ?? '';
    const newest = heads.toSorted((a, b) => savedAt(a).localeCompare(savedAt(b))).at(-1);
    const id = /"id":"([^"]+)"/.exec(told(newest) ?? '')?.[1] ?? 'none';
    const isOfIt = (one: unknown) => told(one).includes(`"${id}"`);
    const records = (stores.find(({ name }) => name === 'records')?.records ?? []).filter(isOfIt);
    const named = told(records).match(/picture-[\w-]+/g) ?? [];
    return stores.map((store) => {
      if (store.name === 'heads') return { ...store, records: newest === undefined ? [] : [newest] };
      if (store.name === 'records') return { ...store, records };
      if (store.name !== 'pictures') return store;
      return {
        ...store,
        records: store.records.filter((one) => named.some((name) => told(one).includes(name))),
      };
    });
  };
  return {
    cookies,
    origins: origins.map((origin) => {
      const { indexedDB = [] } = origin as { indexedDB?: { stores: readonly Records[] }[] };
      return { ...origin, indexedDB: indexedDB.map((db) => ({ ...db, stores: pruned(db.stores) })) };
    }),
  };
}
