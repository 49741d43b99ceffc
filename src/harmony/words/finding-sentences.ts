import type { Verdict } from '../model.ts';
import type { FindingName } from '../whole/model.ts';
import { capital, Ink, ink, listed, number, percent, type Said } from './sentences.ts';

/** What is said of a whole pair: each finding as a sentence, in short, and as its number. */

/** What a finding is told from. */
export interface ToldFinding {
  /** The two papers' names, in the order in which their numbers stand. */
  readonly names: readonly [string, string];
  readonly numbers: Readonly<Record<string, number>>;
  /** The families that it speaks of, where it speaks of two. */
  readonly said: readonly [Said, Said] | null;
  /** True for a side of one colour. */
  readonly plain: readonly [boolean, boolean];
  /** True where a plain strip lies between. */
  readonly strip: boolean;
}

/** One finding, as it is said. */
export interface FindingWords {
  /** What it is called in a list. */
  readonly title: string;
  /** One plain sentence or two. */
  readonly says: (told: ToldFinding) => string;
  /** The same in a few words, to stand under a verdict. */
  readonly short: (told: ToldFinding) => string;
  /** The deciding number. */
  readonly figure: (told: ToldFinding) => string;
}

/** The paper with the smaller number first. */
function smallerFirst({ names, numbers }: ToldFinding, key: string): readonly [string, string] {
  return (numbers[`${key}A`] ?? 0) <= (numbers[`${key}B`] ?? 0) ? names : [names[1], names[0]];
}

const both = ([one, other]: readonly [string, string]): string => `${capital(one)} and ${other}`;
const two = (told: ToldFinding): readonly [Said, Said] => told.said!;
const of = (told: ToldFinding, key: string, digits = 0): string =>
  `${number(told.numbers[`${key}A`] ?? 0, digits)} and ${number(told.numbers[`${key}B`] ?? 0, digits)}`;
const isPlain = (told: ToldFinding, name: string): boolean => told.plain[told.names.indexOf(name)] === true;

/** Two families, ready to begin a sentence; of one word, each with its paper. */
function Two([a, b]: readonly [Said, Said]): string {
  return a.word === b.word ? `${Ink(a)} of ${a.of} and ${ink(b)} of ${b.of}` : `${Ink(a)} and ${ink(b)}`;
}

const lower1 = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Two families by their words: one word said once. */
function words([a, b]: readonly [Said, Said]): string {
  return a.word === b.word ? `the two ${a.word} colours` : `${a.word} and ${b.word}`;
}

