// The slip in Audition: about the template picked out, about several, about the sheet on the table, or what to do next when there is none.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { styleOf } from '../../../model/length-style.ts';
import { laidHere, pickedOn } from '../../../session/lay/on-table.ts';
import type { OnTable } from '../../../session/lay/on-table.ts';
import { layingOf } from '../../../session/lay/setting.ts';
import { sayStanding } from '../../../place/say.ts';
import { addPass } from '../../../session/sheet/passes.ts';
import { placementName, renamePlacement } from '../../../session/sheet/placements.ts';
import { chooseToSew } from '../../../session/sheet/sheets.ts';
import { Slip, SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { AuditionList } from '../list/AuditionList.tsx';
import { ClipButtons } from '../list/ClipButtons.tsx';
import { useClipboard } from '../list/use-clipboard.ts';
import { MarksPart } from '../marks/MarksPart.tsx';
import { MeasurePart } from '../measure/MeasurePart.tsx';
import { useOnTable, useStack } from '../use-on-table.ts';
import { KitPart, LyingButtons, NumbersPart } from './LyingPart.tsx';
import { NameForm } from './NameForm.tsx';
import { PassesPart } from './PassesPart.tsx';
import { PinsPart } from './PinsPart.tsx';
import { RepeatPart } from './RepeatPart.tsx';
import { NoTopSlip, SheetSlip } from './SheetSlip.tsx';
import './audition-slip.css';

export function PlacementSlip() {
  const on = useOnTable();
  const selection = useSession((state) => state.selection);
  const clip = useClipboard();
  const picked = pickedOn(selection, on?.sheet?.id).filter((id) => on?.sheet?.sheet.placements[id]);
  const [first, ...others] = picked;
  if (!on) return <NoTopSlip />;
  if (first === undefined) return <SheetSlip on={on} clip={clip} />;
  if (others.length > 0) return <SeveralSlip on={on} picked={picked} clip={clip} />;
  return <OneSlip key={`${on.sheet?.id}/${first}`} on={on} id={first} clip={clip} />;
}

type Clip = ReturnType<typeof useClipboard>;

/** One template: how it lies, what is sewn, how it repeats. */
function OneSlip({ on, id, clip }: { readonly on: OnTable; readonly id: string; readonly clip: Clip }) {
  const session = useTheSession();
  const laying = useSession((state) => layingOf(state, id));
  const laid = useSession((state) => laidHere(state, id));
  const isInHand = useSession((state) => state.inHand?.placements.includes(id) === true);
  const willPin = useSession((state) => (state.inHand?.made.length ?? 0) > 0);
  const shownIn = useSession((state) => state.evaluation.plan.shownIn);
  const name = useSession((state) => placementName(state, on.sheet!.id, id));
  const template = useSession((state) => state.evaluation.plan.kit.templates[on.sheet!.sheet.placements[id]!.template]?.name);
  const [naming, setNaming] = useState(false);
  if (!laying) {
    return (
      <Slip title={name} about="Its template or foot is not in the kit, or its shape cannot be drawn.">
        <LyingButtons about={name} />
        <OnThisTable on={on} />
      </Slip>
    );
  }
  const standing = laid?.standing;
  const face = laying.placement.flipped ? 'Face down' : 'Face up';
  const held = standing ? sayStanding(standing, laying.placement.registrations.length, styleOf({ shownIn })) : 'Not laid on this area.';
  const about = isInHand ? `${face}, in your hand.${willPin ? ' Let go to pin it.' : ''}` : `${face}. ${held}`;
  return (
    <Slip title={name} about={template !== undefined && template !== name ? `${template}. ${about}` : about} foot={<MainButton on={on} id={id} passes={Object.keys(laying.placement.passes).length} />}>
      {naming && <NameForm label="Name of this template on the sheet" name={laying.placement.name ?? name} onDone={(to) => { setNaming(false); if (to !== undefined) renamePlacement(session, laying.sheet, id, to); }} />}
      <p className="aside on-small">On this screen you look, note and sew; move templates on a larger one.</p>
      <MeasurePart />
      <PinsPart laying={laying} standing={standing} />
      <LyingButtons about={name} />
      <PassesPart laying={laying} />
      <RepeatPart on={on} placement={id} />
      <MarksPart sheet={laying.sheet} placement={id} />
      <NumbersPart laying={laying} laid={laid} />
      <KitPart laying={laying} onName={() => setNaming(true)} />
      <ClipButtons clip={clip} />
      <OnThisTable on={on} />
    </Slip>
  );
}

/** The one main button: what most likely comes next. */
function MainButton({ on, id, passes }: { readonly on: OnTable; readonly id: string; readonly passes: number }) {
  const session = useTheSession();
  const letter = useStack()?.sheets.find(({ isOnTable }) => isOnTable)?.letter ?? '';
  const { id: sheet, sheet: { chosen } } = on.sheet!;
  if (passes === 0) return <Button className="button main" onPress={() => addPass(session, id)}>Add the first pass</Button>;
  if (!chosen) return <Button className="button main" onPress={() => chooseToSew(session, sheet)}>{`Choose sheet ${letter} to sew`}</Button>;
  return <Button className="button main" onPress={() => { location.hash = 'check'; }}>Check this top</Button>;
}

function SeveralSlip({ on, picked, clip }: { readonly on: OnTable; readonly picked: readonly string[]; readonly clip: Clip }) {
  const evaluation = useSession((state) => state.evaluation);
  const session = useTheSession();
  const names = picked.map((id) => placementName({ ...session.getState(), evaluation }, on.sheet!.id, id));
  return (
    <Slip title={`${picked.length} templates`} about="Picked out together: they slide, turn and flip as one.">
      <SlipPart title="Picked out">
        <ul className="plain-list">{names.map((name, i) => <li key={picked[i]} className="sentence">{name}</li>)}</ul>
      </SlipPart>
      <LyingButtons about={`${picked.length} templates`} />
      <MeasurePart />
      <ClipButtons clip={clip} />
      <OnThisTable on={on} />
    </Slip>
  );
}

function OnThisTable({ on }: { readonly on: OnTable }) {
  return <SlipPart title="On this table"><AuditionList on={on} /></SlipPart>;
}
