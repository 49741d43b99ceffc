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
  'one rests': 'one rests, one talks',
  'few colours': 'few colours',
  'soft beside loose': 'an even print beside a loose one',
  'grounds agree': 'bases that agree',
  'comes back': 'a colour that comes back',
  'many hues': 'many hues at once',
  'strong contrast of colour': 'strong contrast of colour',
  'strong beside soft': 'strong colours beside soft ones',
  'nothing shared': 'no colour in common',
  'near miss': 'colours close but not the same',
  'one is greyed': 'clean beside greyed',
  'hues far apart': 'hues far apart',
  'hard beside hard': 'two hard, even prints',
  'tone on tone': 'one hue, light and dark',
  'light-dark step': 'one light, one dark',
  'no step': 'no step between the two',
  'warm beside cool': 'warm beside cool',
  'grounds differ': 'light bases that differ',
  'same motif': 'what is pictured',
  'drawn differently': 'how they are drawn',
  repeat: 'a colour that comes back',
  'repeated neutral': 'a neutral that comes back',
  neighbours: 'neighbouring hues',
  opposites: 'opposite hues',
  'warm and cool': 'warm and cool',
  'lightness range': 'light and dark',
  dominance: 'how much each colour takes',
  weight: 'how heavy the papers are',
  'two-colour model': 'a published model of two colours',
  'other eyes': 'how other eyes see it',
  'light unknown': 'a light that is not known',
};
