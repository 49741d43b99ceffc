import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { comparison } from '../../../components/support/sample-papers.ts';
import { boardOf } from '../../../src/board/compose.ts';
import { boardKinds } from '../../../src/board/kinds.ts';
import { type Board, type BoardOptions, boardKindNames } from '../../../src/board/model.ts';
import { boardSvg } from '../../../src/board/svg.ts';
import { caution } from '../../../src/board/words/board-words.ts';
import { textWidth } from '../../../src/drawing/text.ts';
import { advise } from '../../../src/harmony/advise.ts';
import type { Comparison } from '../../../src/harmony/model.ts';
import { handSide } from '../../support/sides.ts';
import { flat, sideOf } from '../drawing/nodes.ts';

const names = { anchor: 'Regatta bunting', candidate: 'Quayside ledger' };
const sizes = ['square', 'a4', 'letter'] as const;
const told = (options: BoardOptions = {}) => boardOf(comparison, { names, ...options });
const texts = (board: Board) =>
  flat(board.scene.nodes).flatMap(({ node }) => (node.type === 'text' ? [node.text] : []));

/** Texts that reach over an edge of the board, by the widths that the layout goes by. */
function overflowing(board: Board): string[] {
  const { width, height } = board.scene;
  return flat(board.scene.nodes).flatMap(({ node, x, y, scale }) => {
    if (node.type !== 'text') return [];
    const wide = textWidth(node.text, node) * scale;
    const at = x + node.x * scale;
    const start = at - (node.anchor === 'middle' ? wide / 2 : node.anchor === 'end' ? wide : 0);
    const base = y + node.y * scale;
    const inside =
      start >= 0 &&
      start + wide <= width &&
      base - node.size * scale * 0.8 >= 0 &&
      base + node.size * scale * 0.3 <= height;
    return inside ? [] : [node.text];
  });
}

