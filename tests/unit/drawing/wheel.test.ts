import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bunting, dahlia, ledger, links, pebble } from '../../../components/support/sample-papers.ts';
import { hueFromPainter } from '../../../src/colour/wheels.ts';
import { radiusFromShare } from '../../../src/drawing/marks.ts';
import type { NamedSide } from '../../../src/drawing/model.ts';
import { textWidth } from '../../../src/drawing/text.ts';
import { hueWheel } from '../../../src/drawing/wheel.ts';
import { drawnLinks } from '../../../src/drawing/wheel-links.ts';
import { wheelPlaces } from '../../../src/drawing/wheel-places.ts';
import { flat, markNode, marks, sideOf } from './nodes.ts';

const pair = { anchor: bunting, candidate: ledger, links };

test('an ink stands at the angle of its OKLCH hue, counter-clockwise from the right', () => {
  for (const hue of [0, 45, 93, 180, 236, 303]) {
    const side = sideOf('A', 'white', [0.98, 0.002, 90, 0.7], [0.6, 0.14, hue, 0.3]);
    const place = wheelPlaces({ anchor: side }).places[1]!;
    const deg = (Math.atan2(-place.y, place.x) * 180) / Math.PI;
    expect((deg + 360) % 360).toBeCloseTo(hue, 6);
  }
});

test("on the painter's wheel the twelve steps stand 30° apart, yellow on top and orange to its right", () => {
  [0, 1, 2, 5, 9].forEach((step) => {
    const hue = hueFromPainter(step * 30);
    const side = sideOf('A', 'white', [0.98, 0.002, 90, 0.7], [0.6, 0.14, hue, 0.3]);
    const place = wheelPlaces({ anchor: side, wheel: 'painter' }).places[1]!;
    const clockwiseFromTop = (Math.atan2(place.x, -place.y) * 180) / Math.PI;
    expect((clockwiseFromTop + 360) % 360).toBeCloseTo(step * 30, 3);
  });
});

test('chroma grows evenly from the hub to the outermost ring', () => {
  const side = sideOf('A', 'white', [0.98, 0.002, 90, 0.6], [0.6, 0.1, 20, 0.2], [0.6, 0.2, 200, 0.2]);
  const layout = wheelPlaces({ anchor: side });
  const distance = layout.places.map((p) => Math.hypot(p.trueX, p.trueY));
  expect(distance[2]).toBeCloseTo(140, 6);
  expect(distance[1]).toBeCloseTo((140 + layout.hubRadius) / 2, 6);
});

test('white, cream, kraft and grey sit in the hub, coral and navy do not', () => {
  const inHub = (named: NamedSide) =>
    wheelPlaces({ anchor: named.side })
      .places.filter((p) => p.inHub)
      .map((p) => p.ink.trade);
  expect(inHub(bunting)).toEqual(['cream', 'off-white']);
  expect(inHub(ledger)).toEqual(['cream', 'grey']);
  expect(inHub(pebble)).toEqual(['kraft', 'white']);
});

