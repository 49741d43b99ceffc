import { expect, test } from 'vitest';
import { bunting, dahlia, ledger, links, pebble } from '../../../components/support/sample-papers.ts';
import { sceneOfDrawing, sceneSvg } from '../../../src/board/svg.ts';
import { tornChips } from '../../../src/drawing/chips.ts';
import type { Drawing } from '../../../src/drawing/model.ts';
import { paperStandIn } from '../../../src/drawing/paper.ts';
import { lightnessStrip } from '../../../src/drawing/strip.ts';
import { gapIn } from '../../../src/drawing/strip-gap.ts';
import { surroundTones } from '../../../src/drawing/surround.ts';
import { hueWheel } from '../../../src/drawing/wheel.ts';
import { compare } from '../../../src/harmony/compare.ts';

const gap = gapIn(compare(bunting.side, ledger.side).reasons);
const pair = { anchor: bunting, candidate: ledger, links };

// Open the files in a browser to see what a change did: they double as examples of each chart.
test.each<[string, Drawing, 'grey' | 'white' | 'dark']>([
  ['wheel', hueWheel(pair), 'grey'],
  ['wheel-of-several', hueWheel({ ...pair, others: [pebble, dahlia] }), 'grey'],
  ['wheel-painters-on-white', hueWheel(pair, { wheel: 'painter', surround: 'white' }), 'white'],
  ['wheel-narrow-on-dark', hueWheel(pair, { width: 340, surround: 'dark' }), 'dark'],
  ['strip', lightnessStrip({ ...pair, others: [pebble] }, { gap }), 'grey'],
  ['chips', tornChips(bunting), 'grey'],
  ['paper', paperStandIn(ledger), 'grey'],
])('the chart %s is drawn as its example shows', async (name, drawing, surround) => {
  const svg = sceneSvg(sceneOfDrawing(drawing, surroundTones(surround).mat));
  await expect(svg.replaceAll('><', '>\n<')).toMatchFileSnapshot(`./examples/${name}.svg`);
});
