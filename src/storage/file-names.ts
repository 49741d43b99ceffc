/** Ends that a file may get here. */
export type FileEnd = 'png' | 'svg' | 'pdf' | 'quire' | 'json';

/**
 * A file name that every system takes: words of the title joined by hyphens, without accents' loss, at most 80
 * characters before its end. `date` stands in front of the end as YYYY-MM-DD where it is given.
 */
export function fileName(title: string, end: FileEnd, date?: Date): string {
  const words = title
    .normalize('NFC')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  const day = date === undefined ? '' : `-${isoDay(date)}`;
  const room = 80 - day.length;
  const cut = [...words].slice(0, room).join('').replace(/-+$/, '');
  // Names that some systems keep for devices.
  const safe = /^(con|prn|aux|nul|com\d|lpt\d)$/.test(cut) ? `${cut}-notebook` : cut;
  return `${safe === '' ? 'quirewise' : safe}${day}.${end}`;
}

/** A name for a sheet from its picture's file name: without the end, with spaces for hyphens and underlines. */
export function nameFromFile(file: string): string {
  const bare = file
    .replace(/^.*[\\/]/, '')
    .replace(/\.[a-z0-9]{1,5}$/i, '')
    .replace(/[-_\s]+/g, ' ')
    .trim();
  return bare === '' ? 'A sheet' : bare.charAt(0).toUpperCase() + bare.slice(1, 120);
}

function isoDay(date: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
