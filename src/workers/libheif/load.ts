import type { Libheif } from '../../files/heif-picture.ts';

let loading: Promise<Libheif> | undefined;

/**
 * The HEIF decoder: its script and its WebAssembly are files of their own, beside ours and replaceable, fetched the first
 * time that a picture needs them. Licence: LGPL 3, see notice.ts beside this file.
 */
export function loadLibheif(): Promise<Libheif> {
  loading ??= load().catch((error: unknown) => {
    // The next picture may try again: the network may be back.
    loading = undefined;
    throw error;
  });
  return loading;
}

async function load(): Promise<Libheif> {
  const [{ default: start }, { default: address }] = await Promise.all([
    import('libheif-js/libheif-wasm/libheif.js') as Promise<{ default: (options: object) => Libheif }>,
    import('libheif-js/libheif-wasm/libheif.wasm?url'),
  ]);
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`libheif: ${answer.status}`);
  return start({ wasmBinary: await answer.arrayBuffer() });
}
