import sharp from 'sharp';

/** A paper as a file on the desktop. */
export interface PaperFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

type Rgb = readonly [number, number, number];

const cream: Rgb = [244, 232, 205];

/** Navy and coral dots on cream, as a PNG of the given width. */
export function dotsFile(name = 'old-dots.png', px = 480): Promise<PaperFile> {
  return paperFile(name, px, (x, y) => {
    const [column, row] = [Math.floor(x / 40), Math.floor(y / 40)];
    const inside = Math.hypot((x % 40) - 20, (y % 40) - 20) < 12;
    return inside ? ((column + row) % 2 === 0 ? [31, 58, 95] : [226, 114, 91]) : cream;
  });
}

/** Navy and raspberry stripes on cream. */
export function stripesFile(name = 'new-stripes.png', px = 480): Promise<PaperFile> {
  return paperFile(name, px, (x) =>
    x % 60 < 16 ? [32, 57, 93] : x % 60 > 40 && x % 60 < 46 ? [194, 59, 78] : cream,
  );
}

/** A paper of which each pixel is a colour by its place. */
async function paperFile(
  name: string,
  px: number,
  colourAt: (x: number, y: number) => Rgb,
): Promise<PaperFile> {
  const pixels = new Uint8Array(px * px * 3);
  for (let y = 0; y < px; y += 1) {
    for (let x = 0; x < px; x += 1) pixels.set(colourAt(x, y), (y * px + x) * 3);
  }
  const bytes = await sharp(pixels, { raw: { width: px, height: px, channels: 3 } })
    .png()
    .toBuffer();
  return { name, type: 'image/png', bytes };
}

/** Files that look like pictures by their names and are none that can be read. */
export async function badFiles(): Promise<readonly PaperFile[]> {
  const clear = {
    create: { width: 64, height: 64, channels: 4, background: { r: 9, g: 9, b: 9, alpha: 0 } },
  } as const;
  const dot = { create: { width: 1, height: 1, channels: 3, background: '#808080' } } as const;
  return [
    { name: 'empty.png', type: 'image/png', bytes: new Uint8Array() },
    { name: 'letter.png', type: 'image/png', bytes: new TextEncoder().encode('Dear all, this is a letter.') },
    { name: 'speck.png', type: 'image/png', bytes: await sharp(dot).png().toBuffer() },
    { name: 'glass.png', type: 'image/png', bytes: await sharp(clear).png().toBuffer() },
  ];
}
