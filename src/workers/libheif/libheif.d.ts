declare module 'libheif-js/libheif-wasm/libheif.js' {
  const start: (options: { wasmBinary: ArrayBuffer }) => import('../../files/heif-picture.ts').Libheif;
  export default start;
}
