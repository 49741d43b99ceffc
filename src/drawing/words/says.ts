import type { Link } from '../../harmony/model.ts';
import type { Ink, Side } from '../../sheet/model.ts';
import { inkWord } from '../../sheet/words/side-words.ts';

/** A share in words: "9 %", or "under 1 %". */
export function shareWords(share: number): string {
  const percent = Math.round(share * 100);
  return percent < 1 ? 'under 1\u00a0%' : `${percent}\u00a0%`;
}

/** What a mark of an ink says: "Coral (C), moderate reddish orange: 9 % of Regatta bunting." */
export function inkSays(ink: Ink, of: string): string {
  const named =
    ink.trade && ink.trade !== ink.name
      ? `${ink.trade} (${ink.id}), ${ink.name}`
      : `${inkWord(ink)} (${ink.id})`;
  const accent = ink.accent ? ', an accent' : '';
  return `${capital(named)}: ${shareWords(ink.share)} of ${of}${accent}.`;
}

/** What a drawn link says, with the numbers that made it so. */
export function linkSays(link: Link, anchorInk: Ink, candidateInk: Ink): string {
  const pair = `${capital(inkWord(anchorInk))} (${anchorInk.id}) and ${inkWord(candidateInk)} (${candidateInk.id})`;
  const difference = `ΔE₀₀ ${oneDecimal(link.deltaE00)}`;
  const hue = link.hueDeg === null ? '' : `, hue ${Math.round(link.hueDeg)}° apart`;
  switch (link.kind) {
    case 'repeat':
      return `${pair} repeat each other: ${difference}.`;
    case 'near miss':
      return `${pair} are a near miss: ${difference}${hue}.`;
    case 'opposite':
      return `${pair} stand opposite each other${hue === '' ? '' : `: ${hue.slice(2)}`}${wheelsSay(link)}.`;
    case 'tonal':
      return `${pair} are one hue, lighter and darker: L* ${oneDecimal(Math.abs(link.dL))} apart.`;
    case 'neighbour':
      return `${pair} are neighbours${hue === '' ? '' : `: ${hue.slice(2)}`}.`;
    case 'unrelated':
      return `${pair} are not related: ${difference}${hue}.`;
  }
}

/** An ink in words, for elements, which know this room and not the sheet's. */
export function inkWords(ink: Ink): string {
  return inkWord(ink);
}

/** What a picture of a paper shows, for those who do not see it. */
export function paperSays(side: Side, name: string): string {
  return `${name}, printed in ${inksOf(side).map(inkWord).join(', ')}`;
}

/** An ink in two words, to stand beside a pointer: "D aqua". */
export function inkTag(ink: Ink): string {
  return `${ink.id} ${inkWord(ink)}`;
}

/** Base first, then the inks. */
export function inksOf(side: Side): readonly Ink[] {
  return [side.base, ...side.inks];
}

/** The first letter made a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A number to one decimal, with a true minus. */
export function oneDecimal(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return rounded < 0 ? `−${Math.abs(rounded).toFixed(1)}` : rounded.toFixed(1);
}

function wheelsSay(link: Link): string {
  if (link.wheels?.length !== 1) return '';
  return link.wheels[0] === 'eye' ? ", on the eye's wheel only" : ", on the painter's wheel only";
}
