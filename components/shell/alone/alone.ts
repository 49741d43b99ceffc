import { demoSheets, drawDemoSheet } from '../../../src/demo/sheets.ts';
import { gapIn } from '../../../src/drawing/strip-gap.ts';
import { advise } from '../../../src/harmony/advise.ts';
import type { Reading } from '../../../src/sheet/model.ts';
import { readWithPlaces } from '../../../src/sheet/read-side.ts';
import '../../board/qw-board.ts';
import '../../drawer/qw-drawer.ts';
import '../../notebook/qw-empty.ts';
import '../../notebook/qw-leaves.ts';
import '../../notebook/qw-messages.ts';
import '../../notebook/qw-note.ts';
import '../../notebook/qw-upkeep.ts';
import '../../study/qw-mounted.ts';
import '../../study/qw-opinion.ts';
import '../../study/qw-reasons.ts';
import '../../study/qw-remedies.ts';
import '../../study/qw-verdict.ts';
import type { PaperView } from '../../study/study-view.ts';
import '../../strip/qw-strip.ts';
import '../../wheel/qw-wheel.ts';

/** Each element alone, on a page of its own, with nothing but its properties: two papers of the demo, compared. */
const [first, second] = demoSheets.slice(0, 2).map(({ id, name }) => paper(id, name));
if (first && second) show(first, second);

function show(anchor: Shown, candidate: Shown): void {
  const comparison = advise(anchor.reading.side, candidate.reading.side, {
    places: { anchor: anchor.reading.places, candidate: candidate.reading.places },
    names: { anchor: anchor.name, candidate: candidate.name },
  });
  const pair = {
    anchor: { side: comparison.anchor, name: anchor.name },
    candidate: { side: comparison.candidate, name: candidate.name },
  };
  const papers = [anchor, candidate].map(({ name, picture, reading: { side } }) => ({
    key: name,
    name,
    about: 'sheet',
    picture,
    bands: [side.base, ...side.inks],
  }));
  place('qw-wheel', { ...pair, links: comparison.links });
  place('qw-strip', { ...pair, gap: gapIn(comparison.reasons) });
  place('qw-palette', { paper: pair.anchor });
  place('qw-paper', { paper: pair.anchor, picture: anchor.picture, places: anchor.reading.places });
  place('qw-mounted', { as: 'anchor', paper: viewOf(anchor, comparison.anchor) });
  place('qw-verdict', { comparison });
  place('qw-reasons', { comparison });
  place('qw-remedies', { comparison, remedies: comparison.remedies });
  place('qw-opinion', { first: true });
  place('qw-opinion', { reading: comparison.verdict, opinion: { verdict: 'pulls-apart', likes: true } });
  place('qw-drawer', { papers });
  place('qw-drawer', { papers, open: true });
  place('qw-leaves', { leaves: [{ id: 'one', title: 'A leaf', about: 'note' }], current: 'one' });
  place('qw-note', { leaf: { id: 'n', kind: 'note', title: 'A note', text: 'What is written on it.' } });
  place('qw-messages', { messages: [{ id: 'm', kind: 'note', says: 'Something to tell.' }] });
  place('qw-upkeep', {});
  place('qw-empty', {});
}

interface Shown {
  readonly name: string;
  readonly picture: string;
  readonly reading: Reading;
}

function paper(id: string, name: string): Shown {
  const image = drawDemoSheet(id, 'A', 400);
  const canvas = document.createElement('canvas');
  canvas.width = image.width;
  canvas.height = image.height;
  canvas.getContext('2d')?.putImageData(new ImageData(new Uint8ClampedArray(image.data), image.width), 0, 0);
  return { name, picture: canvas.toDataURL(), reading: readWithPlaces(image) };
}

function viewOf({ name, picture, reading }: Shown, side: PaperView['side']): PaperView {
  const held = { kind: 'sheet', id: name, side: 'A' } as const;
  return { held, name, side, picture, places: reading.places, facts: [], turnsTo: null };
}

function place(tag: string, properties: Record<string, unknown>): void {
  const heading = document.createElement('h2');
  heading.textContent = tag;
  const box = document.createElement('section');
  box.style.cssText = 'max-width:1000px;margin:0 auto 40px;padding:16px;background:var(--qw-leaf)';
  const element = Object.assign(document.createElement(tag), properties);
  box.append(heading, element);
  document.getElementById('alone')?.append(box);
}
