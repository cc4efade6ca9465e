// Asks why a finding is left so: one sentence, a usual one or her own.

import { useId, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Finding } from '../../check/finding.ts';
import { usualReasons } from './usual-reasons.ts';

export interface LeaveSoProps {
  readonly finding: Finding;
  /** How many findings the reason goes for, this one included. */
  readonly alike: number;
  readonly onLeave: (reason: string) => void;
  readonly onGiveUp: () => void;
}

export function LeaveSo({ finding, alike, onLeave, onGiveUp }: LeaveSoProps) {
  const [reason, setReason] = useState(finding.accepted ?? '');
  const id = useId();
  const isReason = reason.trim() !== '';
  return (
    <form
      className="leave-so"
      onSubmit={(event) => {
        event.preventDefault();
        if (isReason) onLeave(reason);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onGiveUp();
      }}
    >
      <label htmlFor={id}>Why it is left so, in one sentence</label>
      <input id={id} type="text" autoComplete="off" maxLength={300} autoFocus value={reason} onChange={({ target }) => setReason(target.value)} aria-describedby={alike > 1 ? `${id}-alike` : undefined} />
      <ul className="usual-reasons" aria-label="Usual reasons">
        {usualReasons(finding).map((usual) => (
          <li key={usual}><Button className="button" aria-pressed={usual === reason} onPress={() => setReason(usual)}>{usual}</Button></li>
        ))}
      </ul>
      {alike > 1 && <p id={`${id}-alike`} className="aside">{`The reason goes for ${alike} findings alike.`}</p>}
      <div className="finding-acts">
        <Button className="button firm" type="submit" isDisabled={!isReason}>Leave it so</Button>
        <Button className="button" onPress={onGiveUp}>Decide later</Button>
      </div>
    </form>
  );
}