export const findingWords: Readonly<Record<FindingName, FindingWords>> = {
  'one rests': {
    title: 'one rests',
    says(told) {
      const [quiet, other] = smallerFirst(told, 'contrast');
      const least = Math.min(told.numbers.contrastA ?? 0, told.numbers.contrastB ?? 0);
      if (told.strip && least >= restsUnder)
        return 'The plain strip between them gives the eye a place to rest.';
      if (told.plain[0] && told.plain[1])
        return `${both(told.names)} are both plain: neither shouts at the other.`;
      return isPlain(told, quiet)
        ? `${capital(quiet)} is plain, so ${other} can do the talking.`
        : `${capital(quiet)} is calm enough to rest the eye, so ${other} can do the talking.`;
    },
    short(told) {
      const [quiet, other] = smallerFirst(told, 'contrast');
      const least = Math.min(told.numbers.contrastA ?? 0, told.numbers.contrastB ?? 0);
      if (told.strip && least >= restsUnder) return 'The strip gives the eye a rest.';
      if (told.plain[0] && told.plain[1]) return 'Both are plain.';
      return `${capital(quiet)} rests, and ${other} talks.`;
    },
    figure: (told) => `contrast ${of(told, 'contrast')}`,
  },
  'few colours': {
    title: 'few colours',
    says(told) {
      const [simple] = smallerFirst(told, 'colours');
      return `${capital(simple)} has few colours, so there is little that could clash.`;
    },
    short: (told) => `${capital(smallerFirst(told, 'colours')[0])} has few colours.`,
    figure: (told) => `colours seen: ${of(told, 'colours')}`,
  },
  'soft beside loose': {
    title: 'an even print beside a loose one',
    says(told) {
      const [loose, even] = smallerFirst(told, 'regular');
      return `${capital(even)} is a small, even print and ${loose} is a loose one: the even one steps back.`;
    },
    short(told) {
      const [loose, even] = smallerFirst(told, 'regular');
      return `${capital(even)} is even and steps back behind ${loose}.`;
    },
    figure: (told) => `how evenly they repeat, 0–1: ${of(told, 'regular', 2)}`,
  },
  'grounds agree': {
    title: 'the bases agree',
    says(told) {
      const [a, b] = two(told);
      return a.word === b.word
        ? `Both lie on the same ${a.word}, (${a.id}) and (${b.id}): neither makes the other look dirty.`
        : `Both lie on the same base, ${lower1(Two(two(told)))}: neither makes the other look dirty.`;
    },
    short(told) {
      const [a, b] = two(told);
      return a.word === b.word ? `Both lie on the same ${a.word}.` : 'Both lie on the same base.';
    },
    figure: (told) => `ΔE₀₀ ${number(told.numbers.deltaE00 ?? 0)}`,
  },
  'comes back': {
    title: 'a colour comes back',
    says(told) {
      const [a, b] = two(told);
      return a.word === b.word
        ? `${Ink(a)} of ${a.of} comes back on ${b.of}, as ${ink(b)}.`
        : `${Ink(a)} of ${a.of} and ${ink(b)} of ${b.of} look like one colour: it is on both papers.`;
    },
    short(told) {
      const [a, b] = two(told);
      return a.word === b.word ? `The ${a.word} is on both.` : `The ${a.word} comes back.`;
    },
    figure: (told) =>
      `ΔE₀₀ ${number(told.numbers.deltaE00 ?? 0)} · ${percent(two(told)[0].share)} and ${percent(two(told)[1].share)}`,
  },
  'many hues': {
    title: 'many hues',
    says: (told) =>
      `The two together have ${number((told.numbers.huesA ?? 0) + (told.numbers.huesB ?? 0), 0)} hues: more than the eye can sort.`,
    short: () => 'There are too many hues at once.',
    figure: (told) => `hues: ${of(told, 'hues')}`,
  },
  'strong contrast of colour': {
    title: 'strong contrast of colour',
    says(told) {
      const [other, loud] = smallerFirst(told, 'colourContrast');
      return `${capital(loud)} sets strong colours hard against each other: it wants all the looking, and leaves ${other} little.`;
    },
    short: (told) => `${capital(smallerFirst(told, 'colourContrast')[1])} wants all the looking.`,
    figure: (told) => `contrast of colour ${of(told, 'colourContrast')}`,
  },
  'strong beside soft': {
    title: 'strong colours beside soft ones',
    says(told) {
      const [soft, strong] = smallerFirst(told, 'chroma');
      return `The colours of ${strong} are strong and clean, those of ${soft} soft: side by side one looks loud and the other faded.`;
    },
    short(told) {
      const [soft, strong] = smallerFirst(told, 'chroma');
      return `Beside ${strong}, ${soft} looks faded.`;
    },
    figure: (told) => `mean C* ${of(told, 'chroma')}`,
  },
  'nothing shared': {
    title: 'no colour in common',
    says: () => 'Hardly a colour of the one is found on the other.',
    short: () => 'They have hardly a colour in common.',
    figure: (told) => `nearest colours ΔE₀₀ ${number(told.numbers.meanDeltaE00 ?? 0, 0)} apart, on the mean`,
  },
  'near miss': {
    title: 'a near miss',
    says(told) {
      const tail = told.strip
        ? 'With a strip between they do not meet, and it shows less.'
        : 'Side by side they will look like a mistake.';
      return `${Two(two(told))} are close but not the same. ${tail}`;
    },
    short: (told) => `${capital(words(two(told)))} nearly match, and do not.`,
    figure: (told) =>
      `hue ${number(told.numbers.hueDeg ?? 0, 0)}° apart · ΔE₀₀ ${number(told.numbers.deltaE00 ?? 0)}`,
  },
  'one is greyed': {
    title: 'one of two like hues is greyed',
    says(told) {
      return `${Two(two(told))} are of one hue, but one is clean and the other has grey in it: the greyed one will look dirty.`;
    },
    short: (told) => `Of ${words(two(told))} one makes the other look dirty.`,
    figure: (told) =>
      `hue ${number(told.numbers.hueDeg ?? 0, 0)}° apart · grey ${number(told.numbers.grey ?? 0, 2)} apart`,
  },
  'hues far apart': {
    title: 'hues far apart',
    says(told) {
      const both = Two(two(told));
      return (told.numbers.hueDeg ?? 0) >= oppositeFrom
        ? `${both} are almost opposite on the wheel, and there is much of both: each shouts at the other.`
        : `${both} have nothing to do with each other, and there is much of both.`;
    },
    short: (told) => `${capital(words(two(told)))} pull away from each other.`,
    figure: (told) => `hue ${number(told.numbers.hueDeg ?? 0, 0)}° apart`,
  },
  'hard beside hard': {
    title: 'two hard, even prints',
    says: (told) =>
      `${both(told.names)} are both bold, even prints of hard contrast: side by side they flicker.`,
    short: () => 'Two hard, even prints flicker.',
    figure: (told) => `how evenly they repeat, 0–1: ${of(told, 'regular', 2)}`,
  },
  'tone on tone': {
    title: 'tone on tone',
    says: (told) => `${Two(two(told))} are one hue, light and dark.`,
    short: () => 'One hue, light and dark.',
    figure: (told) =>
      `hue ${number(told.numbers.hueDeg ?? 0, 0)}° apart · L* ${number(told.numbers.dL ?? 0, 0)} apart`,
  },
  'light-dark step': {
    title: 'one light, one dark',
    says(told) {
      const [dark, light] = smallerFirst(told, 'lightness');
      return `${capital(dark)} is much darker than ${light}: the eye tells them apart at once.`;
    },
    short: () => 'One is light, the other dark.',
    figure: (told) => `L* ${of(told, 'lightness')}`,
  },
  'no step': {
    title: 'no step between the two',
    says: (told) =>
      `${both(told.names)} are both calm and lie close in light and dark: side by side they run into one.`,
    short: () => 'Side by side they run into one.',
    figure: (told) => `ΔE₀₀ ${number(told.numbers.deltaE00 ?? 0)}`,
  },
  'warm beside cool': {
    title: 'one warm, one cool',
    says(told) {
      const [cool, warm] = smallerFirst(told, 'warmth');
      return `${capital(warm)} leans warm and ${cool} leans cool.`;
    },
    short: () => 'One is warm, the other cool.',
    figure: (told) => `warmth ${of(told, 'warmth', 2)}`,
  },
  'grounds differ': {
    title: 'two light bases that differ',
    says(told) {
      return `The light bases differ, ${lower1(Two(two(told)))}: where the two meet, the warmer one can look yellowed.`;
    },
    short: () => 'Their light bases differ.',
    figure: (told) => `ΔE₀₀ ${number(told.numbers.deltaE00 ?? 0)}`,
  },
  'same motif': {
    title: 'one motif',
    says: () => 'Both show the same kind of thing.',
    short: () => 'Both show the same kind of thing.',
    figure: () => 'by your tags',
  },
  'drawn differently': {
    title: 'drawn by two hands',
    says: () => 'The two are drawn in different ways, which can show more than the colours do.',
    short: () => 'They are drawn in different ways.',
    figure: () => 'by your tags',
  },
};

