// Keeps the plan on the table as it is changed: every change goes to the browser's database at once, in order, together
// with its steps of undo. An example becomes a plan of her own with the first change. When another window has written the
// same plan meanwhile, what both did is put together; where both changed the same thing, the other's is kept as a version.

import { type StoreApi, createStore } from 'zustand/vanilla';
import type { Plan } from '../../model/plan.ts';
import { type History, type HistoryStep, recorded } from '../../session/history.ts';
import { patchesBetween } from '../../session/plan/differences.ts';
import { followPlan } from '../../session/plan/lay.ts';
import { mergePlans } from '../../session/plan/merge.ts';
import { type Session, type SessionState, planOf } from '../../session/store.ts';
import { type KeptPlan, readKept } from './read-kept.ts';
import { planDatabase } from './database.ts';
import { type PlanFile, type PlanHead, newId } from './records.ts';
import { type QueueState, createSaveQueue } from './save-queue.ts';
import { holdPlan, onWindowMessage, otherWindows, tellWindows } from './windows.ts';
import { type PlanWrite, writePlanRecords } from './write-plan.ts';

/** Why the plan on the table is not kept. */
export type KeepProblem = 'no-database' | 'full' | 'failed';

export type Lying =
  /** An example nobody has changed; it is kept nowhere. */
  | { readonly kind: 'example'; readonly name: string }
  /** Her own plan; its head as it was kept last, or nothing when it has not been kept yet. */
  | { readonly kind: 'own'; readonly id: string; readonly head: PlanHead | undefined };

export interface KeeperState {
  readonly lying: Lying;
  /** True when everything done lies in the database. */
  readonly settled: boolean;
  readonly problem: KeepProblem | undefined;
  /** How many other windows have this plan on the table. */
  readonly otherWindows: number;
  /** What she should know, in one sentence, until she has read it. */
  readonly news: string | undefined;
}

export interface Keeper {
  readonly store: StoreApi<KeeperState>;
  /** Says how the plan about to be laid is kept; the next plan laid on the table is that one. */
  readonly expect: (next: Expected) => void;
  /** Resolves once all that was done is kept (true), or could not be (false). */
  readonly settle: () => Promise<boolean>;
  readonly tryAgain: () => void;
  readonly tellNews: (news: string | undefined) => void;
  /** Remembers the file the plan on the table lies in. */
  readonly rememberFile: (file: PlanFile) => void;
}

export type Expected =
  | { readonly kind: 'kept'; readonly kept: KeptPlan }
  | { readonly kind: 'example'; readonly name: string }
  | { readonly kind: 'own'; readonly file?: PlanFile };

/** Milliseconds from one write to the next while a hand is moving. */
const PACE = 150;
/** Milliseconds from one count of the other windows to the next. */
const RECOUNT = 5000;

/** A plan on the table, and what of it is known to be kept. */
interface Desk {
  readonly id: string;
  readonly fromExample: string | undefined;
  file: PlanFile | undefined;
  base: number;
  plan: Plan;
  steps: readonly HistoryStep[];
}

interface Job {
  readonly desk: Desk;
  readonly plan: Plan;
  readonly history: History;
}

