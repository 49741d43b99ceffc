import type { Source } from './sources.ts';

/** What sheets are read and judged by: print, sight, comparison, and the habits of the trade. */
export const tradeSources: readonly Source[] = [
  {
    id: 's-cielab',
    short: 'Zhang & Wandell 1996',
    full: 'X. Zhang, B. A. Wandell, A spatial extension of CIELAB for digital color image reproduction (1996).',
    kind: 'published',
    what: 'How far the eye blurs fine print at 40 cm before inks are read.',
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
    id: 'pan-westland',
    short: 'Pan & Westland 2018',
    full: 'Q. Pan, S. Westland, Comparative evaluation of color differences between color palettes, Proc. IS&T 26th Color and Imaging Conference, 110–115 (2018).',
    doi: '10.2352/ISSN.2169-2629.2018.26.110',
    kind: 'published',
    what: 'How much of one palette finds a partner in the other, both ways.',
  },
  {
    id: 'schloss-palmer',
    short: 'Schloss & Palmer 2011',
    full: 'K. B. Schloss, S. E. Palmer, Aesthetic response to color combinations, Attention, Perception & Psychophysics 73:551–571 (2011).',
    kind: 'published',
    what: 'Belonging together, standing out and being liked are three different judgements.',
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
    full: 'The stated rules by which reasons become a verdict and candidates are put in order.',
    kind: 'ours',
    what: 'Holds together, needs a bridge, or pulls apart.',
  },
  {
    id: 'reading',
    short: 'our reading',
    full: 'How base, inks, shares, print scale and busyness are read from pixels.',
    kind: 'ours',
    what: 'What the workbench believes is on a sheet, before anything is compared.',
  },
];
