import type { PaperWeight, PixelImage, Tags } from '../sheet/model.ts';
import { colours } from './colours.ts';
import { kraftStock, newStock, oldStock, type Stock, scanned } from './paper-stock.ts';
import { blossomBough, blossomPips, windfall } from './papers/blossom.ts';
import {
  basketChevron,
  beeDots,
  ladderStripe,
  nightLines,
  pressLedger,
  starlingNight,
} from './papers/dots-and-lines.ts';
import { lanternRow, morningQuilt, pipHearts } from './papers/motifs.ts';
import { ledgerEntries, minuteBook } from './papers/text.ts';
import { barnDoor, rainWash } from './papers/washes.ts';
import { blankRaster, type Raster } from './raster.ts';

/** One face of a demo sheet: what it is printed on, what prints it, and what a person would say of it. */
export interface DemoSide {
  readonly base: string;
  readonly prints: (raster: Raster) => void;
  readonly tags: Tags;
}

export interface DemoSheet {
  readonly id: string;
  readonly name: string;
  readonly sides: { readonly A: DemoSide; readonly B?: DemoSide };
  readonly stock: Stock;
  readonly weight: PaperWeight | null;
  readonly count: number;
  readonly note: string;
}

/**
 * The drawer of an orchard that keeps an album: papers left from earlier years, and some bought since. All of it is
 * invented and drawn by us.
 */
export const demoSheets: readonly DemoSheet[] = [
  {
    id: 'blossom-bough',
    name: 'Blossom bough',
    sides: {
      A: {
        base: colours.paleCream,
        prints: blossomBough,
        tags: { motifs: ['floral', 'leaf'], finishes: ['hand-drawn'] },
      },
      B: {
        base: colours.paleCream,
        prints: blossomPips,
        tags: { motifs: ['dot'], finishes: ['hand-drawn'] },
      },
    },
    stock: oldStock,
    weight: { gsm: 118, lb: 80, grade: 'text' },
    count: 1,
    note: 'The last one, from the first apple day. Thin: mount it before it buckles.',
  },
  {
    id: 'press-ledger',
    name: 'Press ledger',
    sides: {
      A: {
        base: colours.cream,
        prints: pressLedger,
        tags: { motifs: ['grid', 'fruit'], finishes: ['hand-drawn'] },
      },
      B: { base: colours.cream, prints: ledgerEntries, tags: { motifs: ['text'], finishes: ['hand-drawn'] } },
    },
    stock: newStock,
    weight: { gsm: 216, lb: 80, grade: 'cover' },
    count: 3,
    note: '',
  },
  {
    id: 'pip-hearts',
    name: 'Pip hearts',
    sides: {
      A: {
        base: colours.cream,
        prints: pipHearts,
        tags: { motifs: ['heart', 'leaf'], finishes: ['hand-drawn'] },
      },
    },
    stock: newStock,
    weight: { gsm: 176, lb: 65, grade: 'cover' },
    count: 2,
    note: '',
  },
  {
    id: 'lantern-row',
    name: 'Lantern row',
    sides: {
      A: { base: colours.coolWhite, prints: lanternRow, tags: { motifs: ['abstract'], finishes: ['flat'] } },
    },
    stock: newStock,
    weight: { gsm: 190, weighed: true },
    count: 1,
    note: 'Bought for the evening, before anyone had looked at the album.',
  },
  {
    id: 'ladder-stripe',
    name: 'Ladder stripe',
    sides: {
      A: { base: colours.cream, prints: ladderStripe, tags: { motifs: ['stripe'], finishes: ['flat'] } },
    },
    stock: newStock,
    weight: { gsm: 216, lb: 80, grade: 'cover' },
    count: 2,
    note: '',
  },
  {
    id: 'basket-chevron',
    name: 'Basket chevron',
    sides: {
      A: { base: colours.kraft, prints: basketChevron, tags: { motifs: ['chevron'], finishes: ['flat'] } },
    },
    stock: kraftStock,
    weight: { gsm: 220, weighed: true },
    count: 4,
    note: '',
  },
  {
    id: 'bee-dots',
    name: 'Bee dots',
    sides: { A: { base: colours.white, prints: beeDots, tags: { motifs: ['dot'], finishes: ['flat'] } } },
    stock: newStock,
    weight: { gsm: 176, lb: 65, grade: 'cover' },
    count: 2,
    note: '',
  },
  {
    id: 'minute-book',
    name: 'Minute book',
    sides: {
      A: { base: colours.oldCream, prints: minuteBook, tags: { motifs: ['text'], finishes: ['hand-drawn'] } },
    },
    stock: oldStock,
    weight: { gsm: 104, lb: 70, grade: 'text' },
    count: 2,
    note: 'Gone yellow along the edge that faced the window.',
  },
  {
    id: 'morning-quilt',
    name: 'Morning quilt',
    sides: {
      A: {
        base: colours.cream,
        prints: morningQuilt,
        tags: { motifs: ['patchwork'], finishes: ['hand-drawn'] },
      },
    },
    stock: newStock,
    weight: { gsm: 216, lb: 80, grade: 'cover' },
    count: 1,
    note: '',
  },
  {
    id: 'windfall',
    name: 'Windfall',
    sides: {
      A: { base: colours.white, prints: windfall, tags: { motifs: ['leaf'], finishes: ['hand-drawn'] } },
    },
    stock: newStock,
    weight: { gsm: 160, weighed: true },
    count: 2,
    note: '',
  },
  {
    id: 'barn-door',
    name: 'Barn door',
    sides: {
      A: {
        base: colours.kraft,
        prints: barnDoor,
        tags: { motifs: ['wood grain'], finishes: ['distressed'] },
      },
    },
    stock: newStock,
    weight: { gsm: 216, lb: 80, grade: 'cover' },
    count: 2,
    note: '',
  },
  {
    id: 'rain-wash',
    name: 'Rain wash',
    sides: {
      A: {
        base: colours.coolWhite,
        prints: rainWash,
        tags: { motifs: ['abstract'], finishes: ['watercolour'] },
      },
    },
    stock: newStock,
    weight: { gsm: 200, weighed: true },
    count: 1,
    note: '',
  },
  {
    id: 'starling-night',
    name: 'Starling night',
    sides: {
      A: { base: colours.navy, prints: starlingNight, tags: { motifs: ['star'], finishes: ['flat'] } },
      B: { base: colours.white, prints: nightLines, tags: { motifs: ['stripe'], finishes: ['flat'] } },
    },
    stock: newStock,
    weight: { gsm: 190, weighed: true },
    count: 2,
    note: '',
  },
];

/**
 * A demo sheet's side as a scan, `px` pixels square. The same pixels every time.
 * @throws RangeError where there is no such sheet or side.
 */
export function drawDemoSheet(id: string, side: 'A' | 'B', px: number): PixelImage {
  const index = demoSheets.findIndex((sheet) => sheet.id === id);
  const sheet = demoSheets[index];
  const face = sheet?.sides[side];
  if (!sheet || !face) throw new RangeError(`There is no side ${side} of a demo sheet "${id}"`);
  const raster = blankRaster(px, face.base);
  face.prints(raster);
  return scanned(raster, sheet.stock, index * 2 + (side === 'A' ? 1 : 2));
}
