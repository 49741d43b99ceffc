import type { Reason } from '../../harmony/model.ts';

/** What turned a verdict, in words for a margin, each kind once: "a colour alone, twice". */
export function turnedWords(reasons: readonly Pick<Reason, 'kind'>[]): readonly string[] {
  const kinds = reasons.map(({ kind }) => kind);
  return [...new Set(kinds)].map((kind) => {
    const times = kinds.filter((one) => one === kind).length;
    const words = kindWords[kind];
    return times > 1 ? `${words}, ${times === 2 ? 'twice' : `${times} times`}` : words;
  });
}

/** What a reason of each kind is about, in plain words. */
export const kindWords: Readonly<Record<Reason['kind'], string>> = {
  repeat: 'a colour that comes back',
  'repeated neutral': 'a neutral that comes back',
  'tone on tone': 'one hue, light and dark',
  neighbours: 'neighbouring hues',
  opposites: 'opposite hues',
  'near miss': 'colours close but not the same',
  stray: 'a colour alone',
  'base agreement': 'grounds that agree',
  'base quarrel': 'two whites that quarrel',
  'bright against muted': 'bright against muted',
  'warm and cool': 'warm against cool',
  'lightness range': 'light and dark',
  dominance: 'how much each colour takes',
  'print scale': 'the size of the prints',
  busyness: 'how busy the prints are',
  finish: 'how the papers are finished',
  motif: 'what is pictured',
  weight: 'how heavy the papers are',
  'two-colour model': 'a published model of two colours',
  'other eyes': 'how other eyes see it',
  'light unknown': 'a light that is not known',
};