/** Contrast under which a side rests, for the sentence alone; see portraitLimits. */
const restsUnder = 7;
/** Degrees from which two hues are called almost opposite; see measureLimits.oppositeHue. */
const oppositeFrom = 140;

/** How the verdict was reached: what counts for and against, and the two limits. */
export function ruleOf(
  counted: readonly { readonly name: FindingName; readonly counts: number }[],
  holdsFrom: number,
  bridgeFrom: number,
): string {
  const list = (some: typeof counted): string =>
    some.length === 0
      ? 'nothing'
      : listed(some.map(({ name, counts }) => `${findingWords[name].title} ${number(Math.abs(counts), 2)}`));
  const held = counted.filter(({ counts }) => Math.abs(counts) >= 0.005);
  return `For: ${list(held.filter(({ counts }) => counts > 0))}. Against: ${list(held.filter(({ counts }) => counts < 0))}. Each counts 1 where it holds in full. A pair holds together while what is against it is no more than ${number(-holdsFrom)} ahead, and pulls apart once it is more than ${number(-bridgeFrom)} ahead.`;
}

const instead: Readonly<Record<Verdict, string>> = {
  'holds-together': 'that it holds together',
  'needs-a-bridge': 'that it needs a bridge',
  'pulls-apart': 'that it pulls apart',
};

/** That the verdict can be argued, and by what. */
export function arguableOf(verdict: Verdict, turnedBy: FindingName | null): string {
  const head = `This can be argued: it lies close to the border, and one could say ${instead[verdict]}`;
  return turnedBy === null ? `${head}.` : `${head}. Without “${findingWords[turnedBy].title}” it would.`;
}

/** One sentence under the verdict. */
export const summaries: Readonly<
  Record<Verdict, (forIt: readonly string[], against: readonly string[]) => string>
> = {
  'holds-together': (forIt) => forIt[0] ?? 'They hardly clash.',
  'needs-a-bridge': (forIt, against) =>
    [against[0] ?? 'They have little in common.', forIt[0] === undefined ? '' : `But ${lower(forIt[0])}`]
      .filter(Boolean)
      .join(' '),
  'pulls-apart': (_, against) =>
    against.length === 0 ? 'They have nothing in common.' : against.slice(0, 2).join(' '),
};

function lower(text: string): string {
  return /^(?:The|They|There|Both|One|Two|Of|Side) /.test(text)
    ? text.charAt(0).toLowerCase() + text.slice(1)
    : text;
}
