import type { Wheel } from '../colour/model.ts';
import type { Frame, Ink, Plain, Side } from '../sheet/model.ts';
import type { Finding, FindingName } from './whole/model.ts';

export type { Advised, MendOptions, Owned, OwnedSheet } from './remedies/mend-model.ts';

/** Two or more papers: what was found, as values. Every finding names inks by id and carries its number and source. */

/** The inks of a side that a person would name as one colour, from light to dark; a texture is one of them. */
export interface SideFamily {
  /** Base first: A, B, C … on an anchor; a, b, c … on a candidate. */
  readonly id: string;
  /** Unlike every other family's of its side. */
  readonly name: string;
  /** `#rrggbb` of its mean colour. */
  readonly hex: string;
  /** Fraction of the side's area, 0–1; all of one side sum to 1. */
  readonly share: number;
  /** Ids of its inks (A1, A2 …), the base first, then the largest. */
  readonly inks: readonly string[];
  /** CIELAB L* of its darkest and its lightest ink. */
  readonly lightness: readonly [from: number, to: number];
  /** C*ab of its weakest and its strongest ink. */
  readonly chroma: readonly [from: number, to: number];
}

/** A side whose base and inks are families: what is compared, shown and spoken of. */
export interface FamilySide extends Side {
  /** The same families in the same order, the base's first, with what is inside. */
  readonly families: readonly SideFamily[];
  /** The inks as they were read, in their order, the base first; each under its family's letter and a number. */
  readonly within: readonly Ink[];
}

/** Edges that meet, or a gap between them. */
export const distances = ['touching', 'apart'] as const;
export type Distance = (typeof distances)[number];

export type LinkKind = 'repeat' | 'near miss' | 'tonal' | 'neighbour' | 'opposite' | 'unrelated';

/** Two inks, one a side, and how they relate. Differences are candidate minus anchor. */
export interface Link {
  readonly kind: LinkKind;
  readonly anchorInk: string;
  readonly candidateInk: string;
  /** CIEDE2000, CIELAB D65. */
  readonly deltaE00: number;
  /** Angle between the OKLCH hues, 0–180, or null where either has none; a neutral that has one keeps it. */
  readonly hueDeg: number | null;
  /** CIELAB L* difference. */
  readonly dL: number;
  /** CIELAB C*ab difference. */
  readonly dC: number;
  /** Munsell hue steps between them, 0–50 of 100, or null. */
  readonly hueSteps: number | null;
  /** Munsell value difference. */
  readonly dV: number;
  /** For an opposite: the wheel (or both) on which it holds. */
  readonly wheels?: readonly Wheel[];
}

/** A finding about the pair, or a note that is worth knowing and counts for nothing. */
export type ReasonKind =
  | FindingName
  | 'repeat'
  | 'repeated neutral'
  | 'neighbours'
  | 'opposites'
  | 'lightness range'
  | 'dominance'
  | 'weight'
  | 'two-colour model'
  | 'other eyes'
  | 'light unknown'
  /* Of a kit alone. */
  | 'warm and cool';

/** One finding. */
export interface Reason {
  readonly kind: ReasonKind;
  /** −1 (strongly against) … 1 (strongly for). 0 is worth knowing and decides nothing. */
  readonly weighs: number;
  /** One plain sentence or two. An ink stands in it as its words followed by its id in brackets: "coral (C)". */
  readonly says: string;
  /** Ids of all inks it speaks of, anchor's first. */
  readonly inks: readonly string[];
  /** Named numbers, in the units their names tell. */
  readonly evidence: Readonly<Record<string, number>>;
  /** The deciding number, written out: "ΔE₀₀ 17.9 · hue 16°". Stands in the margin. */
  readonly figure: string;
  /** Short citation, shown beside the sentence. */
  readonly source: string;
  /** Keys into the list of sources (src/colour/sources.ts). */
  readonly sourceIds: readonly string[];
}

export const verdicts = ['holds-together', 'needs-a-bridge', 'pulls-apart'] as const;
export type Verdict = (typeof verdicts)[number];

/** The two colours that decide a pair, the anchor's first. */
export type DecidingColours = readonly [Ink, Ink];

