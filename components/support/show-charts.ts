import '@fontsource-variable/literata/opsz.css';
import '@fontsource-variable/literata/opsz-italic.css';
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import sans400 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff2?url';
import serif500 from '@fontsource/literata/files/literata-latin-500-normal.woff2?url';
import { boardOf } from '../../src/board/compose.ts';
import { boardSvg } from '../../src/board/svg.ts';
import '../board/qw-board.ts';
import '../palette/qw-palette.ts';
import '../sheet/qw-paper.ts';
import '../strip/qw-strip.ts';
import '../wheel/qw-wheel.ts';
import { bunting, comparison, dahlia, ledger, links, pebble } from './sample-papers.ts';
import { drawSample } from './sample-picture.ts';
import { wearTokens } from './tokens.ts';

/** Fills the page that shows each chart alone, and lets what is pointed at in one light up in all. */
wearTokens(document);

const pair = { anchor: bunting, candidate: ledger, links };
give('wheel-pair', pair);
give('wheel-others', { ...pair, others: [pebble, dahlia] });
give('wheel-painter', { ...pair, wheel: 'painter', surround: 'white' });
give('wheel-dark', { ...pair, surround: 'dark' });
give('strip', { anchor: bunting, candidate: ledger });
give('strip-others', { anchor: bunting, candidate: ledger, others: [pebble, dahlia] });
give('palette-anchor', { paper: bunting });
give('palette-candidate', { paper: ledger });

const sample = drawSample(bunting.side);
give('paper-picture', { paper: bunting, picture: sample.address, places: sample.places });
give('paper-none', { paper: ledger });

const fontCss = [
  await fontFace('Atkinson Hyperlegible Next', sans400),
  await fontFace('Literata', serif500),
].join('');
const words = 'For Thursday’s table: look at the two reds before you cut.';
const names = { anchor: bunting.name, candidate: ledger.name };
const square = boardOf(comparison, { names, words, pictures: { anchor: sample.address } });
give('board', { svg: boardSvg(square, { fontCss }), label: square.scene.description });
const page = boardOf(comparison, { names, words, size: 'a4' });
give('board-page', { svg: boardSvg(page, { fontCss }), label: page.scene.description });

document.body.addEventListener('qw-point', (event) => {
  for (const element of document.querySelectorAll('qw-wheel, qw-strip, qw-palette, qw-paper')) {
    (element as HTMLElementTagNameMap['qw-wheel']).lit = event.detail.inks;
  }
});

/** One font inside the picture: an SVG that is shown as an image loads nothing. One weight will do on this page. */
async function fontFace(family: string, address: string): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
  const data = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  return `@font-face{font-family:'${family}';src:url(data:font/woff2;base64,${data})}`;
}

function give(id: string, values: object): void {
  const element = document.getElementById(id);
  if (element) Object.assign(element, values);
}
