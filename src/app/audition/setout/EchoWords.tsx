// What is asked of an echo: how far from the line, on which side, with which template.

import { USUAL_DISTANCE } from '../../../place/echo/echo.ts';
import type { AskedEcho } from '../../../session/setout/asked.ts';
import { ask } from '../../../session/setout/setting-out.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useTheSession } from '../../use-session.ts';
import { useLengths } from '../../words/lengths.ts';
import { WordChoice } from '../slip/WordChoice.tsx';
import { LengthWord } from './LengthWord.tsx';
import { TemplateWord } from './TemplateWord.tsx';

const FARTHEST = 6;

const SIDES = [{ id: '', name: 'on either side' }, { id: 'left', name: 'on its left, as it is sewn' }, { id: 'right', name: 'on its right, as it is sewn' }] as const;

export function EchoWords({ asked }: { readonly asked: AskedEcho }) {
  const session = useTheSession();
  const length = useLengths();
  const { template: _template, ...withoutTemplate } = asked;
  const { side: _side, ...withoutSide } = asked;
  return (
    <SlipPart title="What is to run beside it">
      <p className="sentence spoken">
        Sew a line <LengthWord label="How far from the line" free={length(USUAL_DISTANCE)} value={asked.distance} least={1 / 32} most={FARTHEST} onValue={(distance) => ask(session, { ...asked, distance: distance ?? USUAL_DISTANCE })} /> from it,{' '}
        <WordChoice label="On which side" text={SIDES.find(({ id }) => id === (asked.side ?? ''))!.name} options={() => SIDES} chosen={asked.side ?? ''} onChoose={(id) => ask(session, id === '' ? withoutSide : { ...asked, side: id as 'left' | 'right' })} />
        .
      </p>
      <p className="sentence spoken">Sew it with <TemplateWord template={asked.template} onTemplate={(template) => ask(session, template === undefined ? withoutTemplate : { ...asked, template })} />.</p>
      <p className="aside">A curve rarely echoes itself exactly. How far each way strays from the distance is said beside it.</p>
    </SlipPart>
  );
}
