// The slip of one template: its picture, what the foot can reach, where it is used, and all that can be changed about it.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { familyById } from '../../model/kit/families.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Foot, Template } from '../../model/plan.ts';
import { type DrawingUnit, readOwnOutline } from '../../session/kit/own-outline.ts';
import { pickInKit } from '../../session/kit/pick.ts';
import { deleteTemplate, duplicateTemplate, gripTemplate, hideTemplate, nameTemplate, noteTemplate } from '../../session/kit/templates.ts';
import { forgetTyped, keepTyped, type } from '../../session/typing.ts';
import { type UseOnSheet, usesOfTemplate } from '../../session/kit/uses.ts';
import { layTemplate } from '../../session/lay/bring-in.ts';
import { OPEN_ROOMS } from '../../session/rooms.ts';
import { changePlan } from '../../session/change-plan.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { Cautions } from '../words/Cautions.tsx';
import { useFineLengths } from '../words/lengths.ts';
import { DeleteDialog, sayUse } from './DeleteDialog.tsx';
import { GRIPS, MakeFields } from './MakeFields.tsx';
import { OutlineForm, RefusedPicture } from './OutlineForm.tsx';
import { LargePicture, ReachPart } from './ReachPart.tsx';
import { SizesForm } from './SizesForm.tsx';
import { TextField } from './TextField.tsx';
import { sayEtchings } from './say-etchings.ts';
import { useTemplateWords } from './template-words.ts';

export function TemplateSlip({ id, template, foot }: { readonly id: string; readonly template: Template; readonly foot: Foot | undefined }) {
  const session = useTheSession();
  const plan = useSession((state) => state.evaluation.plan);
  const fine = useFineLengths();
  const words = useTemplateWords();
  const [waiting, setWaiting] = useState(false);
  const shape = shapeOf(template);
  const uses = usesOfTemplate(plan, id);
  const family = 'family' in template ? familyById(template.family) : undefined;
  const grips = GRIPS.find(({ value }) => value === template.grips)?.name ?? template.grips;
  return (
    <Slip
      title={template.name}
      about={`${words(template)}, ${fine(template.thickness)} thick, grips: ${grips}`}
      foot={OPEN_ROOMS.includes('audition') && (
        <Button
          className="button main"
          isDisabled={!shape.ok}
          onPress={() => {
            layTemplate(session, id);
            location.hash = 'audition';
          }}
        >
          Lay it on the top
        </Button>
      )}
    >
      {shape.ok && <LargePicture shape={shape.value} foot={foot} quiet={waiting} />}
      {!shape.ok && <p className="sentence typed-wrong" role="alert">{shape.problem.message}</p>}
      {shape.ok && foot && <ReachPart shape={shape.value} foot={foot} />}
      <SlipPart title="Etched on it">
        <Sentence>{shape.ok ? sayEtchings(shape.value.etchings) : 'Nothing can be seen until it can be drawn.'}</Sentence>
        <Button className="button" isDisabled={!shape.ok} onPress={() => pickInKit(session, { kind: 'etchings', template: id })}>Etch or change</Button>
      </SlipPart>
      <UsedOn uses={uses} />
      {'family' in template && family && (
        <SlipPart title="Sizes">
          <Aside>{family.about}</Aside>
          <SizesForm
            key={id}
            family={family}
            sizes={template.sizes}
            onSizes={(sizes) => type(session, `Sizes of ${template.name}`, (draft) => {
              const mine = draft.kit.templates[id];
              if (mine && 'sizes' in mine) mine.sizes = { ...sizes };
            })}
            onKeep={() => keepTyped(session)}
            onGiveUp={() => forgetTyped(session)}
            onWaiting={setWaiting}
          />
        </SlipPart>
      )}
      {'outline' in template && <AnotherOutline key={id} id={id} template={template} />}
      <SlipPart title="How it is made">
        <TextField label="Name" value={template.name} onKeep={(name) => nameTemplate(session, id, name)} />
        <MakeFields
          thickness={template.thickness}
          grips={template.grips}
          foot={foot}
          onThickness={(thickness) => type(session, `Thickness of ${template.name}`, (draft) => {
            draft.kit.templates[id]!.thickness = thickness;
          })}
          onGrips={(next) => gripTemplate(session, id, next)}
          onKeep={() => keepTyped(session)}
          onGiveUp={() => forgetTyped(session)}
        />
        <TextField label="Notes" value={template.notes ?? ''} lines={3} onKeep={(notes) => noteTemplate(session, id, notes)} />
      </SlipPart>
      <Rest id={id} template={template} uses={uses} />
      <SlipPart title="Take care"><Cautions /></SlipPart>
    </Slip>
  );
}

function UsedOn({ uses }: { readonly uses: readonly UseOnSheet[] }) {
  return (
    <SlipPart title="Used on">
      {uses.length === 0 ? <Sentence>No sheet yet.</Sentence> : uses.map((use) => <Sentence key={use.sheet}>{sayUse(use)}</Sentence>)}
    </SlipPart>
  );
}

/** Copy, hide, delete. */
function Rest({ id, template, uses }: { readonly id: string; readonly template: Template; readonly uses: readonly UseOnSheet[] }) {
  const session = useTheSession();
  const templates = useSession((state) => state.evaluation.plan.kit.templates);
  const [asking, setAsking] = useState(false);
  const isHidden = template.hidden === true;
  return (
    <div className="rest">
      <Button className="button" onPress={() => duplicateTemplate(session, id)}>Duplicate</Button>
      <Button className="button" onPress={() => hideTemplate(session, id, !isHidden)}>{isHidden ? 'Show it again' : 'Hide'}</Button>
      <Button className="button" onPress={() => (uses.length === 0 ? deleteTemplate(session, id) : setAsking(true))}>Delete</Button>
      {asking && (
        <DeleteDialog
          name={template.name}
          uses={uses}
          others={Object.entries(templates).filter(([other]) => other !== id).map(([other, { name }]) => ({ id: other, name }))}
          otherwise="They are taken off their sheets"
          question="What becomes of these placements?"
          {...(!isHidden && {
            milder: {
              name: 'Hide it instead',
              onPress: () => {
                setAsking(false);
                hideTemplate(session, id, true);
              },
            },
          })}
          onDelete={(instead) => {
            setAsking(false);
            deleteTemplate(session, id, instead);
          }}
          onLeave={() => setAsking(false)}
        />
      )}
    </div>
  );
}

/** An own outline can be pasted anew. */
function AnotherOutline({ id, template }: { readonly id: string; readonly template: Template }) {
  const session = useTheSession();
  const [data, setData] = useState('');
  const [unit, setUnit] = useState<DrawingUnit>('in');
  const read = readOwnOutline(data, unit);
  const hasProblem = data.trim() !== '' && !read.ok;
  return (
    <SlipPart title="Its outline">
      <details className="another">
        <summary>Paste another outline in its place</summary>
        <OutlineForm data={data} unit={unit} problem={read.ok ? undefined : read.problem} onData={setData} onUnit={setUnit} />
        {hasProblem && !read.ok && <RefusedPicture problem={read.problem} />}
        <Button
          className="button"
          isDisabled={!read.ok}
          onPress={() => {
            if (!read.ok) return;
            const { outline, windows } = read.value;
            changePlan(session, `Outline of ${template.name}`, (plan) => {
              Object.assign(plan.kit.templates[id]!, { outline, windows });
            });
            setData('');
          }}
        >
          Take this outline
        </Button>
      </details>
    </SlipPart>
  );
}
