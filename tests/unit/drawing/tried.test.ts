import { describe, expect, it } from 'vitest';
import { deltaE2000FromOne, labFromBytes } from '../../../src/colour/batch.ts';
import { labFromHex } from '../../../src/colour/spaces.ts';
import { drawDemoSheet } from '../../../src/demo/sheets.ts';
import { changedPaper, type PaperChange, piecesOn } from '../../../src/drawing/tried/changed-paper.ts';
import { pairLayout } from '../../../src/drawing/tried/pair-layout.ts';
import { familyPlaces } from '../../../src/harmony/measure/family-places.ts';
import { takeSide } from '../../../src/harmony/measure/take-side.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { readWithPlaces } from '../../../src/sheet/read-side.ts';

const image = drawDemoSheet('pip-hearts', 'A', 480);
const { side: read, places } = readWithPlaces(image);
const side = takeSide(read, 'candidate');
const inside = new Map(
  side.families.map(({ id, inks }) => [id, side.within.filter((ink) => inks.includes(ink.id))] as const),
);
const paper = { image, places: familyPlaces(places, side), side, inside };
/** The colour that covers most beside the base. */
const [gone] = side.inks.toSorted((a, b) => b.share - a.share);
const green = inkFromHex('#2f6f4f', 'green');

/** Share of what can be seen that lies within ΔE₀₀ 4 of a colour. */
function shareNear({ data }: { readonly data: Uint8ClampedArray }, hex: string): number {
  const { l, a, b } = labFromHex(hex);
  const apart = deltaE2000FromOne([l, a, b], labFromBytes(data));
  let near = 0;
  for (let i = 0; i < apart.length; i += 1) if (data[i * 4 + 3]! > 0 && apart[i]! <= 4) near += 1;
  return near / apart.length;
}

const tried = (...changes: PaperChange[]) => changedPaper(paper, changes);

/** Source: ours; the colours of the demo's papers are known, CIEDE2000 says what of them is left. */
describe('a change drawn on a paper', () => {
  it('leaves nothing of a colour that is covered, cut away or recoloured', () => {
    const { id, hex } = gone!;
    expect(shareNear(image, hex)).toBeGreaterThan(0.02);
    const covered = tried({ kind: 'cover', of: 'candidate', ink: id, with: green });
    expect(shareNear(covered, hex)).toBe(0);
    expect(shareNear(covered, green.hex)).toBeGreaterThan(0.02);
    expect(shareNear(tried({ kind: 'trim', of: 'candidate', ink: id }), hex)).toBe(0);
    const recoloured = tried({ kind: 'recolour', of: 'candidate', ink: id, to: green });
    expect(shareNear(recoloured, hex)).toBe(0);
    expect(shareNear(recoloured, green.hex)).toBeGreaterThan(0.02);
  });

  it('leaves the base and the picture that was given as they were', () => {
    const before = image.data.slice();
    const covered = tried({ kind: 'cover', of: 'candidate', ink: gone!.id, with: green });
    expect(Buffer.from(image.data).equals(Buffer.from(before))).toBe(true);
    expect(shareNear(covered, side.base.hex)).toBeGreaterThan(0.9 * shareNear(image, side.base.hex));
  });

  it('cuts a colour down from the right where some of it stays', () => {
    const { id, hex, share } = gone!;
    const half = tried({ kind: 'trim', of: 'candidate', ink: id, toShare: share / 2 });
    expect(shareNear(half, hex)).toBeGreaterThan(0.3 * shareNear(image, hex));
    expect(shareNear(half, hex)).toBeLessThan(0.7 * shareNear(image, hex));
    const seen = (x: number) => {
      for (let y = 0; y < image.height; y += 1)
        if (half.data[(y * image.width + x) * 4 + 3] === 0) return false;
      return true;
    };
    expect(seen(2)).toBe(true);
  });

  it('lays a colour on in three pieces that have its share between them', () => {
    const pieces = piecesOn([{ kind: 'add', of: 'anchor', ink: green, share: 0.03 }], 1.5);
    expect(pieces).toHaveLength(3);
    const area = pieces.reduce((sum, { radius }) => sum + Math.PI * radius ** 2, 0);
    expect(area / 1.5).toBeCloseTo(0.03, 6);
  });
});

/** Source: ours; what touches has no gap, and what lies between meets both. */
describe('how a tried pair lies', () => {
  const lies = { anchor: 1, candidate: 1 };

  it('touches, or lies apart', () => {
    const touching = pairLayout({ ...lies, distance: 'touching', between: null });
    expect(touching.candidate.x).toBe(1);
    expect(touching.strip).toBeNull();
    expect(pairLayout({ ...lies, distance: 'apart', between: null }).candidate.x).toBeGreaterThan(1);
  });

  it('has a strip that meets both papers, or a mat that shows all round one', () => {
    const { strip, candidate } = pairLayout({ ...lies, distance: 'apart', between: 'strip' });
    expect(strip!.x).toBe(1);
    expect(strip!.x + strip!.width).toBeCloseTo(candidate.x, 9);
    const { mat, candidate: mounted } = pairLayout({ ...lies, distance: 'apart', between: 'mat' });
    expect(mounted.x - mat!.x).toBeCloseTo(mat!.x + mat!.width - mounted.x - mounted.width, 9);
    expect(mounted.y - mat!.y).toBeCloseTo(mat!.height - mounted.height - mounted.y, 9);
    expect(mat!.x).toBeGreaterThan(1);
  });
});
