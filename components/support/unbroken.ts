/** Words in which no line ends between a number and its unit, or inside "12 × 12 in". */
export function unbroken(words: string): string {
  return words.replace(/(?<=[\d½×]) (?=×|\d|%|(?:in|mm|cm|lb|g\/m²)(?![a-z]))/g, '\u00a0');
}
