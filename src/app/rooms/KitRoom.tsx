// Kit: her templates on a board at one scale, her feet and materials in the drawer below, and a slip for the one picked out.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { footOnTheMachine } from '../../model/kit/on-the-machine.ts';
import { shapeOf } from '../../model/kit/shape-of.ts';
import type { Foot, Kit } from '../../model/plan.ts';
import type { KitPick } from '../../session/kit/kit-pick.ts';
import { pickInKit } from '../../session/kit/pick.ts';
import { Bench } from '../kit/Bench.tsx';
import { Board, type BoardThing } from '../kit/Board.tsx';
import { Drawer } from '../kit/Drawer.tsx';
import { EtchingsSlip } from '../kit/EtchingsSlip.tsx';
import { FootSlip } from '../kit/FootSlip.tsx';
import { FootTest } from '../kit/FootTest.tsx';
import { BattingSlip, BobbinSlip, MachineSlip, ThreadSlip } from '../kit/MaterialsSlips.tsx';
import { FamilyBoard, NO_DRAFT, NewTemplateSlip, type TemplateDraft } from '../kit/NewTemplate.tsx';
import { TemplateSlip } from '../kit/TemplateSlip.tsx';
import { useTemplateWords } from '../kit/template-words.ts';
import { Sentence, Slip } from '../slip/Slip.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import '../kit/kit.css';

export function KitRoom() {
  const kit = useSession((state) => state.evaluation.plan.kit);
  const wanted = useSession((state) => state.kitPick);
  const [draft, setDraft] = useState<TemplateDraft>(NO_DRAFT);
  const [measured, setMeasured] = useState<string>();
  const pick = standing(kit, wanted);
  const foot = footOnTheMachine(kit)?.foot;
  const testing = pick?.kind === 'foot' && pick.foot === measured ? kit.feet[measured] : undefined;
  return (
    <main className="room kit" data-shows={testing ? 'test' : pick?.kind === 'etchings' ? 'bench' : pick?.kind === 'new-template' ? 'shapes' : 'board'}>
      {testing && measured !== undefined ? (
        <FootTest key={measured} id={measured} foot={testing} onDone={() => setMeasured(undefined)} />
      ) : (
        <LeftPart kit={kit} pick={pick} foot={foot} draft={draft} onDraft={setDraft} />
      )}
      <Drawer pick={pick} />
      <KitSlip kit={kit} pick={pick} foot={foot} draft={draft} onDraft={setDraft} onMeasure={setMeasured} />
    </main>
  );
}

/** What is picked out, or whatever comes first where that is no longer in the kit. */
function standing(kit: Kit, pick: KitPick | undefined): KitPick | undefined {
  if (pick?.kind === 'etchings') {
    const template = kit.templates[pick.template];
    if (template) return shapeOf(template).ok ? pick : { kind: 'template', template: pick.template };
  } else if (pick?.kind === 'template') {
    if (kit.templates[pick.template]) return pick;
  } else if (pick?.kind === 'foot') {
    if (kit.feet[pick.foot]) return pick;
  } else if (pick) {
    return pick;
  }
  const first = Object.keys(kit.templates).find((id) => kit.templates[id]!.hidden !== true) ?? Object.keys(kit.templates)[0];
  return first === undefined ? undefined : { kind: 'template', template: first };
}

interface PartProps {
  readonly kit: Kit;
  readonly pick: KitPick | undefined;
  readonly foot: Foot | undefined;
  readonly draft: TemplateDraft;
  readonly onDraft: (draft: TemplateDraft) => void;
}

function LeftPart({ kit, pick, foot, draft, onDraft }: PartProps) {
  if (pick?.kind === 'new-template') return <FamilyBoard draft={draft} onDraft={onDraft} foot={foot} />;
  if (pick?.kind === 'etchings') {
    const template = kit.templates[pick.template]!;
    const shape = shapeOf(template);
    if (shape.ok) return <Bench key={pick.template} id={pick.template} template={template} shape={shape.value} picked={pick.etching} />;
  }
  return <KitBoard kit={kit} pick={pick} foot={foot} />;
}

/** Her templates; those hidden come last, when they are asked for. */
function KitBoard({ kit, pick, foot }: Pick<PartProps, 'kit' | 'pick' | 'foot'>) {
  const session = useTheSession();
  const words = useTemplateWords();
  const [showHidden, setShowHidden] = useState(false);
  const all = Object.entries(kit.templates);
  const hidden = all.filter(([, template]) => template.hidden === true);
  const pickedId = pick?.kind === 'template' ? pick.template : undefined;
  const shown = [...all.filter(([, template]) => template.hidden !== true), ...hidden.filter(([id]) => showHidden || id === pickedId)];
  const things = shown.map(([id, template]): BoardThing => {
    const shape = shapeOf(template);
    return { id, name: template.name, about: template.hidden ? `${words(template)}, hidden` : words(template), shape: shape.ok ? shape.value : undefined, quiet: template.hidden === true };
  });
  return (
    <Board
      label="Templates"
      things={things}
      picked={pickedId}
      onPick={(template) => pickInKit(session, { kind: 'template', template })}
      foot={foot}
      head={
        <div className="board-head">
          <div>
            <h2>{all.length === 0 ? 'No templates yet' : `${all.length - hidden.length} templates`}</h2>
            <p className="aside">All at one scale, dots 1 in apart. {foot ? `Dotted: the needle line of ${foot.name}.` : 'Add a foot to see needle lines.'}</p>
          </div>
          {hidden.length > 0 && (
            <Button className="button" onPress={() => setShowHidden(!showHidden)}>
              {showHidden ? 'Put the hidden away' : hidden.length === 1 ? 'Show the one hidden' : `Show the ${hidden.length} hidden`}
            </Button>
          )}
          <Button className="button" onPress={() => pickInKit(session, { kind: 'new-template' })}>Add a template</Button>
        </div>
      }
    />
  );
}

function KitSlip({ kit, pick, foot, draft, onDraft, onMeasure }: PartProps & { readonly onMeasure: (foot: string) => void }) {
  switch (pick?.kind) {
    case 'template':
      return <TemplateSlip key={pick.template} id={pick.template} template={kit.templates[pick.template]!} foot={foot} />;
    case 'etchings': {
      const template = kit.templates[pick.template]!;
      const shape = shapeOf(template);
      return shape.ok ? <EtchingsSlip key={pick.template} id={pick.template} template={template} shape={shape.value} picked={pick.etching} /> : null;
    }
    case 'new-template':
      return <NewTemplateSlip draft={draft} onDraft={onDraft} foot={foot} />;
    case 'foot':
      return <FootSlip key={pick.foot} id={pick.foot} foot={kit.feet[pick.foot]!} onMeasure={() => onMeasure(pick.foot)} />;
    case 'thread':
      return <ThreadSlip />;
    case 'bobbin':
      return <BobbinSlip />;
    case 'batting':
      return <BattingSlip />;
    case 'machine':
      return <MachineSlip />;
    case undefined:
      return (
        <Slip title="Your kit" about="Templates, feet, thread, batting">
          <Sentence>Nothing is in it yet. Add a template you have, at the sizes you measure.</Sentence>
        </Slip>
      );
  }
}
