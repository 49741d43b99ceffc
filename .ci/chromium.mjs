// Where the browser is, and how it is started without a network or a sandbox user.
import { accessSync, constants } from 'node:fs';

export const chromiumArgs = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-dev-shm-usage',
  '--force-color-profile=srgb',
];

// The one without windows first: the other sets up a whole browser window, unseen, for every reader.
const usual = [
  '/usr/bin/chromium-headless-shell',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The path of a browser that can be executed, or undefined. A CHROMIUM_PATH that is set but wrong throws. */
export function findChromium(env = process.env) {
  if (env.CHROMIUM_PATH) {
    if (!executable(env.CHROMIUM_PATH)) {
      throw new Error(`CHROMIUM_PATH is set to "${env.CHROMIUM_PATH}", and nothing there can be executed.`);
    }
    return env.CHROMIUM_PATH;
  }
  return usual.find(executable);
}

function executable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
