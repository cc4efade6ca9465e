// A new template: one of the built-in families or an own outline, chosen on the board, sized on the slip, with edge and needle line
// drawn as it is typed.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { FAMILIES, familyById } from '../../model/kit/families.ts';
import type { Foot, Grips, Template } from '../../model/plan.ts';
import { type DrawingUnit, readOwnOutline } from '../../session/kit/own-outline.ts';
import { pickInKit } from '../../session/kit/pick.ts';
import { addTemplate } from '../../session/kit/templates.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { useTheSession } from '../use-session.ts';
import { Board, type BoardThing } from './Board.tsx';
import { MakeFields } from './MakeFields.tsx';
import { OutlineForm, RefusedPicture } from './OutlineForm.tsx';
import { LargePicture, ReachPart } from './ReachPart.tsx';
import { type Sizes, SizesForm } from './SizesForm.tsx';
import { TextField } from './TextField.tsx';

/** What is being made, before it is in the kit. */
export interface TemplateDraft {
  /** A family's id, or 'own' for an own outline. */
  readonly from: string;
  readonly sizes: Sizes;
  readonly data: string;
  readonly unit: DrawingUnit;
  readonly name: string | undefined;
  readonly thickness: number;
  readonly grips: Grips;
}

export const NO_DRAFT: TemplateDraft = { from: FAMILIES[0]!.id, sizes: {}, data: '', unit: 'in', name: undefined, thickness: 1 / 4, grips: 'none' };

const OWN = 'own';

interface Props {
  readonly draft: TemplateDraft;
  readonly onDraft: (draft: TemplateDraft) => void;
  readonly foot: Foot | undefined;
}

/** The families to choose from, as the board shows the kit. */
export function FamilyBoard({ draft, onDraft, foot }: Props) {
  const session = useTheSession();
  const things: readonly BoardThing[] = [
    { id: OWN, name: 'Your own outline', about: 'pasted from a drawing', shape: undefined },
    ...FAMILIES.map(({ id, name, draw, useful }): BoardThing => {
      const shape = draw({});
      return { id, name, about: useful[0]?.name ?? '', shape: shape.ok ? shape.value : undefined };
    }),
  ];
  return (
    <Board
      label="Shapes to begin with"
      things={things}
      picked={draft.from}
      onPick={(from) => from !== draft.from && onDraft({ ...draft, from, sizes: {} })}
      foot={foot}
      head={
        <div className="board-head">
          <div>
            <h2>Choose a shape</h2>
            <p className="aside">Ordinary shapes, all at one scale. Give yours the sizes you measure.</p>
          </div>
          <Button className="button" onPress={() => pickInKit(session, undefined)}>Back to the kit</Button>
        </div>
      }
    />
  );
}

export function NewTemplateSlip({ draft, onDraft, foot }: Props) {
  const session = useTheSession();
  const [waiting, setWaiting] = useState(false);
  const family = familyById(draft.from);
  const own = family ? undefined : readOwnOutline(draft.data, draft.unit);
  const drawn = family?.draw(draft.sizes);
  const shape = drawn ? (drawn.ok ? drawn.value : undefined) : own?.ok ? own.value.shape : undefined;
  const name = draft.name ?? family?.name ?? 'My own';
  const template = templateOf(draft, name, own);
  return (
    <Slip
      title="A new template"
      about={family?.name ?? 'Your own outline'}
      foot={
        <>
          <Button className="button" onPress={() => pickInKit(session, undefined)}>Leave it</Button>
          <Button
            className="button main"
            isDisabled={!shape || !template || waiting}
            onPress={() => {
              if (!template) return;
              addTemplate(session, template);
              onDraft(NO_DRAFT);
            }}
          >
            Add it to the kit
          </Button>
        </>
      }
    >
      {shape && <LargePicture shape={shape} foot={foot} quiet={waiting} />}
      {own && !own.ok && draft.data.trim() !== '' && <RefusedPicture problem={own.problem} />}
      {family ? (
        <SlipPart title="Sizes">
          <Aside>{family.about}</Aside>
          <SizesForm key={family.id} family={family} sizes={draft.sizes} onSizes={(sizes) => onDraft({ ...draft, sizes })} onWaiting={setWaiting} />
        </SlipPart>
      ) : (
        <SlipPart title="Outline">
          <OutlineForm data={draft.data} unit={draft.unit} problem={own && !own.ok ? own.problem : undefined} onData={(data) => onDraft({ ...draft, data })} onUnit={(unit) => onDraft({ ...draft, unit })} />
        </SlipPart>
      )}
      {shape && foot ? <ReachPart shape={shape} foot={foot} /> : <Sentence>{foot ? '' : 'Add a foot, and the needle line is drawn with it.'}</Sentence>}
      <SlipPart title="How it is made">
        <TextField label="Name" value={name} onKeep={(next) => onDraft({ ...draft, name: next.trim() === '' ? undefined : next.trim() })} />
        <MakeFields thickness={draft.thickness} grips={draft.grips} foot={foot} onThickness={(thickness) => onDraft({ ...draft, thickness })} onGrips={(grips) => onDraft({ ...draft, grips })} />
      </SlipPart>
    </Slip>
  );
}

function templateOf({ from, sizes, thickness, grips }: TemplateDraft, name: string, own: ReturnType<typeof readOwnOutline> | undefined): Template | undefined {
  if (!own) return { name, family: from, sizes, thickness, grips };
  if (!own.ok) return undefined;
  const { outline, windows } = own.value;
  return { name, outline, ...(Object.keys(windows).length > 0 && { windows }), thickness, grips };
}
