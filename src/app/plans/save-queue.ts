// What is still to be written, in the order it was done. One thing is written at a time; what is newest of a plan takes
// the place of what has not been written yet, so the queue is never longer than the plans that changed. What could not be
// written stays first in the queue and is tried again, by itself and whenever something new comes.

export interface SaveQueue<Job> {
  /** Puts a state of a plan in the queue; it takes the place of an older state of the same plan. */
  readonly put: (plan: string, job: Job) => void;
  /** Resolves once everything put so far is written, or the first of it could not be: true when all is written. */
  readonly settled: () => Promise<boolean>;
  /** True when nothing waits and nothing is being written. */
  readonly isEmpty: () => boolean;
  /** Tries at once what could not be written. */
  readonly tryAgain: () => void;
}

export interface SaveQueueOptions<Job> {
  /** Writes one job as a whole or not at all; rejects when it could not. */
  readonly write: (plan: string, job: Job) => Promise<void>;
  /** Milliseconds from the start of one write to the start of the next, so that a drag does not write at every move. */
  readonly pace: number;
  /** Milliseconds before a failed write is tried again: doubled each time, up to `longestWait`. */
  readonly firstWait: number;
  readonly longestWait: number;
  /** Told whenever the queue gets or loses work, and why the last write failed. */
  readonly onChange: (state: QueueState) => void;
  readonly clock?: Clock;
}

export type QueueState =
  | { readonly kind: 'empty' }
  | { readonly kind: 'writing' }
  | { readonly kind: 'stuck'; readonly problem: unknown };

/** The time and the waiting, so that tests can run them. */
export interface Clock {
  readonly now: () => number;
  readonly after: (milliseconds: number, work: () => void) => () => void;
}

export function createSaveQueue<Job>({ write, pace, firstWait, longestWait, onChange, clock = wallClock }: SaveQueueOptions<Job>): SaveQueue<Job> {
  // A map gives its keys in the order they were put in, and keeps a key's place when its value is replaced.
  const waiting = new Map<string, Job>();
  let writing = false;
  let stuck: unknown;
  let wait = firstWait;
  let lastStart = -Infinity;
  let cancel: (() => void) | undefined;
  let listeners: ((allWritten: boolean) => void)[] = [];

  const goOn = () => {
    cancel?.();
    cancel = undefined;
    if (writing || waiting.size === 0) return;
    const early = lastStart + pace - clock.now();
    if (early > 0) cancel = clock.after(early, goOn);
    else void next();
  };

  const next = async () => {
    const [plan, job] = waiting.entries().next().value!;
    writing = true;
    lastStart = clock.now();
    try {
      await write(plan, job);
      // A newer state may have come meanwhile; it waits its turn behind other plans.
      if (waiting.get(plan) === job) waiting.delete(plan);
      else moveLast(waiting, plan);
      stuck = undefined;
      wait = firstWait;
    } catch (problem) {
      stuck = problem ?? new Error('The write failed.');
    }
    writing = false;
    if (stuck !== undefined) {
      onChange({ kind: 'stuck', problem: stuck });
      tell(false);
      cancel = clock.after(wait, goOn);
      wait = Math.min(longestWait, wait * 2);
    } else if (waiting.size === 0) {
      onChange({ kind: 'empty' });
      tell(true);
    } else {
      goOn();
    }
  };

  const tell = (allWritten: boolean) => {
    const told = listeners;
    listeners = [];
    for (const listener of told) listener(allWritten);
  };

  return {
    put: (plan, job) => {
      waiting.set(plan, job);
      if (stuck === undefined) onChange({ kind: 'writing' });
      goOn();
    },
    settled: () => {
      if (waiting.size === 0 && !writing) return Promise.resolve(true);
      return new Promise((resolve) => {
        listeners.push(resolve);
        // Whoever waits for it does not want to wait for the pace.
        if (!writing) {
          lastStart = -Infinity;
          goOn();
        }
      });
    },
    isEmpty: () => waiting.size === 0 && !writing,
    tryAgain: goOn,
  };
}

function moveLast<Job>(waiting: Map<string, Job>, plan: string): void {
  const job = waiting.get(plan)!;
  waiting.delete(plan);
  waiting.set(plan, job);
}

const wallClock: Clock = {
  now: () => performance.now(),
  after: (milliseconds, work) => {
    const timer = setTimeout(work, milliseconds);
    return () => clearTimeout(timer);
  },
};
