declare module 'libheif-js/libheif-wasm/libheif.js' {
  const start: (options: { wasmBinary: ArrayBuffer }) => import('./load.ts').Libheif;
  export default start;
}
