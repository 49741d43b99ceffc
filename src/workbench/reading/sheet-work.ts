import { sheetById } from '../../drawer/by-id.ts';
import type { Held } from '../../drawer/model.ts';
import { spotsInside } from '../../drawer/places.ts';
import { correctedBy } from '../../notebook/apply-hand.ts';
import type { Edit } from '../../notebook/edits.ts';
import type {
  Corners,
  HandMade,
  Ink,
  KeptSide,
  LightMark,
  PaperIs,
  Part,
  ReadOptions,
  Sheet,
  Side,
  SizeMm,
  Spot,
  Taken,
} from '../../sheet/model.ts';
import { sizeOfCorners } from '../../sheet/sold-sizes.ts';
import type { Picture } from '../../storage/database.ts';
import type { Look } from '../../workers/messages.ts';
import type { Book } from '../book.ts';
import { newId } from '../new-id.ts';
import type { Pictures } from '../pictures.ts';
import type { FoundOnPicture, PartToCut, SidePreparation } from '../session-types.ts';
import { paperWords } from '../words/paper-words.ts';
import { stepNames } from '../words/step-names.ts';
import { pictureFrom } from './add-pictures.ts';
import { cropOf } from './crop-of.ts';
import { underLight } from './hand-light.ts';
import type { PlaceFinder } from './place-finder.ts';
import type { ReadClient, ReadResult } from './read-client.ts';
import type { Readings } from './readings.ts';

/** Everything that is worked out again from a sheet's picture, off the page's thread; each is one step of undo. */
export interface SheetWork {
  again(sheetId: string, side: 'A' | 'B', options: ReadOptions): Promise<void>;
  prepare(sheetId: string, side: 'A' | 'B', change: SidePreparation): Promise<boolean>;
  settle(sheetId: string, side: 'A' | 'B', is: PaperIs): Promise<void>;
  resize(sheetId: string, sizeMm: SizeMm): Promise<void>;
  cut(part: PartToCut): Promise<Held | null>;
  look(sheetId: string, side: 'A' | 'B', look: Look): Promise<FoundOnPicture>;
}

/** What a sheet's picture is worked on with. */
interface Tools {
  readonly book: Book;
  readonly pictures: Pictures;
  readonly places: PlaceFinder;
  readonly client: ReadClient;
  readonly readings: Readings;
}

export function startSheetWork(tools: Tools): SheetWork {
  return {
    again: (sheetId, side, options) => readAgain(tools, sheetId, side, options),
    prepare: (sheetId, side, change) => prepare(tools, sheetId, side, change),
    settle: (sheetId, side, is) => settle(tools, sheetId, side, is),
    resize: (sheetId, sizeMm) => resize(tools, sheetId, sizeMm),
    cut: (part) => cut(tools, part),
    look: (sheetId, side, look) => lookOn(tools, sheetId, side, look),
  };
}

async function readAgain(
  tools: Tools,
  sheetId: string,
  side: 'A' | 'B',
  options: ReadOptions,
): Promise<void> {
  const { book, readings } = tools;
  const there = keptSide(book, sheetId, side);
  const picture = await pictureOf(tools, there?.kept.pictureId);
  if (there === null || picture === null) return;
  const { sheet, kept } = there;
  const result = await readings.readStored(sheet.name, blobOf(picture), { options, withPicture: false });
  if (result === null) return;
  const after: KeptSide = {
    ...withoutHand(kept),
    ...correctedBy(withOwn(result.side, kept.reading), kept.hand),
    options,
  };
  book.dispatchAll([{ do: 'set side', sheetId, side, kept: after }], stepNames.readAgain);
}

async function prepare(
  tools: Tools,
  sheetId: string,
  side: 'A' | 'B',
  change: SidePreparation,
): Promise<boolean> {
  const { book, pictures, readings } = tools;
  const there = keptSide(book, sheetId, side);
  const takenId = there?.kept.taken?.pictureId ?? there?.kept.pictureId ?? null;
  const blob = takenId === null ? null : await pictures.best(takenId);
  if (there === null || takenId === null || blob === null) return false;
  const { sheet, kept } = there;
  const sizeMm = change.sizeMm ?? sheet.sizeMm;
  const taken = takenAfter(takenId, kept.taken, change);
  const isPlain = taken.corners === undefined && taken.light === undefined;
  // Spots lie on the picture that was read, so they are read again only where its outline stays.
  const hand = await handToRead(tools, { kind: 'sheet', id: sheetId, side }, kept, change);
  const result = await readings.readStored(sheet.name, blob, {
    options: {},
    withPicture: !isPlain,
    spots: hand.spots,
    prepare: { ...taken, sizeMm },
  });
  if (result === null) return false;
  const picture = isPlain ? await pictures.get(takenId) : pictureFrom(result.done, newId('picture'));
  if (picture === null) return false;
  if (!isPlain) await pictures.add([picture]);
  const options = { mmPerPixel: mmPerPixel(sizeMm, picture) };
  const asks = keepsOutline(change) ? kept.asks : change.asks;
  const after: KeptSide = {
    ...correctedBy(withOwn(result.side, kept.reading), hand.after(result.done.spotColours ?? [])),
    pictureId: picture.id,
    ...(kept.digest === undefined ? {} : { digest: kept.digest }),
    options,
    ...(isPlain ? {} : { taken }),
    ...(asks === undefined ? {} : { asks }),
  };
  const parts = book.notebook.drawer.parts.filter((part) => isOf(part, sheetId, side));
  const edits = await Promise.all(
    parts.map((part) =>
      keepsOutline(change)
        ? readPart(tools, part, picture, options, after.reading)
        : leavePart(part, kept.pictureId),
    ),
  );
  const resized =
    change.sizeMm === undefined ? [] : [{ do: 'update sheet', sheetId, change: { sizeMm } } as const];
  book.dispatchAll(
    [...resized, { do: 'set side', sheetId, side, kept: after }, ...edits.flat()],
    sayWhat(change),
  );
  return true;
}

