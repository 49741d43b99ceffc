import type { FindingKind } from '../../../src/harmony/whole/model.ts';
import type { JudgedPair } from './judged.ts';

/** Words by which a viewer's sentence is taken to speak of a kind of finding. Ours; one sentence may speak of several kinds. */
const words: Readonly<Record<FindingKind, RegExp>> = {
  rest: /\bplains?\b|quiet|\bcalm|\brests?\b|restful|resting|solid|neutral|listen|support|\bsing\b|\blead\b|talk|hero|airy|breathe|\baccent\b|one of them|simple|two-colour|\bonly (one|colour)|settle|ground(s|ed)? (them|it|the)|anchor|behaves like/i,
  'clean or dusty':
    /muted|bright|dull|dust[yi]|dirt|faded|acid|neon|saturat|grey(ed|er)|soft|loud|vivid|strength|strong|clean|clear|cheap|earthy|pastel|raw|tender|pale|shout|stale|tired|powder|murky|weathered|sour|sugary/i,
  grounds: /ground|\bbases?\b|cream|\bwhites?\b|kraft|butter|aqua|\bice\b|icy|tint/i,
  'comes back':
    /repeat|answer|echo|come[s]? (back|straight|out)|picked|pick[s]? up|lifted|shared?\b|\bshares\b|found again|(in|on|under) both|both (have|hold|papers)|turn up|no (other )?colou?rs?|nothing|nod|link|whisper|the (very|same)|belongs to|tie|match|cousin|\bits own\b|is the .* itself|partner|agree/i,
  'near miss':
    /near.?miss|nearly|\bmiss|near, not|wrong pink|close|not the same|dirty|sour|duller?|disagree/i,
  hues: /opposite|complement|\bwarm|\bcool|\bcold\b|against|temperature|quarrel|neighbour|other worlds|hot|clash|fight/i,
  'print scale':
    /scale|\bsizes?\b|regular|geometric|grids?\b|scatter|loose|order|tidy|\bneat\b|tight|small|tiny|large|\bbig|stripe|check|zigzag|lattice|chevron|dots?\b|motif|quilt|dense|rigid|strict/i,
  busy: /busy|crowded|\bfull\b|dens[ei]|buzz|flicker|shout|restless|lively|dazzl|loud|jitter|compete|hero|star\b|all over|to the edge|colours?|swallow|fight|rest|bold|overpower|drown|scream|noisy|vibrat/i,
  'tone on tone': /tone|deeper|lighter|darker|family|pale of|light and dark|cousin|sister|grown up|shade/i,
  'light and dark': /\blight|\bdark|deep|value|contrast|black|heavy|pale|navy/i,
  'warm and cool': /warm|cool|cold|temperature|icy/i,
  'one world':
    /mood|style|theme|world|story|season|vintage|photo|cartoon|cottage|rustic|natural|era|new and/i,
};

/** The kinds of finding that at least one viewer of a pair named. */
export function namedKinds({ viewings }: JudgedPair): Set<FindingKind> {
  const kinds = Object.keys(words) as FindingKind[];
  return new Set(kinds.filter((kind) => viewings.some(({ why }) => words[kind].test(why))));
}