test('the area of a mark follows its share, a disc and a diamond of one share covering the same', () => {
  expect(radiusFromShare(0.2) ** 2 / radiusFromShare(0.1) ** 2).toBeCloseTo(2, 9);
  const anchor = sideOf('A', 'white', [0.98, 0.002, 90, 0.8], [0.6, 0.14, 20, 0.2]);
  const candidate = sideOf('a', 'white', [0.98, 0.002, 90, 0.8], [0.6, 0.14, 200, 0.2]);
  const drawing = hueWheel({
    anchor: { side: anchor, name: 'one' },
    candidate: { side: candidate, name: 'two' },
  });
  const disc = flat([markNode(drawing, 'ink', 'B').node]).find((p) => p.node.type === 'circle')!.node;
  const diamond = flat([markNode(drawing, 'ink', 'b').node]).find((p) => p.node.type === 'path')!.node;
  const points = [...(diamond as { d: string }).d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map((m) => [
    Number(m[1]),
    Number(m[2]),
  ]);
  const half = (Math.max(...points.map((p) => p[0]!)) - Math.min(...points.map((p) => p[0]!))) / 2;
  expect(2 * half ** 2).toBeCloseTo(Math.PI * (disc as { r: number }).r ** 2, 0);
});

test('repeats are solid, near misses dotted, opposites dashed, and each link reads as a sentence', () => {
  const drawing = hueWheel(pair);
  const lineOf = (a: string, c: string) =>
    flat([markNode(drawing, 'link', a, c).node]).find((p) => p.node.className === 'link-line')!.node as {
      dash?: number[];
    };
  expect(lineOf('D', 'b').dash).toBeUndefined();
  expect(lineOf('C', 'c').dash![0]).toBeLessThan(1);
  expect(lineOf('C', 'b').dash![0]).toBeGreaterThan(4);
  expect(markNode(drawing, 'link', 'C', 'c').node.mark!.label).toBe(
    'Coral (C) and raspberry (c) are a near miss: ΔE₀₀ 17.9, hue 16° apart.',
  );
});

test('a link between marks that want the same place is still a visible line', () => {
  const drawing = hueWheel(pair);
  for (const [a, c] of [
    ['B', 'd'],
    ['D', 'b'],
    ['A', 'a'],
  ] as const) {
    const line = flat([markNode(drawing, 'link', a, c).node]).find(
      (p) => p.node.className === 'link-line',
    )!.node;
    const { x1, y1, x2, y2 } = line as { x1: number; y1: number; x2: number; y2: number };
    expect(Math.hypot(x2 - x1, y2 - y1)).toBeGreaterThan(4);
  }
});

test('no two marks cover each other, however close the inks', () => {
  const twin = (first: 'A' | 'a') =>
    sideOf(
      first,
      'white',
      [0.98, 0.002, 90, 0.5],
      ...([0.61, 0.62, 0.63, 0.64, 0.65, 0.66, 0.67].map((l) => [l, 0.15, 20, 0.07]) as [
        number,
        number,
        number,
        number,
      ][]),
    );
  const { places } = wheelPlaces({ anchor: twin('A'), candidate: twin('a') });
  places.forEach((p, i) => {
    places.slice(i + 1).forEach((q) => {
      expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThan(p.radius + q.radius - 0.5);
    });
  });
});

test('of many links each ink keeps its closest of a kind', () => {
  const far = { ...links[2]!, candidateInk: 'd', deltaE00: 4.9 };
  expect(drawnLinks([...links, far], 'eye').map((l) => l.anchorInk + l.candidateInk)).toEqual([
    'Aa',
    'Bd',
    'Db',
    'Cc',
    'Cb',
  ]);
});

test("an opposite of the painter's wheel alone is not drawn on the eye's", () => {
  const only = links.map((link) =>
    link.kind === 'opposite' ? { ...link, wheels: ['painter' as const] } : link,
  );
  expect(drawnLinks(only, 'eye').some((link) => link.kind === 'opposite')).toBe(false);
  expect(drawnLinks(only, 'painter').some((link) => link.kind === 'opposite')).toBe(true);
});

test('other candidates are outlines without a fill, named in words', () => {
  const drawing = hueWheel({ ...pair, others: [pebble, dahlia] });
  const outlined = flat(drawing.nodes).filter((p) => p.node.className === 'outline-mark');
  expect(outlined).toHaveLength(5);
  expect(outlined[0]!.node.mark!.label).toMatch(/^Pebble dot, not drawn in full: navy/);
});

test('every mark carries a sentence, and the table names every ink', () => {
  const drawing = hueWheel(pair);
  for (const mark of marks(drawing)) expect(mark.label).toMatch(/^[A-Z].+\.$/);
  expect(drawing.table.rows.map((row) => row[0])).toEqual([
    'A',
    'B',
    'C',
    'D',
    'E',
    'F',
    'a',
    'b',
    'c',
    'd',
    'e',
  ]);
});

test('all text lies inside the box and no number is missing, whatever the inks', () => {
  const anInk = fc.tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 0.33, noNaN: true }),
    fc.option(fc.double({ min: 0, max: 359.99, noNaN: true })),
    fc.double({ min: 0, max: 1, noNaN: true }),
  );
  fc.assert(
    fc.property(
      fc.array(anInk, { minLength: 1, maxLength: 8 }),
      fc.array(anInk, { minLength: 1, maxLength: 8 }),
      (a, b) => {
        for (const [wheel, width] of [
          ['eye', 480],
          ['painter', 480],
          ['eye', 340],
          ['painter', 340],
        ] as const) {
          const drawing = hueWheel(
            {
              anchor: { side: sideOf('A', 'white', ...a), name: 'one' },
              candidate: { side: sideOf('a', 'cream', ...b), name: 'two' },
            },
            { wheel, width },
          );
          expect(JSON.stringify(drawing)).not.toMatch(/null|NaN|Infinity/);
          for (const { node, x } of flat(drawing.nodes)) {
            if (node.type !== 'text') continue;
            const width = textWidth(node.text, node);
            const start =
              x + node.x - (node.anchor === 'middle' ? width / 2 : node.anchor === 'end' ? width : 0);
            expect(start).toBeGreaterThanOrEqual(0);
            expect(start + width).toBeLessThanOrEqual(drawing.width);
          }
        }
      },
    ),
    { numRuns: 40 },
  );
});

test('the same papers give the same drawing, to the byte', () => {
  expect(JSON.stringify(hueWheel(pair))).toBe(JSON.stringify(hueWheel(pair)));
});

test('a near miss of two inks that each have a repeat is not drawn', () => {
  const answered = { ...links[3]!, anchorInk: 'B', candidateInk: 'b' };
  expect(drawnLinks([...links, answered], 'eye')).not.toContain(answered);
  expect(drawnLinks(links, 'eye')).toContain(links[3]);
});
