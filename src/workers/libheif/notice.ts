/** What has to be said of the HEIF decoder wherever our sources are named. */
export const heifNotice = [
  'HEIC and HEIF pictures are decoded by libheif with libde265, compiled to WebAssembly (npm package libheif-js).',
  'libheif: © Dirk Farin and contributors. libde265: © Dirk Farin, struktur AG and contributors.',
  'Both are distributed under the GNU Lesser General Public License, version 3 or any later version, without any warranty.',
  'The decoder is used unchanged. It stands beside our program as two files of its own, a script and a WebAssembly module, fetched only when a HEIC or HEIF picture is opened; another version of it can be put in their place.',
] as const;

/** The whole text of the decoder's licence, fetched when it is asked for. */
export async function heifLicence(): Promise<string> {
  const { default: text } = await import('libheif-js/libheif-wasm/LICENSE?raw');
  return text;
}
