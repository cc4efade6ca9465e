// The header: whose quilt this is, the rooms in the order of the job, and undo always in sight.

import { Suspense, lazy } from 'react';
import { Button } from 'react-aria-components/Button';
import { redo, undo } from '../../session/change-plan.ts';
import { useSession, useTheSession } from '../use-session.ts';
import { KeptWords } from './KeptWords.tsx';
import type { PlanMenuProps } from './PlanMenu.tsx';
import { Rooms } from './Rooms.tsx';
import './frame.css';

// The menus come a moment after the first picture; until then their names stand in their places.
const PlanMenu = lazy(() => import('./PlanMenu.tsx').then(({ PlanMenu: Menu }) => ({ default: Menu })));
const SettingsMenu = lazy(() => import('./SettingsMenu.tsx').then(({ SettingsMenu: Menu }) => ({ default: Menu })));

export function Header(props: PlanMenuProps) {
  const session = useTheSession();
  const name = useSession((state) => state.evaluation.plan.name);
  const undoes = useSession((state) => state.history.past.at(-1)?.label);
  const redoes = useSession((state) => state.history.future.at(-1)?.label);
  return (
    <header className="header">
      <p className="app-name">Needlefall</p>
      <div className="plan-place">
        <Suspense fallback={<span className="plan-name"><span className="plan-name-text">{name}</span></span>}>
          <PlanMenu name={name} {...props} />
        </Suspense>
        <KeptWords />
      </div>
      <Rooms />
      <div className="header-right">
        <Button className="word" isDisabled={undoes === undefined} aria-label={undoes === undefined ? 'Undo' : `Undo: ${undoes}`} onPress={() => undo(session)}>
          <span>Undo</span>
        </Button>
        <Button className="word" isDisabled={redoes === undefined} aria-label={redoes === undefined ? 'Redo' : `Redo: ${redoes}`} onPress={() => redo(session)}>
          <span>Redo</span>
        </Button>
        <Suspense fallback={<span className="word"><span>Settings</span></span>}>
          <SettingsMenu />
        </Suspense>
      </div>
    </header>
  );
}
