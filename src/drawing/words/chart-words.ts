import type { Wheel } from '../../colour/model.ts';

/** An empty stretch of lightness in words, `from` to `to` in L*; that specks lie in it is said. */
export function gapWords(
  { from, to }: { readonly from: number; readonly to: number },
  inBoth: boolean,
  specks: boolean,
): string {
  const where = inBoth ? 'empty in both' : 'empty';
  const but = specks ? ' but for specks' : '';
  return `${where}${but}, L* ${Math.round(from)}–${Math.round(to)}: a photograph will stand out here`;
}

/** What the strip shows, as one sentence. */
export const stripShows = 'CIELAB L* from 0, black, to 100, white; a lane for each paper.';

export const stripTable = 'Lightness of each ink';
/** Stands in the wheel. */
export const ringNoteWords = 'further out = stronger colour';
export const wheelTableTitle = 'Hue and chroma of each ink';

/** An ink of a paper that is shown in outline, on the strip (L* 0–100) and on the wheel. */
export function outlinedOnStrip(paper: string, ink: string, lightness: number): string {
  return `${paper}, not drawn in full: ${ink}, lightness L* ${Math.round(lightness)}.`;
}

export function outlinedOnWheel(paper: string, ink: string, share: string): string {
  return `${paper}, not drawn in full: ${ink}, ${share}.`;
}

/** What the wheel shows, with how many inks and drawn links. */
export function wheelShows(wheel: Wheel, inks: number, links: number): string {
  const whose =
    wheel === 'eye' ? "the eye's wheel (hue by OKLCH angle)" : "the painter's wheel (twelve pigment steps)";
  const lines = links === 0 ? '' : ` ${links} ${links === 1 ? 'link is' : 'links are'} drawn.`;
  return (
    `${inks} ${inks === 1 ? 'ink' : 'inks'} on ${whose}. Chroma grows from the hub outward, neutrals sit in the hub, the area of a mark ` +
    `follows its share.${lines}`
  );
}

export function wheelTitle(anchor: string, candidate: string | undefined): string {
  return candidate === undefined ? `Hue wheel of ${anchor}` : `Hue wheel of ${anchor} and ${candidate}`;
}
