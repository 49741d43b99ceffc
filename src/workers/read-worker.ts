import type { ReadOptions } from '../sheet/model.ts';
import { readWithPlaces } from '../sheet/read-side.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { decodePicture } from './decode.ts';
import { encodedPicture } from './encode.ts';
import type { ReadAnswer, ReadRequest } from './messages.ts';
import { pictureLimits } from './picture-limits.ts';
import { scaledOptions } from './scaled-options.ts';

/** A thin shell: bytes in; reading, places and the picture to keep out. Requests are taken one after the other. */
const page = self as unknown as {
  postMessage(message: ReadAnswer, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<ReadRequest>) => void) | null;
};

let turn: Promise<void> = Promise.resolve();
page.onmessage = ({ data }) => {
  turn = turn.then(() => answer(data));
};

async function answer(request: ReadRequest): Promise<void> {
  const { id } = request;
  const tell = (stage: 'opening' | 'reading' | 'keeping', fraction: number) =>
    page.postMessage({ id, kind: 'progress', stage, fraction });
  try {
    tell('opening', 0.05);
    const decoded = await decodePicture(request.bytes);
    const { image, canvas, opaque, fullWidth, fullHeight, notes } = decoded;
    const { width, height } = image;
    tell('reading', 0.4);
    const options: ReadOptions = scaledOptions(request.options, width / fullWidth);
    const { side, places } = readWithPlaces(image, options);
    tell('keeping', 0.85);
    const drawn = decoded.kind !== 'jpeg' && decoded.kind !== 'heic';
    const encode = (longest: number) =>
      request.withPicture ? encodedPicture(canvas, longest, opaque, drawn) : null;
    const picture = await encode(pictureLimits.keptSide);
    const thumb = await encode(pictureLimits.thumbSide);
    const handed = [places.labels.buffer, picture?.bytes, thumb?.bytes].filter((part) => part !== undefined);
    page.postMessage(
      { id, kind: 'done', side, places, width, height, fullWidth, fullHeight, notes, picture, thumb },
      handed as Transferable[],
    );
  } catch (error) {
    const says =
      error instanceof UnreadableImage
        ? error.message
        : 'This picture could not be read: there may be too little memory. Close other pages, or drop a smaller copy.';
    page.postMessage({ id, kind: 'failed', says });
  }
}
