// Reasons whose finding is gone: they still hold when the same is found again, and can be forgotten.

import { Button } from 'react-aria-components/Button';
import { type LeftoverReason, forgetReason } from '../../session/accept.ts';
import { Aside, SlipPart } from '../slip/Slip.tsx';
import { useTheSession } from '../use-session.ts';
import { Said } from '../words/Said.tsx';

export interface LeftoversProps {
  readonly reasons: readonly LeftoverReason[];
  /** Told when one is forgotten, with what is to be said of it. */
  readonly onForgotten: (said: string) => void;
}

export function Leftovers({ reasons, onForgotten }: LeftoversProps) {
  const session = useTheSession();
  return (
    <SlipPart title="Reasons for what is not found any more">
      <Aside>They hold again if the same is found again.</Aside>
      <ul className="leftovers">
        {reasons.map(({ key, reason, about }) => (
          <li key={key}>
            <p><Said>{about}</Said><span className="left-reason"><Said>{reason}</Said></span></p>
            <Button
              className="button"
              aria-label={`Forget the reason: ${about}`}
              onPress={() => {
                forgetReason(session, key);
                onForgotten('The reason is forgotten. Undo brings it back.');
              }}
            >
              Forget it
            </Button>
          </li>
        ))}
      </ul>
    </SlipPart>
  );
}
