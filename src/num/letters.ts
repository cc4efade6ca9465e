// Letters that name things in a row, such as sheets in a stack and ends of passes.

/** A to Z for 0 to 25, then AA, AB ... ZZ, AAA and so on. The index is a whole number from 0. */
export function lettersOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${lettersOf(Math.floor(index / 26) - 1)}${last}`;
}
