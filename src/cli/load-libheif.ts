import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Libheif } from '../files/heif-picture.ts';
import { Trouble } from './trouble.ts';

let loading: Promise<Libheif> | undefined;

/**
 * The HEIF decoder as it was installed: its script and its WebAssembly stay files of their own, beside our program and
 * replaceable. Licence: LGPL 3.
 * @throws Trouble where it is not installed.
 */
export function loadLibheif(): Promise<Libheif> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Libheif> {
  const require = createRequire(import.meta.url);
  try {
    const start = require('libheif-js/libheif-wasm/libheif.js') as (options: object) => Libheif;
    return start({ wasmBinary: await readFile(require.resolve('libheif-js/libheif-wasm/libheif.wasm')) });
  } catch {
    throw new Trouble('What opens HEIC pictures is not installed; save the picture as JPEG and use that.');
  }
}
