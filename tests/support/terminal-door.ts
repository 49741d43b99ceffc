import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { readPicture } from '../../src/cli/read-picture.ts';
import type { Card, Places, Side } from '../../src/sheet/model.ts';
import { drawSheet } from './sheets/draw-sheet.ts';
import { type CastKind, photograph } from './sheets/photograph.ts';

/** A photograph as a PNG file, the card in it, and what the terminal reads from the file. */
export interface TerminalDoor {
  /** Base64. */
  readonly png: string;
  readonly width: number;
  readonly height: number;
  readonly card: Card;
  readonly side: Side;
  readonly places: { readonly width: number; readonly height: number; readonly labels: readonly number[] };
}

/** Draws a small sheet on a table beside a card, and has the terminal read its file, as 305 mm wide. */
export async function throughTerminal(kind: CastKind, seed: number): Promise<TerminalDoor> {
  const { image, card } = await photograph(drawSheet(seed, { width: 360 }), seed, kind);
  const { data, width, height } = image;
  const png = await sharp(data, { raw: { width, height, channels: 4 } })
    .png()
    .toBuffer();
  const folder = await mkdtemp(join(tmpdir(), 'quirewise-door-'));
  try {
    await writeFile(join(folder, 'sheet.png'), png);
    const { side, places } = await readPicture({ file: 'sheet.png', widthMm: 305, card }, folder);
    return { png: png.toString('base64'), width, height, card, side, places: plain(places) };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function plain({ width, height, labels }: Places): TerminalDoor['places'] {
  return { width, height, labels: [...labels] };
}
