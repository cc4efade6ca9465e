// The slip of one foot: how wide it is, where its needle falls, its shank, and whether it is on the machine.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { GREATEST_DIAMETER } from '../../model/kit/foot-limits.ts';
import { footOnTheMachine } from '../../model/kit/on-the-machine.ts';
import type { Foot, Shank } from '../../model/plan.ts';
import { deleteFoot, mayDeleteFoot, nameFoot, putOnMachine, setShank } from '../../session/kit/feet.ts';
import { forgetTyped, keepTyped, type } from '../../session/typing.ts';
import { countUses, usesOfFoot } from '../../session/kit/uses.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { Cautions } from '../words/Cautions.tsx';
import { LengthField } from '../words/LengthField.tsx';
import { useFineLengths } from '../words/lengths.ts';
import { Choices } from './Choices.tsx';
import { DeleteDialog, sayUse } from './DeleteDialog.tsx';
import { FootPicture } from './FootPicture.tsx';
import { TextField } from './TextField.tsx';
import { sayOffset } from './say-reach.ts';

const SHANKS: readonly { readonly value: Shank; readonly name: string }[] = [
  { value: 'low', name: 'low' },
  { value: 'medium', name: 'medium' },
  { value: 'high', name: 'high' },
];

/** CSS pixels to the inch of the picture on the slip. */
const LARGE = 260;

export function FootSlip({ id, foot, onMeasure }: { readonly id: string; readonly foot: Foot; readonly onMeasure: () => void }) {
  const session = useTheSession();
  const plan = useSession((state) => state.evaluation.plan);
  const fine = useFineLengths();
  const [asking, setAsking] = useState(false);
  const isOn = footOnTheMachine(plan.kit)?.id === id;
  const uses = usesOfFoot(plan, id);
  const [x, y] = foot.needleOffset;
  const change = (recipe: (draft: { diameter: number; needleOffset: [number, number] }) => void) =>
    type(session, `Measure ${foot.name}`, (draft) => {
      const mine = draft.kit.feet[id];
      if (mine) recipe(mine);
    });
  const keeping = { onKeep: () => keepTyped(session), onGiveUp: () => forgetTyped(session) };
  const most = foot.diameter / 2;
  return (
    <Slip
      title={foot.name}
      about={`${fine(foot.diameter)} across, ${foot.shank} shank${isOn ? ', on the machine' : ''}`}
      foot={
        <>
          <Button className="button" onPress={onMeasure}>Measure it by sewing</Button>
          <Button className="button main" isDisabled={isOn} onPress={() => putOnMachine(session, id)}>{isOn ? 'On the machine' : 'Put it on the machine'}</Button>
        </>
      }
    >
      <figure className="large-foot"><FootPicture foot={foot} scale={Math.min(LARGE, 220 / foot.diameter)} /></figure>
      <SlipPart title="Where the needle falls">
        <Sentence>{`The needle line runs ${fine(foot.diameter / 2)} from the edge.`}</Sentence>
        {(x !== 0 || y !== 0) && (
          <Aside>{`${sayOffset(foot.needleOffset, fine)!} With the template at the left of the foot it is ${fine(foot.diameter / 2 + x)}, at the right ${fine(foot.diameter / 2 - x)}; behind the foot ${fine(foot.diameter / 2 + y)}, in front of it ${fine(foot.diameter / 2 - y)}.`}</Aside>
        )}
        <Aside>Feet differ by a little more than they are said to. Four short rows tell what yours does.</Aside>
      </SlipPart>
      <SlipPart title="Measures">
        <TextField label="Name" value={foot.name} onKeep={(name) => nameFoot(session, id, name)} />
        <LengthField label="Across the round foot" value={foot.diameter} least={1 / 16} most={GREATEST_DIAMETER} onValue={(diameter) => change((mine) => { mine.diameter = diameter; })} {...keeping} />
        <div className="fields beside">
          <LengthField label="Needle right of the middle" value={x} least={-most} most={most} onValue={(value) => change((mine) => { mine.needleOffset = [value, y]; })} {...keeping} />
          <LengthField label="Needle towards you" value={y} least={-most} most={most} onValue={(value) => change((mine) => { mine.needleOffset = [x, value]; })} {...keeping} />
        </div>
        <p className="typed-hint">A minus goes to the left of the middle, or away from you.</p>
        <Choices label="Shank" choices={SHANKS} value={foot.shank} onChoose={(shank) => setShank(session, id, shank)} />
      </SlipPart>
      <SlipPart title="Used on">
        {uses.length === 0 ? <Sentence>No sheet yet.</Sentence> : uses.map((use) => <Sentence key={use.sheet}>{sayUse(use)}</Sentence>)}
        {uses.length > 0 && <Aside>{`When the foot is measured anew, the needle lines of ${countUses(uses) === 1 ? 'this placement' : 'these placements'} follow.`}</Aside>}
      </SlipPart>
      <div className="rest">
        <Button className="button" isDisabled={!mayDeleteFoot(session)} onPress={() => (uses.length === 0 ? deleteFoot(session, id) : setAsking(true))}>Delete</Button>
      </div>
      {asking && (
        <DeleteDialog
          name={foot.name}
          uses={uses}
          others={Object.entries(plan.kit.feet).filter(([other]) => other !== id).map(([other, { name }]) => ({ id: other, name }))}
          otherwise={undefined}
          question="Which foot sews them instead? Their needle lines follow it."
          onDelete={(instead) => {
            setAsking(false);
            deleteFoot(session, id, instead);
          }}
          onLeave={() => setAsking(false)}
        />
      )}
      <SlipPart title="Take care"><Cautions /></SlipPart>
    </Slip>
  );
}
