// The tags on the table's corner, never under the hand: what is near and how far, or what the template is put on; and what of its
// needle line comes too near an edge.

import { styleOf } from '../../../model/length-style.ts';
import { writeLength } from '../../../num/inches.ts';
import type { Registration } from '../../../model/plan.ts';
import type { Near } from '../../../place/near.ts';
import { requirementOf } from '../../../place/place.ts';
import type { Requirement } from '../../../place/requirement.ts';
import { sayRegistration, sayStanding } from '../../../place/say.ts';
import { laidHere, onTable, pickedOn } from '../../../session/lay/on-table.ts';
import { overhangPicked, sayOverhang } from '../../../session/lay/overhang.ts';
import { layingOf } from '../../../session/lay/setting.ts';
import { placementName } from '../../../session/sheet/placements.ts';
import type { SessionState } from '../../../session/store.ts';
import { Said } from '../../words/Said.tsx';
import { useSession } from '../../use-session.ts';
import { useFelt } from './use-felt.ts';
import './near-tag.css';

export function NearTag() {
  const words = useSession(wordsOfHand);
  const over = useSession(wordsOfOverhang);
  const heard = useSession(wordsAtRest);
  useFelt();
  return (
    <>
      <div className="table-tags" aria-hidden="true">
        {words !== '' && <p className="near-tag"><Said>{words}</Said></p>}
        {over !== '' && <p className="near-tag over"><Said>{over}</Said></p>}
      </div>
      <p role="status" className="only-heard">{[words === '' ? heard : words, over].filter((said) => said !== '').join(' ')}</p>
    </>
  );
}

function wordsOfOverhang(state: SessionState): string {
  const over = overhangPicked(state);
  return over ? sayOverhang(over, state.evaluation.plan) : '';
}

/** While the hand has something: what it is drawn to, or what is near, or where the foot is. */
function wordsOfHand(state: SessionState): string {
  const { inHand, foot } = state;
  if (!inHand) return '';
  if (inHand.does === 'trace') return foot?.at === undefined ? '' : `At ${foot.at}`;
  const laying = layingOf(state, inHand.placements[0] ?? '');
  if (!laying) return '';
  const style = styleOf(state.evaluation.plan);
  const words = inHand.made.slice(0, 2).flatMap(({ registration }) => {
    const read = requirementOf(registration, laying.setting);
    return read.ok ? [sayRegistration(registration, named(state, registration, read.value), style)] : [];
  });
  if (words.length > 0) return words.join(' ');
  return inHand.near ? sayNear(inHand.near) : '';

  function sayNear({ registration, distance }: Near): string {
    const read = requirementOf(registration, laying!.setting);
    if (!read.ok) return '';
    const { feature, target } = named(state, registration, read.value);
    return `Near: the ${feature.name} is ${writeLength(distance, style)} from the ${target.name}`;
  }
}

/** Of several lines that are sewn here, says along which template it was. */
function named(state: SessionState, { on }: Registration, requirement: Requirement): Requirement {
  const [, placement] = /^(?:stitched|end):([^/]+)\//.exec(on) ?? [];
  const sheet = onTable(state)?.sheet?.id;
  if (placement === undefined || sheet === undefined) return requirement;
  const { target } = requirement;
  return { ...requirement, target: { ...target, name: `${target.name} along ${placementName(state, sheet, placement)}` } };
}

/** When the hand rests, for those who hear it: how the template picked out is held, and where the foot stands. */
function wordsAtRest(state: SessionState): string {
  const [picked, ...others] = pickedOn(state.selection, onTable(state)?.sheet?.id);
  if (picked === undefined) return '';
  if (others.length > 0) return `${others.length + 1} templates picked out.`;
  const laid = laidHere(state, picked);
  const laying = layingOf(state, picked);
  if (!laid || !laying) return '';
  const name = laying.placement.name ?? state.evaluation.plan.kit.templates[laying.placement.template]?.name ?? 'The template';
  const standing = sayStanding(laid.standing, laying.placement.registrations.length, styleOf(state.evaluation.plan));
  const { foot } = state;
  const stands = foot?.placement === picked && foot.at !== undefined ? ` The foot stands at ${foot.at}.` : '';
  return `${name}${laid.pose.flipped ? ', face down' : ''}. ${standing}${stands}`;
}
