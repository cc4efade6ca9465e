// The frame of the app: the header, the room one is in, and what comes up over both.

import { Suspense, lazy, useCallback, useEffect, useRef, useState } from 'react';
import { redo, undo } from '../session/change-plan.ts';
import { openPlan } from '../session/change-plan.ts';
import { enterRoom } from '../session/look.ts';
import { roomNamed } from '../session/rooms.ts';
import { isChanged } from '../session/store.ts';
import { Header } from './frame/Header.tsx';
import { usePlanDrop } from './frame/use-plan-drop.ts';
import type { Example } from './plans/examples.ts';
import { type NotOpened, openFile, planOfExample } from './plans/open.ts';
import { savePlan } from './plans/save.ts';
import { TopRoom } from './rooms/TopRoom.tsx';
import { useSession, useTheSession } from './use-session.ts';

const CheckRoom = lazy(() => import('./rooms/CheckRoom.tsx').then(({ CheckRoom: Room }) => ({ default: Room })));
const PaperRoom = lazy(() => import('./rooms/PaperRoom.tsx').then(({ PaperRoom: Room }) => ({ default: Room })));
const NotOpenedDialog = lazy(() => import('./frame/NotOpenedDialog.tsx').then(({ NotOpenedDialog: Sheet }) => ({ default: Sheet })));

export function App() {
  const session = useTheSession();
  const room = useSession((state) => state.room);
  const planName = useSession((state) => state.evaluation.plan.name);
  const [notOpened, setNotOpened] = useState<NotOpened>();
  const [said, say] = useState('');
  const picker = useRef<HTMLInputElement>(null);

  const open = useCallback(
    async (file: File) => {
      const problem = await openFile(session, file);
      setNotOpened(problem);
      say(problem ? '' : `${session.getState().evaluation.plan.name} lies on the table.`);
    },
    [session],
  );
  const openExample = async (example: Example) => {
    const read = await planOfExample(example);
    if (!read.ok) return setNotOpened({ fileName: example.name, problems: read.problem });
    openPlan(session, read.value, { kind: 'example', name: example.name });
    say(`${read.value.name} lies on the table.`);
  };
  const save = useCallback(async () => {
    if (await savePlan(session)) say('The plan is saved to a file.');
  }, [session]);
  const over = usePlanDrop(open);
  useRoomInAddress();
  useKeys(save, () => picker.current?.click());
  useWarningBeforeLeaving();
  useEffect(() => {
    document.title = `${planName}, Needlefall`;
  }, [planName]);

  return (
    <>
      <Header onOpenFile={() => picker.current?.click()} onOpenExample={(example) => void openExample(example)} onSave={() => void save()} />
      <Suspense fallback={<main className="room" aria-busy="true" />}>
        {room === 'check' ? <CheckRoom /> : room === 'paper' ? <PaperRoom /> : <TopRoom />}
        {notOpened && <NotOpenedDialog problem={notOpened} onClose={() => setNotOpened(undefined)} />}
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
          if (file) void open(file);
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

function useKeys(save: () => Promise<void>, openPicker: () => void): void {
  const session = useTheSession();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      if (key === 'z') (event.shiftKey ? redo : undo)(session);
      else if (key === 'y') redo(session);
      else if (key === 's') void save();
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

/** Asks before the page is left with changes that lie in no file. */
function useWarningBeforeLeaving(): void {
  const changed = useSession(isChanged);
  useEffect(() => {
    if (!changed) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [changed]);
}
