/** What goes wrong in a way that the caller can mend; `message` is what standard error says of it, in one line. */
export class Trouble extends Error {
  override readonly name = 'Trouble';
}

/** What was said of a picture, with the file that it is said of before it. */
export function troubleOf(file: string, { message }: Error): Trouble {
  return new Trouble(`${file}: ${message.charAt(0).toLowerCase()}${message.slice(1)}`);
}
