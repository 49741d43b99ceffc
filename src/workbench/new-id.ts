/** A fresh id: its kind, and 12 letters and digits drawn by the browser's secure source. */
export function newId(kind: string): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `${kind}-${Array.from(bytes, (byte) => letters[byte % letters.length]).join('')}`;
}

const letters = 'abcdefghijklmnopqrstuvwxyz234567';
