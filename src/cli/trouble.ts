/** What goes wrong in a way that the caller can mend; `message` is one sentence for standard error. */
export class Trouble extends Error {
  override readonly name = 'Trouble';
}
