// Names the plan on the table. What is typed shows at once and is one step of undo; giving up goes back to the name before.

import { useEffect } from 'react';
import { abandonGesture, beginGesture, keepGesture, moveGesture } from '../../session/change-plan.ts';
import { planOf } from '../../session/store.ts';
import { useTheSession } from '../use-session.ts';
import { NameDialog } from './NameDialog.tsx';

export function NamePlanDialog({ onClose }: { readonly onClose: () => void }) {
  const session = useTheSession();
  useEffect(() => {
    beginGesture(session, 'Name the plan');
    return () => keepGesture(session);
  }, [session]);
  return (
    <NameDialog
      title="Name this plan"
      label="Name"
      name={planOf(session.getState()).name}
      done="Name it"
      onTyped={(name) => moveGesture(session, (plan) => void (plan.name = name))}
      onDone={onClose}
      onGiveUp={() => {
        abandonGesture(session);
        onClose();
      }}
    />
  );
}
