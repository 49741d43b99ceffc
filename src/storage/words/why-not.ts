import * as v from 'valibot';

/** Why a value can't be read as what it should be, as a sentence: which field of it, and what is wrong there. */
export function whyNot(issue: v.BaseIssue<unknown>): string {
  const path = v.getDotPath(issue);
  const field = path === null ? null : shortened(path);
  const at = field === null ? '' : ` (at ${field})`;
  const words = fieldWords(field);
  switch (issue.type) {
    case 'max_value':
      return `${words} is too large: the most that can be kept is ${numberOf(issue.requirement)}${at}.`;
    case 'min_value':
    case 'gt_value':
      return `${words} is too small: the least that can be kept is ${numberOf(issue.requirement)}${at}.`;
    case 'max_length':
    case 'max_entries':
      return `${words} holds too much: the most that can be kept is ${numberOf(issue.requirement)}${at}.`;
    case 'finite':
    case 'integer':
    case 'nan':
      return `${words} is no number that can be kept${at}.`;
    default:
      return `${words} is not what it should be${at}.`;
  }
}

/** A path for a sentence: what it is made of may come from a hostile file. */
export function shortened(path: string): string {
  const clean = path.replace(/[^\w.:~ -]/g, '');
  return clean.length > 60 ? `…${clean.slice(-60)}` : clean;
}

function fieldWords(path: string | null): string {
  const last = path?.split('.').findLast((step) => words[step] !== undefined);
  return last === undefined ? 'Something in it' : (words[last] ?? 'Something in it');
}

/** Fields that a reader fills in, as she knows them. */
const words: Readonly<Record<string, string>> = {
  title: 'The title',
  name: 'The name',
  text: 'The text',
  words: 'The text',
  note: 'The note',
  gsm: 'The weight',
  lb: 'The weight',
  sizeMm: 'The size',
  areaMm2: 'The area',
  borderMm: 'The border',
  count: 'The number of them',
  pieces: 'The kit',
  candidates: 'The list of candidates',
  opinions: 'The list of opinions',
  oklch: 'The colour',
  hex: 'The colour',
  hand: 'The list of corrections',
  inks: 'The list of inks',
  share: 'The share of a colour',
};

function numberOf(requirement: unknown): string {
  return typeof requirement === 'number' ? requirement.toLocaleString('en') : String(requirement);
}
