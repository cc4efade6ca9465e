// The tag on the table's corner, never under the hand: what is near and how far, or what the template is put on.

import { styleOf } from '../../../model/length-style.ts';
import { writeLength } from '../../../num/inches.ts';
import type { Near } from '../../../place/near.ts';
import { requirementOf } from '../../../place/place.ts';
import { sayRegistration, sayStanding } from '../../../place/say.ts';
import { laidHere, onTable, pickedOn } from '../../../session/lay/on-table.ts';
import { layingOf } from '../../../session/lay/setting.ts';
import type { SessionState } from '../../../session/store.ts';
import { Said } from '../../words/Said.tsx';
import { useSession } from '../../use-session.ts';

export function NearTag() {
  const words = useSession(wordsOfHand);
  const heard = useSession(wordsAtRest);
  return (
    <>
      <div className={words === '' ? 'near-tag empty' : 'near-tag'} aria-hidden="true">{words !== '' && <Said>{words}</Said>}</div>
      <p role="status" className="only-heard">{words === '' ? heard : words}</p>
    </>
  );
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
    return read.ok ? [sayRegistration(registration, read.value, style)] : [];
  });
  if (words.length > 0) return words.join(' ');
  return inHand.near ? sayNear(inHand.near) : '';

  function sayNear({ registration, distance }: Near): string {
    const read = requirementOf(registration, laying!.setting);
    return read.ok ? `Near: the ${read.value.feature.name} is ${writeLength(distance, style)} from the ${read.value.target.name}` : '';
  }
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
