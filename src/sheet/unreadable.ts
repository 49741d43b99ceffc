/** Thrown where a picture holds nothing to read; `message` is one clear sentence for the reader. */
export class UnreadableImage extends Error {
  override readonly name = 'UnreadableImage';
}
