// What can be done to a template with one press, where it lies in numbers, and which template and foot it is.

import { Button } from 'react-aria-components/Button';
import { flipPicked, layAt, removePicked, turnPicked } from '../../../session/lay/edit.ts';
import { poseIn } from '../../../session/lay/placed.ts';
import type { Laying } from '../../../session/lay/setting.ts';
import { changeFoot, changeTemplate, duplicatePicked, renamePlacement } from '../../../session/sheet/placements.ts';
import { toDegrees } from '../../../num/angle.ts';
import type { LaidPlacement } from '../../../stitch/laid-placement.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { FlipSign, TurnSign } from '../signs.tsx';
import { KeptLength, KeptNumber } from './KeptFields.tsx';
import { MoreMenu } from './MoreMenu.tsx';
import { WordChoice } from './WordChoice.tsx';

const TURNS = [90, 45, 15, 1, -1, -15, -45] as const;

/** Flip, turn, put away: on all that is picked out. */
export function LyingButtons({ about }: { readonly about: string }) {
  const session = useTheSession();
  return (
    <div className="slip-buttons lying">
      <Button className="button" onPress={() => flipPicked(session)}><FlipSign /> Flip</Button>
      <MoreMenu as="button" word="Turn" sign={<TurnSign />} about={about} commands={TURNS.map((degrees) => ({ name: `${Math.abs(degrees)} ${Math.abs(degrees) === 1 ? 'degree' : 'degrees'} ${degrees > 0 ? 'clockwise' : 'counterclockwise'}`, onDo: () => turnPicked(session, degrees) }))} />
      <Button className="button" onPress={() => removePicked(session)}>Put away</Button>
    </div>
  );
}

/** Typed numbers for where it lies. */
export function NumbersPart({ laying, laid }: { readonly laying: Laying; readonly laid: LaidPlacement | undefined }) {
  const session = useTheSession();
  const isAlong = useSession((state) => (laying.placement.repeat ?? state.evaluation.plan.sheets[laying.sheet]?.repeat ?? []).some((step) => 'along' in step));
  const pose = laid?.pose ?? poseIn(laying.placement);
  const lay = (to: Parameters<typeof layAt>[2]) => layAt(session, laying.id, to);
  return (
    <SlipPart title="In numbers">
      <div className="numbers">
        <KeptLength label="Right" value={rounded(pose.x)} onKeep={(x) => lay({ x })} />
        <KeptLength label="Down" value={rounded(pose.y)} onKeep={(y) => lay({ y })} />
        <KeptNumber label="Turned" unit="°" decimals={2} value={rounded(toDegrees(pose.angle))} onKeep={(angle) => lay({ angle })} />
      </div>
      <p className="aside">{`From the centre of the ${isAlong ? 'division' : 'area'} to the template’s own middle mark. Its pins decide how far it can go.`}</p>
    </SlipPart>
  );
}

/** To a ten-thousandth, which is finer than anybody lays. */
function rounded(value: number): number {
  return Math.round(value * 1e4) / 1e4 + 0;
}

/** Which template it is, sewn with which foot, and what it is called. */
export function KitPart({ laying, onName }: { readonly laying: Laying; readonly onName: () => void }) {
  const session = useTheSession();
  const { templates, feet } = useSession((state) => state.evaluation.plan.kit);
  const { sheet, id, placement } = laying;
  const named = <Thing extends { readonly name: string; readonly hidden?: boolean }>(all: { readonly [id: string]: Thing }, now: string) =>
    Object.entries(all).flatMap(([key, thing]) => (thing.hidden && key !== now ? [] : [{ id: key, name: thing.name }]));
  return (
    <SlipPart title="Template and foot">
      <p className="sentence spoken">
        The template is <WordChoice label="Template" text={templates[placement.template]?.name ?? placement.template} options={() => named(templates, placement.template)} chosen={placement.template} onChoose={(template) => changeTemplate(session, sheet, id, template)} />.
      </p>
      <p className="sentence spoken">
        It is sewn with the foot <WordChoice label="Foot" text={feet[placement.foot]?.name ?? placement.foot} options={() => named(feet, placement.foot)} chosen={placement.foot} onChoose={(foot) => changeFoot(session, sheet, id, foot)} />.
      </p>
      <div className="slip-buttons">
        <Button className="button" onPress={() => duplicatePicked(session)}>Duplicate</Button>
        <Button className="button" onPress={onName}>{placement.name === undefined ? 'Name it' : 'Rename it'}</Button>
        {placement.name !== undefined && <Button className="button" onPress={() => renamePlacement(session, sheet, id, '')}>Unname it</Button>}
      </div>
    </SlipPart>
  );
}
