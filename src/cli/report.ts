import type { Advised, FamilySide, Reason, Remedy } from '../harmony/model.ts';
import { portraitOf } from '../harmony/whole/portrait.ts';
import { verdictWords } from '../harmony/words/sentences.ts';
import type { Ink } from '../sheet/model.ts';
import { groundWords } from '../sheet/print/base-sure.ts';
import { inkWord, repeatWords } from '../sheet/words/side-words.ts';
import type { Placed } from './study-json.ts';
import { mendsHeading, seenWords } from './words/study-words.ts';

/** Columns that a line of the report fills at most. */
const columns = 88;

/** A study in plain words, for a terminal: the papers, then each candidate with its verdict, reasons and remedies. */
export function report(anchorFile: string, anchor: FamilySide, candidates: readonly Placed[]): string {
  const parts = [`Anchor: ${anchorFile}\n${palette(anchor)}`];
  candidates.forEach(({ file, comparison }, i) => {
    const place = candidates.length > 1 ? `${i + 1}. ` : '';
    parts.push(`${place}${file}: ${verdictWords[comparison.verdict]}\n${told(comparison)}`);
  });
  return `${parts.join('\n\n')}\n`;
}

function told({ candidate, decision, reasons, remedies }: Advised): string {
  const parts = [wrapped(decision.summary, '  '), palette(candidate), reasons.map(reasonTold).join('\n')];
  if (remedies.length > 0) {
    const cautions = new Set(remedies.flatMap(({ caution }) => caution ?? []));
    const foot = [...cautions].map((caution) => `\n${wrapped(caution, '  ')}`).join('');
    parts.push(`  ${mendsHeading}\n${remedies.map(remedyTold).join('\n')}${foot}`);
  }
  return parts.filter((part) => part !== '').join('\n\n');
}

function palette(side: FamilySide): string {
  const { base, inks, print, light } = side;
  const lines = [
    inkTold(base, `base, ${base.kind}: ${groundWords(side)}`),
    ...inks.map((ink) => inkTold(ink, ink.accent ? 'accent' : 'ink')),
  ];
  const every = repeatWords(print);
  const repeat = every === null ? '' : `, repeat ${every}`;
  const scale = print.scale === null ? '' : `, ${print.scale} print`;
  const { role, contrast } = portraitOf(side);
  const seen = seenWords(role, contrast);
  lines.push(wrapped(`${seen}${scale}${repeat}. ${light.note}`, '  '));
  return lines.join('\n');
}

function inkTold(ink: Ink, what: string): string {
  const share = `${(ink.share * 100).toFixed(ink.share < 0.1 ? 1 : 0)} %`;
  const word = inkWord(ink);
  const name = word === ink.name ? word : `${word} (${ink.name})`;
  return `  ${ink.id}  ${ink.hex}  ${share.padStart(6)}  ${name}, ${what}`;
}

function reasonTold({ weighs, says, figure, source }: Reason): string {
  const mark = weighs > 0 ? '+' : weighs < 0 ? '−' : '·';
  const margin = [figure, source].filter((part) => part !== '').join(' · ');
  return `${wrapped(says, `  ${mark} `, '    ')}\n${wrapped(margin, '      ')}`;
}

function remedyTold({ title, says, cost, verdictAfter }: Remedy): string {
  const end = [cost, `then: ${verdictWords[verdictAfter]}`].filter((part) => part !== '').join(' · ');
  return `${wrapped(`${title}: ${says}`, '  – ', '    ')}\n${wrapped(end, '      ')}`;
}

/** Text broken between words, but not between a number and its unit, so that no line is longer than the report is wide. */
function wrapped(text: string, first: string, rest = first): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  const held = text.replace(/ (?=%|mm\b)/g, '\u00a0').replace(/(\d) : (?=\d)/g, '$1\u00a0:\u00a0');
  for (const word of held.split(/[ \n]+/)) {
    if (!empty && line.length + 1 + word.length > columns) {
      lines.push(line);
      [line, empty] = [rest, true];
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join('\n').replaceAll('\u00a0', ' ');
}