export function createKeeper(session: Session): Keeper {
  const store = createStore<KeeperState>(() => ({ lying: { kind: 'example', name: '' }, settled: true, problem: undefined, otherWindows: 0, news: undefined }));
  let desk: Desk | undefined;
  let expected: Expected | undefined;
  let following = false;
  let letGo: (() => void) | undefined;
  let counting: ReturnType<typeof setTimeout> | undefined;
  const queue = createSaveQueue<Job>({
    pace: PACE,
    firstWait: 1000,
    longestWait: 30_000,
    write: (_, job) => write(job),
    onChange: (state) => store.setState({ settled: state.kind === 'empty', ...problemIn(state, store.getState()) }),
  });

  const lay = (state: SessionState) => {
    const next = expected ?? (state.source.kind === 'example' ? { kind: 'example', name: state.source.name } : { kind: 'own' });
    expected = undefined;
    letGo?.();
    letGo = undefined;
    if (next.kind === 'example') {
      desk = undefined;
      return store.setState({ lying: { kind: 'example', name: next.name }, otherWindows: 0 });
    }
    if (next.kind === 'kept') {
      const { head, history, plan } = next.kept;
      desk = { id: head.id, fromExample: head.fromExample, file: head.file, base: head.revision, plan, steps: allSteps(history) };
      store.setState({ lying: { kind: 'own', id: head.id, head }, otherWindows: 0 });
    } else {
      desk = { id: newId(), fromExample: undefined, file: next.file, base: 0, plan: planOf(state), steps: [] };
      store.setState({ lying: { kind: 'own', id: desk.id, head: undefined }, otherWindows: 0 });
      keep(state);
    }
    letGo = holdPlan(desk.id);
  };

  const keep = (state: SessionState) => {
    if (!desk) {
      const { lying } = store.getState();
      desk = { id: newId(), fromExample: lying.kind === 'example' && lying.name !== '' ? lying.name : undefined, file: undefined, base: 0, plan: planOf(state), steps: [] };
      store.setState({ lying: { kind: 'own', id: desk.id, head: undefined } });
      letGo = holdPlan(desk.id);
    }
    queue.put(desk.id, jobFor(desk, state));
  };

  const write = async (job: Job): Promise<void> => {
    const db = await planDatabase();
    const { desk: at } = job;
    let now = job;
    let alsoKeep: NonNullable<PlanWrite['alsoKeep']> = [];
    for (;;) {
      const steps = allSteps(now.history);
      const written = await writePlanRecords(db, {
        id: at.id,
        base: at.base,
        plan: now.plan,
        steps,
        done: now.history.past.length,
        stepsFrom: sameSteps(at.steps, steps),
        ...(at.fromExample !== undefined && { fromExample: at.fromExample }),
        ...(at.file && { file: at.file }),
        alsoKeep,
      });
      if (written.kind === 'written') {
        at.base = written.head.revision;
        at.plan = now.plan;
        at.steps = steps;
        at.file = written.head.file;
        if (desk === at) store.setState({ lying: { kind: 'own', id: at.id, head: written.head } });
        const instead = alsoKeep.length > 0;
        if (instead && desk === at) store.setState({ news: MINE_STAYS });
        tellWindows({ kind: 'kept', plan: at.id, revision: at.base, instead });
        tellWindows({ kind: 'list' });
        return;
      }
      const read = await readKept(db, at.id);
      if (!read.ok) throw new Error('The plan is in the database and cannot be read.');
      const theirs = read.value;
      const together = desk === at && !session.getState().gesture ? putTogether(at, theirs) : undefined;
      at.base = theirs.head.revision;
      if (together) {
        at.plan = theirs.plan;
        at.steps = allSteps(theirs.history);
        now = { desk: at, ...together };
        // A later state that waits already was made before this and must not be written after it.
        queue.put(at.id, now);
      } else {
        at.steps = [];
        if (desk === at) now = jobFor(at, session.getState());
        alsoKeep = [...alsoKeep, { reason: 'other-window', plan: theirs.plan }];
      }
    }
  };

  /** What this window and another did to the same plan, laid on the table; nothing when both changed the same thing. */
  const putTogether = (at: Desk, theirs: KeptPlan): { readonly plan: Plan; readonly history: History } | undefined => {
    const state = session.getState();
    const mine = planOf(state);
    const merged = mergePlans(at.plan, mine, theirs.plan);
    if (!merged.ok) return undefined;
    const forward = patchesBetween(theirs.plan, merged.value);
    const last = state.history.past.at(-1);
    const step = { label: last?.label ?? 'What was done here', forward, back: patchesBetween(merged.value, theirs.plan), selectedBefore: state.selection, selectedAfter: state.selection };
    const history = forward.length === 0 ? theirs.history : recorded(theirs.history, step);
    lieAs(merged.value, history);
    return { plan: planOf(session.getState()), history };
  };

  const lieAs = (plan: Plan, history: History) => {
    following = true;
    followPlan(session, plan, history);
    following = false;
  };

  /** Takes what another window has kept of this plan, when nothing done here waits to be kept. */
  const follow = async (instead: boolean) => {
    const at = desk;
    const isFree = () => at !== undefined && desk === at && queue.isEmpty() && !session.getState().gesture;
    if (!at || !isFree()) return;
    const read = await readKept(await planDatabase(), at.id);
    if (!read.ok || !isFree() || read.value.head.revision <= at.base) return;
    const { head, plan, history } = read.value;
    lieAs(plan, history);
    at.base = head.revision;
    at.plan = planOf(session.getState());
    at.steps = allSteps(history);
    at.file = head.file;
    store.setState({ lying: { kind: 'own', id: at.id, head }, ...(instead && { news: THEIRS_STAYS }) });
  };

  const refreshHead = async () => {
    const at = desk;
    if (!at) return;
    const head = await (await planDatabase()).get('plans', at.id);
    if (desk !== at || !head) return;
    if (head.revision > at.base) return follow(false);
    at.file = head.file;
    if (head.revision === at.base) store.setState({ lying: { kind: 'own', id: at.id, head } });
  };

  /** Counts the windows, and again for as long as there are others: one that crashes tells nobody. */
  const countWindows = async () => {
    const at = desk;
    if (!at) return;
    const count = await otherWindows(at.id);
    if (desk !== at) return;
    store.setState({ otherWindows: count });
    clearTimeout(counting);
    if (count > 0) counting = setTimeout(() => quietly(countWindows()), RECOUNT);
  };

  const quietly = (work: Promise<unknown>) => void work.catch(() => undefined);

  session.subscribe((state, before) => {
    if (state.laid !== before.laid) return lay(state);
    if (following || (state.evaluation === before.evaluation && state.history === before.history)) return;
    if (planOf(state) !== planOf(before) || state.history !== before.history) keep(state);
  });
  onWindowMessage((message) => {
    if (!desk) return;
    if (message.kind === 'list') return quietly(refreshHead());
    if (message.plan !== desk.id) return;
    if (message.kind === 'kept' && message.revision > desk.base) quietly(follow(message.instead));
    if (message.kind === 'windows') quietly(countWindows());
  });
  // A window that slept may have missed what the others said.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') quietly(refreshHead());
  });

  return {
    store,
    expect: (next) => {
      expected = next;
    },
    settle: () => queue.settled(),
    tryAgain: () => queue.tryAgain(),
    tellNews: (news) => store.setState({ news }),
    rememberFile: (file) => {
      if (!desk) return;
      desk.file = file;
      const { lying } = store.getState();
      if (lying.kind === 'own' && lying.head) store.setState({ lying: { ...lying, head: { ...lying.head, file } } });
    },
  };
}

