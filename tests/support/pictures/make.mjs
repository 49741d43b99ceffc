/**
 * Makes the small HEIC files beside this one from our own drawing: `node tests/support/pictures/make.mjs` on a machine
 * with heif-enc (Debian: libheif-examples), because nothing that runs in a test can encode HEVC. The drawing is a
 * 96 × 64 paper in four flat quarters of 48 × 32: cream, navy, coral, aqua, from the top left by rows.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const quarters = [
  [244, 232, 205],
  [31, 58, 95],
  [226, 114, 91],
  [98, 191, 193],
];
const pixels = Buffer.alloc(96 * 64 * 3);
for (let y = 0; y < 64; y++) {
  for (let x = 0; x < 96; x++) {
    pixels.set(quarters[(y < 32 ? 0 : 2) + (x < 48 ? 0 : 1)], (y * 96 + x) * 3);
  }
}
const here = dirname(fileURLToPath(import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'heic-'));
const drawn = () => sharp(pixels, { raw: { width: 96, height: 64, channels: 3 } });

// The same colours twice: as plain sRGB, and as a wide-gamut photograph holds them, in Display P3 with its profile.
await encode('quarters', await drawn().png().toBuffer());
await encode('quarters-p3', await drawn().withIccProfile('p3').png().toBuffer());

async function encode(name, png) {
  const from = join(scratch, `${name}.png`);
  writeFileSync(from, png);
  execFileSync('heif-enc', ['-q', '95', '-p', 'chroma=444', from, '-o', join(here, `${name}.heic`)]);
}
