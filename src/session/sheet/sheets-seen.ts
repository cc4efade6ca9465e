// How several sheets are looked at: one through another, each with its own strength, or side by side.

export interface SheetsSeen {
  /** How strongly a sheet shows through the one on the table, 0 to 1, by its id; not at all when it is not named. */
  readonly through: { readonly [sheet: string]: number };
  /** Sheets that lie side by side, in order; none when one lies on the table alone. */
  readonly beside: readonly string[];
}

export const ONE_SHEET: SheetsSeen = { through: {}, beside: [] };
