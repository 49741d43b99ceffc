import type { Wheel } from '../colour/model.ts';
import { painterFromHue } from '../colour/wheels.ts';
import type { Link } from '../harmony/model.ts';
import { inkWord } from '../sheet/words/side-words.ts';
import type { ChartTable } from './model.ts';
import type { WheelPapers } from './wheel.ts';
import { sitsInHub, type WheelLayout } from './wheel-places.ts';
import { wheelTableTitle } from './words/chart-words.ts';
import { inksOf, shareWords } from './words/says.ts';

/** The wheel as a table: each ink with its hue and chroma, and what it is linked to. */
export function wheelTable(
  papers: WheelPapers,
  links: readonly Link[],
  layout: WheelLayout,
  wheel: Wheel,
): ChartTable {
  const nameOf = { anchor: papers.anchor.name, candidate: papers.candidate?.name ?? '' };
  const rows = layout.places.map(({ ink, of, inHub }) => [
    ink.id,
    inkWord(ink),
    nameOf[of],
    shareWords(ink.share),
    inHub ? 'neutral' : hueWords(ink.oklch[2], wheel),
    ink.oklch[1].toFixed(3),
    links
      .filter((link) => (of === 'anchor' ? link.anchorInk : link.candidateInk) === ink.id)
      .map((link) => `${link.kind} ${of === 'anchor' ? link.candidateInk : link.anchorInk}`)
      .join(', ') || '–',
  ]);
  const others = (papers.others ?? []).flatMap((other) =>
    inksOf(other.side).map((ink) => [
      ink.id,
      inkWord(ink),
      other.name,
      shareWords(ink.share),
      sitsInHub(ink) ? 'neutral' : hueWords(ink.oklch[2], wheel),
      ink.oklch[1].toFixed(3),
      'outline only',
    ]),
  );
  return {
    caption: wheelTableTitle,
    columns: [
      'Ink',
      'Colour',
      'Paper',
      'Share',
      wheel === 'eye' ? 'Hue (OKLCH)' : 'Hue (painter’s)',
      'Chroma (OKLCH)',
      'Links',
    ],
    rows: [...rows, ...others],
  };
}

function hueWords(hue: number | null, wheel: Wheel): string {
  if (hue === null) return 'none';
  return `${Math.round(wheel === 'eye' ? hue : painterFromHue(hue)) % 360}°`;
}
