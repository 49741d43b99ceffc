import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { compileFunction } from 'node:vm';
import type { Libheif } from '../files/heif-picture.ts';
import { Refusal } from './refusal.ts';
import { noHeicDecoder } from './words/refusals.ts';

let loading: Promise<Libheif> | undefined;

/**
 * The HEIF decoder as it was installed: its script and its WebAssembly stay files of their own, beside our program and
 * replaceable. Licence: LGPL 3.
 * @throws Refusal where it is not installed.
 */
export function loadLibheif(): Promise<Libheif> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Libheif> {
  const require = createRequire(import.meta.url);
  try {
    const script = require.resolve('libheif-js/libheif-wasm/libheif.js');
    const [code, wasmBinary] = await Promise.all([
      readFile(script, 'utf8'),
      readFile(require.resolve('libheif-js/libheif-wasm/libheif.wasm')),
    ]);
    return started(code, script)({ wasmBinary });
  } catch {
    throw new Refusal(noHeicDecoder);
  }
}

/** Its script run with a console of its own: it tells of torn files on standard output, which is for what was asked alone. */
function started(code: string, script: string): (options: object) => Libheif {
  const module = { exports: {} };
  const names = ['module', 'exports', 'require', '__filename', '__dirname', 'console'];
  const run = compileFunction(code, names, { filename: script });
  const mute = { log() {}, info() {}, warn() {}, error() {} };
  run(module, module.exports, createRequire(script), script, dirname(script), mute);
  return module.exports as (options: object) => Libheif;
}
