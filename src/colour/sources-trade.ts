import type { Source } from './sources.ts';

/** What sheets are read and judged by: print, sight, comparison, and the habits of the trade. */
export const tradeSources: readonly Source[] = [
  {
    id: 's-cielab',
    short: 'Zhang & Wandell 1997',
    full: 'X. Zhang, B. A. Wandell, A spatial extension of CIELAB for digital color-image reproduction, SID Journal 5(1):61–63 (1997).',
    kind: 'published',
    what: 'How far the eye blurs a print at arm’s length, 45 cm, before its contrast is measured.',
  },
  {
    id: 'iso-12647-2',
    short: 'ISO 12647-2:2013',
    full: 'ISO 12647-2:2013, Graphic technology: process control for offset lithographic processes.',
    kind: 'published',
    what: 'A printed solid may lie 3.5 ΔE₀₀ from its aim, so two printings of one design may differ.',
  },
  {
    id: 'mokrzycki-tatol',
    short: 'Mokrzycki & Tatol 2011',
    full: 'W. S. Mokrzycki, M. Tatol, Colour difference ΔE: a survey, Machine Graphics & Vision (2011).',
    kind: 'published',
    what: 'From which difference on two colours are noticed as different.',
  },
  {
    id: 'common-practice',
    short: 'common practice, no source',
    full: 'Common practice of paper crafters; no published source.',
    kind: 'trade',
    what: 'Base tone first, then intensity, finish, motif, a repeated colour, print scale, busy against calm.',
  },
  {
    id: 'trade-words',
    short: 'trade usage',
    full: 'Words for colours as crafters and printers use them; the regions in OKLCH are ours.',
    kind: 'trade',
    what: 'Navy, coral, kraft and other words beside the standard name.',
  },
  {
    id: 'paper-weights',
    short: 'basic sheet sizes of the trade',
    full: 'Basic sheet areas of cover (20×26 in), text (25×38), bond (17×22) and index (25.5×30.5) paper; g/m² computed from them.',
    kind: 'trade',
    what: 'Turns pounds with their grade into g/m².',
  },
  {
    id: 'link-limits',
    short: 'our rule',
    full: 'The limits that tell repeat, near miss, tonal, neighbour, opposite and unrelated apart: ours, after ISO 12647-2:2013, Mokrzycki & Tatol 2011 and Moon & Spencer 1944.',
    kind: 'ours',
    what: 'Which link two inks have.',
  },
  {
    id: 'verdict-rules',
    short: 'our rule',
    full: 'Findings for and against count one each by how far they hold; two limits make three verdicts of them; candidates are put in order by what ties less what quarrels.',
    kind: 'ours',
    what: 'Holds together, needs a bridge, or pulls apart.',
  },
  {
    id: 'judged-papers',
    short: 'judged papers',
    full: 'Three viewings of 151 pairs of 29 papers, decided by colour, judged by eye before anything was computed; the viewers are no panel of crafters. With both pictures of a pair left out when the two limits are set, the verdict is the majority’s on 69 % and its opposite on 1 %; always to say “holds together” would be right on 54 %, one viewer agrees with the other two on 90–94 %.',
    kind: 'ours',
    what: 'Which findings count, and how often the verdict agrees with people.',
  },
  {
    id: 'reading',
    short: 'our reading',
    full: 'How base, inks, shares, print scale and busyness are read from pixels.',
    kind: 'ours',
    what: 'What the workbench believes is on a sheet, before anything is compared.',
  },
];
