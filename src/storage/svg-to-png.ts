import { pngWithDensity } from './png-density.ts';
import { blankBoard, boardTooLarge } from './words/board-words.ts';
import { StorageTrouble } from './words/trouble.ts';

/** Above this many pixels some tablets give a blank canvas without an error. */
const mostPixels = 16_700_000;
/** Rows drawn in one go; between them the page gets a turn. */
const rowsAtOnce = 240;

/**
 * A stand-alone SVG as a PNG of width × height pixels at 300 to the inch. The canvas is read back, so a blank picture
 * is never handed out. @throws StorageTrouble with one clear sentence.
 */
export async function svgToPng(svg: string, width: number, height: number): Promise<Blob> {
  if (width * height > mostPixels) {
    throw new StorageTrouble('large', boardTooLarge);
  }
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const context = canvas.getContext('2d', { colorSpace: 'srgb' });
    if (context === null) throw blank();
    for (let top = 0; top < height; top += rowsAtOnce) {
      context.save();
      context.beginPath();
      context.rect(0, top, width, rowsAtOnce);
      context.clip();
      context.drawImage(image, 0, 0, width, height);
      context.restore();
      await new Promise((next) => setTimeout(next));
    }
    if (isBlank(canvas)) throw blank();
    const png = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    canvas.width = 0;
    if (png === null) throw blank();
    return new Blob([pngWithDensity(new Uint8Array(await png.arrayBuffer()), 300)], { type: 'image/png' });
  } catch (error) {
    if (error instanceof StorageTrouble) throw error;
    throw blank(error);
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** True where nothing was drawn: a board has a solid ground and at least two colours. */
function isBlank(canvas: HTMLCanvasElement): boolean {
  const small = document.createElement('canvas');
  small.width = small.height = 64;
  const context = small.getContext('2d', { willReadFrequently: true });
  if (context === null) return true;
  context.drawImage(canvas, 0, 0, 64, 64);
  const pixels = new Uint32Array(context.getImageData(0, 0, 64, 64).data.buffer);
  return pixels.some((pixel) => pixel >>> 24 !== 255) || pixels.every((pixel) => pixel === pixels[0]);
}

function blank(cause?: unknown): StorageTrouble {
  return new StorageTrouble('closed', blankBoard, { cause });
}
