import { basename, extname } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import sharp from 'sharp';
import { boardKinds } from '../board/kinds.ts';
import { boardSvg } from '../board/svg.ts';
import type { Advised } from '../harmony/model.ts';
import { fontFaceCss, withFontFiles } from './fonts.ts';
import type { ReadPicture } from './read-picture.ts';

/** Longer side of a paper's picture on a board, in pixels: what its place at 300 ppi can show. */
const pictureSide = 1400;

/** The board of a comparison as a file's content: an SVG with its fonts and pictures inside, or a PNG. */
export async function boardContent(
  kind: 'svg' | 'png',
  comparison: Advised,
  anchor: ReadPicture,
  candidate: ReadPicture,
): Promise<string | Uint8Array> {
  const [anchorPicture, candidatePicture] = await Promise.all([pictureData(anchor), pictureData(candidate)]);
  const board = boardKinds.pair.draw(comparison, {
    names: { anchor: nameOf(anchor.file), candidate: nameOf(candidate.file) },
    pictures: { anchor: anchorPicture, candidate: candidatePicture },
  });
  if (kind === 'svg') return boardSvg(board, { fontCss: await fontFaceCss() });
  return pngOf(boardSvg(board));
}

/** An SVG as PNG, in the bundled fonts and no others. */
export function pngOf(svg: string): Promise<Uint8Array> {
  return withFontFiles((fontFiles) =>
    new Resvg(svg, {
      font: { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: 'Literata' },
      logLevel: 'off',
    })
      .render()
      .asPng(),
  );
}

/** A file's name as a paper's: "old-bunting.jpg" becomes "Old bunting". */
export function nameOf(file: string): string {
  const words = basename(file, extname(file))
    .replace(/[-_\s]+/g, ' ')
    .trim();
  return words === '' ? basename(file) : words.charAt(0).toUpperCase() + words.slice(1);
}

/** What was read, as a data: address: JPEG, or PNG where something shows through. */
async function pictureData({ image, crop }: ReadPicture): Promise<string> {
  const { data, width, height } = image;
  const whole = sharp(Buffer.from(data.buffer, data.byteOffset, data.byteLength), {
    raw: { width, height, channels: 4 },
  });
  const part = crop
    ? whole.extract({ left: crop.x, top: crop.y, width: crop.width, height: crop.height })
    : whole;
  const small = part.resize(pictureSide, pictureSide, { fit: 'inside', withoutEnlargement: true });
  const opaque = everyAlphaFull(data);
  const bytes = await (opaque
    ? small.removeAlpha().jpeg({ quality: 88, chromaSubsampling: '4:4:4' })
    : small.png()
  ).toBuffer();
  return `data:image/${opaque ? 'jpeg' : 'png'};base64,${bytes.toString('base64')}`;
}

function everyAlphaFull(data: Uint8ClampedArray): boolean {
  for (let i = 3; i < data.length; i += 4) if (data[i] !== 255) return false;
  return true;
}