/** How the verdict was reached, for "how was this decided?". */
export interface Decision {
  /** The stated rule that gave the verdict, as a sentence. */
  readonly rule: string;
  /** Indices into `reasons` of the one or two that turned it. */
  readonly turnedBy: readonly number[];
  /** One sentence under the verdict. */
  readonly summary: string;
  /** That it can be argued, and by what, as a sentence; null where the verdict is clear. */
  readonly arguable?: string | null;
  /** How many of the reasons, from the first, are told before "more"; not of a kit. */
  readonly leads?: number;
}

export type RemedyKind = 'cover' | 'trim' | 'carry' | 'buffer' | 'turn' | 'swap' | 'mount' | 'leave';

/** A change a person can make with scissors and glue. */
export interface Remedy {
  readonly kind: RemedyKind;
  /** A short imperative: "Put kraft between". */
  readonly title: string;
  readonly says: string;
  readonly inks: readonly string[];
  readonly verdictAfter: Verdict;
  /** What to mind, where it asks for a blade; said once under all of them. */
  readonly caution?: string;
  /** What it costs in cutting, in words: "one cut". */
  readonly cost: string;
  /** Cuts, roughly; remedies are ordered by it, but a swap comes last. */
  readonly effort: number;
  /** The same as changes that can be tried on screen; `verdictAfter` is what comparing again then gives. */
  readonly changes?: readonly Change[];
  /** The findings against the pair that it takes away or makes lighter, the most first. */
  readonly lifts?: readonly FindingName[];
}

/** One thing done to a pair on screen, before the scissors: pure, and undone by leaving it out. Ids are the comparison's. */
export type Change =
  | { readonly kind: 'cover'; readonly of: Role; readonly ink: string; readonly with: Ink }
  | { readonly kind: 'trim'; readonly of: Role; readonly ink: string; readonly toShare?: number }
  | { readonly kind: 'recolour'; readonly of: Role; readonly ink: string; readonly to: Ink }
  | { readonly kind: 'add'; readonly of: Role; readonly ink: Ink; readonly share: number }
  /** What keeps the two from meeting: a strip between them, or a mat under the candidate that shows all round. */
  | { readonly kind: 'strip'; readonly ink: Ink; readonly as?: 'mat' }
  | { readonly kind: 'replace'; readonly of: Role; readonly side: Side };

export type Role = 'anchor' | 'candidate';

/**
 * Two sides compared: it follows from the two sides, how they lie and what they are called, and from nothing else. The
 * screen, the terminal, the board and the exercise all read this one value.
 */
export interface Comparison {
  /** Its inks are families: A, B, C … (base first). */
  readonly anchor: FamilySide;
  /** Its inks are families: a, b, c … (base first). */
  readonly candidate: FamilySide;
  /** As it was judged: papers with a strip between them lie apart. */
  readonly distance: Distance;
  /** True where a neutral strip or mat lies between the two. */
  readonly strip: boolean;
  /** What the sentences call them. */
  readonly names: { readonly anchor: string; readonly candidate: string };
  readonly verdict: Verdict;
  readonly decision: Decision;
  /** What was found of the pair as a whole and is told, those that lead first. */
  readonly findings: readonly Finding[];
  readonly links: readonly Link[];
  /** The findings as they are said, those that lead first; then notes that weigh nothing. */
  readonly reasons: readonly Reason[];
  /** What a ranking goes by after the verdict. */
  readonly standing?: Standing;
}

/** The numbers of the order in a ranking, after the verdict: what ties the two less what quarrels, then the balance. More is better. */
export interface Standing {
  /** A colour that comes back, tone on tone and bases that agree: how far they hold. */
  readonly ties: number;
  /** What counts against the pair, summed. */
  readonly quarrels: number;
  /** All that counts for it less all that counts against it. */
  readonly balance: number;
}

export interface CompareOptions {
  /** Default 'apart'. */
  readonly distance?: Distance;
  /** Names to use in sentences. Default "the anchor" / "the candidate". */
  readonly names?: { readonly anchor?: string; readonly candidate?: string };
  /** True where a neutral strip or mat lies between the two; they then count as apart. Default false. */
  readonly strip?: boolean;
}

/** One place in a ranking: which of the given sides, and its comparison (its parts may be computed when read). */
export type Ranked = Comparison & { readonly index: number };