async function settle(tools: Tools, sheetId: string, side: 'A' | 'B', is: PaperIs): Promise<void> {
  const { book } = tools;
  const there = keptSide(book, sheetId, side);
  if (there === null) return;
  const { asks, ...kept } = there.kept;
  const corners = kept.taken?.corners;
  if (is === 'ask') {
    if (corners !== undefined) await prepare(tools, sheetId, side, { corners: null, asks: corners });
  } else if (asks !== undefined && is === 'whole') {
    book.dispatchAll([{ do: 'set side', sheetId, side, kept }], paperWords.whole);
  } else if (asks !== undefined) {
    const picture = await pictureOf(tools, kept.pictureId);
    const sizeMm = sizeOfCorners(asks, picture === null ? 1 : picture.width / picture.height);
    await prepare(tools, sheetId, side, { corners: asks, sizeMm });
  }
}

async function resize(tools: Tools, sheetId: string, sizeMm: SizeMm): Promise<void> {
  const { book } = tools;
  const sheet = sheetById(book.notebook.drawer, sheetId);
  if (sheet === undefined) return;
  const sides = await Promise.all(
    (['A', 'B'] as const).map((side) => sideResized(tools, sheet, side, sizeMm)),
  );
  book.dispatchAll([{ do: 'update sheet', sheetId, change: { sizeMm } }, ...sides.flat()], stepNames.setSize);
}

async function sideResized(
  tools: Tools,
  sheet: Sheet,
  side: 'A' | 'B',
  sizeMm: SizeMm,
): Promise<readonly Edit[]> {
  const kept = sheet.sides[side];
  const picture = await pictureOf(tools, kept?.pictureId);
  if (kept === undefined || picture === null) return [];
  const options = { ...kept.options, mmPerPixel: mmPerPixel(sizeMm, picture) };
  const again = await readQuietly(tools, 'print', picture, options);
  if (again === null) return [];
  // A size changes lengths, never colours.
  const sized = (reading: Side): Side => ({ ...reading, print: again.side.print });
  const asRead = kept.asRead === undefined ? {} : { asRead: sized(kept.asRead) };
  const after = { ...kept, ...asRead, reading: sized(kept.reading), options };
  return [{ do: 'set side', sheetId: sheet.id, side, kept: after }];
}

async function cut(tools: Tools, { sheetId, side, name, sizeMm, ...shape }: PartToCut): Promise<Held | null> {
  const { book, readings } = tools;
  const there = keptSide(book, sheetId, side);
  const picture = await pictureOf(tools, there?.kept.pictureId);
  if (there === null || picture === null) return null;
  const { sheet, kept } = there;
  const options = { mmPerPixel: mmPerPixel(sheet.sizeMm, picture), ...cropOf(shape, picture) };
  const result = await readings.readStored(name, blobOf(picture), { options, withPicture: false });
  if (result === null) return null;
  const id = newId('part');
  const reading: Side = { ...result.side, light: kept.reading.light };
  const part: Part = { id, name, sheetId, side, ...shape, sizeMm, reading };
  book.dispatchAll([{ do: 'add part', part }], stepNames.keepPart);
  return { kind: 'part', id };
}

async function lookOn(tools: Tools, sheetId: string, side: 'A' | 'B', look: Look): Promise<FoundOnPicture> {
  const kept = keptSide(tools.book, sheetId, side)?.kept;
  const id = look === 'corners' ? (kept?.taken?.pictureId ?? kept?.pictureId) : kept?.pictureId;
  const picture = await pictureOf(tools, id);
  if (picture === null) return { corners: null, blocks: [], ratio: 1 };
  const bytes = picture.bytes.slice(0);
  return tools.client.look(newId('look'), bytes, look).catch(() => ({
    corners: null,
    blocks: [],
    ratio: picture.width / picture.height,
  }));
}

