// What is said about a thread: its weight and its Tex are two ways of saying how heavy a length of it is.
// Tex is grams to the kilometre (ISO 1144); the weight number of quilting thread is kilometres to the kilogram.

/** Metres in a gram times grams in a kilometre. */
const WEIGHT_TIMES_TEX = 1000;

/** The Tex of a thread of some weight (40, 50), and the other way round. */
export function texOfWeight(weight: number): number {
  return WEIGHT_TIMES_TEX / weight;
}

export function weightOfTex(tex: number): number {
  return WEIGHT_TIMES_TEX / tex;
}

/** Stitches to the inch from the length of one, in inches; and the other way round. */
export function stitchesPerInch(stitchLength: number): number {
  return 1 / stitchLength;
}

export function stitchLengthOf(perInch: number): number {
  return 1 / perInch;
}
