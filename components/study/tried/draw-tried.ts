import { changedPaper, piecesOn } from '../../../src/drawing/tried/changed-paper.ts';
import { type Box, pairLayout } from '../../../src/drawing/tried/pair-layout.ts';
import type { TriedPair, TriedPaper } from './tried-view.ts';

/** Pictures by their address, for as long as an element holds them. */
export type Pictures = Map<string, Promise<ImageBitmap | null>>;

/** Pixels of one paper's width. */
const paperPx = 480;

/** Draws a pair as it lies on its canvas, on the tone of the mat. */
export async function drawTried(
  canvas: HTMLCanvasElement,
  pair: TriedPair,
  mat: string,
  pictures: Pictures,
): Promise<void> {
  const [anchor, candidate] = await Promise.all(
    [pair.anchor, pair.candidate].map(({ picture }) => loaded(picture, pictures)),
  );
  const aspect = (image: ImageBitmap | null | undefined) => (image ? image.height / image.width : 1);
  const layout = pairLayout({
    anchor: aspect(anchor),
    candidate: aspect(candidate),
    distance: pair.distance,
    between: pair.between?.as ?? null,
  });
  const px = (one: number) => Math.round(one * paperPx);
  canvas.width = px(layout.width);
  canvas.height = px(layout.height);
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  context.fillStyle = mat;
  context.fillRect(0, 0, canvas.width, canvas.height);
  const flat = ({ x, y, width, height }: Box, hex: string) => {
    context.fillStyle = hex;
    context.fillRect(px(x), px(y), px(width), px(height));
  };
  if (layout.strip && pair.between) flat(layout.strip, pair.between.hex);
  if (layout.mat && pair.between) flat(layout.mat, pair.between.hex);
  for (const [paper, image, box] of [
    [pair.anchor, anchor, layout.anchor],
    [pair.candidate, candidate, layout.candidate],
  ] as const) {
    const { canvas: drawn } = drawPaper(paper, image ?? null, px(box.width), px(box.height));
    context.drawImage(drawn, px(box.x), px(box.y));
  }
}

function drawPaper(paper: TriedPaper, image: ImageBitmap | null, width: number, height: number) {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  if (image === null) drawShares(context, paper, width, height);
  else {
    context.drawImage(image, 0, 0, width, height);
    const { places, side, inside, changes } = paper;
    if (places !== null && changes.length > 0) {
      const before = context.getImageData(0, 0, width, height);
      const after = changedPaper({ image: before, places, side, inside }, changes);
      context.putImageData(new ImageData(new Uint8ClampedArray(after.data), width, height), 0, 0);
    }
  }
  for (const { hex, x, y, radius } of piecesOn(paper.changes, height / width)) {
    context.beginPath();
    context.arc(x * width, y * width, radius * width, 0, 2 * Math.PI);
    context.shadowColor = 'rgb(0 0 0 / 0.35)';
    context.shadowBlur = 5;
    context.shadowOffsetY = 2;
    context.fillStyle = hex;
    context.fill();
    context.shadowColor = 'transparent';
  }
  return context;
}

/** Of a paper without a picture: its colours as bands, by their shares. */
function drawShares(context: CanvasRenderingContext2D, { side }: TriedPaper, width: number, height: number) {
  let top = 0;
  for (const { hex, share } of [side.base, ...side.inks]) {
    context.fillStyle = hex;
    context.fillRect(0, Math.floor(top * height), width, Math.ceil(share * height) + 1);
    top += share;
  }
}

function loaded(address: string | null, pictures: Pictures): Promise<ImageBitmap | null> {
  if (address === null) return Promise.resolve(null);
  const known = pictures.get(address);
  if (known !== undefined) return known;
  const image = new Image();
  image.src = address;
  const coming = image.decode().then(
    () => createImageBitmap(image),
    () => null,
  );
  pictures.set(address, coming);
  return coming;
}
