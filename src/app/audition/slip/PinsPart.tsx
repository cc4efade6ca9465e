// How it lies: each registration as a sentence with its pin, its words changed by touching them.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { styleOf } from '../../../model/length-style.ts';
import type { Registration } from '../../../model/plan.ts';
import type { Standing } from '../../../place/place.ts';
import type { Laying } from '../../../session/lay/setting.ts';
import { type PinWord, type ReadPin, addPin, canAskAngle, changePin, onsFor, putsOf, readPins, takePinOut } from '../../../session/sheet/pins.ts';
import { placementName } from '../../../session/sheet/placements.ts';
import { spokenText } from '../../../session/sheet/spoken.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { LengthField } from '../../words/LengthField.tsx';
import { NumberField } from '../../words/NumberField.tsx';
import { Said } from '../../words/Said.tsx';
import { PinSign, type PinState } from '../signs.tsx';
import { Choose } from './Choose.tsx';
import { SpokenLine } from './SpokenLine.tsx';
import { WordChoice } from './WordChoice.tsx';
import { WordForm } from './WordForm.tsx';

export interface PinsPartProps {
  readonly laying: Laying;
  readonly standing: Standing | undefined;
}

export function PinsPart({ laying, standing }: PinsPartProps) {
  const shownIn = useSession((state) => state.evaluation.plan.shownIn);
  const inHand = useSession((state) => state.inHand);
  const pins = readPins(laying, styleOf({ shownIn }));
  // What letting go will pin is among the registrations already, since the hand lays the template by them.
  const made = inHand?.placements.includes(laying.id) ? inHand.made.map(({ registration }) => registration) : [];
  const isMade = ({ put, on }: Registration) => made.some((one) => one.put === put && one.on === on);
  return (
    <SlipPart title="How it lies">
      <ul className="pins">
        {pins.map((pin) => <PinRow key={pin.index} laying={laying} pin={pin} state={isMade(pin.registration) ? 'asked' : stateOf(pin, standing)} />)}
      </ul>
      {pins.length === 0 && <p className="aside">Slide it until an etching meets a line, or add a pin by hand.</p>}
      <AddPin laying={laying} />
    </SlipPart>
  );
}

function stateOf({ index, problem }: ReadPin, standing: Standing | undefined): PinState {
  if (problem !== undefined) return 'in-the-way';
  if (standing?.kind === 'impossible') return standing.against.includes(index) ? 'in-the-way' : 'asked';
  return standing?.kind === 'unreadable' ? 'asked' : 'held';
}

const NOTES: { readonly [state in PinState]: string } = { held: 'Held', asked: 'Not held yet', 'in-the-way': 'In the way' };

function PinRow({ laying, pin, state }: { readonly laying: Laying; readonly pin: ReadPin; readonly state: PinState }) {
  const session = useTheSession();
  const { registration, index } = pin;
  const change = (to: Parameters<typeof changePin>[3]) => changePin(session, laying.id, index, to);
  const word = (which: PinWord, text: string) => {
    switch (which) {
      case 'put':
        return <WordChoice label="What is put" text={text} options={() => putsOf(laying.setting)} chosen={registration.put} onChoose={(put) => change({ put })} />;
      case 'on':
        return <WordChoice label="Where it is put" text={text} options={() => onsFor(registration.put, laying.setting, { nameOf: (id) => placementName(session.getState(), laying.sheet, id), chosen: registration.on })} chosen={registration.on} onChoose={(on) => change({ on })} />;
      case 'distance':
        return (
          <WordForm label="How far from it" text={text}>
            {(close) => <HowFar registration={registration} withAngle={canAskAngle(registration, laying.setting)} onDone={(to) => { change(to); close(); }} />}
          </WordForm>
        );
    }
  };
  return (
    <li className="pin">
      <PinSign state={state} />
      <div>
        {pin.spoken ? <SpokenLine parts={pin.spoken} word={word} /> : <p className="sentence"><Said>{pin.problem ?? ''}</Said></p>}
        <div className="row-note">
          <span>{NOTES[state]}</span>
          <Button className="word" aria-label={`Take out: ${pin.spoken ? spokenText(pin.spoken) : 'this pin'}`} onPress={() => takePinOut(session, laying.id, index)}><span>Take out</span></Button>
        </div>
      </div>
    </li>
  );
}

type Asked = { readonly distance: number | undefined; readonly angle: number | undefined };

/** How far, and how far turned; the distance's sign tells the side. */
function HowFar({ registration, withAngle, onDone }: { readonly registration: Registration; readonly withAngle: boolean; readonly onDone: (asked: Asked) => void }) {
  const [distance, setDistance] = useState(registration.distance);
  const [angle, setAngle] = useState(registration.angle);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onDone({ distance, angle });
      }}
    >
      <LengthField label="Distance" value={distance ?? 0} onValue={(to) => setDistance(to === 0 ? undefined : to)} hint="Right of the line as it runs, or below it; with a minus, on its other side." />
      {withAngle && <NumberField label="Turned from it" unit="°" value={angle} onValue={setAngle} onEmpty={() => setAngle(undefined)} least={-360} most={360} hint="Left empty, only the place is held. An angle without a distance holds only the angle." />}
      <div className="form-foot">
        {distance !== undefined && <Button className="button" onPress={() => onDone({ distance: undefined, angle })}>On it</Button>}
        {distance !== undefined && <Button className="button" onPress={() => onDone({ distance: -distance, angle })}>Other side</Button>}
        <Button className="button main" type="submit">Done</Button>
      </div>
    </form>
  );
}

/** A registration by hand, from lists of what there is. */
function AddPin({ laying }: { readonly laying: Laying }) {
  const session = useTheSession();
  return (
    <WordForm as="button" label="Add a pin" text="Add a pin">
      {(close) => <NewPin laying={laying} onAdd={(pin) => { addPin(session, laying.id, pin); close(); }} />}
    </WordForm>
  );
}

function NewPin({ laying, onAdd }: { readonly laying: Laying; readonly onAdd: (pin: Registration) => void }) {
  const puts = putsOf(laying.setting);
  const [put, setPut] = useState(puts[0]?.id ?? '');
  const session = useTheSession();
  const ons = onsFor(put, laying.setting, { nameOf: (id) => placementName(session.getState(), laying.sheet, id) });
  const [wanted, setWanted] = useState('');
  const on = ons.some(({ id }) => id === wanted) ? wanted : (ons[0]?.id ?? '');
  const [distance, setDistance] = useState(0);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (put !== '' && on !== '') onAdd({ put, on, ...(distance !== 0 && { distance }) });
      }}
    >
      <Choose label="Put the" options={puts} value={put} onChoose={setPut} />
      <Choose label="on the" options={ons} value={on} onChoose={setWanted} />
      <LengthField label="this far from it" value={distance} onValue={setDistance} />
      <div className="form-foot"><Button className="button main" type="submit">Put it there</Button></div>
    </form>
  );
}
