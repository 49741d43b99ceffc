import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright';
import { preview } from 'vite';
import { chromiumArgs, findChromium } from '../../.ci/chromium.mjs';
import { isPage, processesOf } from '../support/browser-processes.ts';
import { chanceOf } from '../support/chance.ts';
import { fillShelf, seedScript } from '../support/large-drawer-script.ts';
import * as inPage from './kills-page.ts';

const root = process.cwd();
/** "sheets×kills" for each size; KILLS="20x5" takes others. */
const rounds = (process.env.KILLS ?? '20x130 1500x50 10000x20')
  .split(/\s+/)
  .map((one) => one.split('x').map(Number) as [sheets: number, kills: number]);

/**
 * The built page killed at random moments, browser or page alone, while somebody types, adds papers, cuts and imports: is
 * all that it had called saved there when it is opened again, is every notebook readable, is nothing recovered that was not lost?
 */
export async function bench(print: (line: string) => void): Promise<void> {
  const work = mkdtempSync(join(tmpdir(), 'quirewise-kills-'));
  const built = spawnSync(
    process.execPath,
    ['node_modules/vite/bin/vite.js', 'build', '--outDir', join(work, 'page')],
    { cwd: root, encoding: 'utf8', env: { ...process.env, NODE_ENV: 'production' } },
  );
  if (built.status !== 0) throw new Error(`The page could not be built.\n${built.stderr}`);
  const seed = await seedScript(root);
  const server = await preview({
    root,
    logLevel: 'error',
    build: { outDir: join(work, 'page') },
    preview: { host: '127.0.0.1', port: 0, strictPort: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The built page is not served.');
  try {
    for (const [sheets, kills] of rounds) {
      const told = await killedAt(url, seed, join(work, `profile-${sheets}`), sheets, kills, print);
      print(
        `${sheets} sheets: ${told.kills} kills (${told.pages} of the page alone), ${told.saved} states called saved; missing ${told.missing}, unreadable ${told.unreadable}, false recoveries ${told.recovered}`,
      );
    }
  } finally {
    await server.close();
    rmSync(work, { recursive: true, force: true });
  }
}

async function killedAt(
  url: string,
  seed: string,
  profile: string,
  sheets: number,
  kills: number,
  print: (line: string) => void,
) {
  const chance = chanceOf(sheets + kills);
  const told = { kills: 0, pages: 0, saved: 0, missing: 0, unreadable: 0, recovered: 0 };
  let context = await browserWith(profile);
  await fillShelf(context, url, seed, sheets);
  let last: inPage.Noted | null = null;
  for (let n = 0; n < kills; n++) {
    const page = await opened(context, url);
    const found = await page.evaluate(inPage.whatStands);
    if (last !== null) {
      const lost = missing(last, found);
      if (lost !== null) {
        told.missing++;
        print(`  kill ${n}: ${lost}`);
      }
      if (found.setAside > 0 || found.kept.some(({ title }) => title === null)) told.unreadable++;
      const strange = found.kept.filter(({ title }) => /copy|closed tab/i.test(title ?? ''));
      if (found.choices > 0 || strange.length > 0 || found.messages.some((says) => /closed/i.test(says))) {
        told.recovered++;
        print(`  kill ${n}: ${JSON.stringify([found.choices, strange, found.messages])}`);
      }
    }
    last = found;
    await page.exposeFunction('noted', (noted: inPage.Noted) => {
      told.saved++;
      last = noted;
    });
    await page.evaluate(inPage.tellSaved, 'noted');
    await page.evaluate(`window.act = ${inPage.act.toString()}`);
    const isAlone = chance() < 0.4;
    await killedWhile(page, profile, n, chance, isAlone);
    told.kills++;
    if (isAlone) told.pages++;
    await Promise.race([context.close().catch(() => {}), new Promise((done) => setTimeout(done, 3000))]);
    for (const { id } of processesOf(profile)) kill(id);
    for (const name of ['SingletonLock', 'SingletonSocket', 'SingletonCookie'])
      rmSync(join(profile, name), { force: true });
    context = await browserWith(profile);
  }
  await context.close();
  return told;
}

/** Types, and in every third round does something else as well, until the browser or its page is killed. */
async function killedWhile(
  page: Page,
  profile: string,
  n: number,
  chance: () => number,
  isAlone: boolean,
): Promise<void> {
  const more = (['add', 'cut', 'import'] as const)[n % 9];
  if (more)
    void page
      .evaluate(([what, seed]) => (window as unknown as { act: typeof inPage.act }).act(what, seed), [
        more,
        n,
      ] as const)
      .catch(() => {});
  const letters = Array.from({ length: 400 }, () => String.fromCharCode(97 + Math.floor(chance() * 26)));
  const typing = (async () => {
    await page.locator('qw-note textarea').focus();
    await page.keyboard.press('Control+End');
    await page.keyboard.type(letters.join(''), { delay: 4 + chance() * 20 });
  })().catch(() => {});
  await new Promise((done) => setTimeout(done, 200 + chance() * 2200));
  for (const one of processesOf(profile)) if (!isAlone || isPage(one)) kill(one.id);
  await Promise.race([typing, new Promise((done) => setTimeout(done, 500))]);
}

function kill(id: string): void {
  try {
    process.kill(Number(id), 'SIGKILL');
  } catch {
    // It is gone already.
  }
}

/** What was called saved and is not there, in words; null where all of it is. An import puts another notebook in place. */
function missing(noted: inPage.Noted, found: inPage.Found): string | null {
  if (noted.id !== found.id)
    return found.kept.some(({ id }) => id === noted.id) ? null : `the notebook ${noted.id} is gone`;
  if (!found.text.startsWith(noted.text))
    return `the note ends “${found.text.slice(-30)}”, saved was “${noted.text.slice(-30)}”`;
  const gone = [
    ...noted.sheets.filter((id) => !found.sheets.includes(id)),
    ...noted.parts.filter((id) => !found.parts.includes(id)),
  ];
  return gone.length > 0 ? `gone: ${gone.join(', ')}` : null;
}

async function opened(context: BrowserContext, url: string): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(180_000);
  await page.goto(`${url}#leaf-note`);
  await page.waitForFunction(inPage.isOpen);
  await page.locator('qw-note textarea').waitFor();
  return page;
}

async function browserWith(profile: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, {
    executablePath: findChromium() ?? '/usr/bin/chromium',
    args: [...chromiumArgs],
    viewport: { width: 1200, height: 800 },
  });
}
