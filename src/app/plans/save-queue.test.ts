import { describe, expect, it } from 'vitest';
import { random } from '../../num/random.ts';
import { type Clock, type QueueState, createSaveQueue } from './save-queue.ts';

/** Time that goes on only when told to. */
function handClock() {
  let time = 0;
  let timers: { readonly at: number; readonly work: () => void }[] = [];
  const clock: Clock = {
    now: () => time,
    after: (milliseconds, work) => {
      const timer = { at: time + milliseconds, work };
      timers.push(timer);
      return () => {
        timers = timers.filter((other) => other !== timer);
      };
    },
  };
  const pass = async (milliseconds: number) => {
    const end = time + milliseconds;
    for (;;) {
      await turns();
      const due = timers.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)[0];
      if (!due) break;
      time = Math.max(time, due.at);
      timers = timers.filter((timer) => timer !== due);
      due.work();
    }
    time = end;
  };
  return { clock, pass };
}

async function turns(): Promise<void> {
  for (let i = 0; i < 20; i++) await Promise.resolve();
}

function setUp(write: (plan: string, job: number) => Promise<void>) {
  const { clock, pass } = handClock();
  const states: QueueState['kind'][] = [];
  const queue = createSaveQueue<number>({ write, pace: 100, firstWait: 1000, longestWait: 8000, onChange: ({ kind }) => states.push(kind), clock });
  return { queue, pass, states, clock };
}

describe('the save queue', () => {
  it('writes the first change at once, and the newest of those that come quickly after it', async () => {
    const written: number[] = [];
    const { queue, pass } = setUp((_, job) => Promise.resolve(void written.push(job)));
    for (let job = 1; job <= 10; job++) queue.put('a', job);
    await turns();
    expect(written).toEqual([1]);
    await pass(100);
    expect(written).toEqual([1, 10]);
    expect(queue.isEmpty()).toBe(true);
  });

  it('never writes two things at once', async () => {
    let under = 0;
    let most = 0;
    const { queue, pass, clock } = setUp(
      () =>
        new Promise((done) => {
          most = Math.max(most, ++under);
          clock.after(250, () => {
            under -= 1;
            done();
          });
        }),
    );
    for (let i = 0; i < 40; i++) {
      queue.put(i % 2 ? 'a' : 'b', i);
      await pass(37);
    }
    await pass(2000);
    expect(most).toBe(1);
    expect(queue.isEmpty()).toBe(true);
  });

  it('keeps what could not be written, tries again with longer and longer waits, and says so', async () => {
    const tries: number[] = [];
    let full = true;
    const { queue, pass, states, clock } = setUp(() => {
      tries.push(clock.now());
      return full ? Promise.reject(new Error('full')) : Promise.resolve();
    });
    queue.put('a', 1);
    await pass(16_000);
    expect(tries).toEqual([0, 1000, 3000, 7000, 15_000]);
    expect(await queue.settled()).toBe(false);
    expect(states.at(-1)).toBe('stuck');
    full = false;
    queue.tryAgain();
    await pass(200);
    expect(queue.isEmpty()).toBe(true);
    expect(states.at(-1)).toBe('empty');
  });

  it('answers whoever waits once all is written', async () => {
    const written: number[] = [];
    const { queue, pass } = setUp((_, job) => Promise.resolve(void written.push(job)));
    queue.put('a', 1);
    queue.put('b', 2);
    queue.put('a', 3);
    const settled = queue.settled();
    await pass(500);
    expect(await settled).toBe(true);
    expect(written).toEqual([1, 2, 3]);
    expect(await queue.settled()).toBe(true);
  });

  it('whatever comes and fails, writes each plan in order and ends with the newest, seed 23', async () => {
    const { next } = random(23);
    const written = new Map<string, number[]>();
    const { queue, pass, clock } = setUp(
      (plan, job) =>
        new Promise((done, failed) => {
          const fails = next() < 0.3;
          clock.after(next() * 300, () => {
            if (fails) return failed(new Error('no'));
            written.set(plan, [...(written.get(plan) ?? []), job]);
            done();
          });
        }),
    );
    const newest = new Map<string, number>();
    for (let job = 0; job < 400; job++) {
      const plan = `plan ${Math.floor(next() * 3)}`;
      newest.set(plan, job);
      queue.put(plan, job);
      await pass(next() * 120);
    }
    await pass(200_000);
    expect(queue.isEmpty()).toBe(true);
    for (const [plan, jobs] of written) {
      expect(jobs).toEqual([...jobs].sort((a, b) => a - b));
      expect(jobs.at(-1)).toBe(newest.get(plan));
    }
    expect(written.size).toBe(3);
  });
});
