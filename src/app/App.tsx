// The frame of the app: the header, the room one is in, and what comes up over both.

import { Suspense, lazy, useEffect, useRef } from 'react';
import { redo, undo } from '../session/change-plan.ts';
import { enterRoom } from '../session/look.ts';
import { roomNamed } from '../session/rooms.ts';
import { Header } from './frame/Header.tsx';
import { usePlanDrop } from './frame/use-plan-drop.ts';
import { KeptStrip } from './plans/KeptStrip.tsx';
import { forgetLongDeleted } from './plans/plan-list.ts';
import { askToKeep } from './plans/storage.ts';
import { useKeeper } from './plans/use-kept.ts';
import { usePlans } from './plans/use-plans.ts';
import { TopRoom } from './rooms/TopRoom.tsx';
import { isTourSeen, showSlip, useTourAt } from './tour/tour.ts';
import { useSession, useTheSession } from './use-session.ts';

const AuditionRoom = lazy(() => import('./rooms/AuditionRoom.tsx').then(({ AuditionRoom: Room }) => ({ default: Room })));
const KitRoom = lazy(() => import('./rooms/KitRoom.tsx').then(({ KitRoom: Room }) => ({ default: Room })));
const CheckRoom = lazy(() => import('./rooms/CheckRoom.tsx').then(({ CheckRoom: Room }) => ({ default: Room })));
const PaperRoom = lazy(() => import('./rooms/PaperRoom.tsx').then(({ PaperRoom: Room }) => ({ default: Room })));
const PlanPanels = lazy(() => import('./plans/PlanPanels.tsx').then(({ PlanPanels: Panels }) => ({ default: Panels })));
const Tour = lazy(() => import('./tour/Tour.tsx').then(({ Tour: Slips }) => ({ default: Slips })));
const NotOpenedDialog = lazy(() => import('./frame/NotOpenedDialog.tsx').then(({ NotOpenedDialog: Sheet }) => ({ default: Sheet })));

export function App() {
  const room = useSession((state) => state.room);
  const planName = useSession((state) => state.evaluation.plan.name);
  const { panel, notOpened, said, actions } = usePlans();
  const picker = useRef<HTMLInputElement>(null);
  const openFile = () => void actions.chooseAndOpen(() => picker.current?.click());
  const save = (to: 'same' | 'another') => void actions.save(to);
  const over = usePlanDrop(actions.open);
  useRoomInAddress();
  useKeys(() => save('same'), openFile);
  useWarningBeforeLeaving();
  useGoodKeeping();
  useTourAtFirst();
  const tourAt = useTourAt();
  useEffect(() => {
    document.title = `${planName}, Needlefall`;
  }, [planName]);

  return (
    <>
      <Header
        onPlans={() => actions.show({ kind: 'plans' })}
        onNew={() => void actions.begin()}
        onName={() => actions.show({ kind: 'name' })}
        onVersions={actions.showVersions}
        onOpenFile={openFile}
        onOpenExample={(example) => void actions.openExample(example)}
        onSave={save}
      />
      <KeptStrip onSave={() => save('another')} onPlans={() => actions.show({ kind: 'plans' })} onVersions={actions.showVersions} />
      <Suspense fallback={<main className="room" aria-busy="true" />}>
        {room === 'kit' ? <KitRoom /> : room === 'audition' ? <AuditionRoom /> : room === 'check' ? <CheckRoom /> : room === 'paper' ? <PaperRoom /> : <TopRoom />}
      </Suspense>
      <Suspense>
        {panel.kind !== 'none' && <PlanPanels panel={panel} actions={actions} onOpenFile={openFile} />}
        {tourAt !== undefined && <Tour at={tourAt} />}
        {notOpened && <NotOpenedDialog problem={notOpened} onClose={actions.forgiveProblem} />}
      </Suspense>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        hidden
        data-testid="plan-file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) void actions.open(file);
        }}
      />
      {over && <div className="drop-here" aria-hidden="true"><p>Let go, and this plan lies on the table.</p></div>}
      <p role="status" className="only-heard">{said}</p>
    </>
  );
}

/** The room one is in stands in the address, so that the browser's back and forward walk through the rooms. */
function useRoomInAddress(): void {
  const session = useTheSession();
  useEffect(() => {
    const walk = () => {
      const room = roomNamed(location.hash.slice(1));
      if (room) enterRoom(session, room);
    };
    walk();
    addEventListener('hashchange', walk);
    return () => removeEventListener('hashchange', walk);
  }, [session]);
}

function useKeys(save: () => void, openPicker: () => void): void {
  const session = useTheSession();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      if (key === 'z') (event.shiftKey ? redo : undo)(session);
      else if (key === 'y') redo(session);
      else if (key === 's') save();
      else if (key === 'o') openPicker();
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.type === 'text';
}

/** The first time, the example opens with the tour. */
function useTourAtFirst(): void {
  const session = useTheSession();
  useEffect(() => {
    if (session.getState().source.kind === 'example' && !isTourSeen()) showSlip(session, 0);
  }, [session]);
}

/** Asks before the page is left with changes that are kept nowhere. */
function useWarningBeforeLeaving(): void {
  const lost = useKeeper((state) => state.problem !== undefined && !state.settled);
  useEffect(() => {
    if (!lost) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [lost]);
}

/** Once there is a plan of her own: asks the browser to keep it for good, and lets go of what was deleted long ago. */
function useGoodKeeping(): void {
  const hasOwn = useKeeper(({ lying }) => lying.kind === 'own' && lying.head !== undefined);
  useEffect(() => {
    if (!hasOwn) return;
    askToKeep().then(forgetLongDeleted).catch(() => undefined);
  }, [hasOwn]);
}
