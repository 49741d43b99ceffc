import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { pngOf } from '../../src/cli/board-file.ts';
import { boardFonts, fontFaceCss, withFontFiles } from '../../src/cli/fonts.ts';
import { sfntFromWoff } from '../../src/cli/woff.ts';
import { fontStacks } from '../../src/drawing/fonts.ts';

function textSvg(face: 'serif' | 'sans', text: string, more = ''): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="60"><rect width="400" height="60" fill="#fff"/>` +
    `<text x="10" y="40" font-size="30" font-family="${fontStacks[face].replaceAll('"', "'")}" ${more}>${text}</text></svg>`
  );
}

/** How much black lies on a picture that is otherwise white, in pixels. */
async function blackOf(svg: string): Promise<number> {
  const pixels = await withFontFiles((fontFiles) => {
    const font = { loadSystemFonts: false, fontFiles: [...fontFiles] };
    return new Resvg(svg, { font }).render().pixels;
  });
  return dark(pixels);
}

function dark(pixels: Uint8Array): number {
  let sum = 0;
  for (let i = 0; i < pixels.length; i += 4) sum += 1 - pixels[i]! / 255;
  return sum;
}

describe('the fonts of a board', () => {
  it('unpack from WOFF to a font whose tables have the checksums that they state', () => {
    const woff = readFileSync(createRequire(import.meta.url).resolve(`${boardFonts[0]!.path}.woff`));
    expect(sfntFromWoff(woff).length).toBe(woff.readUInt32BE(16));
    const sfnt = sfntFromWoff(woff, 'Literata');
    const view = new DataView(sfnt.buffer);
    for (let i = 0; i < view.getUint16(4); i += 1) {
      const entry = 12 + 16 * i;
      const tag = Buffer.from(sfnt.subarray(entry, entry + 4)).toString('latin1');
      const [offset, length] = [view.getUint32(entry + 8), view.getUint32(entry + 12)];
      let sum = 0;
      for (let at = 0; at < length; at += 4) sum = (sum + view.getUint32(offset + at)) >>> 0;
      // The head table is summed with its own adjustment left out (OpenType 1.9, "Calculating checksums").
      if (tag === 'head') sum = (sum - view.getUint32(offset + 8)) >>> 0;
      expect(sum, tag).toBe(view.getUint32(entry + 4));
    }
  });

  it('refuse what is no WOFF file', () => {
    expect(() => sfntFromWoff(new Uint8Array(60))).toThrow(RangeError);
    expect(() => sfntFromWoff(new Uint8Array(3))).toThrow(RangeError);
  });

  it.each([
    ['serif', 'Coral and raspberry', ''],
    ['serif', 'Coral and raspberry', 'font-style="italic"'],
    ['serif', 'Coral and raspberry', 'font-weight="600"'],
    ['sans', 'hue 14°, apart', ''],
    ['sans', 'ΔE', ''],
    ['serif', 'ΔE', ''],
    ['sans', '−1.2 – “both”…', ''],
  ] as const)('draw %s “%s” %s where there is no font on the system', async (face, text, more) => {
    const svg = textSvg(face, text, more);
    const without = new Resvg(svg, { font: { loadSystemFonts: false } }).render().pixels;
    expect(dark(without)).toBe(0);
    expect(await blackOf(svg)).toBeGreaterThan(text.length * 20);
  });

  it('draw each face, weight and slope by itself', async () => {
    const looks = [
      textSvg('serif', 'Hold together'),
      textSvg('serif', 'Hold together', 'font-style="italic"'),
      textSvg('serif', 'Hold together', 'font-weight="600"'),
      textSvg('sans', 'Hold together'),
      textSvg('sans', 'Hold together', 'font-weight="600"'),
    ];
    const amounts = await Promise.all(looks.map(blackOf));
    expect(new Set(amounts.map((amount) => Math.round(amount))).size).toBe(looks.length);
    expect(amounts[2]).toBeGreaterThan(amounts[0]! * 1.1);
    expect(amounts[4]).toBeGreaterThan(amounts[3]! * 1.1);
  });

  it('make a PNG of the size that the SVG states', async () => {
    const png = Buffer.from(await pngOf(textSvg('serif', 'Board')));
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([400, 60]);
  });

  it('go into an SVG as data, and name no address outside', async () => {
    const css = await fontFaceCss();
    expect(css.match(/@font-face/g)?.length).toBe(boardFonts.length);
    expect(css).not.toMatch(/https?:/);
    expect(css.length).toBeLessThan(600_000);
  });
});
