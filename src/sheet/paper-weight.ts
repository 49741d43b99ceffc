import type { PaperWeight, WeightGrade } from './model.ts';

/**
 * g/m² times in², a pound of a ream: 453.59237 g ÷ 500 sheets ÷ 0.00064516 m². The pound and the inch are those of the
 * international yard and pound agreement of 1959.
 */
const gsmInchSquared = 1406.14;

/** Basic sheet of each grade in in², 500 to a ream. Common practice of the paper trade in the US, from memory; no source. */
export const basicSheetIn2: Readonly<Record<WeightGrade, number>> = {
  cover: 20 * 26,
  text: 25 * 38,
  bond: 17 * 22,
  index: 25.5 * 30.5,
};

/** Grammage of a weight in pounds. Pounds mean nothing without their grade. */
export function weightFromPounds(lb: number, grade: WeightGrade): PaperWeight {
  return { gsm: (lb * gsmInchSquared) / basicSheetIn2[grade], lb, grade };
}

/** Grammage of one sheet laid on the scales: grams, and its sides in millimetres. */
export function weightFromScales(grams: number, widthMm: number, heightMm: number): PaperWeight {
  return { gsm: grams / ((widthMm * heightMm) / 1e6), weighed: true };
}

/** Pounds of a grammage in a grade. */
export function poundsOf(gsm: number, grade: WeightGrade): number {
  return (gsm * basicSheetIn2[grade]) / gsmInchSquared;
}

/** A weight in words: "216 g/m² (80 lb cover)". */
export function weightWords(weight: PaperWeight): string {
  const gsm = `${Math.round(weight.gsm)} g/m²`;
  if (weight.lb !== undefined && weight.grade) return `${gsm} (${weight.lb} lb ${weight.grade})`;
  return weight.weighed ? `${gsm} (weighed)` : gsm;
}