/** Pairs of words in the findings that are printed over each other. */
function colliding(board: Board): string[] {
  const boxes = flat(board.scene.nodes).flatMap(({ node, x, y, scale, mark }) => {
    if (node.type !== 'text' || mark || scale !== 1) return [];
    const wide = textWidth(node.text, node);
    const left = x + node.x - (node.anchor === 'middle' ? wide / 2 : node.anchor === 'end' ? wide : 0);
    const base = y + node.y;
    return [
      {
        text: node.text,
        left,
        right: left + wide,
        top: base - node.size * 0.55,
        bottom: base + node.size * 0.1,
      },
    ];
  });
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right - 2 && b.left < a.right - 2 && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} / ${b.text}`),
  );
}

test.each([
  ['square', 3600, 3600],
  ['a4', 2480, 3508],
  ['letter', 2550, 3300],
] as const)('a %s board is %i by %i pixels, its inches at 300 each', (size, width, height) => {
  const { scene } = told({ size });
  expect([scene.width, scene.height]).toEqual([width, height]);
});

test.each(sizes)(
  'a %s board shows title, words, papers, verdict, three reasons with number and source, remedies, caution',
  (size) => {
    const all = texts(told({ size, title: 'Two papers', words: 'For Thursday.' }));
    const whole = all.join(' ');
    for (const part of [
      'Two papers',
      'For Thursday.',
      'Regatta bunting',
      'Quayside ledger',
      'Needs a bridge.',
    ]) {
      expect(all).toContain(part);
    }
    for (const reason of comparison.reasons.slice(0, 3)) {
      expect(whole).toContain(reason.figure);
      expect(whole).toContain(reason.source);
    }
    expect(whole).not.toContain('darkest thing');
    expect(whole).toContain('Turn the ledger over');
    expect(whole).toContain('no cutting · then: holds together');
    expect(all).toContain(caution);
  },
);

test.each(sizes)('what decided stands on a %s board in the words of the study page, whole', (size) => {
  const miss = { ...comparison.reasons[0]!, kind: 'near miss' } as const;
  const far = { ...comparison.reasons[0]!, kind: 'hues far apart' } as const;
  const decided: Comparison = {
    ...comparison,
    reasons: [miss, far],
    decision: { ...comparison.decision, turnedBy: [0, 1] },
  };
  const board = boardOf(decided, { names, size });
  expect(texts(board).join(' ')).toContain('decided by colours close but not the same; hues far apart');
  expect(overflowing(board)).toEqual([]);
  expect(colliding(board)).toEqual([]);
});

test.each(sizes)('no drawer of hers is spoken of on a %s board, since it goes to others', (size) => {
  const owned = {
    plains: [],
    sheets: [
      {
        id: 'a',
        name: 'Pebble dot',
        sides: [handSide({ base: 'cream', hex: '#f4e8cd', inks: [['#1f3a5f', 0.2]] })],
      },
    ],
  };
  const anchor = handSide({
    base: 'cream',
    hex: '#f3e8ce',
    inks: [
      ['#db5a62', 0.2],
      ['#6c9a4f', 0.2],
    ],
  });
  const candidate = handSide({
    base: 'white',
    hex: '#f1f5fa',
    inks: [
      ['#b4dc3a', 0.2],
      ['#6f45b5', 0.2],
    ],
  });
  const found = advise(anchor, candidate, { owned });
  const whole = texts(boardOf({ ...found, remedies: found.remedies.slice(-3) }, { names, size })).join(' ');
  expect(found.remedies.at(-1)!.kind).toBe('swap');
  expect(whole).toContain('Take Pebble dot instead');
  expect(whole).not.toContain('drawer');
});

test('lies on the surround that is chosen, with letters that can be read on it', () => {
  const fills = (options: BoardOptions) =>
    flat(told(options).scene.nodes).flatMap(({ node }) =>
      node.type === 'text' && node.text === names.anchor ? [node.fill] : [],
    );
  const mats = (options: BoardOptions) =>
    flat(told(options).scene.nodes).flatMap(({ node }) => (node.type === 'rect' ? [node.fill] : []))[0];
  expect([mats({}), fills({})]).toEqual(['#bababa', ['#151515']]);
  expect([mats({ surround: 'dark' }), fills({ surround: 'dark' })]).toEqual(['#2c2c2c', ['#f2f2f2']]);
  expect(mats({ surround: 'white' })).toBe('#ffffff');
});

test('a pair that holds shows no remedies', () => {
  const holds: Comparison = { ...comparison, verdict: 'holds-together' };
  expect(texts(boardOf(holds, { names })).join(' ')).not.toContain('What could mend it');
});

test('without a title the board is named for its papers', () => {
  expect(told().title).toBe('Regatta bunting with Quayside ledger');
  expect(boardOf(comparison).title).toBe('The anchor with the candidate');
});

test('ink ids in sentences become chips in the colour of the ink', () => {
  const board = told();
  const chips = flat(board.scene.nodes).filter(
    ({ node, mark }) => node.type === 'rect' && !mark && node.fill === '#e2725b',
  );
  expect(chips.length).toBeGreaterThan(0);
  expect(texts(board).join(' ')).not.toContain('(C)');
});

test.each(sizes)(
  'nothing leaves a %s board and no words lie on others, whatever is written on it',
  (size) => {
    const word = fc.oneof(fc.string({ maxLength: 14 }), fc.constantFrom('W'.repeat(90), 'paper', 'a', '–'));
    const wordy = fc.array(word, { maxLength: 140, size: 'max' }).map((all) => all.join(' '));
    fc.assert(
      fc.property(
        wordy,
        wordy,
        fc.string({ maxLength: 80, size: 'max' }),
        fc.array(wordy, { minLength: 3, maxLength: 3 }),
        (title, words, name, says) => {
          const reasons = comparison.reasons.map((reason, i) => ({
            ...reason,
            says: says[i] ?? reason.says,
            source: name,
          }));
          const remedies = comparison.remedies.map((remedy, i) => ({
            ...remedy,
            says: says[2 - i] ?? '',
            title: name,
            cost: name,
          }));
          const board = boardOf(
            { ...comparison, reasons, remedies },
            { size, title, words, names: { anchor: name, candidate: name } },
          );
          expect(overflowing(board)).toEqual([]);
          expect(colliding(board)).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
  },
);

test.each(sizes)('what compare really says fits a %s board', (size) => {
  const a = sideOf(
    'A',
    'cream',
    [0.93, 0.04, 88, 0.6],
    [0.35, 0.07, 255, 0.15],
    [0.67, 0.15, 33, 0.15],
    [0.75, 0.09, 200, 0.1],
  );
  const b = sideOf(
    'a',
    'white',
    [0.98, 0.004, 250, 0.5],
    [0.54, 0.17, 17, 0.2],
    [0.5, 0.2, 310, 0.2],
    [0.75, 0.09, 202, 0.1],
  );
  const board = boardOf(advise(a, b, { names }), { size, names, words: 'A note.' });
  expect(overflowing(board)).toEqual([]);
  expect(colliding(board)).toEqual([]);
});

test('the SVG is XML that a strict reader takes, with a title and a description', () => {
  const svg = boardSvg(
    told({ title: 'A & B <i>"it\'s"</i>\u0000\u0008 \uD800', words: ']]> \u{1F600} \uFFFF' }),
  );
  // resvg reads with roxmltree, which refuses what is not well-formed XML 1.0.
  const { width, height } = new Resvg(svg, { font: { loadSystemFonts: false } });
  expect([width, height]).toEqual([3600, 3600]);
  expect(svg).toContain('<title id="title">A &amp; B &lt;i&gt;');
  expect(svg).toMatch(/<desc id="desc">Regatta bunting with Quayside ledger: needs a bridge\./);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there
  expect(svg).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\uFFFF]/);
});

test('the SVG names no outside address, whatever the picture and the words say', () => {
  const svg = boardSvg(
    told({
      words: 'see https://example.org',
      pictures: { anchor: 'https://example.org/spy.png', candidate: 'data:image/png;base64,AAAA' },
    }),
  );
  const addresses = [...svg.matchAll(/(?:href|src)="([^"]*)"|url\(([^)]*)\)/g)].map((m) => m[1] ?? m[2]);
  expect(addresses).toEqual(['', 'data:image/png;base64,AAAA']);
});

test('the font families have fallbacks, and given font rules are embedded', () => {
  const svg = boardSvg(told(), {
    fontCss: "@font-face{font-family:'Literata';src:url(data:font/woff2;base64,AA)}",
  });
  expect(svg).toContain('Georgia');
  expect(svg).toContain('Atkinson Hyperlegible Next');
  expect(svg).toContain('<style>@font-face{');
});

test('the same comparison gives the same board, to the byte', () => {
  expect(boardSvg(told())).toBe(boardSvg(told()));
});

test('everything on the board that is not an ink is without chroma', () => {
  const board = told();
  const inks = [comparison.anchor, comparison.candidate]
    .flatMap((side) => [side.base, ...side.inks])
    .map((ink) => ink.hex);
  for (const { node } of flat(board.scene.nodes)) {
    // The ring's thin ticks are the one thing that shows hues without being an ink.
    if (node.type === 'group' || node.type === 'image' || (node.type === 'line' && node.strokeWidth! < 3))
      continue;
    for (const colour of [node.fill, node.stroke]) {
      if (!colour?.startsWith('#') || inks.includes(colour)) continue;
      expect(colour).toMatch(/^#(..)\1\1$/);
    }
  }
});

test('a board says under a paper that its repeat rests on an assumed size, and warns of the blade once', () => {
  const anchor = {
    ...comparison.anchor,
    print: { busyness: 0.3, repeatMm: 11, scale: 'small', assumedSize: true } as const,
  };
  const caution = 'Mind the blade: a mat below.';
  const remedy = { ...comparison.remedies[0]!, caution };
  const of = (board: Board) => texts(board).join(' ');
  for (const remedies of [[remedy], [remedy, remedy, remedy]]) {
    for (const words of ['', 'So much to say. '.repeat(60)]) {
      const whole = of(
        boardOf({ ...comparison, anchor, verdict: 'needs-a-bridge', remedies }, { names, words }),
      );
      expect(whole).toContain('repeat about 11 mm, if the sheet is 12 in');
      expect(whole.split('Mind the blade')).toHaveLength(2);
    }
  }
});

test('every kind of board is named, told and drawn, and the pair is the one that stands by default', () => {
  expect(Object.keys(boardKinds)).toEqual([...boardKindNames]);
  for (const kind of boardKindNames) {
    const { label, about, draw } = boardKinds[kind];
    expect([label, about].every((words) => words.trim().length > 3)).toBe(true);
    expect(draw(comparison, { names }).scene.nodes.length).toBeGreaterThan(5);
  }
  expect(boardKinds.pair.draw(comparison, { names })).toEqual(told());
});
