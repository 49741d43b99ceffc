import { pictureLimits } from '../files/picture-limits.ts';
import { encodedPicture } from './encode.ts';
import type { SmallAnswer, SmallRequest } from './messages.ts';

/** A thin shell: a picture's file in, a small picture of it out, so that decoding many of them does not hold up the page. */
const page = self as unknown as {
  postMessage(message: SmallAnswer, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<SmallRequest>) => void) | null;
};

page.onmessage = ({ data: { id, picture, wantsSmall } }) => {
  small(picture, wantsSmall).then(
    (thumb) => page.postMessage({ id, isSound: true, thumb }, thumb === null ? [] : [thumb.bytes]),
    () => page.postMessage({ id, isSound: false, thumb: null }),
  );
};

async function small(picture: Blob, wantsSmall: boolean): Promise<SmallAnswer['thumb']> {
  const whole = await createImageBitmap(picture);
  try {
    if (!wantsSmall) return null;
    const canvas = new OffscreenCanvas(whole.width, whole.height);
    canvas.getContext('2d', { colorSpace: 'srgb' })?.drawImage(whole, 0, 0);
    const isPng = picture.type === 'image/png';
    const { bytes, type } = await encodedPicture(canvas, pictureLimits.thumbSide, !isPng, isPng);
    return { bytes, type };
  } finally {
    whole.close();
  }
}
