// Makes a fresh clone ready: packages when they are missing or older than the lock file; with --browser, a
// Chromium too. Depends on nothing but Node. Silent unless it has something to do; --quiet keeps npm off stdout.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './chromium.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const quiet = process.argv.includes('--quiet');

installPackages();
if (process.argv.includes('--browser')) findBrowser();

function installPackages() {
  const mark = join(root, 'node_modules', '.package-lock.json');
  const lock = join(root, 'package-lock.json');
  if (existsSync(mark) && statSync(mark).mtimeMs >= statSync(lock).mtimeMs - 1000) return;
  say('Installing packages …');
  call('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], 'The packages could not be installed.');
}

function findBrowser() {
  try {
    if (findChromium()) return;
  } catch (error) {
    stop(error.message);
  }
  const debianRoot = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  const wanted = 'Install Chromium (or set CHROMIUM_PATH to one): the page is tested in a real browser.';
  if (!debianRoot) stop(wanted);
  say('Installing Chromium …');
  call('apt-get', ['update', '-qq'], wanted);
  const install = ['install', '-y', '-qq', '--no-install-recommends', 'fonts-dejavu-core'];
  // Older releases of Debian have only the whole browser.
  if (!run('apt-get', [...install, 'chromium-headless-shell']))
    call('apt-get', [...install, 'chromium'], wanted);
}

function call(command, args, sorry) {
  if (!run(command, args)) stop(sorry);
}

/** True where it ended well. */
function run(command, args) {
  const done = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', quiet ? 'ignore' : 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    shell: process.platform === 'win32',
  });
  return done.status === 0;
}

function say(text) {
  process.stderr.write(`${text}\n`);
}

function stop(text) {
  say(text);
  process.exit(1);
}
