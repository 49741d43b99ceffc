import { readSide } from '../../src/sheet/read-side.ts';
import { toImage } from '../support/sheets/draw-sheet.ts';
import { type Texture, texturedPlain } from '../support/sheets/texture.ts';
import { apartBy, type Rgb3, rgbOfHex } from '../support/sheets/truth-colour.ts';

const papers: readonly Rgb3[] = [
  [250, 250, 247],
  [246, 234, 210],
  [187, 148, 108],
  [40, 54, 92],
  [214, 120, 90],
  [90, 150, 120],
  [200, 40, 60],
  [128, 128, 130],
];
const textures: readonly Texture[] = ['felt', 'linen', 'laid', 'embossed', 'flecked'];

/** Plain papers with a surface: how many are read as one colour (a fleck at most as an accent), and how near. */
export function plainRow(print: (line: string) => void): void {
  for (const texture of textures) {
    let alone = 0;
    let near = 0;
    let worst = 0;
    papers.forEach((rgb, n) => {
      const side = readSide(toImage(texturedPlain(900 + n, rgb, texture, 700)));
      if (side.inks.every((ink) => texture === 'flecked' && ink.share < 0.05)) alone++;
      const apart = apartBy(rgb, rgbOfHex(side.base.hex));
      worst = Math.max(worst, apart);
      if (apart <= 3) near++;
    });
    print(
      `plain ${texture.padEnd(10)} ${alone} of ${papers.length} read as one colour, ${near} within ΔE₀₀ 3 (worst ${worst.toFixed(1)})`,
    );
  }
}
