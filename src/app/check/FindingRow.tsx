// One finding on the slip: its sign and number, its words and picture, and what can be done about it once it is looked at.

import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { CODES } from '../../check/codes.ts';
import type { Finding } from '../../check/finding.ts';
import { alike, leaveSo, takeUpAgain } from '../../session/accept.ts';
import type { NumberedFinding, Spot } from '../../session/numbered-findings.ts';
import { useTheSession } from '../use-session.ts';
import { Said } from '../words/Said.tsx';
import { useLengths } from '../words/lengths.ts';
import { ASKS, FindingSign } from '../words/signs.tsx';
import { FindingPicture } from './FindingPicture.tsx';
import { LeaveSo } from './LeaveSo.tsx';
import { showSpot } from './show-spot.ts';

export interface FindingRowProps {
  readonly numbered: NumberedFinding;
  /** The spots it can be led through; undefined when it is not the one looked at. */
  readonly spots: readonly Spot[] | undefined;
  readonly at: number;
  /** Told when its place in the lists changes, with what is to be said of it. */
  readonly onMoved: (key: string, said: string) => void;
}

export function FindingRow({ numbered, spots, at, onMoved }: FindingRowProps) {
  const session = useTheSession();
  const { key, number, finding } = numbered;
  return (
    <li className={`finding${spots ? ' picked' : ''}`}>
      <button type="button" className="finding-press" data-finding={key} aria-pressed={spots !== undefined} onClick={() => showSpot(session, numbered, spots ? at : 0)}>
        <FindingSign severity={finding.severity} />
        <span className="finding-words">
          <span className="sentence">
            <b className="finding-number">{number}</b> <span className="only-heard">{ASKS[finding.severity]}: </span>
            <Said>{finding.message}</Said>
          </span>
          {finding.accepted !== undefined && <span className="left-reason"><Said>{finding.accepted}</Said></span>}
          <Measured finding={finding} />
          {spots && <span className="aside"><Said>{whyOf(finding)}</Said></span>}
        </span>
        <FindingPicture finding={finding} />
      </button>
      {spots && <Acts numbered={numbered} spots={spots} at={at} onMoved={onMoved} />}
    </li>
  );
}

/** What was measured and what was asked for. */
function Measured({ finding: { measured, limit } }: { readonly finding: Finding }) {
  const length = useLengths();
  if (measured === undefined) return null;
  // A limit of nothing is no measure: any of it is too much.
  const asked = limit === undefined || limit === 0 ? '' : `, limit ${length(limit)}`;
  return <span className="aside"><Said>{`Measured ${length(measured)}${asked}`}</Said></span>;
}

type ActsProps = FindingRowProps & { readonly spots: readonly Spot[] };

function Acts({ numbered, spots, at, onMoved }: ActsProps) {
  const session = useTheSession();
  const { key, number, finding } = numbered;
  const [asks, setAsks] = useState(false);
  const isLeft = finding.accepted !== undefined;
  const count = spots.length;
  const go = (to: number) => showSpot(session, numbered, (to + count) % count);
  const leave = (reason: string) => {
    leaveSo(session, finding, reason);
    setAsks(false);
    onMoved(key, isLeft ? 'The reason is changed. Undo takes it back.' : `Finding ${number} is left so. Undo takes it back.`);
  };
  const takeUp = () => {
    takeUpAgain(session, finding);
    onMoved(key, 'It is taken up again. Undo leaves it so.');
  };
  let acts: ReactNode;
  if (asks) {
    acts = <LeaveSo finding={finding} alike={alike(session.getState().evaluation.findings, finding)} onLeave={leave} onGiveUp={() => setAsks(false)} />;
  } else {
    acts = (
      <div className="finding-acts">
        {count > 0 && <Button className="button" onPress={() => go(at)}>Show me</Button>}
        {isLeft && <Button className="button" onPress={takeUp}>Take it up again</Button>}
        <Button className="button" onPress={() => setAsks(true)}>{isLeft ? 'Another reason…' : 'Leave it so…'}</Button>
      </div>
    );
  }
  return (
    <>
      {count > 1 && (
        <div className="finding-steps">
          <Button className="button" onPress={() => go(at - 1)}>Place before</Button>
          <span role="status">{at + 1} of {count}</span>
          <Button className="button" onPress={() => go(at + 1)}>Next place</Button>
        </div>
      )}
      {acts}
    </>
  );
}

function whyOf({ code }: Finding): string {
  return code in CODES ? CODES[code as keyof typeof CODES].why : '';
}
