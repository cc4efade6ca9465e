// What to mark on the template that is picked out, found when somebody asks, beside the page: it takes a moment.

import { useState } from 'react';
import { wrap } from 'comlink';
import { Button } from 'react-aria-components/Button';
import type { MarksTold } from '../../../session/marks/marks-told.ts';
import { planOf } from '../../../session/store.ts';
import { Sentence, SlipPart, Aside } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import type { Solver } from '../setout/solver.worker.ts';
import { MarkedPicture } from './MarkedPicture.tsx';
import './marks.css';

type Asked = { readonly kind: 'not-asked' } | { readonly kind: 'looking' } | { readonly kind: 'told'; readonly of: unknown; readonly told: MarksTold | undefined };

export function MarksPart({ sheet, placement }: { readonly sheet: string; readonly placement: string }) {
  const session = useTheSession();
  const plan = useSession((state) => state.gesture?.from ?? state.evaluation.plan);
  const [asked, setAsked] = useState<Asked>({ kind: 'not-asked' });
  const isOld = asked.kind === 'told' && asked.of !== plan;
  const look = async () => {
    setAsked({ kind: 'looking' });
    const now = planOf(session.getState());
    const worker = new Worker(new URL('../setout/solver.worker.ts', import.meta.url), { type: 'module', name: 'marks' });
    const broken = new Promise<undefined>((resolve) => {
      worker.onerror = () => resolve(undefined);
    });
    const told = await Promise.race([wrap<Solver>(worker).marks(now, sheet, placement).catch(() => undefined), broken]);
    worker.terminate();
    setAsked({ kind: 'told', of: now, told });
  };
  return (
    <SlipPart title="Marks on the template">
      {asked.kind === 'told' && !isOld && asked.told ? <Told told={asked.told} /> : <Sentence>{asked.kind === 'told' && !isOld ? 'No marks could be found for it.' : 'What to draw on it, so that it lies the same again without measuring.'}</Sentence>}
      {(asked.kind !== 'told' || isOld) && <div className="slip-buttons"><Button className="button" isDisabled={asked.kind === 'looking'} onPress={() => void look()}>{asked.kind === 'looking' ? 'Looking…' : 'Show the marks'}</Button></div>}
    </SlipPart>
  );
}

function Told({ told }: { readonly told: MarksTold }) {
  const { letters } = told;
  return (
    <>
      <MarkedPicture list={told.picture} />
      <Sentence>{letters.length === 0 ? 'Nothing needs to be drawn on it: its own etchings and tips do.' : `Draw ${letters.length === 1 ? `mark ${letters[0]}` : `marks ${letters.slice(0, -1).join(', ')} and ${letters.at(-1)}`} on it, with a pen that comes off again.`}</Sentence>
      <ul className="plain-list">{told.sentences.map((sentence) => <li key={sentence}><Sentence>{sentence}</Sentence></li>)}</ul>
      {told.straying.map((sentence) => <Aside key={sentence}>{sentence}</Aside>)}
    </>
  );
}
