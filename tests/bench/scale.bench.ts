import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright';
import { preview } from 'vite';
import { chromiumArgs, findChromium } from '../../.ci/chromium.mjs';
import { isPage, type Process, processesOf } from '../support/browser-processes.ts';
import { largeDrawerLeaves } from '../support/large-drawer.ts';
import { fillShelf, seedScript } from '../support/large-drawer-script.ts';
import * as inPage from './scale-page.ts';

const root = process.cwd();
const sizes = (process.env.SCALE ?? '1000 10000').split(/\D+/).filter(Boolean).map(Number);

/**
 * How the built page stands a large drawer: reload to the open leaf, the drawer opened, scrolled and sifted, the drawer
 * held against an anchor, a letter typed, memory. In a real browser with a profile of its own. SCALE="500 2000" takes
 * other sizes.
 */
export async function bench(print: (line: string) => void): Promise<void> {
  const work = mkdtempSync(join(tmpdir(), 'quirewise-scale-'));
  const page = join(work, 'page');
  const built = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--outDir', page], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (built.status !== 0) throw new Error(`The page could not be built.\n${built.stderr}`);
  const seed = await seedScript(root);
  const server = await preview({
    root,
    logLevel: 'error',
    build: { outDir: page },
    preview: { host: '127.0.0.1', port: 0, strictPort: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The built page is not served.');
  print('scale: the built page in a headless browser; long tasks are those over 50 ms, the longest is told');
  print(
    `  load average ${loadavg()
      .map((load) => load.toFixed(2))
      .join(' ')}`,
  );
  try {
    for (const size of sizes) await measure(size, url, seed, join(work, `profile-${size}`), print);
  } finally {
    await server.close();
    rmSync(work, { recursive: true, force: true });
  }
}

async function measure(
  size: number,
  url: string,
  seed: string,
  profile: string,
  print: (line: string) => void,
): Promise<void> {
  const tell = (what: string, says: string) =>
    print(`  ${String(size).padStart(6)}  ${what.padEnd(38)} ${says}`);
  const first = await browserWith(profile);
  await fillShelf(first, url, seed, size);
  // Once, so that what is made at first sight, the store of files among it, is there.
  await opened(first, url, 'note');
  await first.close();

  for (const leaf of ['note', 'study'] as const) {
    const context = await browserWith(profile);
    const { page, took } = await opened(context, url, leaf);
    await page.waitForTimeout(4000);
    const longest = await page.evaluate(inPage.longestSince, 0);
    tell(`reload to the open ${leaf}`, `${ms(took)}, longest task ${ms(longest)}`);
    await (leaf === 'note' ? ofNote : ofStudy)(page, context, profile, tell);
    await context.close();
  }
  print(
    `  load average ${loadavg()
      .map((load) => load.toFixed(2))
      .join(' ')}`,
  );
}

type Tell = (what: string, says: string) => void;

async function ofNote(page: Page, context: BrowserContext, profile: string, tell: Tell): Promise<void> {
  const since = async <T>(work: () => Promise<T>) => {
    const from = await page.evaluate(inPage.moment);
    const result = await work();
    return { result, longest: await page.evaluate(inPage.longestSince, from) };
  };
  await page.locator('qw-note textarea').focus();
  await page.keyboard.press('End');
  const written = writtenBy(profile);
  const typed = await since(async () => {
    await page.keyboard.type('a');
    return page.evaluate(inPage.savedAfter);
  });
  await page.waitForTimeout(2500);
  const more = writtenBy(profile);
  const bytes = written === null || more === null ? 'unknown' : `${Math.round((more - written) / 1024)} kB`;
  tell('a letter typed until it is saved', `${ms(typed.result)}, longest task ${ms(typed.longest)}`);
  tell('written for it by all of the browser', bytes);

  const open = await since(() => page.evaluate(inPage.openDrawer));
  tell('the drawer opened', `${ms(open.result)}, longest task ${ms(open.longest)}`);
  const scroll = await since(() => page.evaluate(inPage.scrollDrawer, 120));
  const { took, empty, drawn } = scroll.result;
  tell(
    'scrolled by thirty screens',
    `longest task ${ms(scroll.longest)}, ${ms(took / 120)} a step of two turns, ${empty} steps without a paper, at most ${drawn} drawn`,
  );
  for (const words of ['l', 'lantern', 'lantern q']) {
    const seek = await since(() => page.evaluate(inPage.seekInDrawer, words));
    tell(`sifted by “${words}”`, `${ms(seek.result)}, longest task ${ms(seek.longest)}`);
  }
  const session = await context.newCDPSession(page);
  await session.send('HeapProfiler.enable');
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = (await session.send('Runtime.getHeapUsage')) as { usedSize: number };
  const resident = Math.max(0, ...processesOf(profile).filter(isPage).map(residentMb));
  tell('memory', `${Math.round(usedSize / 2 ** 20)} MB of objects, ${resident} MB the page’s process`);
}

async function ofStudy(page: Page, _: BrowserContext, __: string, tell: Tell): Promise<void> {
  const from = await page.evaluate(inPage.moment);
  await page.getByRole('button', { name: 'What else have I?' }).click();
  await page.locator('qw-find ol > li').first().waitFor({ timeout: 120_000 });
  const first = (await page.evaluate(inPage.moment)) - from;
  tell(
    'held against the anchor, best first',
    `${ms(first)}, longest task ${ms(await page.evaluate(inPage.longestSince, from))}`,
  );
  for (const value of ['2', '3', '0']) {
    const start = await page.evaluate(inPage.moment);
    const took = await page.evaluate(inPage.filterFound, value);
    tell(
      `filtered: ${value === '0' ? 'any number' : `${value} or more`}`,
      `${ms(took)}, longest task ${ms(await page.evaluate(inPage.longestSince, start))}`,
    );
  }
}

async function browserWith(profile: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, {
    executablePath: findChromium() ?? '/usr/bin/chromium',
    args: chromiumArgs,
    viewport: { width: 1440, height: 900 },
  });
}

const shows = {
  note: 'qw-app >> qw-note >> .margin',
  study: 'qw-app >> qw-study >> qw-verdict >> h3',
} as const;

async function opened(context: BrowserContext, url: string, leaf: keyof typeof shows) {
  const page = await context.newPage();
  page.setDefaultTimeout(600_000);
  await page.addInitScript(inPage.watch, shows[leaf]);
  await page.goto(`${url}#${largeDrawerLeaves[leaf]}`);
  const took = await page.waitForFunction(inPage.openedAt).then((handle) => handle.jsonValue());
  return { page, took: took ?? Number.NaN };
}

function residentMb({ id }: Process): number {
  try {
    const kb = /^VmRSS:\s+(\d+)/m.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? '0';
    return Math.round(Number(kb) / 1024);
  } catch {
    return 0;
  }
}

/** Bytes that the browser has had written to the disk so far; null where the system does not tell. */
function writtenBy(profile: string): number | null {
  const processes = processesOf(profile);
  if (processes.length === 0) return null;
  return processes.reduce((sum, { id }) => {
    try {
      return sum + Number(/^write_bytes:\s+(\d+)/m.exec(readFileSync(`/proc/${id}/io`, 'utf8'))?.[1] ?? 0);
    } catch {
      return sum;
    }
  }, 0);
}

function ms(time: number): string {
  return `${Math.round(time)} ms`;
}
