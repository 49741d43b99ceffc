/** The demo notebook as the engine reads it; made by .ci/demo-notebook.mjs when the page is built. */
declare module 'virtual:demo-notebook' {
  const notebook: import('../notebook/model.ts').Notebook;
  export default notebook;
}
