// What is asked of a line to be sewn: how near, with which template.

import type { AskedMatch } from '../../../session/setout/asked.ts';
import { ask } from '../../../session/setout/setting-out.ts';
import { EYE } from '../../../num/tolerances.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useTheSession } from '../../use-session.ts';
import { useLengths } from '../../words/lengths.ts';
import { LengthWord } from './LengthWord.tsx';
import { TemplateWord } from './TemplateWord.tsx';

export function MatchWords({ asked }: { readonly asked: AskedMatch }) {
  const session = useTheSession();
  const length = useLengths();
  const { template: _template, ...withoutTemplate } = asked;
  return (
    <SlipPart title="How near it is to come">
      <p className="sentence spoken">
        Keep within <LengthWord label="How near to the line" free={length(EYE)} value={asked.within} least={1 / 128} most={1} onValue={(within) => ask(session, { ...asked, within: within ?? EYE })} /> of the line.
      </p>
      <p className="sentence spoken">Sew it with <TemplateWord template={asked.template} onTemplate={(template) => ask(session, template === undefined ? withoutTemplate : { ...asked, template })} />.</p>
      <p className="aside">Few placements come first. What no template follows is left to sew by hand.</p>
    </SlipPart>
  );
}
