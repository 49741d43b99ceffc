import type { IFD } from 'utif2';
import { linearTable } from '../colour/light-tables.ts';
import { profileNote, type RawPicture } from '../files/raw-picture.ts';
import { type RowReader, reducedPicture, rowsOfRgba } from '../files/reduced-picture.ts';
import { planarTiff, sixteenBitsRead } from '../files/words/opening-words.ts';
import { separated, torn } from '../files/words/picture-refusals.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { upright } from './decode-turn.ts';

type Utif = typeof import('utif2');

/**
 * The largest page of a TIFF file, 8 or 16 bits a channel, upright.
 * Source: Adobe, TIFF Revision 6.0 (1992), for the tags.
 * @throws UnreadableImage where it can't be decoded, or is separated for a press (CMYK).
 */
export async function tiffPicture(
  bytes: ArrayBuffer,
  checkSize: (width: number, height: number) => void,
  mostPixels: number,
): Promise<RawPicture> {
  const loaded = await import('utif2');
  // The package is one object; how it arrives depends on who bundled it.
  const utif = (loaded as { default?: Utif }).default ?? loaded;
  const page = largest(attempt(() => utif.decode(bytes)));
  const width = numberOf(page, 256) ?? 0;
  const height = numberOf(page, 257) ?? 0;
  checkSize(width, height);
  refuseSeparations(page);
  attempt(() => utif.decodeImage(bytes, page));
  const image = reducedPicture(
    width,
    height,
    attempt(() => rowsOf(page, utif)),
    mostPixels,
  );
  const orientation = numberOf(page, 274) ?? 1;
  const onSide = orientation >= 5 && orientation <= 8;
  const icc = page.t34675 as unknown as ArrayLike<number> | undefined;
  return {
    image: upright(image, orientation),
    fullWidth: onSide ? height : width,
    fullHeight: onSide ? width : height,
    colours: profileNote(icc === undefined ? null : Uint8Array.from(icc)),
    notes: numberOf(page, 258) === 16 ? [sixteenBitsRead] : [],
  };
}

function largest(pages: readonly IFD[]): IFD {
  const area = (page: IFD) => (numberOf(page, 256) ?? 0) * (numberOf(page, 257) ?? 0);
  const found = [...pages].sort((a, b) => area(b) - area(a))[0];
  if (found === undefined || area(found) === 0) throw torn('tiff');
  return found;
}

function refuseSeparations(page: IFD): void {
  if (numberOf(page, 262) === 5) {
    throw separated('tiff');
  }
  if (numberOf(page, 284) === 2 && (numberOf(page, 277) ?? 1) > 1) {
    throw new UnreadableImage(planarTiff);
  }
}

/** 8 and 16 bits of grey and RGB straight from the samples; whatever else there is by way of 8-bit RGBA. */
function rowsOf(page: IFD, utif: Utif): RowReader {
  const { data, width } = page;
  const kind = numberOf(page, 262) ?? 2;
  const bits = numberOf(page, 258) ?? 1;
  const samples = numberOf(page, 277) ?? (kind === 2 ? 3 : 1);
  const plainKind = kind === 0 || kind === 1 || (kind === 2 && samples >= 3);
  if (!plainKind || (bits !== 8 && bits !== 16)) return rowsOfRgba(utif.toRGBA8(page), width);
  const bytes = bits / 8;
  const most = 2 ** bits - 1;
  const linear = linearTable(most + 1);
  const colours = kind === 2 ? 3 : 1;
  const extra = numberOf(page, 338);
  const alphaAt = samples > colours && (extra === 1 || extra === 2) ? colours : -1;
  // Whoever unpacked the samples left them with the low byte first.
  const sample =
    bytes === 1
      ? (at: number) => data[at] ?? 0
      : (at: number) => (data[at] ?? 0) | ((data[at + 1] ?? 0) << 8);
  return (y, row) => {
    let at = y * width * samples * bytes;
    for (let i = 0; i < width * 4; i += 4, at += samples * bytes) {
      const alpha = alphaAt < 0 ? 1 : sample(at + alphaAt * bytes) / most;
      for (let c = 0; c < 3; c++) {
        let value = sample(at + Math.min(c, colours - 1) * bytes);
        if (kind === 0) value = most - value;
        if (extra === 1 && alpha > 0) value = Math.min(most, Math.round(value / alpha));
        row[i + c] = linear[value]!;
      }
      row[i + 3] = alpha;
    }
  };
}

function numberOf(page: IFD, tag: number): number | undefined {
  const value = (page[`t${tag}`] as ArrayLike<number> | undefined)?.[0];
  return typeof value === 'number' ? value : undefined;
}

function attempt<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw torn('tiff', error);
  }
}
