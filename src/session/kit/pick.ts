// Picking something out in Kit.

import type { Session } from '../store.ts';
import type { KitPick } from './kit-pick.ts';

/** Picks something out in Kit; undefined for whatever comes first. */
export function pickInKit(session: Session, kitPick: KitPick | undefined): void {
  session.setState({ kitPick });
}