const MINE_STAYS = 'This plan was changed in another window at the same moment. What you did here is on the table; the other is kept among its versions.';
const THEIRS_STAYS = 'This plan was changed in another window at the same moment. What was done there is on the table; yours is kept among its versions.';

/** What is to be kept of the table as it is now; a gesture under way counts as if it ended here. */
function jobFor(desk: Desk, state: SessionState): Job {
  const { gesture, history, selection } = state;
  if (!gesture || gesture.forward.length === 0) return { desk, plan: planOf(state), history };
  const { label, forward, back, selectedBefore } = gesture;
  return { desk, plan: planOf(state), history: recorded(history, { label, forward, back, selectedBefore, selectedAfter: selection }) };
}

/** Every step of undo in the order it was done, those that can be redone last. */
function allSteps({ past, future }: History): readonly HistoryStep[] {
  return [...past, ...[...future].reverse()];
}

/** How many steps from the first on are the same. */
function sameSteps(a: readonly HistoryStep[], b: readonly HistoryStep[]): number {
  let same = 0;
  while (same < a.length && same < b.length && a[same] === b[same]) same += 1;
  return same;
}

function problemIn(state: QueueState, before: KeeperState): Pick<KeeperState, 'problem'> {
  if (state.kind === 'empty') return { problem: undefined };
  if (state.kind === 'writing') return { problem: before.problem };
  const name = state.problem instanceof Error || state.problem instanceof DOMException ? state.problem.name : '';
  if (name === 'QuotaExceededError') return { problem: 'full' };
  return { problem: typeof indexedDB === 'undefined' || NO_DATABASE.has(name) ? 'no-database' : 'failed' };
}

/** What browsers say when they have no database for this page. */
const NO_DATABASE = new Set(['SecurityError', 'InvalidStateError', 'NotAllowedError', 'MissingDatabase']);
