// What is etched on a template, as a list; the one picked out can be named, moved by numbers and deleted.

import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { endOf, startOf } from '../../geometry/path.ts';
import { type Point, distance } from '../../geometry/point.ts';
import type { EtchedShape, TemplateShape } from '../../model/kit/shape.ts';
import type { Etching, Place, Template } from '../../model/plan.ts';
import { centreOf, isOnAcrylic } from '../../session/kit/etch-place.ts';
import { bringBackEtchings, deleteEtching, etchingFrom, familyEtchings, nameEtching, typeEtching } from '../../session/kit/etchings.ts';
import { pickInKit } from '../../session/kit/pick.ts';
import { forgetTyped, keepTyped } from '../../session/typing.ts';
import { type UseOnSheet, usesOfEtching } from '../../session/kit/uses.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { LengthField } from '../words/LengthField.tsx';
import { NumberField } from '../words/NumberField.tsx';
import { Said } from '../words/Said.tsx';
import { useFineLengths } from '../words/lengths.ts';
import { DeleteDialog } from './DeleteDialog.tsx';
import { TextField } from './TextField.tsx';
import { sayEtchings } from './say-etchings.ts';
import { sayPlace } from './say-place.ts';

export interface EtchingsSlipProps {
  readonly id: string;
  readonly template: Template;
  readonly shape: TemplateShape;
  readonly picked: string | undefined;
}

export function EtchingsSlip({ id, template, shape, picked }: EtchingsSlipProps) {
  const session = useTheSession();
  const left = template.notEtched?.filter((one) => familyEtchings(template).some((etching) => etching.id === one)).length ?? 0;
  return (
    <Slip
      title={template.name}
      about="What is etched on it"
      foot={<Button className="button main" onPress={() => pickInKit(session, { kind: 'template', template: id })}>Done</Button>}
    >
      <SlipPart title="Etched on it">
        <Sentence>{sayEtchings(shape.etchings)}</Sentence>
        <Aside>Touch one to name it, move it or delete it. Delete what is not on your own template; etchings of the shape can be brought back.</Aside>
        {left > 0 && <Button className="button" onPress={() => bringBackEtchings(session, id)}>{left === 1 ? 'Bring back the one deleted' : `Bring back the ${left} deleted`}</Button>}
        <ul className="etching-rows">
          {shape.etchings.map((etching) => (
            <EtchingRow key={etching.id} id={id} template={template} shape={shape} etching={etching} isPicked={etching.id === picked} />
          ))}
        </ul>
      </SlipPart>
    </Slip>
  );
}

interface RowProps extends Omit<EtchingsSlipProps, 'picked'> {
  readonly etching: EtchedShape;
  readonly isPicked: boolean;
}

function EtchingRow({ id, template, shape, etching, isPicked }: RowProps) {
  const session = useTheSession();
  const fine = useFineLengths();
  const plan = useSession((state) => state.evaluation.plan);
  const [asking, setAsking] = useState(false);
  const centre = centreOf(template, shape);
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isPicked) row.current?.scrollIntoView({ block: 'nearest' });
  }, [isPicked]);
  const uses = isPicked ? usesOfEtching(plan, id, etching.id) : [];
  return (
    <li ref={row} className={isPicked ? 'etching-row picked' : 'etching-row'}>
      <button type="button" className="etching-press" aria-expanded={isPicked} onClick={() => pickInKit(session, { kind: 'etchings', template: id, ...(!isPicked && { etching: etching.id }) })}>
        <span>{etching.name}</span>
        <span className="aside"><Said>{sayWhere(etching, centre, fine)}</Said></span>
      </button>
      {isPicked && (
        <div className="etching-fields">
          <TextField label="Name" value={etching.name} onKeep={(name) => nameEtching(session, id, etching.id, name)} />
          <Numbers key={etching.id} id={id} shape={shape} etching={etching} centre={centre} />
          <Button className="button" onPress={() => (uses.length === 0 ? deleteEtching(session, id, etching.id) : setAsking(true))}>Delete it</Button>
          {asking && <AskEtching name={etching.name} uses={uses} onLeave={() => setAsking(false)} onDelete={() => deleteEtching(session, id, etching.id)} />}
        </div>
      )}
    </li>
  );
}

function AskEtching({ name, uses, onLeave, onDelete }: { readonly name: string; readonly uses: readonly UseOnSheet[]; readonly onLeave: () => void; readonly onDelete: () => void }) {
  return (
    <DeleteDialog
      name={name}
      uses={uses}
      others={[]}
      otherwise=""
      question="These placements are held by it. Without it they stay where they last lay, and Check says that their pin is gone."
      onDelete={onDelete}
      onLeave={onLeave}
    />
  );
}

/** Where an etching lies, in a few words. */
function sayWhere(etching: EtchedShape, centre: Point<'template'>, fine: (inches: number) => string): string {
  if (etching.kind === 'point' || etching.kind === 'cross') return sayPlace(etching.at, centre, fine);
  const [from, to] = [startOf(etching.path), endOf(etching.path)];
  if (etching.kind === 'line' && from && to) return `Line, ${fine(Math.round(distance(from, to) * 32) / 32)} long`;
  return etching.path.closed ? 'Curve, all the way round' : 'Curve';
}

interface NumbersProps {
  readonly id: string;
  readonly shape: TemplateShape;
  readonly etching: EtchedShape;
  readonly centre: Point<'template'>;
}

/** The places of an etching as numbers, from the centre. A place off the acrylic is not taken. */
function Numbers({ id, shape, etching, centre }: NumbersProps) {
  const session = useTheSession();
  const [off, setOff] = useState<string>();
  const written = etchingFrom(etching);
  const put = (next: Etching, place: Place, field: string) => {
    const fits = isOnAcrylic(shape, { x: place[0], y: place[1] });
    setOff(fits ? undefined : field);
    if (fits) typeEtching(session, id, etching.id, next);
  };
  const places = (name: string, at: Place, to: (place: Place) => Etching) => {
    const field = (label: string, which: 0 | 1) => (
      <LengthField
        label={label}
        value={at[which] - (which === 0 ? centre.x : centre.y)}
        problem={off === label ? 'That place is not on the template.' : undefined}
        onValue={(value) => {
          const place: Place = which === 0 ? [centre.x + value, at[1]] : [at[0], centre.y + value];
          put(to(place), place, label);
        }}
        onKeep={() => keepTyped(session)}
        onGiveUp={() => {
          setOff(undefined);
          forgetTyped(session);
        }}
      />
    );
    return (
      <div className="fields beside" role="group" aria-label={name}>
        {field(`${name}, right of the centre`, 0)}
        {field(`${name}, below the centre`, 1)}
      </div>
    );
  };
  switch (written.kind) {
    case 'line':
      return (
        <>
          {places('Start', written.from, (from) => ({ ...written, from }))}
          {places('End', written.to, (to) => ({ ...written, to }))}
          <p className="typed-hint">A minus goes to the left of the centre, or above it.</p>
        </>
      );
    case 'point':
      return places('Point', written.at, (at) => ({ ...written, at }));
    case 'cross':
      return (
        <>
          {places('Cross', written.at, (at) => ({ ...written, at }))}
          <NumberField label="Turned clockwise" unit="°" least={-360} most={360} value={written.angle} onValue={(angle) => typeEtching(session, id, etching.id, { ...written, angle })} onKeep={() => keepTyped(session)} onGiveUp={() => forgetTyped(session)} />
        </>
      );
    case 'curve':
      return <p className="typed-hint">A curve is not moved by numbers. Delete it, and draw a line inside the edge at another distance.</p>;
  }
}
