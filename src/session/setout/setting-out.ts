// Setting out: while it is asked how something comes out even, the ways it can lie in place of the table, and one is chosen.

import type { Draft } from 'immer';
import type { Plan, Sheet } from '../../model/plan.ts';
import { changePlan } from '../change-plan.ts';
import { freeId } from '../free-id.ts';
import { workOn } from '../lay/on-table.ts';
import { NOTHING } from '../selection.ts';
import { sewInstead } from '../sheet/sew-instead.ts';
import { type Session, planOf } from '../store.ts';
import type { Asked } from './asked.ts';
import type { Offer } from './offer.ts';

/** Asks, or asks otherwise; what was chosen before is still chosen. */
export function ask(session: Session, asked: Asked): void {
  session.setState(({ settingOut }) => ({ settingOut: { asked, taken: settingOut?.asked.kind === asked.kind ? settingOut.taken : undefined } }));
}

/** Back to the table, with whatever was chosen. */
export function leaveSettingOut(session: Session): void {
  session.setState({ settingOut: undefined });
}

/**
 * Lays the sheets of an offer into their stacks and has them sewn, as one step of undo. They take the place of those of an offer chosen
 * just before; whatever else was sewn on the same areas is left out but stays in its stack.
 */
export function takeOffer(session: Session, offer: Offer): void {
  const { settingOut, evaluation } = session.getState();
  if (!settingOut) return;
  const plan = planOf(session.getState());
  const { asked, taken } = settingOut;
  const before = (taken?.sheets ?? []).filter((id) => id in plan.sheets);
  const onto = asked.kind !== 'border' && asked.sheet !== undefined ? [asked.sheet] : before;
  const ids: string[] = [];
  changePlan(
    session,
    `Set out: ${offer.title}`,
    (draft: Draft<Plan>) => {
      for (const id of onto.slice(offer.sheets.length)) removeSheet(draft, id);
      offer.sheets.forEach((sheet, i) => {
        const id = onto[i] ?? freeId(draft.sheets, 'set-out');
        if (!(id in draft.sheets)) draft.sheetOrder?.push(id);
        draft.sheets[id] = sheet as Draft<Sheet>;
        ids.push(id);
        if (sheet.chosen) sewInstead(draft, id, evaluation.top.areas);
      });
    },
    NOTHING,
  );
  // The same again changes nothing, and is chosen all the same.
  session.setState({ settingOut: { asked, taken: { offer: offer.id, sheets: ids } } });
  if (ids[0] !== undefined) workOn(session, { sheet: ids[0] });
}

function removeSheet(draft: Draft<Plan>, id: string): void {
  delete draft.sheets[id];
  if (draft.sheetOrder) draft.sheetOrder = draft.sheetOrder.filter((other) => other !== id);
}
