/** What is used of libheif here. */
export interface Libheif {
  readonly HeifDecoder: new () => { decode(bytes: Uint8Array): HeifPicture[] };
}

export interface HeifPicture {
  get_width(): number;
  get_height(): number;
  is_primary(): boolean;
  /** Fills `data` with RGBA and answers with it, or with null where that fails. */
  display(
    into: { data: Uint8ClampedArray; width: number; height: number },
    answer: (shown: unknown) => void,
  ): void;
  free(): void;
}

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
