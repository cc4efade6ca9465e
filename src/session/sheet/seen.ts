// How several sheets are looked at: one through another, each with its own strength, or side by side. It belongs to the session,
// not to the plan, so none of it is a step of undo.

import type { Session } from '../store.ts';

/** So many sheets lie side by side at most: more would be too small to compare. */
export const MOST_BESIDE = 4;

/** Lets a sheet show through, 0 to 1. */
export function seeThrough(session: Session, sheet: string, strength: number): void {
  const held = Math.min(1, Math.max(0, strength));
  session.setState(({ seen }) => {
    const { [sheet]: _, ...others } = seen.through;
    return { seen: { ...seen, through: held > 0 ? { ...others, [sheet]: held } : others } };
  });
}

/** Lays up to four sheets side by side; with fewer than two, one lies on the table alone. */
export function laySideBySide(session: Session, sheets: readonly string[]): void {
  const several = [...new Set(sheets)].slice(0, MOST_BESIDE);
  session.setState(({ seen }) => ({ seen: { ...seen, beside: several.length < 2 ? [] : several } }));
}

/** Adds a sheet to those side by side, or takes it away from them. */
export function toggleBeside(session: Session, sheet: string): void {
  const { beside } = session.getState().seen;
  laySideBySide(session, beside.includes(sheet) ? beside.filter((id) => id !== sheet) : [...beside, sheet]);
}
