import type { Write } from './zip-write.ts';

/** Bytes that are gathered before the browser is given them to keep outside the page's memory. Ours. */
const gathered = 32_000_000;

/** Gathers a file of any length that is written piece by piece. Browsers keep large Blobs on the disk, and a Blob of Blobs copies nothing. */
export function blobGatherer(type: string): { readonly write: Write; blob(): Blob } {
  const blobs: Blob[] = [];
  let parts: Uint8Array<ArrayBuffer>[] = [];
  let length = 0;
  const handOn = () => {
    blobs.push(new Blob(parts));
    parts = [];
    length = 0;
  };
  return {
    write(part) {
      parts.push(part);
      length += part.length;
      if (length >= gathered) handOn();
    },
    blob() {
      handOn();
      return new Blob(blobs, { type });
    },
  };
}
