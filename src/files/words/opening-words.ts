/** What is said by whatever opens pictures in a browser. */
export const sixteenBitsRead = 'Read from 16 bits a channel.';
export const planarTiff =
  'This TIFF keeps red, green and blue apart (planar), which can’t be opened here. Save it as PNG and use that.';
export const noCanvas = 'This browser can’t open pictures just now. Close other pages and try again.';
export const allTransparent = 'This picture is fully transparent: there is no paper in it to read.';
export const tooLittleMemory =
  'This picture could not be read: there may be too little memory. Close other pages, or drop a smaller copy.';

export function decoderNotLoaded(kind: string): string {
  return `What opens ${kind.toUpperCase()} pictures could not be loaded, or there is too little memory. Try again, or save the picture as JPEG and use that.`;
}

/** Both in pixels. */
export function reducedFrom(before: number, after: number): string {
  const millions = (pixels: number) => (pixels / 1e6).toFixed(1);
  return `Reduced from ${millions(before)} to ${millions(after)} megapixels as it was opened.`;
}
