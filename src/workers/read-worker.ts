import { pictureLimits } from '../files/picture-limits.ts';
import { tooLittleMemory } from '../files/words/opening-words.ts';
import { type ReadPhotograph, readPhotograph } from '../sheet/light/photograph.ts';
import type { PixelImage } from '../sheet/model.ts';
import { findPaper } from '../sheet/outline/find-paper.ts';
import { readWithPlaces } from '../sheet/read-side.ts';
import { sizeOfCorners } from '../sheet/sold-sizes.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { type Decoded, decodePicture } from './decode.ts';
import { encodedPicture } from './encode.ts';
import { lookedAt } from './looked.ts';
import type { ReadAnswer, ReadRequest } from './messages.ts';
import { scaledOptions } from './scaled-options.ts';
import { colourAtSpot } from './spot-colour.ts';

/** A thin shell: bytes in; reading, places and the picture to keep out. Requests are taken one after the other. */
const page = self as unknown as {
  postMessage(message: ReadAnswer, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<ReadRequest>) => void) | null;
};

/** Wait before the reader is run in, in ms: a picture that is there already goes first. */
const runInAfterMs = 300;
const runningIn = setTimeout(runIn, runInAfterMs);

let turn: Promise<void> = Promise.resolve();
page.onmessage = ({ data }) => {
  clearTimeout(runningIn);
  turn = turn.then(() => answer(data));
};

async function answer(request: ReadRequest): Promise<void> {
  const { id, look } = request;
  const tell = (stage: 'opening' | 'reading' | 'keeping', fraction: number) =>
    page.postMessage({ id, kind: 'progress', stage, fraction });
  try {
    tell('opening', 0.05);
    const decoded = await decodePicture(request.bytes);
    if (look !== undefined) {
      page.postMessage({ id, kind: 'looked', ...lookedAt(decoded.image, look) });
      return;
    }
    const { fullWidth, fullHeight, notes } = decoded;
    tell('reading', 0.4);
    const found = request.findsPaper === true ? paperOn(decoded.image) : null;
    const { side, places, image } = readAs(
      decoded,
      found?.cut ? { ...request, prepare: found.cut } : request,
    );
    const { width, height } = image;
    const spotColours = (request.spots ?? []).map((spot) => colourAtSpot(image, spot));
    tell('keeping', 0.85);
    const canvas = request.withPicture ? canvasOf(decoded, image) : null;
    const drawn = image === decoded.image && decoded.kind !== 'jpeg' && decoded.kind !== 'heic';
    const encode = (longest: number) =>
      canvas === null ? null : encodedPicture(canvas, longest, decoded.opaque, drawn);
    const picture = await encode(pictureLimits.keptSide);
    const thumb = await encode(pictureLimits.thumbSide);
    const paper = found && {
      corners: found.corners,
      sizeMm: found.sizeMm,
      taken: found.cut
        ? await encodedPicture(decoded.canvas, pictureLimits.keptSide, decoded.opaque, false)
        : null,
    };
    const handed = [places.labels.buffer, picture?.bytes, thumb?.bytes, paper?.taken?.bytes].filter(
      (part) => part !== undefined,
    );
    page.postMessage(
      {
        id,
        kind: 'done',
        side,
        places,
        width,
        height,
        fullWidth,
        fullHeight,
        notes,
        spotColours,
        picture,
        thumb,
        ...(paper ? { paper } : {}),
      },
      handed as Transferable[],
    );
  } catch (error) {
    const says = error instanceof UnreadableImage ? error.message : tooLittleMemory;
    page.postMessage({ id, kind: 'failed', says });
  }
}

/**
 * Reads a made picture of a sheet that lies askew, so that a first real one finds what reads it compiled: a first reading
 * took about twice as long as a fifth.
 */
function runIn(): void {
  const [width, height] = [640, 480];
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [u, v] = [(x - 320 + 0.2 * (y - 240)) / 150, (y - 240 - 0.2 * (x - 320)) / 150];
      const isPaper = Math.abs(u) < 1 && Math.abs(v) < 1;
      const isDot = Math.hypot(u - Math.round(u * 3) / 3, v - Math.round(v * 3) / 3) < 0.1;
      data.set(
        isPaper ? (isDot ? [196, 60, 70, 255] : [244, 232, 205, 255]) : [90, 70, 55, 255],
        (y * width + x) * 4,
      );
    }
  const image = { data, width, height };
  for (let round = 0; round < 2; round++) {
    const found = paperOn(image);
    if (found?.cut) readPhotograph(image, found.cut);
  }
}

/** The paper that lies on a table, the size that it has, and how it is cut out; that only where its corners are sure. */
function paperOn(image: PixelImage) {
  const found = findPaper(image);
  if (found === null) return null;
  const { corners, isSure } = found;
  const sizeMm = sizeOfCorners(corners, image.width / image.height);
  return { corners, sizeMm, cut: isSure ? { corners, sizeMm } : null };
}

/** The reading of a picture, as the request wants it, and the picture to be kept. */
function readAs({ image, fullWidth }: Decoded, { options, prepare }: ReadRequest): ReadPhotograph {
  if (prepare !== undefined) return readPhotograph(image, prepare);
  return { ...readWithPlaces(image, scaledOptions(options, image.width / fullWidth)), image };
}

/** The canvas that it was decoded to, or a fresh one where something was done to it since. */
function canvasOf(decoded: Decoded, image: PixelImage): OffscreenCanvas {
  if (image === decoded.image) return decoded.canvas;
  const canvas = new OffscreenCanvas(image.width, image.height);
  const data = image.data as Uint8ClampedArray<ArrayBuffer>;
  canvas.getContext('2d', { colorSpace: 'srgb' })?.putImageData(new ImageData(data, image.width), 0, 0);
  return canvas;
}
