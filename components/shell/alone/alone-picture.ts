import { formatMunsell, munsellFromLab } from '../../../src/colour/munsell/munsell.ts';
import { isccName } from '../../../src/colour/naming/names.ts';
import { labFromHex } from '../../../src/colour/spaces.ts';
import { demoSheets, drawDemoSheet } from '../../../src/demo/sheets.ts';
import type { Sheet, Spot } from '../../../src/sheet/model.ts';
import { readWithPlaces } from '../../../src/sheet/read-side.ts';
import { parseColourText } from '../../../src/sheet/typed-colour.ts';
import type { KnownColour } from '../../picture/known-colour.ts';
import { photographed } from '../../picture/photographed.ts';
import '../../picture/qw-inks-by-hand.ts';
import '../../picture/qw-light.ts';
import '../../picture/qw-part.ts';
import '../../picture/qw-plain-form.ts';
import '../../picture/qw-sheet-form.ts';
import '../../picture/qw-straighten.ts';

/** The tools that work on a sheet's picture, each alone with nothing but its properties. */
const { id, name } = demoSheets[0]!;
const image = drawDemoSheet(id, 'A', 480);
const canvas = document.createElement('canvas');
canvas.width = image.width;
canvas.height = image.height;
const context = canvas.getContext('2d')!;
context.putImageData(new ImageData(new Uint8ClampedArray(image.data), image.width), 0, 0);
const picture = canvas.toDataURL();
const { side } = readWithPlaces(image);
const { picture: photo, corners } = photographed(canvas);
const sheet: Sheet = {
  id,
  name,
  sides: {
    A: {
      reading: { ...side, tags: { motifs: ['floral', 'leaf'], finishes: ['hand-drawn'] } },
      pictureId: null,
    },
  },
  sizeMm: { width: 305, height: 305 },
  weight: { gsm: 118, lb: 80, grade: 'text' },
  count: 1,
  note: 'The last one, from the first apple day.',
};

function known(hex: string): KnownColour {
  const lab = labFromHex(hex);
  return { hex, says: `${isccName(lab)}, Munsell ${formatMunsell(munsellFromLab(lab))}` };
}

function colourOf(text: string): KnownColour | undefined {
  const typed = parseColourText(text);
  return typed && known(typed.hex);
}

function colourAt({ x, y }: Spot): KnownColour {
  const [r = 0, g = 0, b = 0] = context.getImageData(
    x * (image.width - 1),
    y * (image.height - 1),
    1,
    1,
  ).data;
  return known(`#${((r << 16) | (g << 8) | b).toString(16).padStart(6, '0')}`);
}

const says = 'Light corrected by the card in the picture.';
place('qw-straighten', {
  picture: photo,
  name,
  corners,
  note: 'The corners were found against the table; look whether they are right.',
});
place('qw-light', { picture: photo, name });
place('qw-light', {
  picture: photo,
  corrected: picture,
  name,
  kind: 'white',
  frame: { x: 0.8, y: 0.18, width: 0.12, height: 0.1 },
  says,
});
place('qw-light', {
  picture: photo,
  name,
  kind: 'chart',
  frame: { x: 0.2, y: 0.2, width: 0.42, height: 0.4 },
});
place('qw-inks-by-hand', {
  side,
  picture,
  name,
  colourOf,
  kept: side.inks.slice(0, 1).map((ink) => ink.id),
  aside: [
    {
      ink: { ...side.base, id: 'Z', hex: '#a39b86', trade: null, name: 'light greyish brown' },
      reason: 'shadow',
    },
  ],
});
place('qw-part', {
  picture,
  name,
  offers: [
    { frame: { x: 0.05, y: 0.05, width: 0.4, height: 0.3 }, name: 'the block at the top left' },
    { frame: { x: 0.55, y: 0.05, width: 0.4, height: 0.3 } },
  ],
});
place('qw-plain-form', { colourOf, picture });
place('qw-sheet-form', { sheet, weightSays: '118 g/m² (80 lb text)' });

function place(tag: string, properties: Record<string, unknown>): void {
  const heading = document.createElement('h2');
  heading.textContent = tag;
  const box = document.createElement('section');
  box.style.cssText = 'max-width:1000px;margin:0 auto 40px;padding:16px;background:var(--qw-leaf)';
  const element = Object.assign(document.createElement(tag), properties);
  // Whoever holds the picture answers what lies at a spot.
  element.addEventListener('qw-spot', (event) => {
    Object.assign(element, { spotReads: colourAt((event as CustomEvent<{ spot: Spot }>).detail.spot) });
  });
  box.append(heading, element);
  document.getElementById('alone')?.append(box);
}
