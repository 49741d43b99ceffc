import { drawDemoSheet } from '../demo/sheets.ts';
import { pictureLimits } from '../files/picture-limits.ts';
import { encodedPicture } from './encode.ts';
import type { EncodedPicture } from './messages.ts';

/** The demo's pictures to draw, in the order in which they are wanted. */
export type DemoRequest = readonly {
  readonly pictureId: string;
  readonly sheetId: string;
  readonly side: 'A' | 'B';
}[];

export type DemoAnswer =
  | {
      readonly kind: 'picture';
      readonly id: string;
      readonly picture: EncodedPicture;
      readonly thumb: EncodedPicture;
    }
  | { readonly kind: 'done' };

/** The size at which the demo's papers are drawn and were read, in pixels. */
const px = 640;

/** A thin shell: draws the demo's papers and packs their pictures. */
const page = self as unknown as {
  postMessage(message: DemoAnswer, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<DemoRequest>) => void) | null;
};

page.onmessage = async ({ data }) => {
  for (const { pictureId, sheetId, side } of data) {
    const image = drawDemoSheet(sheetId, side, px);
    const canvas = new OffscreenCanvas(image.width, image.height);
    const pixels = new ImageData(image.width, image.height);
    pixels.data.set(image.data);
    canvas.getContext('2d')?.putImageData(pixels, 0, 0);
    const picture = await encodedPicture(canvas, pictureLimits.keptSide, true, true);
    const thumb = await encodedPicture(canvas, pictureLimits.thumbSide, true, false);
    page.postMessage({ kind: 'picture', id: pictureId, picture, thumb }, [picture.bytes, thumb.bytes]);
  }
  page.postMessage({ kind: 'done' });
};