function keptSide(
  book: Book,
  sheetId: string,
  side: 'A' | 'B',
): { readonly sheet: Sheet; readonly kept: KeptSide } | null {
  const sheet = sheetById(book.notebook.drawer, sheetId);
  const kept = sheet?.sides[side];
  return sheet === undefined || kept === undefined ? null : { sheet, kept };
}

async function pictureOf({ pictures }: Tools, id: string | null | undefined): Promise<Picture | null> {
  return id == null ? null : pictures.get(id);
}

/** Reads a picture that is not shown as underway; null where it can't be read. */
async function readQuietly(
  { client }: Tools,
  what: string,
  picture: Picture,
  options: ReadOptions,
): Promise<ReadResult | null> {
  const bytes = picture.bytes.slice(0);
  return client.read({ id: newId(what), bytes, options, withPicture: false }).catch(() => null);
}

/** What was corrected by hand on a side: the spots to read with it, and what stands once their colours are known. */
async function handToRead(tools: Tools, held: Held, kept: KeptSide, change: SidePreparation) {
  const hand = kept.hand ?? [];
  const spotted = keepsOutline(change) ? hand.filter((made) => spotOf(made).length > 0) : [];
  const before = keepsOutline(change) && hand.length > 0 ? await inksWithSpots(tools, held) : [];
  const inks = before.map(({ ink }) => ink);
  return {
    spots: [...spotted.flatMap(spotOf), ...before.map(({ spot }) => spot)],
    after: (colours: readonly string[]) => underLight(hand, spotted, inks, colours),
  };
}

/** The inks of a side as they were read, each with a spot well inside it. */
async function inksWithSpots(
  { book, places }: Tools,
  held: Held,
): Promise<readonly { readonly ink: Ink; readonly spot: Spot }[]> {
  const read = await places.asRead(book.notebook, held);
  if (read === null) return [];
  const inks = [read.side.base, ...read.side.inks];
  const spots = spotsInside(read.places, inks.length);
  return inks.flatMap((ink, i) => (spots[i] === undefined ? [] : [{ ink, spot: spots[i] }]));
}

function keepsOutline({ corners }: SidePreparation): boolean {
  return corners === undefined;
}

/** The same outline under another light: a part is read again from its own pixels. */
async function readPart(
  tools: Tools,
  part: Part,
  picture: Picture,
  options: ReadOptions,
  { light }: Side,
): Promise<readonly Edit[]> {
  if (part.pictureId !== undefined) return [];
  const again = await readQuietly(tools, 'part', picture, { ...options, ...cropOf(part, picture) });
  if (again === null) return [];
  const change = correctedBy({ ...withOwn(again.side, part.reading), light }, part.hand);
  return [{ do: 'update part', partId: part.id, change }];
}

/** Another outline: a part stays as it was cut from the picture before. */
function leavePart(part: Part, pictureId: string | null): readonly Edit[] {
  return pictureId === null || part.pictureId !== undefined
    ? []
    : [{ do: 'update part', partId: part.id, change: { pictureId } }];
}

function takenAfter(pictureId: string, before: Taken | undefined, change: SidePreparation): Taken {
  const corners: Corners | null = change.corners === undefined ? (before?.corners ?? null) : change.corners;
  const light: LightMark | null = change.light === undefined ? (before?.light ?? null) : change.light;
  const unasked = change.corners === undefined && before?.unasked === true ? { unasked: true as const } : {};
  return {
    pictureId,
    ...(corners === null ? {} : { corners, ...unasked }),
    ...(light === null ? {} : { light }),
  };
}

function sayWhat({ corners, light, asks }: SidePreparation): string {
  if (asks !== undefined) return paperWords.ask;
  if (corners !== undefined) return corners === null ? stepNames.leaveAsTaken : 'straighten a sheet';
  return light == null ? stepNames.takeLightBack : 'correct the light';
}

/** What the user said of a side stays when it is read again. */
function withOwn(fresh: Side, before: Side): Side {
  const { file, tags } = before;
  return { ...fresh, ...(file === undefined ? {} : { file }), ...(tags === undefined ? {} : { tags }) };
}

function withoutHand({ asRead: _, hand: __, ...kept }: KeptSide): KeptSide {
  return kept;
}

function spotOf({ change }: HandMade): readonly Spot[] {
  return 'spot' in change && change.spot !== undefined ? [change.spot] : [];
}

function isOf(part: Part, sheetId: string, side: 'A' | 'B'): boolean {
  return part.sheetId === sheetId && part.side === side;
}

function mmPerPixel(sizeMm: SizeMm, { width, height }: { width: number; height: number }): number {
  return Math.max(sizeMm.width, sizeMm.height) / Math.max(width, height);
}

function blobOf({ bytes, type }: Picture): Blob {
  return new Blob([bytes], { type });
}
