/**
 * Makes the small HEIC and AVIF files beside this one from our own drawing: `node tests/support/pictures/make.mjs` on a machine
 * with heif-enc (Debian: libheif-examples), because nothing that runs in a test can encode HEVC. The drawing is a
 * 96 × 64 paper in four flat quarters of 48 × 32: cream, navy, coral, aqua, from the top left by rows.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
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
// As a phone held upright writes them: the pixels as before, and a word to turn them a quarter against the clock.
writeFileSync(join(here, 'quarters-turned.heic'), turned(readFileSync(join(here, 'quarters.heic'))));
writeFileSync(join(here, 'quarters-turned.avif'), turned(await drawn().avif({ lossless: true }).toBuffer()));

async function encode(name, png) {
  const from = join(scratch, `${name}.png`);
  writeFileSync(from, png);
  execFileSync('heif-enc', ['-q', '95', '-p', 'chroma=444', from, '-o', join(here, `${name}.heic`)]);
}

/**
 * The file with an `irot` property of one quarter on its first item. Everything behind it moves by ten bytes.
 * Source: ISO/IEC 23008-12, §6.5.10; ISO/IEC 14496-12, §8.11 for `iloc`, `ipco` and `ipma`.
 */
function turned(file) {
  const at = (name) => file.indexOf(name) - 4;
  const [meta, iprp, ipco, ipma, iloc] = ['meta', 'iprp', 'ipco', 'ipma', 'iloc'].map(at);
  const boxes = ipco + file.readUInt32BE(ipco);
  let properties = 0;
  for (let box = ipco + 8; box < boxes; box += file.readUInt32BE(box)) properties++;
  const count = ipma + 12 + 4 + 2;
  const links = file.readUInt8(count);
  const grown = Buffer.from(file);
  const grow = (box, by) => grown.writeUInt32BE(file.readUInt32BE(box) + by, box);
  grow(meta, 10);
  grow(iprp, 10);
  grow(ipco, 9);
  grow(ipma, 1);
  grown.writeUInt8(links + 1, count);
  // Version 0, four bytes each for offset, length and base: the base stands after item, data and before the extents.
  if (file.readUInt8(iloc + 8) !== 0 || file.readUInt16BE(iloc + 12) !== 0x4440)
    throw new Error('another iloc');
  grow(iloc + 20, 10);
  const irot = Buffer.from([0, 0, 0, 9, ...Buffer.from('irot'), 1]);
  const link = Buffer.from([0x80 | (properties + 1)]);
  const behind = count + 1 + links;
  return Buffer.concat([
    grown.subarray(0, boxes),
    irot,
    grown.subarray(boxes, behind),
    link,
    grown.subarray(behind),
  ]);
}
