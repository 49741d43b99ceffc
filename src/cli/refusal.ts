/** What goes wrong in a way that the caller can mend; `message` is what standard error says of it, in one line. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
}

/** What was said of a picture, with the file that it is said of before it. */
export function refusalFor(file: string, { message }: Error): Refusal {
  return new Refusal(`${file}: ${message.charAt(0).toLowerCase()}${message.slice(1)}`);
}
