/**
 * Goethe's light values as Itten teaches them, at the painter's wheel's six principal hues (0 = yellow, 30° a step
 * towards orange). Areas that balance stand inversely to them: yellow to violet 1 : 3.
 * Source: J. Itten, Kunst der Farbe (1961), contrast of extension. A teaching rule for pure hues.
 */
export const lightValues: readonly { readonly painterDeg: number; readonly value: number }[] = [
  { painterDeg: 0, value: 9 },
  { painterDeg: 60, value: 8 },
  { painterDeg: 120, value: 6 },
  { painterDeg: 180, value: 3 },
  { painterDeg: 240, value: 4 },
  { painterDeg: 300, value: 6 },
];

/** The light value of a place on the painter's wheel, degrees; straight between the six. */
export function lightValueOf(painterDeg: number): number {
  const place = (((painterDeg % 360) + 360) % 360) / 60;
  const low = Math.floor(place);
  const from = lightValues[low]!.value;
  const to = lightValues[(low + 1) % lightValues.length]!.value;
  return from + (to - from) * (place - low);
}
