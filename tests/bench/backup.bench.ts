import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright';
import { build, preview } from 'vite';
import { chromiumArgs, findChromium } from '../../.ci/chromium.mjs';

/** Sheets with two pictures each, which are noise: a PNG of 1600 px has 7.7 MB, so that 140 sheets are over 2 GB. */
const sheets = Number(process.env.QUIREWISE_SHEETS ?? 140);
const type = process.env.QUIREWISE_TYPE === 'jpeg' ? 'image/jpeg' : 'image/png';
const side = Number(process.env.QUIREWISE_SIDE ?? 1600);
const root = process.cwd();

interface Bench {
  fill(sheets: number, side: number, type: string): Promise<number>;
  save(): Promise<{ bytes: number; left: number; ms: number; longest: number }>;
  open(): Promise<{ unstored: number; setAside: number; ms: number; longest: number }>;
  compared(): Promise<{ same: number; small: number; of: number }>;
}
declare const bench: Bench;

/** A backup of gigabytes, saved, read back and opened again in a real browser with its own folder on the disk; times, the longest task, and memory by process. */
async function run(print: (line: string) => void): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'quirewise-backup-'));
  const outDir = join(folder, 'page');
  const page = {
    root: join(root, 'tests', 'bench'),
    configFile: false as const,
    logLevel: 'error' as const,
    base: './',
  };
  await build({
    ...page,
    build: {
      outDir,
      emptyOutDir: true,
      rolldownOptions: { input: join(root, 'tests/bench/backup-page.html') },
    },
  });
  const server = await preview({
    ...page,
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, strictPort: false },
  });
  const executablePath = findChromium();
  const browser = await chromium.launchPersistentContext(join(folder, 'profile'), {
    ...(executablePath === undefined ? {} : { executablePath }),
    args: chromiumArgs,
  });
  const peak = watchMemory(join(folder, 'profile'));
  try {
    const tab = browser.pages()[0] ?? (await browser.newPage());
    await tab.goto(`${server.resolvedUrls?.local[0]}backup-page.html`);
    tab.setDefaultTimeout(0);
    print(
      `load of the machine before: ${loadavg()
        .map((one) => one.toFixed(1))
        .join(' ')}`,
    );
    const put = await tab.evaluate(([n, px, kind]) => bench.fill(n, px, kind), [sheets, side, type] as const);
    print(`${sheets} sheets with two pictures of ${side} px: ${mb(put)} of pictures on the shelf; ${peak()}`);
    const saved = await tab.evaluate(() => bench.save());
    print(
      `saved and read back: ${mb(saved.bytes)}, ${saved.left} left out, ${s(saved.ms)}, longest task ${saved.longest} ms; ${peak()}`,
    );
    const opened = await tab.evaluate(() => bench.open());
    print(
      `opened on another shelf: ${s(opened.ms)}, ${opened.unstored} unstored, longest task ${opened.longest} ms; ${peak()}`,
    );
    const { same, small, of } = await tab.evaluate(() => bench.compared());
    print(
      `of ${of} pictures looked at, ${same} are the same to the byte and ${small} have their small picture`,
    );
  } finally {
    peak.stop();
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

export { run as bench };

const mb = (bytes: number) => `${Math.round(bytes / 1e6)} MB`;
const s = (ms: number) => `${(ms / 1000).toFixed(1)} s`;

/** The most memory that each kind of the browser's processes had since last asked. Only where /proc tells it. */
function watchMemory(profile: string) {
  let most = new Map<string, number>();
  const look = () => {
    for (const [kind, rss] of memoryByKind(profile)) most.set(kind, Math.max(most.get(kind) ?? 0, rss));
  };
  const timer = setInterval(look, 200);
  const told = () => {
    const words = [...most].map(([kind, rss]) => `${kind} ${mb(rss)}`).join(', ');
    most = new Map();
    return `most memory: ${words || 'not known here'}`;
  };
  return Object.assign(told, { stop: () => clearInterval(timer) });
}

function memoryByKind(profile: string): ReadonlyMap<string, number> {
  const kinds = new Map<string, number>();
  const processes = new Map<number, { parent: number; args: string; rss: number }>();
  try {
    for (const name of readdirSync('/proc').filter((one) => /^\d+$/.test(one))) {
      try {
        const args = readFileSync(`/proc/${name}/cmdline`, 'utf8').replaceAll('\0', ' ');
        const status = readFileSync(`/proc/${name}/status`, 'utf8');
        const number = (key: string) => Number(new RegExp(`^${key}:\\s+(\\d+)`, 'm').exec(status)?.[1] ?? 0);
        processes.set(Number(name), {
          parent: number('PPid'),
          args,
          rss: number('RssAnon') * 1024 + number('RssShmem') * 1024,
        });
      } catch {
        // It ended meanwhile.
      }
    }
  } catch {
    return kinds;
  }
  const main = [...processes]
    .filter(([, { args }]) => args.includes(profile) && !args.includes('--type='))
    .map(([id]) => id);
  const isOurs = (id: number): boolean => {
    const parent = processes.get(id)?.parent ?? 0;
    return main.includes(id) || (parent > 1 && isOurs(parent));
  };
  for (const [id, { args, rss }] of processes) {
    if (!isOurs(id)) continue;
    const kind = /--type=([\w-]+)/.exec(args)?.[1] ?? 'browser';
    const sub = /--utility-sub-type=([\w.]+)/.exec(args)?.[1];
    const key = sub === undefined ? kind : (sub.split('.').at(-2) ?? kind);
    kinds.set(key, Math.max(kinds.get(key) ?? 0, rss));
  }
  return kinds;
}
