import { describe, expect, it } from 'vitest';
import { isCameraName, sheetNames } from '../../../src/workbench/reading/picture-names.ts';
import { openSession, pictureFile } from './open-session.ts';

describe('the name of a sheet', () => {
  // Shapes of file names that devices give: from memory, no source.
  it.each([
    'IMG_1234.jpg',
    'IMG_20251103_141522.jpg',
    'IMG-20240101-WA0007.jpg',
    'DSC01234.JPG',
    'DSCF0042.jpg',
    'PXL_20251103_141522123.MP.jpg',
    '20251103_141522.jpg',
    '2025-11-03 14.15.22.jpg',
    'image.png',
    'image (2).png',
    'photo.jpg',
    'Screenshot 2025-11-03 at 14.15.22.png',
    '3f2504e0-4f89-41d3-9a0c-0305e82c3301.jpeg',
  ])('is not what a device called its picture: %s', (file) => {
    expect(isCameraName(file)).toBe(true);
  });

  it.each([
    'old-dots.png',
    'img blossom.png',
    'photo of roses.jpg',
    'Decade.jpg',
    'p.png',
    '12x12 kraft.png',
  ])('is kept where a person gave it: %s', (file) => {
    expect(isCameraName(file)).toBe(false);
  });

  it('counts papers whose pictures have no name of their own, past those that are there', () => {
    const files = ['IMG_1.jpg', 'old_rose-vine.JPG', 'image.png', 'blossomBough.v2.png', 'apple.day.png'];
    expect(sheetNames(files, new Set(['First paper']))).toEqual([
      'Second paper',
      'Old rose vine',
      'Third paper',
      'Blossom Bough v2',
      'Apple day',
    ]);
  });
});

describe('pictures that are dropped', () => {
  it('are shown at once on a study that has a pair already', async () => {
    const session = await openSession();
    session.clear();
    await session.addPictures([pictureFile('IMG_1.jpg', 'a one'), pictureFile('IMG_2.jpg', 'b two')]);
    const study = () => {
      const leaf = session.leaf(session.state.leafId ?? '');
      if (leaf?.kind !== 'study') throw new Error('No study is open.');
      return leaf;
    };
    expect(study().title).toBe('First paper with Second paper');
    expect(study().shown).toBe(0);
    const [gingham] = await session.addPictures([pictureFile('gingham.png', 'b three')]);
    expect(study().candidates[study().shown]).toEqual(gingham);
    await session.close();
  });

  it('are known again by their bytes: no second sheet is made, and the one that is there is shown', async () => {
    const session = await openSession();
    session.clear();
    const [, stripes] = await session.addPictures([
      pictureFile('dots.png', 'a one'),
      pictureFile('stripes.png', 'b two'),
    ]);
    await session.addPictures([pictureFile('gingham.png', 'b three')]);
    const again = await session.addPictures([pictureFile('copy of stripes.png', 'b two')]);
    expect(again).toEqual([stripes]);
    expect(session.state.notebook.drawer.sheets).toHaveLength(3);
    const leaf = session.leaf(session.state.leafId ?? '');
    if (leaf?.kind !== 'study') throw new Error('No study is open.');
    expect(leaf.candidates).toHaveLength(2);
    expect(leaf.candidates[leaf.shown]).toEqual(stripes);
    expect(session.state.messages.map(({ says }) => says).join(' ')).toMatch(
      /“copy of stripes\.png” is already in your drawer, as Stripes\./,
    );
    await session.close();
  });
});