/** What speaks in a sentence or a mark: the ink, and whose it is. */
export interface PlacedInk {
  readonly ink: Ink;
  readonly of: 'anchor' | 'candidate';
}

/** One piece of a kit as harmony gets it: what it is called, its side, and how much of the page it takes. */
export interface KitMember {
  readonly name: string;
  readonly side: Side;
  /** A photograph is read like a paper, and judged only for how it stands out. */
  readonly role: 'paper' | 'plain' | 'photo';
  /** Area on the page, mm², or null where it is not known: members then share the page alike. */
  readonly areaMm2: number | null;
}

/** Two members of a kit: their places in it, and what the comparison said. */
export interface KitPair {
  readonly one: number;
  readonly other: number;
  readonly verdict: Verdict;
  readonly summary: string;
  /** The weightiest reason for or against. */
  readonly weightiest: Reason | null;
}

/** One strong colour and everywhere it is. Three places make a triangle. */
export interface InkPlaces {
  readonly word: string;
  readonly hex: string;
  /** Kit ids: the member's number from 1, then the ink's letter: "2B". */
  readonly inks: readonly string[];
  /** How many places on the page it is in: members, but a sheet that is in the kit twice without sizes is one. */
  readonly places: number;
}

/** What a kit lacks. */
export interface KitMissing {
  readonly says: string;
  readonly inks: readonly string[];
}

/** Several papers and plains for one page, judged as a whole. Inks are called "1A", "2B" …: member, then ink, base first. */
export interface Kit {
  readonly members: readonly KitMember[];
  readonly verdict: Verdict;
  readonly decision: Decision;
  /** Every two members but the photographs: a matrix, upper half. */
  readonly pairs: readonly KitPair[];
  readonly reasons: readonly Reason[];
  readonly repeats: readonly InkPlaces[];
  readonly missing: readonly KitMissing[];
}

/** Which parts of a busy sheet hold with an anchor. */
export interface JudgedParts {
  readonly width: number;
  readonly height: number;
  /** One number a cell of the reading's places: see `cellStates`. */
  readonly cells: Uint8Array;
  /** Square pieces, row by row: what each answers, and what is alone in it. */
  readonly squares: readonly JudgedSquare[];
  /** The parts worth cutting out, and those to leave, as sentences. */
  readonly says: readonly string[];
  /** What to mind where a part is worth cutting out. */
  readonly caution?: string;
}

export interface JudgedSquare {
  /** On the sheet's picture, as fractions 0–1. */
  readonly frame: Frame;
  readonly verdict: Verdict;
  /** True where a colour of the anchor comes back in it and nothing quarrels. */
  readonly worthCutting: boolean;
  /** Anchor inks that it answers, the strongest first. */
  readonly answers: readonly string[];
  /** Its own inks that are alone or nearly miss. */
  readonly alone: readonly string[];
}

/** A stretch of colours, for drawing on wheel and strip. Hue runs upwards from the first angle. */
export interface ColourRegion {
  readonly hueDeg: readonly [from: number, to: number];
  /** CIELAB L*. */
  readonly lightness: readonly [from: number, to: number];
  /** OKLCH chroma. */
  readonly chroma: readonly [from: number, to: number];
}

/** Which colour a thing that takes any colour could have, to tie most together. */
export interface ColourIt {
  /** Where on wheel and strip; a colour anywhere in it does as well as another. */
  readonly regions: readonly ColourRegion[];
  /** One colour from the middle of the best region. */
  readonly best: Ink | null;
  /** Ink ids that it would answer. */
  readonly answers: readonly string[];
  /** The owned plain that comes nearest, as it looks on this base, and how near. */
  readonly nearest: { readonly plain: Plain; readonly onBase: Ink; readonly deltaE00: number } | null;
  readonly says: string;
}

/** A side in which a colour was found. */
export interface FoundColour {
  readonly index: number;
  /** Id of the ink, as the side has it. */
  readonly ink: string;
  readonly deltaE00: number;
  readonly share: number;
}

/** A side that could stand between two others: it holds with both. */
export interface FoundBridge {
  readonly index: number;
  /** How it holds with each. */
  readonly toAnchor: Verdict;
  readonly toCandidate: Verdict;
  /** Weight of the weaker of its two strongest ties, 0–1; a quiet side needs none. */
  readonly weaker: number;
  readonly says: string;
}
