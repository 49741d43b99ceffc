import fc from 'fast-check';
import { boardSizes } from '../../../src/board/model.ts';
import { wheels } from '../../../src/colour/model.ts';
import type { Held } from '../../../src/drawer/model.ts';
import { distances, verdicts } from '../../../src/harmony/model.ts';
import { keptName, keptText, limits } from '../../../src/notebook/limits.ts';
import { exerciseAsks, type Leaf, type Notebook } from '../../../src/notebook/model.ts';
import {
  asideReasons,
  type Base,
  baseKinds,
  finishes,
  type HandChange,
  type HandMade,
  type Ink,
  type KeptSide,
  motifFamilies,
  motifs,
  type Part,
  type Plain,
  plainKinds,
  printScales,
  type Sheet,
  type Side,
  sheetSides,
  specialFinishes,
  type Taken,
  weightGrades,
} from '../../../src/sheet/model.ts';

/** Notebooks of every shape that the types allow. */

const id = fc.stringMatching(/^[a-z][a-z0-9_.:~-]{0,20}$/);
const name = fc.string({ unit: 'binary', maxLength: 40 }).map(keptName);
const text = fc.string({ unit: 'binary', maxLength: 200 }).map((words) => keptText(words, limits.text));
const share = fc.double({ min: 0, max: 1, noNaN: true });
const length = fc.double({ min: 0, max: 10_000, noNaN: true });
const finite = fc.double({ min: -5000, max: 5000, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const noMinusZero = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

const inkFields = {
  id: fc.constantFrom('A', 'B', 'C', 'a', 'b', 'Z'),
  hex: fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`),
  oklch: fc.tuple(
    share,
    fc.double({ min: 0, max: 0.5, noNaN: true }),
    maybe(fc.double({ min: 0, max: 359.9, noNaN: true })),
  ),
  name,
  share,
  accent: fc.boolean(),
};
const inkExtra = {
  trade: maybe(name),
  sure: share,
  special: fc.constantFrom(...specialFinishes),
  byHand: fc.boolean(),
};
const some = <R, O>(
  required: { [K in keyof R]: fc.Arbitrary<R[K]> },
  optional: { [K in keyof O]: fc.Arbitrary<O[K]> },
) =>
  fc.tuple(fc.record(required), fc.record(optional, { requiredKeys: [] })).map(([a, b]) => ({ ...a, ...b }));

const ink: fc.Arbitrary<Ink> = some(inkFields, inkExtra);
const base: fc.Arbitrary<Base> = some(
  {
    ...inkFields,
    kind: fc.constantFrom(...baseKinds),
    printed: maybe(fc.boolean()),
  },
  inkExtra,
);
const weight = some(
  { gsm: length },
  {
    lb: length,
    grade: fc.constantFrom(...weightGrades),
    weighed: fc.boolean(),
  },
);
const side: fc.Arbitrary<Side> = some(
  {
    base,
    inks: fc.array(ink, { maxLength: 4 }),
    print: some(
      {
        busyness: share,
        repeatMm: maybe(length),
        scale: maybe(fc.constantFrom(...printScales)),
      },
      { assumedSize: fc.constant(true as const) },
    ),
    light: fc.record({ known: fc.boolean(), note: text }),
  },
  {
    file: name,
    motif: fc.record({
      family: fc.constantFrom(...motifFamilies),
      sure: share,
    }),
    ramps: fc.array(fc.record({ inks: fc.array(inkFields.id, { maxLength: 3 }) }), { maxLength: 2 }),
    tags: some(
      {},
      {
        motifs: fc.array(fc.constantFrom(...motifs), { maxLength: 2 }),
        finishes: fc.array(fc.constantFrom(...finishes), { maxLength: 2 }),
        weight: maybe(weight),
      },
    ),
  },
);
const frameFields = { x: finite, y: finite, width: length, height: length };
const frame = fc.record(frameFields);
const spot = fc.record({ x: share, y: share });
const hex = fc.constantFrom('#1f3a5f', '#e2725b');
const change: fc.Arbitrary<HandChange> = fc.oneof(
  fc.record({ kind: fc.constant('rename' as const), ink: inkFields.id, name }),
  fc.record({ kind: fc.constant('merge' as const), from: inkFields.id, into: inkFields.id }),
  some({ kind: fc.constant('split' as const), ink: inkFields.id }, { spot }),
  fc.record({ kind: fc.constant('keep' as const), ink: inkFields.id }),
  fc.record({
    kind: fc.constant('set-aside' as const),
    ink: inkFields.id,
    reason: fc.constantFrom(...asideReasons),
  }),
  fc.record({ kind: fc.constant('set-share' as const), ink: inkFields.id, share }),
  fc.record({ kind: fc.constant('add' as const), spot }),
  some({ kind: fc.constant('add' as const), hex }, { special: fc.constantFrom(...specialFinishes) }),
  fc.record({ kind: fc.constant('move-spot' as const), ink: inkFields.id, spot }),
);
const made: fc.Arbitrary<HandMade> = some(
  { change, inks: fc.dictionary(fc.constantFrom('A', 'B', 'c'), ink, { noNullPrototype: true }) },
  { hex, share },
);
const byHand = { asRead: side, hand: fc.array(made, { maxLength: 3 }) };
const taken: fc.Arbitrary<Taken> = some(
  { pictureId: id },
  {
    corners: fc.tuple(spot, spot, spot, spot),
    light: fc.oneof(
      fc.record({
        kind: fc.constantFrom('white' as const, 'grey' as const),
        frame,
        reflectance: fc.double({ min: 0.02, max: 1, noNaN: true }),
      }),
      fc.record({ kind: fc.constant('chart' as const), frame }),
    ),
  },
);
const kept: fc.Arbitrary<KeptSide> = some(
  { reading: side, pictureId: maybe(id) },
  {
    options: some(
      {},
      {
        mmPerPixel: fc.double({ min: 0.001, max: 5, noNaN: true }),
        crop: frame,
        card: some(frameFields, { reflectance: share }),
      },
    ),
    taken,
    ...byHand,
  },
);
const sizeMm = fc.record({ width: length, height: length });
const sheet: fc.Arbitrary<Sheet> = fc.record({
  id,
  name,
  sides: some({ A: kept }, { B: kept }),
  sizeMm,
  weight: maybe(weight),
  count: fc.integer({ min: 0, max: 99 }),
  note: text,
});
const plain: fc.Arbitrary<Plain> = some(
  { id, name, kind: fc.constantFrom(...plainKinds), ink },
  { takesColour: fc.boolean(), weight: maybe(weight) },
);
const part: fc.Arbitrary<Part> = some(
  {
    id,
    name,
    sheetId: id,
    side: fc.constantFrom(...sheetSides),
    frame,
    sizeMm,
    reading: side,
  },
  { pictureId: id, ...byHand },
);
const held: fc.Arbitrary<Held> = fc.oneof(
  fc.record({ kind: fc.constant('sheet' as const), id, side: fc.constantFrom(...sheetSides) }),
  fc.record({ kind: fc.constantFrom('plain' as const, 'part' as const), id }),
);
const verdict = fc.constantFrom(...verdicts);
const head = { id, title: name };
const leaf: fc.Arbitrary<Leaf> = fc.oneof(
  fc.record({ kind: fc.constant('note' as const), ...head, text }),
  fc.record({ kind: fc.constant('sheet' as const), ...head, sheetId: id, text }),
  fc.record({
    kind: fc.constant('study' as const),
    ...head,
    text,
    anchor: maybe(held),
    candidates: fc.array(held, { maxLength: 4 }),
    shown: fc.nat(3),
    distance: fc.constantFrom(...distances),
    wheel: fc.constantFrom(...wheels),
    asksFirst: fc.boolean(),
    opinions: fc.dictionary(
      id.map((one) => `plain:${one}`),
      fc.record({ verdict: maybe(verdict), likes: maybe(fc.boolean()) }),
      { maxKeys: 3, noNullPrototype: true },
    ),
  }),
  fc.record({
    kind: fc.constant('kit' as const),
    ...head,
    text,
    pieces: fc.array(
      fc.record(
        {
          held,
          areaMm2: maybe(length),
          role: fc.constant('photo' as const),
          sizeMm: fc.record({ width: length, height: length }),
          count: fc.integer({ min: 0, max: 60 }),
          mat: fc.record({ plainId: id, borderMm: length }),
        },
        { requiredKeys: ['held', 'areaMm2'], noNullPrototype: true },
      ),
      { maxLength: 3 },
    ),
  }),
  fc.record({
    kind: fc.constant('board' as const),
    ...head,
    studyId: id,
    candidate: maybe(held),
    words: text,
    size: fc.constantFrom(...boardSizes),
  }),
  fc.record(
    {
      kind: fc.constant('exercise' as const),
      ...head,
      text,
      studyId: id,
      answered: maybe(verdict),
      ask: fc.constantFrom(...exerciseAsks),
      candidate: held,
      pointed: fc.array(id, { maxLength: 2 }),
    },
    {
      requiredKeys: ['kind', 'id', 'title', 'text', 'studyId', 'answered'],
      noNullPrototype: true,
    },
  ),
);
const listOf = <T extends { id: string }>(item: fc.Arbitrary<T>) =>
  fc.uniqueArray(item, { maxLength: 4, selector: (one) => one.id });

export const anyNotebook: fc.Arbitrary<Notebook> = fc
  .record({
    id,
    title: name,
    leaves: listOf(leaf),
    drawer: fc.record({ sheets: listOf(sheet), plains: listOf(plain), parts: listOf(part) }),
  })
  // JSON has no minus zero, and no notebook needs one.
  .map(noMinusZero);
