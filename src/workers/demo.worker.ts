import { demoNotebook } from '../demo/notebook.ts';
import type { Notebook } from '../notebook/model.ts';
import { readSide } from '../sheet/read-side.ts';
import { encodedPicture } from './encode.ts';
import type { EncodedPicture } from './messages.ts';
import { pictureLimits } from './picture-limits.ts';

/** What the demo worker says: first the notebook, so that it can be shown, then each picture. */
export type DemoAnswer =
  | { readonly kind: 'notebook'; readonly notebook: Notebook }
  | {
      readonly kind: 'picture';
      readonly id: string;
      readonly picture: EncodedPicture;
      readonly thumb: EncodedPicture;
    }
  | { readonly kind: 'done' };

/** A thin shell: draws the demo's papers, reads them and packs their pictures, once, and ends. */
const page = self as unknown as { postMessage(message: DemoAnswer, transfer?: Transferable[]): void };

const { notebook, pictures } = demoNotebook(readSide);
page.postMessage({ kind: 'notebook', notebook });
for (const { id, image } of pictures) {
  const canvas = new OffscreenCanvas(image.width, image.height);
  const pixels = new ImageData(image.width, image.height);
  pixels.data.set(image.data);
  canvas.getContext('2d')?.putImageData(pixels, 0, 0);
  const picture = await encodedPicture(canvas, pictureLimits.keptSide, true, true);
  const thumb = await encodedPicture(canvas, pictureLimits.thumbSide, true, false);
  page.postMessage({ kind: 'picture', id, picture, thumb }, [picture.bytes, thumb.bytes]);
}
page.postMessage({ kind: 'done' });
